import { describe, expect, it } from 'vitest'
import { marksPresent } from '../../../src/scene/marks-present'
import { provenMarks } from '../../../src/scene/proven-marks'
import type { Spot } from '../core/surface/invented-cylinder'
import { drawn } from './drawn-cylinder'

const pair = { kind: 'band', minMm: 54, maxMm: 54.02 } as const

function survey(worn: (depthMm: number, axisDegrees: number) => Partial<Spot>) {
  const spots = [10, 30, 50].flatMap((depthMm) =>
    [0, 45, 90, 135].map((axisDegrees) => ({
      depthMm,
      axisDegrees,
      diameterMm: 54.01,
      verdict: 'inside' as const,
      ...worn(depthMm, axisDegrees),
    })),
  )
  return drawn({ spots, lengthMm: 60, pair })
}

describe('signs on proven patches', () => {
  it('name the contact furthest past the limit, once for each side that it shows on', () => {
    const { grid, finding } = survey((depthMm, axisDegrees) => {
      if (axisDegrees !== 0) return {}
      if (depthMm === 10) return { diameterMm: 54.05, verdict: 'above' }
      return depthMm === 30 ? { diameterMm: 54.035, verdict: 'above' } : {}
    })
    const marks = provenMarks(grid, finding.stations, finding.pair)
    expect(marks.map(({ sign }) => sign)).toEqual(['+', '+'])
    expect(marks.map(({ contacts }) => contacts[0])).toEqual([
      { depthMm: 10, angle: 0 },
      { depthMm: 10, angle: Math.PI },
    ])
  })

  it('tell tight from loose', () => {
    const { grid, finding } = survey((depthMm, axisDegrees) => {
      if (axisDegrees !== 90) return {}
      return depthMm === 50 ? { diameterMm: 53.97, verdict: 'below' } : {}
    })
    expect(provenMarks(grid, finding.stations, finding.pair).map(({ sign }) => sign)).toEqual(['−', '−'])
  })

  it('are none where no station is proven outside, nor for one that does not count', () => {
    const doubtful = survey(() => ({ diameterMm: 54.021, verdict: 'too-close' }))
    expect(provenMarks(doubtful.grid, doubtful.finding.stations, pair)).toEqual([])
    const uncounted = survey((depthMm, axisDegrees) =>
      depthMm === 10 && axisDegrees === 0 ? { diameterMm: 54.06, verdict: 'above', counted: false } : {},
    )
    expect(provenMarks(uncounted.grid, uncounted.finding.stations, pair)).toEqual([])
  })
})

describe('the marks that are explained', () => {
  it('are the hatch and the dots that the wall carries', () => {
    const inside = survey(() => ({}))
    expect(marksPresent(inside.grid, pair)).toEqual({
      hatched: true,
      doubtful: false,
      outlined: false,
    })
    const doubtful = survey(() => ({ diameterMm: 54.021, verdict: 'too-close' }))
    expect(marksPresent(doubtful.grid, pair).doubtful).toBe(true)
  })

  it('have no dots at a min that is drawn but not judged', () => {
    const tight = survey(() => ({ diameterMm: 54.0005, verdict: 'inside' }))
    expect(marksPresent(tight.grid, pair).doubtful).toBe(true)
    expect(marksPresent(tight.grid, { ...pair, kind: 'wear' }).doubtful).toBe(false)
  })
})
