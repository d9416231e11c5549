import { describe, expect, it } from 'vitest'
import type { SourceKind } from '../../../../src/core/findings'
import type { Entry, Gauge, Measured, Reading, SetUp, Standard, Wall } from '../../../../src/core/measured'
import { combine } from '../../../../src/core/uncertainty/combine'
import { boreOf, findingOf, first, measuredBore, type ReadingTable, without } from '../measured-bore'

/** Each way of writing readings down, at 30 °C and 27 °C, so that no sensitivity is hidden by 20 °C. */
const modes: Record<Entry, { gauge: Partial<Gauge>; setUp: Partial<SetUp>; rows: ReadingTable['rows'] }> = {
  size: { gauge: {}, setUp: {}, rows: [[[72.03, 72.031]]] },
  deviation: { gauge: {}, setUp: { zeroOpenUm: 2 }, rows: [[[30, 31]]] },
  reverse: { gauge: {}, setUp: { overContactsMm: 72.04, dialOverContactsUm: 4 }, rows: [[[-3, -2]]] },
  direct: { gauge: { kind: 'internal-micrometer-rods' }, setUp: {}, rows: [[[72.03, 72.031]]] },
}

const standard: Standard = { id: 'standard', kind: 'micrometer', errorUm: 1, expansionPerK: 11.5e-6 }
const wall: Wall = { kind: 'plated-aluminium', expansionPerK: 23e-6, expansionDoubtPerK: 1.3e-6 }

function measuredBy(entry: Entry, setUp: Partial<SetUp> = {}): Measured {
  const mode = modes[entry]
  return measuredBore(
    { levelsMm: [10], axesDegrees: [0], rows: mode.rows },
    {
      gauge: { ...mode.gauge, rockingUm: 0.9 },
      standard,
      thermometers: [{ id: 'a', doubtK: 0.8 }, { id: 'b' }],
      bore: { wall },
      setUp: {
        entry,
        settingSizeMm: 72,
        boreTemperatureC: 30,
        referenceTemperatureC: 27,
        gaugeWarmedK: 2,
        ...mode.setUp,
        ...setUp,
      },
    },
  )
}

type Change = (measured: Measured, by: number) => Measured

const onSetUp =
  (change: (setUp: SetUp, by: number) => SetUp): Change =>
  (measured, by) => ({
    ...measured,
    setUps: measured.setUps.map((setUp) => change(setUp, by)),
  })
const onStandard =
  (change: (standard: Standard, by: number) => Standard): Change =>
  (measured, by) => ({
    ...measured,
    standards: measured.standards.map((each) => change(each, by)),
  })
const onReadings =
  (change: (reading: Reading, by: number) => Reading): Change =>
  (measured, by) => ({
    ...measured,
    bores: measured.bores.map((bore) => ({
      ...bore,
      surveys: bore.surveys.map((s) => ({ ...s, readings: s.readings.map((r) => change(r, by)) })),
    })),
  })

/** Every reading of the station, or the dial at the reference, off by so many µm. */
const readings = onReadings(({ sizesMm, dialUm, ...rest }, by) => ({
  ...rest,
  ...(sizesMm ? { sizesMm: sizesMm.map((mm) => mm + by / 1000) } : {}),
  ...(dialUm ? { dialUm: dialUm.map((um) => um + by) } : {}),
}))
const error = onStandard((each, by) => ({ ...each, errorUm: (each.errorUm ?? 0) + by }))
const bothTemperatures = onSetUp((s, by) => ({
  ...s,
  referenceTemperatureC: (s.referenceTemperatureC ?? 20) + by,
  boreTemperatureC: (s.boreTemperatureC ?? 20) + by,
}))
const boreTemperature = onSetUp((s, by) => ({ ...s, boreTemperatureC: (s.boreTemperatureC ?? 20) + by }))
const referenceTemperature = onSetUp((s, by) => ({
  ...s,
  referenceTemperatureC: (s.referenceTemperatureC ?? 20) + by,
}))
const dialAtReference = onSetUp((s, by) => ({
  ...s,
  ...(s.entry === 'reverse'
    ? { dialOverContactsUm: (s.dialOverContactsUm ?? 0) + by }
    : { zeroOpenUm: (s.zeroOpenUm ?? 0) + by }),
}))
const ofWall: Change = (measured, by) => ({
  ...measured,
  bores: measured.bores.map((bore) => ({
    ...bore,
    wall: { ...wall, expansionPerK: (wall.expansionPerK ?? 0) + by },
  })),
})
const ofStandard = onStandard((each, by) => ({ ...each, expansionPerK: (each.expansionPerK ?? 0) + by }))

