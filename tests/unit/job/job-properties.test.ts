import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { entriesOf, isOfSizes } from '../../../src/core/diameter/entry'
import {
  gaugeKinds,
  ovalityRules,
  roles,
  surfaceKinds,
  taperRules,
  wallKinds,
} from '../../../src/core/measured'
import * as boreCommands from '../../../src/job/bore-commands'
import { checkJob } from '../../../src/job/check-job'
import * as commands from '../../../src/job/commands'
import * as kinds from '../../../src/job/instrument-kinds'
import * as lists from '../../../src/job/instrument-list'
import { createJobStore, type JobState } from '../../../src/job/job-store'
import { newJob } from '../../../src/job/new-job'
import { readJob } from '../../../src/job/read-job'
import type { Job } from '../../../src/job/schema'
import * as setUps from '../../../src/job/set-up-commands'
import * as surface from '../../../src/job/surface-commands'
import { isUnreachable, setUnreachable } from '../../../src/job/unreachable'
import { writeJob } from '../../../src/job/write-job'
import { runCount } from '../../proof/run-count'
import { countingIds } from './sample-job'

/** Something a person does: a label and a change that fits whatever job it meets. */
interface Deed {
  readonly label: string
  readonly change: (job: Job, ids: () => string) => Job
  readonly merge?: string
}

const size = fc.integer({ min: 53900, max: 54100 }).map((um) => um / 1000)
const depth = fc.integer({ min: 0, max: 900 }).map((tenths) => tenths / 10)
const angle = fc.integer({ min: -360, max: 360 })
const axis = fc.integer({ min: 0, max: 179 })
const text = fc.string({ minLength: 0, maxLength: 12 }).map((string) => string.replace(/\p{C}/gu, ''))
const name = text.map((string) => `n${string}`)
const maybe = <T>(values: fc.Arbitrary<T>) => fc.option(values, { nil: undefined })
const index = fc.nat(50)

const pick = <T>(items: readonly T[], at: number): T => {
  const item = items[at % items.length]
  if (item === undefined) throw new Error('Nothing to pick from')
  return item
}
const stationOf = (job: Job, boreAt: number, levelAt: number, axisAt: number) => {
  const bore = pick(job.bores, boreAt)
  const survey = pick(bore.surveys, 0)
  if (survey.levelsMm.length === 0 || survey.axesDegrees.length === 0) return undefined
  const place = { depthMm: pick(survey.levelsMm, levelAt), axisDegrees: pick(survey.axesDegrees, axisAt) }
  return { bore, survey, place }
}
const deed = <T>(
  label: string,
  inputs: fc.Arbitrary<T>,
  change: (job: Job, input: T, ids: () => string) => Job,
) => inputs.map((input): Deed => ({ label, change: (job, ids) => change(job, input, ids) }))

const port = fc
  .record({ name, from: depth, to: depth, fromDegrees: angle, width: fc.integer({ min: 1, max: 359 }) })
  .map(({ name, from, to, fromDegrees, width }) => ({
    name,
    fromDepthMm: Math.min(from, to),
    toDepthMm: Math.max(from, to),
    fromDegrees,
    toDegrees: fromDegrees + width > 360 ? fromDegrees + width - 360 : fromDegrees + width,
  }))
const limits = fc.record({
  newMinMm: maybe(fc.constant(54)),
  newMaxMm: maybe(size.map((mm) => Math.max(mm, 54))),
  wearLimitMm: maybe(size),
  ovalityLimitMm: maybe(fc.constant(0.015)),
  ovalityRule: maybe(fc.constantFrom(...ovalityRules)),
  taperRule: maybe(fc.constantFrom(...taperRules)),
  grades: maybe(
    fc
      .uniqueArray(name, { maxLength: 3 })
      .map((names) => names.map((each) => ({ name: each, minMm: 54, maxMm: 54.01 }))),
  ),
})
const setUp = fc.record({
  settingSizeMm: size,
  largerIs: maybe(fc.constantFrom('clockwise' as const, 'anticlockwise' as const)),
  zeroOpenUm: maybe(fc.integer({ min: -5, max: 5 })),
  zeroCloseUm: maybe(fc.integer({ min: -5, max: 5 })),
  boreTemperatureC: maybe(fc.integer({ min: 0, max: 40 })),
  soakedTogether: maybe(fc.boolean()),
})

