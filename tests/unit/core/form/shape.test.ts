import { describe, expect, it } from 'vitest'
import type { ShapeFinding } from '../../../../src/core/findings'
import type { OvalityRule, Spec, TaperRule } from '../../../../src/core/measured'
import { studentQuantile } from '../../../../src/core/statistics/student'
import { studentisedRangeQuantile } from '../../../../src/core/statistics/studentised-range'
import {
  type Circumstances,
  findingOf,
  first,
  measuredBore,
  onlyScaleDoubt,
  type ReadingTable,
} from '../measured-bore'

const infinite = Number.POSITIVE_INFINITY
const table: ReadingTable = {
  levelsMm: [10, 45, 90],
  axesDegrees: [0, 90],
  rows: [
    [80.062, 80.041],
    [80.035, 80.028],
    [80.012, 80.01],
  ],
}
/** u = 1 µm at every station, ν infinite. */
const exact = onlyScaleDoubt(1)

function shape<Rule extends OvalityRule | TaperRule>(
  rule: Rule,
  spec: Spec,
  given: ReadingTable = table,
  c: Circumstances = exact,
) {
  const finding = findingOf(measuredBore(given, { ...c, spec }))
  const shapes: readonly ShapeFinding<OvalityRule | TaperRule>[] = [...finding.ovality, ...finding.taper]
  const found = shapes.find((s) => s.rule === rule)
  if (!found?.known) throw new Error(`${rule}: ${found?.why}`)
  return found
}

const um = (mm: number) => Math.round(mm * 1e6) / 1000

describe('the interval of a largest less smallest', () => {
  it('is the studentised range for the worst of three levels of two, and names its stations', () => {
    const found = shape('largest-less-smallest-at-a-level', {})
    const q = studentisedRangeQuantile(0.95 ** (1 / 3), 2, infinite)
    expect([um(found.valueMm), um(found.lowMm), um(found.highMm)]).toEqual([
      21,
      um(0.021 - q / 1000),
      um(0.021 + q / 1000),
    ])
    expect(found).toMatchObject({
      larger: { depthMm: 10, axisDegrees: 0 },
      smaller: { depthMm: 10, axisDegrees: 90 },
    })
  })

  it('is for one level that of its own stations, and never below 0', () => {
    const finding = findingOf(measuredBore(table, exact))
    const q = studentisedRangeQuantile(0.95, 2, infinite)
    const [top, , bottom] = finding.levels
    expect(um(top?.ovality?.highMm ?? 0)).toBe(um(0.021 + q / 1000))
    expect(bottom?.ovality?.lowMm).toBe(0)
    expect(um(bottom?.ovality?.valueMm ?? 0)).toBe(2)
  })

  it('counts for taper between levels the levels of an axis, for the worst of two axes', () => {
    const found = shape('between-levels-of-an-axis', {})
    const q = studentisedRangeQuantile(0.95 ** (1 / 2), 3, infinite)
    expect([um(found.valueMm), um(found.highMm)]).toEqual([50, um(0.05 + q / 1000)])
  })

  it('counts for pooled rules all stations of both groups, and is not cut at 0', () => {
    const spec = { ovalityAxesDegrees: { x: 90, y: 0 } }
    const found = shape('pooled', spec)
    const q = studentisedRangeQuantile(0.95, 6, infinite)
    expect(um(found.valueMm)).toBe(29)
    const flat = shape(
      'pooled',
      { ovalityAxesDegrees: { x: 90, y: 0 } },
      {
        ...table,
        rows: [
          [80.02, 80.01],
          [80.02, 80.01],
          [80.02, 80.01],
        ],
      },
    )
    expect([um(flat.valueMm), um(flat.lowMm)]).toEqual([-10, um(-0.01 - q / 1000)])
    expect(flat).toMatchObject({ larger: { axisDegrees: 0 }, smaller: { axisDegrees: 90 } })
  })

  it('keeps the sign of a taper that is wider at the bottom, and turns its interval with it', () => {
    const turned = { ...table, rows: table.rows.toReversed() }
    const up = shape('between-levels-of-an-axis', {})
    const down = shape('between-levels-of-an-axis', {}, turned)
    expect(um(down.valueMm)).toBe(-50)
    expect([um(down.lowMm), um(down.highMm)]).toEqual([um(-up.highMm), um(-up.lowMm)])
    expect(down).toMatchObject({ larger: { depthMm: 90 }, smaller: { depthMm: 10 } })
  })

  it('names two places even where all diameters are alike', () => {
    const flat = {
      ...table,
      rows: [
        [80, 80],
        [80, 80],
        [80, 80],
      ],
    }
    for (const rule of ['largest-less-smallest-at-a-level', 'between-levels-of-an-axis'] as const) {
      const found = shape(rule, {}, flat)
      expect(found.valueMm).toBe(0)
      expect(found.larger).not.toEqual(found.smaller)
    }
  })
})

