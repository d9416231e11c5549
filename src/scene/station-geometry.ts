import { BufferAttribute, BufferGeometry } from 'three'
import type { BorePlace } from './stroke-geometry'

/**
 * How a disc is drawn: a reading, a reading in no verdict, the ring round the place pointed at, the square where
 * the next reading is taken.
 */
export type DiscShape = 'disc' | 'hollow' | 'ring' | 'square'

export interface Disc extends BorePlace {
  readonly shape: DiscShape
}

const shapes: readonly DiscShape[] = ['disc', 'hollow', 'ring', 'square']

export function stationGeometry(discs: readonly Disc[]): BufferGeometry {
  const geometry = new BufferGeometry()
  const here = discs.flatMap((disc) => [disc.angle, disc.depthMm, disc.deviationUm])
  const shape = discs.map((disc) => shapes.indexOf(disc.shape))
  geometry.setAttribute('here', new BufferAttribute(new Float32Array(here), 3))
  geometry.setAttribute('shape', new BufferAttribute(new Float32Array(shape), 1))
  geometry.setDrawRange(0, discs.length)
  return geometry
}
