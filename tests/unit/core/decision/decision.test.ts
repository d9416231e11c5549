import { describe, expect, it } from 'vitest'
import { decisionOf, type KnownDecision } from '../../../../src/core/decision/decision'
import type { Outcome } from '../../../../src/core/decision/decision-rules'
import { inspect } from '../../../../src/core/inspect'
import type { Measured, Piston, Spec, SurfaceFinding, Survey } from '../../../../src/core/measured'
import {
  type Circumstances,
  first,
  measuredBore,
  onlyScaleDoubt,
  type ReadingTable,
  without,
} from '../measured-bore'

const spec: Spec = {
  newMinMm: 80,
  newMaxMm: 80.02,
  wearLimitMm: 80.1,
  ovalityLimitMm: 0.04,
  taperLimitMm: 0.05,
}

/** A bore of 80 mm at three levels on two axes, each read three times; worn most at the top. */
function table(topMm = 80.03, axisMm = topMm): ReadingTable {
  const three = (mm: number) => [mm, mm + 0.001, mm - 0.001]
  return {
    levelsMm: [10, 50, 90],
    axesDegrees: [0, 90],
    rows: [
      [three(topMm), three(axisMm)],
      [three(80.02), three(80.018)],
      [three(80.01), three(80.009)],
    ],
  }
}

function decided(readings: ReadingTable, given: Circumstances = {}, survey: Partial<Survey> = {}) {
  return decisionFor(withSurvey(measuredBore(readings, { spec, ...given }), survey))
}

function withSurvey(measured: Measured, change: Partial<Survey>): Measured {
  return {
    ...measured,
    bores: measured.bores.map((bore) => ({
      ...bore,
      surveys: bore.surveys.map((survey) => ({ ...survey, ...change })),
    })),
  }
}

function decisionFor(measured: Measured): KnownDecision {
  const findings = inspect(measured)
  const decision = decisionOf(measured, findings, first(findings.bores))
  if (!decision.known) throw new Error(`not decided: ${decision.why}`)
  return decision
}

const mark: SurfaceFinding = {
  id: 'mark',
  kind: 'scratch',
  shape: 'streak',
  fromDepthMm: 20,
  toDepthMm: 60,
  fromDegrees: 10,
  toDegrees: 10,
  catchesNail: true,
}
const plated = { wall: { kind: 'plated-aluminium', platingUm: 70 } } as const
const codes = ({ hints }: KnownDecision) => hints.map(({ code }) => code)

