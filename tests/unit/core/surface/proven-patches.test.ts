import { describe, expect, it } from 'vitest'
import { patchesWith } from '../../../../src/core/surface/proven-patches'

function marked(picture: readonly string[], seeds: readonly number[]): string[] {
  const columns = picture[0]?.length ?? 0
  const beyond = Uint8Array.from(picture.join(''), (letter) => (letter === '#' ? 1 : 0))
  const marks = patchesWith(seeds, beyond, { rows: picture.length, columns })
  return picture.map((_, row) =>
    Array.from(marks.slice(row * columns, (row + 1) * columns), (mark) => (mark ? '#' : '.')).join(''),
  )
}

describe('patches that hold a seed', () => {
  it('are marked whole, the others not at all', () => {
    expect(marked(['##..#', '.#...', '...##'], [1])).toEqual(['##..#', '.#...', '.....'])
    expect(marked(['.#.#.', '.##..', '.....'], [6])).toEqual(['.#...', '.##..', '.....'])
  })

  it('are joined round the seam, and not past the deck or the bottom', () => {
    expect(marked(['#...#', '.....', '#...#'], [4])).toEqual(['#...#', '.....', '.....'])
  })

  it('are not joined at a corner', () => {
    expect(marked(['.#...', '..#..', '.....'], [1])).toEqual(['.#...', '.....', '.....'])
  })

  it('begin at the seed even where nothing else is beyond', () => {
    expect(marked(['.....', '.....', '.....'], [7])).toEqual(['.....', '..#..', '.....'])
    expect(marked(['#####', '.....', '.....'], [])).toEqual(['.....', '.....', '.....'])
  })
})
