import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  afterGaugeKey,
  type GaugePress,
  type GaugeStep,
  isSecondLineEnd,
  noGaugeKeys,
} from '../../../../src/pages/bench/gauge-keys'
import { runCount } from '../../../proof/run-count'

type Press = Partial<GaugePress> & { readonly key: string }

/** Sends keys a millisecond apart; what each of them does. */
function send(presses: readonly Press[]): GaugeStep[] {
  let keys = noGaugeKeys
  return presses.map((press, index) => {
    const [after, step] = afterGaugeKey(keys, {
      time: index,
      repeat: false,
      withModifier: false,
      focus: 'other',
      ...press,
    })
    keys = after
    return step
  })
}

const typing = (text: string, focus: GaugePress['focus'] = 'other'): Press[] =>
  [...text].map((key) => ({ key: key === '\n' ? 'Enter' : key, focus }))

/** The numbers taken, and how often a key was passed on to what has the focus. */
function outcome(steps: readonly GaugeStep[]) {
  let typed = ''
  let passedOn = 0
  const taken: string[] = []
  for (const step of steps) {
    if (step.does === 'begin' || step.does === 'begin-at-cell') typed = step.text
    if (step.does === 'add') typed += step.text
    if (step.does === 'delete') typed = typed.slice(0, -1)
    if (step.does === 'take') taken.push(typed)
    if (step.does === 'pass-on') passedOn += 1
  }
  return { taken, passedOn }
}

describe('a gauge that types like a keyboard', () => {
  it('has its number taken by its line end, and presses nothing with it', () => {
    expect(outcome(send(typing('54.012\n')))).toEqual({ taken: ['54.012'], passedOn: 0 })
    expect(outcome(send(typing('-7,5\n', 'cell')))).toEqual({ taken: ['-7,5'], passedOn: 0 })
  })

  it('has both signs of a line end taken as one', () => {
    expect(outcome(send(typing('54.012\n\n54.013\n\n')))).toEqual({
      taken: ['54.012', '54.013'],
      passedOn: 0,
    })
  })

  it('begins at the station that has the focus', () => {
    const steps = send(typing('5\n6\n', 'cell')).map(({ does }) => does)
    expect(steps, 'and goes on to the next').toEqual(['begin-at-cell', 'take', 'begin', 'take'])
  })

  it('leaves the line end of a user alone who has begun no number', () => {
    expect(outcome(send([{ key: 'Enter' }]))).toEqual({ taken: [], passedOn: 1 })
    const later = send([...typing('54.012\n'), { key: 'Enter', time: 1000 }])
    expect(later.at(-1)).toEqual({ does: 'pass-on' })
  })

  it('does not press a button again and again while its line end is held down', () => {
    const held = send([...typing('5\n'), { key: 'Enter', time: 600, repeat: true }])
    expect(held.at(-1)).toEqual({ does: 'nothing' })
    expect(isSecondLineEnd(noGaugeKeys, 5, false)).toBe(false)
  })

  it('lets the picture move by a sign, and keeps the sign for the digits behind it', () => {
    const steps = send(typing('-7\n', 'signs'))
    expect(steps[0]).toEqual({ does: 'pass-on' })
    expect(outcome(steps).taken).toEqual(['-7'])
    expect(outcome(send([...typing('-', 'signs'), { key: 'a' }, ...typing('7\n', 'signs')])).taken).toEqual([
      '7',
    ])
  })

  it('lets a choice be typed in a list, and is taken where nothing is being chosen', () => {
    const choice = typing('dial, 0.01', 'list')
    expect(outcome(send(choice))).toEqual({ taken: [], passedOn: choice.length })
    expect(outcome(send(typing('-54.012\n', 'list'))).taken).toEqual(['-54.012'])
    const later = typing('54\n', 'list').map((press, index) => ({ ...press, time: 2000 + index }))
    expect(outcome(send([...choice, ...later])).taken).toEqual(['54'])
  })

  it('keeps out of fields, of lists to choose from and of shortcuts', () => {
    expect(outcome(send(typing('54.012\n', 'text')))).toEqual({ taken: [], passedOn: 7 })
    expect(send([{ key: '1', withModifier: true }])).toEqual([{ does: 'pass-on' }])
    const interrupted = send([...typing('54'), { key: 'ArrowDown' }, { key: 'Enter' }])
    expect(interrupted.slice(2)).toEqual([{ does: 'pass-on' }, { does: 'pass-on' }])
  })

  it('can be corrected and given up by hand', () => {
    expect(outcome(send([...typing('545'), { key: 'Backspace' }, ...typing('.01\n')])).taken).toEqual([
      '54.01',
    ])
    expect(send([...typing('54'), { key: 'Escape' }]).at(-1)).toEqual({ does: 'give-up' })
    expect(send([{ key: 'Escape' }, { key: 'Backspace' }]).map(({ does }) => does)).toEqual([
      'pass-on',
      'pass-on',
    ])
  })

  it('is taken whole and in order, whatever its numbers, its line ends and the focus (seed 1)', () => {
    const number = fc
      .tuple(fc.constantFrom('', '+', '-', '\u2212'), fc.nat(999), fc.constantFrom('.', ','), fc.nat(999))
      .map(([sign, whole, mark, part]) => `${sign}${whole}${mark}${part}`)
    const focus = fc.constantFrom<GaugePress['focus']>('cell', 'signs', 'list', 'other')
    fc.assert(
      fc.property(
        fc.array(number, { maxLength: 20 }),
        focus,
        fc.constantFrom('\n', '\n\n'),
        (numbers, at, end) => {
          const { taken } = outcome(send(typing(numbers.map((text) => `${text}${end}`).join(''), at)))
          expect(taken).toEqual(numbers)
        },
      ),
      { seed: 1, numRuns: runCount({ quick: 200, full: 5000 }) },
    )
  })
})
