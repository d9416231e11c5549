import { describe, expect, it } from 'vitest'
import { gaugeName, setUpName, standardName, thermometerName } from '../../../src/words/instrument-names'
import { words } from '../../../src/words/words'

const lists = {
  gauges: [
    { id: 'g1', kind: 'dial-0.01' },
    { id: 'g2', kind: 'dial-0.01', name: '  ' },
    { id: 'g3', kind: 'telescoping', name: 'the borrowed one' },
  ],
  standards: [{ id: 's1', kind: 'ring' }],
  thermometers: [{ id: 't1' }, { id: 't2', name: 'contact' }],
  setUps: [
    { id: 'u1', gaugeId: 'g1', standardId: 's1', entry: 'size', settingSizeMm: 54 },
    { id: 'u2', gaugeId: 'g1', standardId: 's1', entry: 'size', settingSizeMm: 54 },
  ],
} as const

describe('what an instrument is called', () => {
  it('is its name, else its kind, with a number where several unnamed ones are alike', () => {
    const [one, two, three] = lists.gauges
    expect(gaugeName(one, lists)).toBe(`${words.setUp.gauges['dial-0.01']} 1`)
    expect(gaugeName(two, lists)).toBe(`${words.setUp.gauges['dial-0.01']} 2`)
    expect(gaugeName(three, lists)).toBe('the borrowed one')
    expect(standardName(lists.standards[0], lists)).toBe('setting ring')
    expect(lists.thermometers.map((each) => thermometerName(each, lists))).toEqual(['Thermometer', 'contact'])
    expect(lists.setUps.map((each) => setUpName(each, lists))).toEqual(['Setting 1', 'Setting 2'])
  })
})