describe('a decision from readings', () => {
  it.each<[what: string, outcome: Outcome, made: () => KnownDecision]>([
    ['runs a bore on that is inside all of its limits', 'run-on', () => decided(table())],
    [
      'bores iron that is over its limit to an oversize that cleans it up',
      'bore-oversize',
      () =>
        decided(table(80.15), {
          spec: { ...spec, ovalityLimitMm: 0.5, oversizesMm: [0.25, 0.5], cleanUpMm: 0.1 },
          bore: { oversizeMm: 0 },
        }),
    ],
    [
      'has iron sleeved where the largest oversize does not clean it up',
      'replace-or-sleeve',
      () =>
        decided(table(80.22), {
          spec: { ...spec, oversizesMm: [0.25], cleanUpMm: 0.1 },
          bore: { oversizeMm: 0 },
        }),
    ],
    [
      'has plating that is over its limit plated anew',
      're-plate',
      () => decided(table(80.15), { bore: plated }),
    ],
    [
      'has plating plated anew whose wear may be all on one wall',
      're-plate',
      () => decided(table(80.085), { spec: { ...spec, taperLimitMm: 0.2 }, bore: plated }),
    ],
    [
      'tries a hone on a mark in iron that is well inside',
      'hone',
      () => decided(table(), {}, { surfaceFindings: [mark] }),
    ],
    [
      'does not try it where the limit leaves no room',
      'replace-or-sleeve',
      () => decided(table(80.089), { spec: { ...spec, taperLimitMm: 0.2 } }, { surfaceFindings: [mark] }),
    ],
    [
      'lets a scratch beside the path of the rings be',
      'run-on',
      () =>
        decided(
          table(),
          { bore: { ringTravelMm: { from: 5, to: 95 } } },
          { surfaceFindings: [{ ...mark, fromDepthMm: 97, toDepthMm: 110 }] },
        ),
    ],
    [
      'cleans stuck metal off before anything else',
      'clean-and-measure-again',
      () => decided(table(80.15), { bore: plated }, { surfaceFindings: [{ ...mark, kind: 'stuck-metal' }] }),
    ],
    [
      'measures again what is too close to call',
      'measure-again-better',
      () => decided(table(80.1), { spec: { ...spec, taperLimitMm: 0.5 } }),
    ],
    [
      'measures again after a gauge whose contact was changed',
      'measure-again-better',
      () => decided(table(), {}, { contactChanged: true }),
    ],
    [
      'measures again where the zero moved by more than half of what the limits leave',
      'clean-and-measure-again',
      () => decided(table(), { setUp: { zeroCloseUm: 60 } }),
    ],
  ])('%s', (_, outcome, made) => {
    expect(made().outcome).toBe(outcome)
  })

  it('is none for a bore to compare with, an earlier survey, or nothing to judge by', () => {
    const asked = (measured: Measured, which: 'bores' | 'earlier' = 'bores') => {
      const findings = inspect(measured)
      return decisionOf(measured, findings, first(findings[which]))
    }
    const measured = measuredBore(table(), { spec })
    const [bore] = measured.bores
    const twice = bore && {
      ...measured,
      bores: [{ ...bore, surveys: [...bore.surveys, ...bore.surveys.map((s) => ({ ...s, id: 'later' }))] }],
    }
    expect(asked(measuredBore(table(), { spec, bore: { role: 'for-comparison' } }))).toMatchObject({
      why: 'for-comparison',
    })
    expect(twice && asked(twice, 'earlier')).toMatchObject({ known: false, why: 'earlier-survey' })
    expect(asked(measuredBore(table()))).toMatchObject({ known: false, why: 'no-limits' })
    expect(asked(withSurvey(measured, { readings: [] }))).toMatchObject({ known: false, why: 'no-readings' })
    const { rows, ...grid } = table()
    const some = (spared: (level: number, axis: number) => boolean) =>
      rows.map((row, level) => row.map((cell, axis) => (spared(level, axis) ? undefined : cell)))
    const oneOpen = measuredBore(
      { ...grid, rows: some((level, axis) => level === 2 && axis === 1) },
      { spec },
    )
    expect(asked(oneOpen)).toMatchObject({ known: false, why: 'some-unread' })
    // A station out of reach is no longer waited for.
    const outOfReach = { unreachable: [{ depthMm: 90, axisDegrees: 90 }] }
    expect(asked(withSurvey(oneOpen, outOfReach))).toMatchObject({ known: true, outcome: 'run-on' })
    const topAlone = { levelsMm: [10], axesDegrees: [0, 90], rows: rows.slice(0, 1) }
    expect(
      asked(measuredBore(topAlone, { spec, bore: { ringTravelMm: { from: 20, to: 95 } } })),
    ).toMatchObject({ known: false, why: 'land-alone' })
  })

  it('is made on the surface alone where nobody measured a plated bore', () => {
    const bare = { ...mark, kind: 'bare-aluminium' } as const
    expect(decided(table(), { bore: plated }, { readings: [], surfaceFindings: [bare] })).toMatchObject({
      outcome: 're-plate',
      rule: 'spoilt-plating',
    })
  })

  it('gives its reasons in the order of their weight, each with the row that holds its figures', () => {
    const { reasons } = decided(
      table(80.085),
      { bore: plated },
      { surfaceFindings: [{ ...mark, kind: 'rust' }] },
    )
    expect(reasons.map(({ fact }) => fact)).toEqual(['surface', 'size', 'ovality', 'taper', 'plating'])
    expect(reasons.map(({ row }) => row)).toEqual([undefined, 'largest', 'ovality', 'taper', 'wear:0'])
    expect(reasons.map(({ decides }) => decides)).toEqual([true, false, false, false, false])
  })
})

describe('a decision on readings that nobody repeated', () => {
  const once: ReadingTable = {
    levelsMm: [10, 50, 90],
    axesDegrees: [0, 90],
    rows: [
      [80.03, 80.029],
      [80.02, 80.018],
      [80.01, 80.009],
    ],
  }

  it('says so, wherever it runs on', () => {
    const { outcome, hints } = decided(once)
    expect(outcome).toBe('run-on')
    expect(first(hints)).toMatchObject({ code: 'read-once', all: true })
  })

  it('cuts no metal on one of them alone, and does on two', () => {
    const wide = { ...spec, ovalityLimitMm: 0.5, taperLimitMm: 0.5 }
    const high = (...row: number[]) => ({ ...once, rows: [row, ...once.rows.slice(1)] })
    expect(decided(high(80.15, 80.03), { spec: wide })).toMatchObject({
      outcome: 'measure-again-better',
      rule: 'out-on-weak-grounds',
      measure: { places: [{ depthMm: 10, axisDegrees: 0 }] },
    })
    expect(decided(high(80.15, 80.15), { spec: wide }).outcome).toBe('replace-or-sleeve')
  })

  it('cuts no metal for a taper that is gone without one reading', () => {
    const lone = { ...once, rows: [[80.09, 80.03], ...once.rows.slice(1)] }
    const wide = { ...spec, wearLimitMm: 80.3, ovalityLimitMm: 0.5 }
    expect(decided(lone, { spec: wide })).toMatchObject({ rule: 'out-on-weak-grounds' })
    const both = { ...once, rows: [[80.09, 80.09], ...once.rows.slice(1)] }
    expect(decided(both, { spec: wide }).outcome).toBe('replace-or-sleeve')
  })

  it('says so of every outcome, whatever is read once (each outcome of single readings)', () => {
    const at = (topMm: number) => ({ ...once, rows: [[topMm, topMm], ...once.rows.slice(1)] })
    const wide = { ...spec, taperLimitMm: 0.5 }
    const outcomes = [80.03, 80.1, 80.15].map((topMm) => decided(at(topMm), { spec: wide }))
    const marked = decided(once, {}, { surfaceFindings: [mark] })
    expect([...outcomes, marked].map(({ outcome }) => outcome)).toEqual([
      'run-on',
      'measure-again-better',
      'replace-or-sleeve',
      'hone',
    ])
    for (const decision of [...outcomes, marked]) expect(codes(decision)).toContain('read-once')
  })

  it('is silent where each station was read three times', () => {
    expect(codes(decided(table()))).not.toContain('read-once')
  })
})