describe('a limit on a range', () => {
  const q = studentisedRangeQuantile(0.95 ** (1 / 3), 2, infinite) / 1000
  const t = (studentQuantile(0.95, infinite) * Math.SQRT2) / 1000

  it.each([
    [0.021 - q - 1e-6, 'above', 'above'],
    [0.021 - q + 1e-6, 'too-close', 'above'],
    [0.02101, 'too-close', 'inside'],
    [0.021 + t - 1e-6, 'too-close', 'inside'],
    [0.021 + t + 1e-6, 'inside', 'inside'],
  ])('of %s mm is judged %s for 21 µm at the worst of three levels', (ovalityLimitMm, verdict, lean) => {
    const found = shape('largest-less-smallest-at-a-level', { ovalityLimitMm })
    expect(found).toMatchObject({ verdict, lean })
    expect(found).not.toHaveProperty('probabilityAbove')
  })

  it('is set against the rule of the spec only, which stands first', () => {
    const finding = findingOf(
      measuredBore(table, {
        ...exact,
        spec: {
          taperRule: 'level-means',
          taperLimitMm: 0.02,
          ovalityRule: 'pooled',
          ovalityLimitMm: 0.02,
          ovalityAxesDegrees: { x: 0, y: 90 },
        },
      }),
    )
    expect(finding.taper.map((s) => 'limitMm' in s)).toEqual([true, false, false, false, false])
    expect(first(finding.taper)).toMatchObject({ rule: 'level-means', verdict: 'above' })
    expect(finding.ovality.map((s) => s.rule)).toEqual([
      'pooled',
      'largest-less-smallest-at-a-level',
      'across-less-along-at-a-level',
    ])
    expect(first(finding.ovality)).toMatchObject({ verdict: 'above' })
  })

  it('judges a taper by its size, either way round, and a pooled out-of-round by its sign', () => {
    const turned = { ...table, rows: table.rows.toReversed() }
    for (const taperRule of [
      'between-levels-of-an-axis',
      'top-less-bottom-of-an-axis',
      'largest-top-less-largest-bottom',
      'level-means',
    ] as const) {
      expect(shape(taperRule, { taperRule, taperLimitMm: 0.03 }, turned).verdict, taperRule).toBe('above')
      expect(shape(taperRule, { taperRule, taperLimitMm: 0.06 }, turned).verdict, taperRule).toBe('inside')
    }
    const pooled = {
      ovalityRule: 'pooled',
      ovalityLimitMm: 0.005,
      ovalityAxesDegrees: { x: 90, y: 0 },
    } as const
    expect(
      shape('pooled', pooled, {
        ...table,
        rows: [
          [80.02, 80.01],
          [80.02, 80.01],
          [80.02, 80.01],
        ],
      }).verdict,
    ).toBe('inside')
  })

  it('is kept by a largest less another largest only beyond the whole of its interval', () => {
    const taperRule = 'largest-top-less-largest-bottom'
    const wide = studentisedRangeQuantile(0.95, 4, infinite) / 1000
    expect(shape(taperRule, { taperRule, taperLimitMm: 0.05 + wide - 1e-6 }).verdict).toBe('too-close')
    expect(shape(taperRule, { taperRule, taperLimitMm: 0.05 + wide + 1e-6 }).verdict).toBe('inside')
  })

  it('judges level means with the probability of a plain difference', () => {
    const found = shape('level-means', { taperRule: 'level-means', taperLimitMm: 0.0405 })
    expect(found).toMatchObject({ interval: 'linear', verdict: 'too-close' })
    expect(found.probabilityAbove).toBeCloseTo(0.5, 6)
    expect(um(found.highMm - found.valueMm)).toBeCloseTo(1.96, 2)
  })
})

describe('what a rule needs', () => {
  const why = (rule: OvalityRule | TaperRule, given: ReadingTable, spec: Spec = {}) => {
    const finding = findingOf(measuredBore(given, { ...exact, spec }))
    const found = [...finding.ovality, ...finding.taper].find((s) => s.rule === rule)
    return found?.known ? 'known' : found?.why
  }
  const three = {
    levelsMm: [10, 20],
    axesDegrees: [0, 60, 120],
    rows: [
      [80, 80, 80],
      [80, 80, 80],
    ],
  }

  it('for across less along are two axes, or their names', () => {
    expect(why('across-less-along-at-a-level', table)).toBe('known')
    expect(why('across-less-along-at-a-level', three)).toBe('axes-not-named')
    expect(why('across-less-along-at-a-level', three, { ovalityAxesDegrees: { x: 0, y: 60 } })).toBe('known')
    expect(why('across-less-along-at-a-level', three, { ovalityAxesDegrees: { x: 0, y: 90 } })).toBe(
      'named-axis-not-measured',
    )
  })

  it('for pooled are the names of X and Y, since they decide its sign', () => {
    expect(why('pooled', table)).toBe('axes-not-named')
    expect(why('pooled', table, { ovalityAxesDegrees: { x: 0, y: 90 } })).toBe('known')
    expect(why('pooled', table, { ovalityAxesDegrees: { x: 0, y: 45 } })).toBe('named-axis-not-measured')
  })

  it('for taper from top to bottom is an axis that both ends have', () => {
    const ragged = {
      levelsMm: [10, 20, 30],
      axesDegrees: [0, 90],
      rows: [
        [80.01, undefined],
        [80, 80.02],
        [undefined, 80],
      ],
    }
    for (const rule of [
      'top-less-bottom-of-an-axis',
      'largest-top-less-largest-bottom',
      'largest-top-less-smallest-bottom',
      'level-means',
    ] as const) {
      expect(why(rule, ragged)).toBe('no-common-axis')
    }
    expect(why('between-levels-of-an-axis', ragged)).toBe('known')
  })

  it('counts only the axes that both ends have', () => {
    const ragged = {
      levelsMm: [10, 30],
      axesDegrees: [0, 90],
      rows: [
        [80.01, 80.5],
        [80, undefined],
      ],
    }
    for (const rule of [
      'top-less-bottom-of-an-axis',
      'largest-top-less-largest-bottom',
      'level-means',
    ] as const) {
      expect(um(shape(rule, {}, ragged).valueMm)).toBe(10)
    }
  })
})
