import { expect, it } from 'vitest'
import type { Blunder } from '../../../src/core/findings'
import { blunderText, unseenText } from '../../../src/words/blunders'

const place = { depthMm: 40, axisDegrees: 90 }
const mend = { kind: 'shift-repeats', place, repeats: [0], byMm: -1 } as const

it.each<readonly [Blunder, string]>([
  [
    { code: 'whole-turn', place, turns: 1, mend },
    'The reading at 40 mm, 90° is one whole turn of the needle larger than its neighbours let expect. Did the needle go round once unnoticed?',
  ],
  [
    { code: 'digits', place, readMm: 86.083, likelierMm: 86.038, mend },
    'At 40 mm, 90° 86.083 stands far off its neighbours. Was it 86.038?',
  ],
  [
    { code: 'axes-swapped', depthMm: 40, axesDegrees: [0, 90], mend },
    "At 40 mm deep, 0° and 90° read the other way round than above and below. Were they written in each other's place?",
  ],
  [
    { code: 'setting', cause: 'sleeve', by: 'known-size', byMm: -0.5, mend },
    'The unworn wall would be of its new size if the setting were 0.5 mm off. Was the sleeve of the micrometer misread?',
  ],
  [
    { code: 'caliper-disagrees', caliperMm: 85.7, readMm: 86.043 },
    'The caliper says 85.7 mm, the readings 86.04 mm in the mean. Measure with the caliper again, and look at the setting.',
  ],
  [
    { code: 'repeats-spread', place, spreadMm: 0.015, usualMm: 0.0071 },
    'The repeats at 40 mm, 90° differ by 15 µm; this gauge leaves 7 µm at most. Wipe the wall and measure again, or take one out.',
  ],
])('words a question about readings: $code', (blunder, text) => {
  expect(blunderText(blunder)).toBe(text)
})

it('says nothing of unseen slips where there are none, and names each where there are', () => {
  expect(unseenText([])).toBeUndefined()
  expect(unseenText(['whole-turn'])).toBe(
    'Not shown by these readings: a whole turn of the needle at every station.',
  )
})
