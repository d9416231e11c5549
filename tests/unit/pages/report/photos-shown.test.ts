import { describe, expect, it } from 'vitest'
import { photosShown } from '../../../../src/pages/report/SheetTexts'
import type { PaperItem } from '../../../../src/words/bore-paper'

const found = (count: number): PaperItem => ({
  kind: 'surface',
  text: 'a scratch',
  photos: Array.from({ length: count }, (_, index) => ({
    hash: `${index}`,
    name: `${index}.jpg`,
    widthPx: 400,
    heightPx: 300,
  })),
})

describe('the photographs of a report', () => {
  it('are all shown while there is room', () => {
    expect(photosShown([found(1), found(3)])).toEqual({ shown: [1, 3], left: 0 })
  })

  it('are the first of each finding before the second of any, and what is left is counted', () => {
    expect(photosShown([found(4), found(1), found(3)])).toEqual({ shown: [2, 1, 1], left: 4 })
    expect(photosShown([{ kind: 'bullet', text: 'none' }])).toEqual({ shown: [0], left: 0 })
  })
})