/** What each source of error does to the model, with its doubt and the step of the difference, in one unit. */
const sources: Partial<Record<SourceKind, { change: Change; doubt: number; step: number }>> = {
  'wall-expansion': { change: ofWall, doubt: 1.3e-6, step: 1e-7 },
  'standard-expansion': { change: ofStandard, doubt: 1e-6 / Math.sqrt(3), step: 1e-7 },
  'reference-temperature': { change: bothTemperatures, doubt: 1, step: 0.1 },
  'temperature-difference': { change: boreTemperature, doubt: 0.3, step: 0.1 },
  standard: { change: error, doubt: 1.5, step: 0.1 },
  setting: { change: error, doubt: 2.6, step: 0.1 },
  'zero-reading': { change: dialAtReference, doubt: 1.5, step: 0.1 },
  'gauge-warmth': { change: readings, doubt: 72 * 11.5e-3 * 2, step: 0.1 },
  'drift-preset': { change: readings, doubt: 1.5 / Math.sqrt(3), step: 0.1 },
  repeatability: { change: readings, doubt: 1.5 / Math.SQRT2, step: 0.1 },
  scale: { change: readings, doubt: 0.6, step: 0.1 },
  rocking: { change: readings, doubt: 0.9, step: 0.1 },
}

/** Central difference of the diameter, mm, times the doubt. */
function numerical(measured: Measured, { change, doubt, step }: NonNullable<(typeof sources)[SourceKind]>) {
  const at = (by: number) => first(findingOf(change(measured, by)).stations).diameterMm
  return (Math.abs(at(step) - at(-step)) / (2 * step)) * doubt
}

const always: readonly SourceKind[] = [
  'wall-expansion',
  'standard-expansion',
  'reference-temperature',
  'temperature-difference',
  'standard',
  'setting',
]
const ofStation: readonly SourceKind[] = ['repeatability', 'scale', 'place', 'rocking']
const applying: Record<Entry, readonly SourceKind[]> = {
  size: [...always, 'zero-reading', 'gauge-warmth', 'drift-preset', ...ofStation],
  deviation: [...always, 'zero-reading', 'gauge-warmth', 'drift-preset', ...ofStation],
  reverse: [...always, 'zero-reading', 'gauge-warmth', 'drift-preset', ...ofStation],
  direct: [...always, ...ofStation],
}
const everyMode = ['size', 'deviation', 'reverse', 'direct'] as const

describe.each(everyMode)('the budget of readings written down as %s', (entry) => {
  const measured = without(measuredBy(entry), 'zeroCloseUm')
  const { contributions } = first(findingOf(measured).stations)

  it('has the sources that apply, and no other', () => {
    expect(contributions.map((part) => part.kind).sort()).toEqual([...applying[entry]].sort())
  })

  it('holds for each source what its doubt does to the diameter, by central differences of the model', () => {
    for (const part of contributions) {
      const source = sources[part.kind]
      if (!source || part.kind === 'place') continue
      // A size holds its zero as the figure it was counted from: an error of the zero is one of the size.
      const isSizeZero = part.kind === 'zero-reading' && entry === 'size'
      const isDirect = entry === 'direct'
      const doubt = isDirect ? (directDoubts[part.kind] ?? source.doubt) : source.doubt
      const expected = numerical(measured, { ...source, doubt, ...(isSizeZero ? { change: readings } : {}) })
      // Sensitivities to lengths are taken as 1, those to temperatures at D: both to a part in a thousand here.
      expect(Math.abs(part.signedMm), part.kind).toBeGreaterThan(expected * 0.999)
      expect(Math.abs(part.signedMm), part.kind).toBeLessThan(expected * 1.001)
    }
  })

  it('grows with every doubt and falls with none', () => {
    const u = (m: Measured) => first(findingOf(m).stations).standardUncertaintyMm
    const before = u(measured)
    const doubts: [string, Measured][] = [
      ['rocking', withGauge(measured, { rockingUm: 1.8 })],
      ['scale', withGauge(measured, { scaleUm: 9 })],
      ['setting', withGauge(measured, { settingUm: 9 })],
      ['standard', onStandard((each) => ({ ...each, doubtUm: 4 }))(measured, 0)],
      ['unchecked', onStandard(({ errorUm: _, ...each }) => each)(measured, 0)],
    ]
    for (const [name, more] of doubts) expect(u(more), name).toBeGreaterThan(before)
    const warmer = onSetUp((s) => ({ ...s, gaugeWarmedK: 6 }))(measured, 0)
    if (entry === 'direct') expect(u(warmer)).toBe(before)
    else expect(u(warmer)).toBeGreaterThan(before)
  })

  it('marks what was not recorded as assumed: the micrometer unchecked, both temperatures missing', () => {
    const blind = without(
      onStandard(({ errorUm: _, ...each }) => each)(measured, 0),
      'boreTemperatureC',
      'referenceTemperatureC',
    )
    const assumed = first(findingOf(blind).stations).contributions.filter((part) => part.assumed)
    expect(assumed.map((part) => part.kind).sort()).toEqual(
      [
        'reference-temperature',
        'temperature-difference',
        'standard-error',
        ...(entry === 'direct' ? [] : ['drift-preset']),
      ].sort(),
    )
  })
})

const directDoubts: Partial<Record<SourceKind, number>> = {
  setting: 3,
  repeatability: 7 / Math.SQRT2,
  scale: 3,
}

function withGauge(measured: Measured, patch: Partial<Gauge>): Measured {
  return { ...measured, gauges: measured.gauges.map((gauge) => ({ ...gauge, ...patch })) }
}

