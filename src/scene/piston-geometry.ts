import { BufferAttribute, BufferGeometry } from 'three'
import type { PlacedPiston } from '../core/piston/piston-in-bore'
import { ring, type Stroke } from './stroke-geometry'

const steps = 96

/**
 * The skirt as a tube through the sizes, given as places of the bore: angle rad, depth mm, deviation on the diameter
 * µm. Triangles face away from the axis.
 */
export function pistonGeometry({ sizes }: PlacedPiston, middleMm: number): BufferGeometry {
  const place = new Float32Array(sizes.length * (steps + 1) * 3)
  const index: number[] = []
  for (const [row, { depthMm, sizeMm }] of sizes.entries()) {
    for (let step = 0; step <= steps; step++) {
      const at = row * (steps + 1) + step
      place.set([(step / steps) * 2 * Math.PI, depthMm, (sizeMm - middleMm) * 1000], at * 3)
      if (row === 0 || step === steps) continue
      const below = at - (steps + 1)
      index.push(at, at + 1, below, at + 1, below + 1, below)
    }
  }
  const geometry = new BufferGeometry()
  geometry.setAttribute('place', new BufferAttribute(place, 3))
  geometry.setIndex(index)
  return geometry
}

/** Its edges, firm at crown and skirt, and the top ring. */
export function pistonStrokes({ sizes, ringDepthMm }: PlacedPiston, middleMm: number): readonly Stroke[] {
  const [skirt, crown] = [sizes[0], sizes[sizes.length - 1]]
  const at = (depthMm: number, sizeMm: number, widthPx: number): Stroke => ({
    places: ring(depthMm, (sizeMm - middleMm) * 1000),
    widthPx,
    role: 'piston',
    farOpacity: 0.55,
    nearOpacity: 0.9,
  })
  return [
    ...[skirt, crown].flatMap((edge) => (edge ? [at(edge.depthMm, edge.sizeMm, 1.8)] : [])),
    ...(crown && ringDepthMm !== undefined ? [at(ringDepthMm, crown.sizeMm, 1)] : []),
  ]
}