const deeds: fc.Arbitrary<Deed> = fc.oneof(
  deed('name', text, (job, value) => commands.renameJob(job, value)),
  deed('note', maybe(text), (job, note) => commands.describeJob(job, { note })),
  deed('spec', limits, (job, patch) => commands.setSpec(job, patch)),
  deed('gauge', fc.constantFrom(...gaugeKinds), (job, kind, ids) =>
    kinds.changeGaugeKind(job, pick(job.gauges, 0).id, kind, ids),
  ),
  deed('standard', maybe(fc.integer({ min: -3, max: 3 })), (job, errorUm) =>
    setUps.setStandard(job, pick(job.standards, 0).id, { errorUm }),
  ),
  deed('thermometer', maybe(fc.integer({ min: 0, max: 3 })), (job, doubtK) =>
    setUps.setThermometer(job, pick(job.thermometers, 0).id, { doubtK }),
  ),
  deed('set-up', setUp, (job, patch) => setUps.setSetUp(job, pick(job.setUps, 0).id, patch)),
  deed('standard kind', fc.tuple(index, fc.boolean()), (job, [at, isRing], ids) => {
    const setUp = pick(job.setUps, at)
    // A ring is refused where a gauge zeroed in the bore needs a micrometer over its contacts.
    const kind = isRing && setUp.entry !== 'reverse' ? 'ring' : 'micrometer'
    return kinds.chooseStandardKind(job, setUp.id, kind, ids)
  }),
  deed('another setting', index, (job, at, ids) =>
    job.setUps.length < 4 ? lists.addSetUp(job, pick(job.setUps, at).id, ids) : job,
  ),
  deed('setting of a survey', fc.tuple(index, index), (job, [at, setUpAt]) => {
    const bore = pick(job.bores, at)
    const survey = pick(bore.surveys, 0)
    const from = job.setUps.find(({ id }) => id === survey.setUpId)
    const to = pick(job.setUps, setUpAt)
    // Readings without a size yet cannot be rewritten as sizes, nor sizes as readings without one.
    const isSized = [from, to].every((s) => s?.entry !== 'reverse' || s.overContactsMm !== undefined)
    return isSized ? lists.chooseSetUp(job, bore.id, survey.id, to.id) : job
  }),
  deed('setting out', index, (job, at) => {
    const setUp = pick(job.setUps, at)
    const isUsed = lists.surveysUsing(job, setUp.id).length > 0
    return isUsed || job.setUps.length === 1 ? job : lists.removeSetUp(job, setUp.id)
  }),
  deed('entry', index, (job, at, ids) => {
    const [first] = job.setUps
    const gauge = job.gauges.find(({ id }) => id === first?.gaugeId)
    if (!first || !gauge) throw new Error('A job has a set-up with a gauge')
    return setUps.changeEntry(job, first.id, pick(entriesOf(gauge.kind), at), ids)
  }),
  deed(
    'bore',
    fc.tuple(index, name, fc.constantFrom(...roles), maybe(fc.constantFrom(...wallKinds))),
    (job, [at, name, role, kind]) =>
      commands.setBore(job, pick(job.bores, at).id, { name, role, lengthMm: 95, wall: kind && { kind } }),
  ),
  deed('grade', fc.tuple(index, index), (job, [at, gradeAt]) => {
    const names = (job.spec.grades ?? []).map((grade) => grade.name)
    return commands.setBore(job, pick(job.bores, at).id, { grade: names[gradeAt] })
  }),
  deed('add bore', fc.constant(undefined), (job, _, ids) =>
    job.bores.length < 6 ? boreCommands.addBore(job, ids, 'for-comparison') : job,
  ),
  deed('remove bore', index, (job, at) =>
    job.bores.length > 1 ? boreCommands.removeBore(job, pick(job.bores, at).id) : job,
  ),
  deed('ports', fc.tuple(index, fc.array(port, { maxLength: 3 })), (job, [at, ports], ids) =>
    commands.setPorts(
      job,
      pick(job.bores, at).id,
      ports.map((each) => ({ id: ids(), ...each })),
    ),
  ),
  deed('belts', fc.tuple(index, name), (job, [at, name], ids) =>
    commands.setBelts(job, pick(job.bores, at).id, [{ id: ids(), name, fromDepthMm: 1, toDepthMm: 2 }]),
  ),
  deed('mirror', fc.tuple(index, index), (job, [at, portAt], ids) => {
    const { id, ports } = pick(job.bores, at)
    return ports.length === 0 || ports.length > 20
      ? job
      : commands.mirrorPort(job, id, pick(ports, portAt).id, ids, ' left')
  }),
  deed('survey', fc.tuple(index, maybe(fc.integer({ min: 0, max: 999 }))), (job, [at, hoursRun]) => {
    const bore = pick(job.bores, at)
    return commands.setSurvey(job, bore.id, pick(bore.surveys, 0).id, { hoursRun })
  }),
  deed('levels', fc.tuple(index, fc.array(depth, { maxLength: 5 })), (job, [at, levels]) => {
    const bore = pick(job.bores, at)
    const survey = pick(bore.surveys, 0)
    return commands.setLevels(job, bore.id, survey.id, [
      ...survey.readings.map(({ depthMm }) => depthMm),
      ...levels,
    ])
  }),
  deed('axes', fc.tuple(index, fc.array(axis, { maxLength: 4 })), (job, [at, axes]) => {
    const bore = pick(job.bores, at)
    const survey = pick(bore.surveys, 0)
    return commands.setAxes(job, bore.id, survey.id, [
      ...survey.readings.map((reading) => reading.axisDegrees),
      ...axes,
    ])
  }),
  deed('remove level', fc.tuple(index, index), (job, [at, levelAt]) => {
    const station = stationOf(job, at, levelAt, 0)
    if (!station) return job
    const { bore, survey, place } = station
    return commands.removeLevel(job, bore.id, survey.id, place.depthMm, { withReadings: true })
  }),
  deed('move level', fc.tuple(index, index, depth), (job, [at, levelAt, to]) => {
    const station = stationOf(job, at, levelAt, 0)
    if (!station || station.survey.levelsMm.includes(to)) return job
    return commands.moveLevel(job, station.bore.id, station.survey.id, station.place.depthMm, to)
  }),
  deed('move axis', fc.tuple(index, index, axis), (job, [at, axisAt, to]) => {
    const station = stationOf(job, at, 0, axisAt)
    if (!station || station.survey.axesDegrees.includes(to)) return job
    return commands.moveAxis(job, station.bore.id, station.survey.id, station.place.axisDegrees, to)
  }),
  fc.tuple(index, index, index, fc.array(size, { maxLength: 3 }), fc.boolean()).map(
    ([at, levelAt, axisAt, sizes, merges]): Deed => ({
      label: 'reading',
      ...(merges ? { merge: `${at} ${levelAt} ${axisAt}` } : {}),
      change: (job) => {
        const station = stationOf(job, at, levelAt, axisAt)
        if (!station) return job
        const { bore, survey, place } = station
        const setUp = job.setUps.find(({ id }) => id === survey.setUpId)
        const values =
          setUp && isOfSizes(setUp.entry) ? sizes : sizes.map((mm) => Math.round((mm - 54) * 1000))
        return commands.setRepeats(job, bore.id, survey.id, place, values)
      },
    }),
  ),
  deed('out of reach', fc.tuple(index, index, index), (job, [at, levelAt, axisAt]) => {
    const station = stationOf(job, at, levelAt, axisAt)
    if (!station) return job
    const { bore, survey, place } = station
    const isRead = survey.readings.some(
      (reading) => reading.depthMm === place.depthMm && reading.axisDegrees === place.axisDegrees,
    )
    return isRead ? job : setUnreachable(job, bore.id, survey.id, place, !isUnreachable(survey, place))
  }),
  deed(
    'surface finding',
    fc.tuple(index, fc.constantFrom(...surfaceKinds), depth, depth, angle, angle),
    (job, [at, kind, from, to, fromDegrees, toDegrees], ids) => {
      const { id: boreId, surveys } = pick(job.bores, at)
      const place = { fromDepthMm: Math.min(from, to), toDepthMm: Math.max(from, to), fromDegrees, toDegrees }
      const shape = surface.shapeOfPlace(place, 54)
      const finding = { id: ids(), kind, shape, ...place }
      return surface.addSurfaceFinding(job, { boreId, surveyId: pick(surveys, 0).id }, finding)
    },
  ),
  deed(
    'surface told',
    fc.tuple(index, index, maybe(fc.boolean()), maybe(text)),
    (job, [at, of, catchesNail, note]) => {
      const { id: boreId, surveys } = pick(job.bores, at)
      const { id: surveyId, surfaceFindings = [] } = pick(surveys, 0)
      if (surfaceFindings.length === 0) return job
      const { id } = pick(surfaceFindings, of)
      return surface.setSurfaceFinding(job, { boreId, surveyId }, id, { catchesNail, note })
    },
  ),
  deed('surface out', fc.tuple(index, index), (job, [at, of]) => {
    const { id: boreId, surveys } = pick(job.bores, at)
    const { id: surveyId, surfaceFindings = [] } = pick(surveys, 0)
    if (surfaceFindings.length === 0) return job
    return surface.removeSurfaceFinding(job, { boreId, surveyId }, pick(surfaceFindings, of).id)
  }),
  deed('confirm', fc.tuple(index, index, fc.boolean()), (job, [at, readingAt, confirmed]) => {
    const bore = pick(job.bores, at)
    const survey = pick(bore.surveys, 0)
    if (survey.readings.length === 0) return job
    return commands.confirmReading(job, bore.id, survey.id, pick(survey.readings, readingAt), confirmed)
  }),
)

