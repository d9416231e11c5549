import { expect, it } from 'vitest'
import { spoken } from '../../../src/words/spoken'

it.each([
  ['54.012', '54 point 0 1 2'],
  ['54,012', '54 point 0 1 2'],
  ['25 mm, 90°: 54.012', '25 millimetres, 90 degrees: 54 point 0 1 2'],
  ['−12 µm', 'minus 12 microns'],
  ['3 ± 0.5 µm', '3 plus or minus 0 point 5 microns'],
  ['Measure again.', 'Measure again.'],
])('%s is said as "%s"', (text, said) => {
  expect(spoken(text)).toBe(said)
})
