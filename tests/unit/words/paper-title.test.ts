import { describe, expect, it } from 'vitest'
import { paperTitle } from '../../../src/words/paper-title'

describe('the name of a printed report', () => {
  it('sorts by day and says the job and the bore', () => {
    expect(paperTitle('2026-03-14', 'Garden saw', '1')).toBe('2026-03-14 Garden saw bore 1')
    expect(paperTitle('2026-03-14', 'Garden saw', undefined)).toBe('2026-03-14 Garden saw all bores')
    expect(paperTitle('2026-03-14', '  ', '1')).toBe('2026-03-14 job bore 1')
  })

  it('holds nothing that a file system refuses, and no more than it takes', () => {
    const hostile = paperTitle('2026-03-14', `<a/b\\c:d*e?"f">|\u202e\n..${'x'.repeat(500)}`, '../..')
    expect(hostile).not.toMatch(/[<>:"/\\|?*\p{C}]/u)
    expect(hostile.length).toBeLessThan(150)
    expect(hostile).toMatch(/^2026-03-14 a b c d e f/)
  })
})
