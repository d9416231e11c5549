import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { afterKey, digitKeys, type PadKey } from '../../../../../src/pages/bench/phone/pad-keys'
import { readNumber } from '../../../../../src/words/read-number'

const keys: readonly PadKey[] = [...digitKeys, 'delete', 'sign', 'point']
const press = (...pressed: PadKey[]) => pressed.reduce(afterKey, '')

describe('keys of the pad', () => {
  it('write a size digit by digit', () => {
    expect(press('5', '4', 'point', '0', '3', '3')).toBe('54.033')
    expect(press('5', '4', 'point', '00', '7')).toBe('54.007')
  })

  it('put a nought before a point that begins a number', () => {
    expect(press('point', '5')).toBe('0.5')
    expect(press('sign', 'point', '5')).toBe('-0.5')
  })

  it('take a second point for a slip, whatever the first one was', () => {
    expect(press('5', '4', 'point', '0', 'point', '3')).toBe('54.03')
    expect(afterKey('54,0', 'point')).toBe('54,0')
  })

  it('turn the sign round and back, also one that is written', () => {
    expect(press('1', '2', 'sign')).toBe('-12')
    expect(press('1', '2', 'sign', 'sign')).toBe('12')
    expect(afterKey('+12', 'sign')).toBe('-12')
    expect(afterKey('\u221212', 'sign')).toBe('12')
  })

  it('delete from the end, and nothing where there is nothing', () => {
    expect(press('5', '4', 'delete')).toBe('5')
    expect(press('delete')).toBe('')
  })

  it('act on the last of several numbers', () => {
    expect(afterKey('54.01 12', 'sign')).toBe('54.01 -12')
    expect(afterKey('54.01 12', 'point')).toBe('54.01 12.')
  })

  it('never write what is no number, but for one too large, once a digit ends it, over 300 runs from seed 41', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...keys), { maxLength: 14 }), (pressed) => {
        const written = afterKey(pressed.reduce(afterKey, ''), '7')
        const read = readNumber(written)
        expect(read.ok || read.why === 'too-large').toBe(true)
      }),
      { seed: 41, numRuns: 300 },
    )
  })
})