describe('a decision on assumed values', () => {
  it('cuts no metal on them: what is missing is to be recorded', () => {
    const decision = decisionFor(without(measuredBore(table(80.15), { spec }), 'zeroCloseUm'))
    expect(decision).toMatchObject({ outcome: 'measure-again-better', rule: 'out-on-weak-grounds' })
    expect(decision.measure?.better).toContain('record-what-is-missing')
  })

  it('may run on with them, and says so', () => {
    const decision = decisionFor(without(measuredBore(table(), { spec }), 'zeroCloseUm'))
    expect(decision.outcome).toBe('run-on')
    expect(codes(decision)).toContain('provisional')
  })
})

describe('a decision about the piston', () => {
  const clearances: Spec = { ...spec, clearanceMinMm: 0.03, clearanceMaxMm: 0.06, clearanceLimitMm: 0.1 }
  const piston = (id: string, readMm: number, state: Piston['state']): Piston => ({
    id,
    state,
    readMm,
    standardId: 'standard',
    temperatureC: 20,
    micrometerTemperatureC: 20,
    heightMm: 10,
  })
  const with_ = (...pistons: Piston[]) =>
    decisionFor({ ...measuredBore(table(), { spec: clearances }), pistons })

  it('runs on with the one that ran here while it fits', () => {
    expect(with_(piston('old', 79.96, 'fitted'))).toMatchObject({
      outcome: 'run-on',
      facts: { clearance: 'inside' },
    })
  })

  it('takes the largest that fits in place of one that is too loose', () => {
    const decision = with_(
      piston('old', 79.9, 'fitted'),
      piston('small', 79.95, 'obtainable'),
      piston('large', 79.96, 'obtainable'),
      piston('too large', 80, 'obtainable'),
    )
    expect(decision).toMatchObject({ outcome: 'next-piston', nextPistonId: 'large' })
  })

  it('takes the next where the one at hand is too close to call, and says which words hold', () => {
    const decision = with_(piston('old', 79.93, 'fitted'), piston('next', 79.955, 'obtainable'))
    expect(decision).toMatchObject({
      outcome: 'next-piston',
      nextPistonId: 'next',
      facts: { clearance: 'too-close', otherPiston: 'fits' },
    })
  })

  it('measures again where it is too close to call and there is no other', () => {
    const { outcome, measure } = with_(piston('old', 79.93, 'fitted'))
    expect(outcome).toBe('measure-again-better')
    expect(measure?.better).toContain('measure-piston')
  })

  it('names none where none on the list is known to fit', () => {
    const decision = with_(piston('old', 79.9, 'fitted'))
    expect(decision.outcome).toBe('next-piston')
    expect(decision).not.toHaveProperty('nextPistonId')
    expect(codes(decision)).toContain('no-piston-listed')
  })
})

describe('what would change a decision', () => {
  it('is what an open fact may turn out to be, each with the outcome that follows', () => {
    const { changes } = decided(table(80.1), { spec: { ...spec, taperLimitMm: 0.5 } })
    expect(changes.slice(0, 2)).toEqual([
      { fact: 'size', to: 'inside', outcome: 'run-on' },
      { fact: 'size', to: 'above', outcome: 'replace-or-sleeve' },
    ])
  })
})

describe('a reading that would settle it', () => {
  it('is named with the U that it needs: a limit 2 µm off asks of a size ± 2 µm × 1.96/1.645 (normal table)', () => {
    const given = onlyScaleDoubt(2)
    const single: ReadingTable = { levelsMm: [10], axesDegrees: [0], rows: [[80]] }
    const { measure } = decided(single, { ...given, spec: { wearLimitMm: 80.002 } })
    expect(measure?.places).toEqual([{ depthMm: 10, axisDegrees: 0 }])
    expect(measure?.expandedMm).toBeCloseTo((0.002 * 1.96) / 1.645, 5)
  })

  it('is a difference where the out-of-round is open: 2 µm under its limit asks for ± 2 µm × 1.96/1.645', () => {
    const given = onlyScaleDoubt(2)
    const level: ReadingTable = { levelsMm: [10], axesDegrees: [0, 90], rows: [[80.018, 80]] }
    const { measure } = decided(level, { ...given, spec: { wearLimitMm: 81, ovalityLimitMm: 0.02 } })
    expect(measure?.shapeExpandedMm).toBeCloseTo((0.002 * 1.96) / 1.645, 5)
  })
})