const sequence = fc.array(deeds, { minLength: 1, maxLength: 40 })
const numRuns = runCount({ quick: 100, full: 5000 })

/** Does each deed in turn; none may be refused. */
function perform(state: () => JobState, sequenceOfDeeds: readonly Deed[], ids: () => string): void {
  for (const { label, change, merge } of sequenceOfDeeds) {
    const performed = state().perform(label, (job) => change(job, ids), merge === undefined ? {} : { merge })
    expect(performed, label).toEqual({ ok: true })
  }
}

describe('whatever is done to a job', () => {
  it('leaves it valid by its schema after each step (seed 1)', () => {
    fc.assert(
      fc.property(sequence, (done) => {
        const ids = countingIds()
        let job = newJob(ids)
        for (const { label, change } of done) {
          const before = JSON.stringify(job)
          const next = change(job, ids)
          expect(JSON.stringify(job), `${label} leaves the old document alone`).toBe(before)
          expect(checkJob(next), label).toEqual({ ok: true, job: next })
          job = next
        }
      }),
      { seed: 1, numRuns },
    )
  })

  it('is undone to the very same document and done again to the very same document (seed 2)', () => {
    fc.assert(
      fc.property(sequence, (done) => {
        const ids = countingIds()
        const first = newJob(ids)
        const store = createJobStore(first)
        const { getState: state } = store
        perform(state, done, ids)
        const { job: last, past } = state()
        for (let n = 0; n < past.length; n += 1) state().undo()
        expect(state().job).toBe(first)
        expect(state().past).toEqual([])
        for (let n = 0; n < past.length; n += 1) state().redo()
        expect(state().job).toBe(last)
      }),
      { seed: 2, numRuns },
    )
  })

  it('is written and read back equal (seed 3)', () => {
    fc.assert(
      fc.property(sequence, (done) => {
        const ids = countingIds()
        const { getState: state } = createJobStore(newJob(ids))
        perform(state, done, ids)
        const { job } = state()
        expect(readJob(writeJob(job))).toEqual({ ok: true, job })
        expect(readJob(new TextEncoder().encode(writeJob(job)))).toEqual({ ok: true, job })
      }),
      { seed: 3, numRuns },
    )
  })
})
