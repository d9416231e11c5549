import { describe, expect, it } from 'vitest'
import { blockAfterKey, type GridBlock, isInBlock, rowsInBlock } from '../../../../src/pages/bench/grid-block'

const size = { rows: 3, columns: 4 }
const at = (row: number, column: number): GridBlock => ({ from: { row, column }, to: { row, column } })
const none = { shiftKey: false, ctrlKey: false, metaKey: false, altKey: false }

/** The keys that the ARIA Authoring Practices list for a data grid (W3C, grid pattern), from memory. */
const moves: [string, Partial<typeof none>, number, number][] = [
  ['ArrowUp', {}, 0, 1],
  ['ArrowDown', {}, 2, 1],
  ['ArrowLeft', {}, 1, 0],
  ['ArrowRight', {}, 1, 2],
  ['Home', {}, 1, 0],
  ['End', {}, 1, 3],
  ['Home', { ctrlKey: true }, 0, 0],
  ['End', { ctrlKey: true }, 2, 3],
]

describe('the cells that are chosen', () => {
  it.each(moves)('%s %j goes from the second cell of the second row to %i, %i', (key, held, row, column) => {
    expect(blockAfterKey(at(1, 1), { ...none, ...held, key }, size)).toEqual(at(row, column))
    const grown = blockAfterKey(at(1, 1), { ...none, ...held, key, shiftKey: true }, size)
    expect(grown).toEqual({ from: { row: 1, column: 1 }, to: { row, column } })
  })

  it('stay within the grid, and are all of it by Control and A', () => {
    expect(blockAfterKey(at(0, 0), { ...none, key: 'ArrowUp' }, size)).toEqual(at(0, 0))
    expect(blockAfterKey(at(2, 3), { ...none, key: 'ArrowRight' }, size)).toEqual(at(2, 3))
    const all = { from: { row: 0, column: 0 }, to: { row: 2, column: 3 } }
    expect(blockAfterKey(at(1, 1), { ...none, key: 'a', ctrlKey: true }, size)).toEqual(all)
  })

  it('leave every other key alone', () => {
    for (const key of ['a', 'Tab', 'PageDown', 'Enter', '5']) {
      expect(blockAfterKey(at(1, 1), { ...none, key }, size)).toBeUndefined()
    }
    expect(blockAfterKey(at(1, 1), { ...none, key: 'ArrowUp', altKey: true }, size)).toBeUndefined()
    expect(blockAfterKey(at(1, 1), { ...none, key: 'ArrowUp', ctrlKey: true }, size)).toBeUndefined()
  })

  it('are those between two corners, whichever was chosen first', () => {
    const block = { from: { row: 2, column: 2 }, to: { row: 1, column: 1 } }
    expect(
      rowsInBlock(
        [
          ['a', 'b', 'c'],
          ['d', 'e', 'f'],
          ['g', 'h', 'i'],
        ],
        block,
      ),
    ).toEqual([
      ['e', 'f'],
      ['h', 'i'],
    ])
    expect(isInBlock(block, { row: 0, column: 1 })).toBe(false)
  })
})
