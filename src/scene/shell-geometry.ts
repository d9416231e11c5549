import { BufferAttribute, BufferGeometry } from 'three'

const steps = 128

/** A unit cylinder as shares of the full turn and of the length. Triangles face away from the axis. */
export function shellGeometry(): BufferGeometry {
  const share = new Float32Array((steps + 1) * 4)
  const index: number[] = []
  for (let step = 0; step <= steps; step++) {
    share.set([step / steps, 0, step / steps, 1], step * 4)
    const upper = step * 2
    if (step < steps) index.push(upper, upper + 2, upper + 1, upper + 2, upper + 3, upper + 1)
  }
  const geometry = new BufferGeometry()
  geometry.setAttribute('share', new BufferAttribute(share, 2))
  geometry.setIndex(index)
  return geometry
}
