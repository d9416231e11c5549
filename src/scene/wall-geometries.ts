import type { BufferGeometry } from 'three'
import { coarseGeometry, glassGeometry, wallGeometry } from './wall-geometry'

const makers = { wall: wallGeometry, coarse: coarseGeometry, glass: glassGeometry }

/** The unit grids of one picture: bores whose grids are of one size share theirs. */
export class WallGeometries {
  readonly #known = new Map<string, BufferGeometry>()
  readonly #users = new Map<BufferGeometry, number>()

  /** The grid of this size, the same one each time it is asked for. */
  of(kind: keyof typeof makers, columns: number, rows: number): BufferGeometry {
    const key = `${kind} ${columns} ${rows}`
    const geometry = this.#known.get(key) ?? makers[kind](columns, rows)
    this.#known.set(key, geometry)
    return geometry
  }

  /** It is drawn with from now on, until it is given back. */
  take(geometry: BufferGeometry): void {
    this.#users.set(geometry, (this.#users.get(geometry) ?? 0) + 1)
  }

  /** With the last use given back the graphics are freed of it; drawn with again, they get it again. */
  giveBack(geometry: BufferGeometry): void {
    const users = (this.#users.get(geometry) ?? 1) - 1
    this.#users.set(geometry, users)
    if (users === 0) geometry.dispose()
  }
}
