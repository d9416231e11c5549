import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { blockDecisionOf } from '../../../src/core/decision/block-decision'
import { decisionFrom } from '../../../src/core/decision/decision'
import { evidenceOf } from '../../../src/core/decision/evidence'
import { surenessOf } from '../../../src/core/decision/sureness'
import { tryOut } from '../../../src/core/decision/what-if'
import { slidersOf, whatIfOf } from '../../../src/core/decision/what-if-sliders'
import { inspect } from '../../../src/core/inspect'
import {
  type Bore,
  type Measured,
  type Reading,
  type SetUp,
  type SurfaceFinding,
  type Survey,
  surfaceKinds,
} from '../../../src/core/measured'
import { readJob } from '../../../src/job/read-job'
import { blockDecisionTexts } from '../../../src/words/block-decision'
import { decisionTexts, surenessTexts } from '../../../src/words/decision'

const files = [
  'A-two-stroke-single',
  'B-four-cylinder-iron',
  'C-wet-liner-diesel',
  'D1-compressor',
  'D2-hydraulic-tube',
  'E-scuff-scan-360',
  'E-scuff-scan-72',
]
const jobs = new Map<string, Measured>(
  files.map((file) => {
    const read = readJob(readFileSync(`scenarios/${file}.json`))
    if (!read.ok) throw new Error(file)
    return [file, read.job]
  }),
)

const changes = fc.record({
  file: fc.constantFrom(...files),
  shiftMm: fc.integer({ min: -60, max: 120 }).map((um) => um / 1000),
  once: fc.boolean(),
  axes: fc.constantFrom(1, 2, 4),
  withLimits: fc.boolean(),
  withWall: fc.boolean(),
  withPistons: fc.boolean(),
  withHours: fc.boolean(),
  withZero: fc.boolean(),
  kind: fc.option(fc.constantFrom(...surfaceKinds), { nil: undefined }),
  catchesNail: fc.option(fc.boolean(), { nil: undefined }),
})
type Change = typeof changes extends fc.Arbitrary<infer Value> ? Value : never

function changed(change: Change): Measured {
  const measured = jobs.get(change.file)
  if (!measured) throw new Error(change.file)
  const { pistons, spec, ...rest } = measured
  const { wearLimitMm: _, newMinMm: __, newMaxMm: ___, grades: ____, ...shapes } = spec
  return {
    ...rest,
    spec: change.withLimits ? spec : shapes,
    ...(pistons && change.withPistons ? { pistons } : {}),
    setUps: measured.setUps.map((setUp) => zeroed(setUp, change)),
    bores: measured.bores.map((bore) => boreOf(bore, change)),
  }
}

function zeroed({ zeroCloseUm, ...setUp }: SetUp, { withZero }: Change): SetUp {
  return zeroCloseUm === undefined || !withZero ? setUp : { ...setUp, zeroCloseUm }
}

function boreOf({ wall, ...bore }: Bore, change: Change): Bore {
  return {
    ...bore,
    ...(wall && change.withWall ? { wall } : {}),
    surveys: bore.surveys.map((survey) => surveyOf(survey, change)),
  }
}

function surveyOf({ hoursRun, ...survey }: Survey, change: Change): Survey {
  const { kind, catchesNail } = change
  const finding: readonly SurfaceFinding[] =
    kind === undefined
      ? []
      : [
          {
            id: 'seen',
            kind,
            shape: 'patch',
            fromDepthMm: 20,
            toDepthMm: 40,
            fromDegrees: 350,
            toDegrees: 10,
            ...(catchesNail === undefined ? {} : { catchesNail }),
          },
        ]
  const axes = survey.axesDegrees.slice(0, change.axes)
  return {
    ...survey,
    ...(hoursRun === undefined || !change.withHours ? {} : { hoursRun }),
    axesDegrees: axes,
    surfaceFindings: finding,
    readings: survey.readings
      .filter(({ axisDegrees }) => axes.includes(axisDegrees))
      .map((reading) => readingOf(reading, change)),
  }
}

function readingOf(reading: Reading, { shiftMm, once }: Change): Reading {
  const sizes = (reading.sizesMm ?? []).map((mm) => mm + shiftMm)
  return { ...reading, sizesMm: once ? sizes.slice(0, 1) : sizes }
}

describe('the decision about any job', () => {
  it('is made and worded whatever is left out or moved, whole sentences without a figure that is none (seed 811)', () => {
    const outcomes = new Set<string>()
    fc.assert(
      fc.property(changes, (change) => {
        const measured = changed(change)
        const findings = inspect(measured)
        for (const finding of findings.bores) {
          const evidence = evidenceOf(measured, findings, finding)
          const decision = decisionFrom(evidence)
          if (decision.known) outcomes.add(decision.outcome)
          const steps = surenessOf(evidence, 20, 1)
          let step = steps.next()
          while (!step.done) step = steps.next()
          const [slider] = slidersOf(evidence)
          const tried = slider && tryOut(evidence, whatIfOf(slider, slider.to))
          const block = blockDecisionOf(measured, findings)
          for (const text of [
            ...textsOf(decisionTexts({ evidence, decision })),
            ...surenessTexts(decision, step.value),
            ...textsOf(tried && decisionTexts(tried)),
            ...(block ? blockDecisionTexts(measured, block) : []),
          ]) {
            expect(text).toMatch(/^[A-Z].*[.:]$/)
            expect(text).not.toMatch(/NaN|undefined|Infinity|null| {2}| [.,;]/)
          }
          if (step.value) expect(step.value.same).toBeLessThanOrEqual(1)
        }
      }),
      { seed: 811, numRuns: process.env.PROOF === '1' ? 2000 : 60 },
    )
    expect(outcomes.size).toBeGreaterThanOrEqual(6)
  })
})

function textsOf(texts: ReturnType<typeof decisionTexts>): string[] {
  if (!texts) return []
  const { headline, beneath, how, reasons, changes: told, hints, cautions } = texts
  return [headline, ...beneath, ...how, ...reasons.map(({ text }) => text), ...told, ...hints, ...cautions]
}
