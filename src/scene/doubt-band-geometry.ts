import { BufferAttribute, BufferGeometry } from 'three'

/** Which limits have a band: 0 the min, 1 the max. */
export type BandLimit = 0 | 1

/** Flat rings at both mouths for the limits given, by column of the wall's grid, inner and outer edge. */
export function doubtBandGeometry(columns: number, limits: readonly BandLimit[]): BufferGeometry {
  const band: number[] = []
  const index: number[] = []
  for (const limit of limits) {
    for (const mouth of [0, 1]) {
      for (let column = 0; column <= columns; column++) {
        const inner = band.length / 4
        band.push(column, mouth, limit, 0, column, mouth, limit, 1)
        if (column < columns) index.push(inner, inner + 2, inner + 1, inner + 2, inner + 3, inner + 1)
      }
    }
  }
  const geometry = new BufferGeometry()
  geometry.setAttribute('band', new BufferAttribute(new Float32Array(band), 4))
  geometry.setIndex(index)
  return geometry
}
