import manifoldLibrary, { type Manifold } from 'manifold-3d'
import type { WallSolid } from '../../../../src/core/surface/wall-solid'

const library = await manifoldLibrary()
library.setup()

/** What an independent library says of a mesh. */
export interface Checked {
  readonly volumeMm3: number
  /** Holes right through: one for a tube. */
  readonly genus: number
  /** Separate bodies. */
  readonly bodies: number
}

/**
 * Takes a mesh into manifold-3d, which refuses what is not closed, not oriented or has an edge with more than
 * two faces. With `merge`, corners at one place are first made one vertex, as whoever opens an STL must.
 */
export function checkedByManifold(positions: Float32Array, triangles: Uint32Array, merge = false): Checked {
  const mesh = new library.Mesh({ numProp: 3, vertProperties: positions, triVerts: triangles })
  if (merge) mesh.merge()
  const solid: Manifold = new library.Manifold(mesh)
  const bodies = solid.decompose()
  const checked = { volumeMm3: solid.getProperties().volume, genus: solid.genus(), bodies: bodies.length }
  for (const body of [solid, ...bodies]) body.delete()
  return checked
}

/** All triangles of a model, of whatever kind. */
export function allTriangles({ triangles }: WallSolid): Uint32Array {
  return Uint32Array.from(Object.values(triangles).flatMap((kind) => [...kind]))
}
