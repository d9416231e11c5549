import { describe, expect, it } from 'vitest'
import { standingPlace, verdictPlaces, worstPlace } from '../../../../src/core/conformity/standing'
import { inspect } from '../../../../src/core/inspect'
import { scenario } from '../../scenarios/scenario'

describe('where a bore lies by all of its limits', () => {
  it('is above its limits where taper alone is over: neither limit of shape has a lower end', () => {
    const block = scenario('B-four-cylinder-iron.json')
    const places = inspect(block).bores.map((finding) => standingPlace(finding))
    expect(places).toEqual(['inside', 'inside', 'above', 'close-above'])
  })

  it('is nowhere for a bore for comparison', () => {
    const saw = scenario('A-two-stroke-single.json')
    const compared = inspect(saw).bores.filter(({ role }) => role === 'for-comparison')
    expect(compared.map((finding) => standingPlace(finding))).toEqual([undefined])
  })
})

describe('the worst place among bores', () => {
  it('is beyond a limit before across one, and that before inside', () => {
    expect(verdictPlaces.map((place) => worstPlace(['inside', place, undefined]))).toEqual([
      'above',
      'below',
      'close-above',
      'close-below',
      undefined,
    ])
    expect(worstPlace(['close-below', 'below', 'inside'])).toBe('below')
  })

  it('is inside where every bore is, and nowhere where there are none', () => {
    expect(worstPlace(['inside', 'inside'])).toBe('inside')
    expect(worstPlace([])).toBeUndefined()
    expect(worstPlace([undefined])).toBeUndefined()
  })
})