describe('the budget with two thermometers', () => {
  it.each(everyMode)(
    'has a source for each, by central differences, in readings written down as %s',
    (entry) => {
      const measured = measuredBy(entry, { boreThermometerId: 'a', referenceThermometerId: 'b' })
      const part = (kind: SourceKind) =>
        Math.abs(
          first(findingOf(measured).stations).contributions.find((p) => p.kind === kind)?.signedMm ?? 0,
        )
      const bore = numerical(measured, { change: boreTemperature, doubt: 0.8, step: 0.1 })
      const reference = numerical(measured, { change: referenceTemperature, doubt: 1, step: 0.1 })
      expect(part('bore-thermometer') / bore).toBeCloseTo(1, 2.7)
      expect(part('reference-temperature') / reference).toBeCloseTo(1, 2.7)
    },
  )
})

describe('the budget with a closing zero', () => {
  it('has the zero read twice for deviations alone, and its measured drift instead of the typical one', () => {
    for (const entry of ['size', 'deviation', 'reverse'] as const) {
      const measured = measuredBy(entry, { zeroOpenUm: 1, zeroCloseUm: 4 })
      const { contributions } = first(findingOf(measured).stations)
      const um = (kind: SourceKind) =>
        1000 * Math.abs(contributions.find((p) => p.kind === kind)?.signedMm ?? 0)
      expect(um('zero-reading')).toBeCloseTo(entry === 'deviation' ? 1.5 / Math.SQRT2 : 1.5, 9)
      expect(um('drift-measured')).toBeCloseTo(3 / Math.sqrt(12) / Math.SQRT2, 9)
      expect(um('drift-preset')).toBe(0)
    }
  })

  it('depends on the expansion of a ring that warmed in between, by central differences', () => {
    const measured = measuredBy('deviation', { zeroCloseUm: 3, referenceTemperatureCloseC: 33 })
    const { contributions } = first(findingOf(measured).stations)
    const part = contributions.find((p) => p.kind === 'standard-expansion')?.signedMm ?? 0
    const expected = numerical(measured, { change: ofStandard, doubt: 1e-6 / Math.sqrt(3), step: 1e-7 })
    expect(part / expected).toBeCloseTo(1, 3)
    expect(part).toBeGreaterThan(1.2 * (72e-6 / Math.sqrt(3)) * 7)
  })
})

describe('a gauge that was set in a ring', () => {
  it('is measured over its contacts no better than a micrometer sets one', () => {
    const setting = (entry: Entry) => {
      const measured = withGauge(measuredBy(entry), { kind: 'dial-0.001-ring' })
      return first(findingOf(measured).stations).contributions.find((p) => p.kind === 'setting')?.signedMm
    }
    expect(setting('deviation')).toBe(0.00075)
    expect(setting('reverse')).toBe(0.0026)
  })
})

describe('two bores measured with one setting', () => {
  it.each(everyMode)(
    'have a difference whose u is that of the full covariance and holds no setting part, written down as %s',
    (entry) => {
      const own = measuredBy(entry)
      const table = { levelsMm: [10], axesDegrees: [0], rows: modes[entry].rows }
      const other = boreOf(table, first(own.setUps), { id: 'new', role: 'for-comparison', wall })
      const measured = readings({ ...own, bores: [other] }, -20)
      const both = { ...own, bores: [...own.bores, ...measured.bores] }
      const a = first(findingOf(both, 'bore').stations)
      const b = first(findingOf(both, 'new').stations)

      // cov(D_i, D_j) = Σ over shared sources of c_is·c_js·u_s², written out; u² = aᵀ V a with a = (1, −1).
      const covariance = (one: typeof a, two: typeof a) =>
        one.contributions.reduce(
          (sum, p) =>
            sum +
            two.contributions.filter((q) => q.id === p.id).reduce((s, q) => s + p.signedMm * q.signedMm, 0),
          0,
        )
      const variance = covariance(a, a) + covariance(b, b) - 2 * covariance(a, b)
      const difference = first(first(findingOf(both, 'bore').differences).stations)
      expect(difference.standardUncertaintyMm).toBeCloseTo(Math.sqrt(variance), 12)

      // What is left is each station's own, and each bore's own temperature; the setting is in neither.
      const owned = (s: typeof a) =>
        s.contributions
          .filter((p) => ['station', 'repeat', 'bore'].includes(p.scope))
          .reduce((sum, p) => sum + p.signedMm ** 2, 0)
      expect(variance).toBeCloseTo(owned(a) + owned(b), 12)
      const settingParts = a.contributions.filter(
        ({ scope, kind }) => (scope === 'set-up' && kind !== 'reference-temperature') || kind === 'standard',
      )
      expect(settingParts.length).toBeGreaterThan(1)
      for (const { id, kind } of settingParts) {
        const of = ({ contributions }: typeof a) => ({
          contributions: contributions.filter((p) => p.id === id),
        })
        const terms = [
          { factor: 1, ...of(a) },
          { factor: -1, ...of(b) },
        ]
        expect(combine(terms).standardUncertainty, kind).toBe(0)
      }
      expect(covariance(a, b)).toBeGreaterThan(0.002 ** 2)
    },
  )
})
