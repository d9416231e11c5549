import { describe, expect, it } from 'vitest'
import { blockRows, blockSentence } from '../../../src/words/block'
import { at, bore, findingsOf, ovality, taper, verdict } from './finding-builder'

const inside = bore({ boreId: 'b1', boreName: '1', ovality: [ovality({ verdict: 'inside' })] })
const close = bore({ boreId: 'b2', boreName: '2', ovality: [ovality()] })
const out = bore({ boreId: 'b3', boreName: '3', taper: [taper({ verdict: 'above' })] })
const over = bore({
  boreId: 'b4',
  boreName: '4',
  verdict: verdict({ verdict: 'above', provenAbove: [at(8, 0)] }),
})
const compared = bore({ boreId: 'n', boreName: 'New', role: 'for-comparison', ovality: [ovality()] })

describe('the bores beside each other', () => {
  it('have a row each, those of the engine first, with every figure and its doubt', () => {
    const rows = blockRows(findingsOf(compared, close))
    expect(rows.map(({ name }) => name)).toEqual(['2', 'New'])
    expect(rows[0]).toMatchObject({
      standing: 'too-close',
      standingText: 'too close',
      largest: { figure: '54.028', doubt: '± 5 µm' },
      smallest: { figure: '54.015', doubt: '± 5 µm' },
      ovality: { figure: '13 µm', doubt: '7 to 19' },
    })
    expect(rows[0]?.taper).toBeUndefined()
    expect(rows[1]?.standingText).toBe('for comparison')
  })

  it('are out when size, out-of-round or taper is', () => {
    expect(blockRows(findingsOf(out, over)).map(({ standing }) => standing)).toEqual(['out', 'out'])
  })

  it('are not said to be inside while a limit waits for the travel', () => {
    const waiting = (verdict: 'above' | 'too-close') =>
      bore({ ovality: [ovality({ verdict: 'inside' })], taper: [taper({ verdict, limitOpen: 'no-travel' })] })
    const open = bore({
      taper: [{ known: false, rule: 'level-means', why: 'no-common-axis', limitOpen: 'no-travel' }],
    })
    expect(
      blockRows(findingsOf(open, waiting('above'), waiting('too-close'))).map(({ standing }) => standing),
    ).toEqual(['none', 'out', 'too-close'])
  })

  it('stand in a sentence once there are two of the engine', () => {
    expect(blockSentence(findingsOf(inside, compared))).toBeUndefined()
    expect(blockSentence(findingsOf(out, over))).toBe('All 2 bores are out of their limits.')
    expect(blockSentence(findingsOf(inside, close, out, over))).toBe(
      'Bores 3 and 4 are out of their limits. Bore 2 is too close to call. Bore 1 is inside.',
    )
  })
})
