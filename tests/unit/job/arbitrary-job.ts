import fc from 'fast-check'
import { checkJob } from '../../../src/job/check-job'
import type { Job } from '../../../src/job/schema'
import { sampleJob } from './sample-job'

const text = fc.string({ unit: 'grapheme', maxLength: 20 }).map((string) => string.replace(/\p{Cc}/gu, ''))
const name = text.map((string) => `n${string}`)
const maybe = <T>(values: fc.Arbitrary<T>) => fc.option(values, { nil: undefined })

/** Values as gauges are read: in µm, in steps of 2 or 5, in inches, or with every digit that a double has. */
const sizes = fc.oneof(
  fc.integer({ min: 53_900, max: 54_100 }).map((um) => um / 1000),
  fc.integer({ min: 26_950, max: 27_050 }).map((steps) => (steps * 2) / 1000),
  fc.integer({ min: 21_220, max: 21_300 }).map((tenths) => (tenths * 25.4) / 10_000),
  fc.double({ min: 53.9, max: 54.1, noNaN: true }),
)
const dials = fc.oneof(fc.integer({ min: -60, max: 60 }), fc.double({ min: -60, max: 60, noNaN: true }))

const survey = fc.record({
  levels: fc.uniqueArray(fc.integer({ min: 0, max: 870 }), { minLength: 1, maxLength: 8 }),
  axes: fc.uniqueArray(fc.integer({ min: 0, max: 179 }), { minLength: 1, maxLength: 5 }),
  isRead: fc.array(fc.boolean(), { minLength: 40, maxLength: 40 }),
  turned: fc.boolean(),
  values: fc.array(fc.array(sizes, { minLength: 1, maxLength: 4 }), { minLength: 40, maxLength: 40 }),
  dials: fc.array(fc.array(dials, { minLength: 1, maxLength: 3 }), { minLength: 40, maxLength: 40 }),
  confirmed: fc.array(maybe(fc.boolean()), { minLength: 40, maxLength: 40 }),
  hoursRun: maybe(fc.integer({ min: 0, max: 9000 })),
  name: maybe(text),
})

/** Jobs that the schema takes: a sample with other texts, figures, stations and fields left out. Invented. */
export const arbitraryJob: fc.Arbitrary<Job> = fc
  .record({
    name: text,
    note: maybe(text),
    boreName: name,
    isOfSizes: fc.boolean(),
    surveys: fc.array(survey, { minLength: 1, maxLength: 3 }),
    wearLimitMm: maybe(sizes),
    hasPistons: fc.boolean(),
    invented: maybe(fc.boolean()),
  })
  .map(({ name, note, boreName, isOfSizes, surveys, wearLimitMm, hasPistons, invented }): Job => {
    const [bore] = sampleJob.bores
    const [setUp] = sampleJob.setUps
    if (!bore || !setUp) throw new Error('The sample has a bore')
    const { pistons, spec, note: _, invented: __, ...rest } = sampleJob
    const { wearLimitMm: ___, ...limits } = spec
    const job: Job = {
      ...rest,
      name,
      ...(note === undefined ? {} : { note }),
      ...(invented === undefined ? {} : { invented }),
      ...(hasPistons && pistons ? { pistons } : {}),
      spec: { ...limits, ...(wearLimitMm === undefined ? {} : { wearLimitMm }) },
      setUps: [{ ...setUp, entry: isOfSizes ? 'size' : 'deviation' }],
      bores: [
        {
          ...bore,
          name: boreName,
          surveys: surveys.map((each, at) => surveyOf(each, at, isOfSizes)),
          scans: tied(bore),
        },
      ],
    }
    const checked = checkJob(job)
    if (!checked.ok) throw new Error(JSON.stringify(checked.problems))
    return checked.job
  })

function tied({ scans = [] }: Job['bores'][number]) {
  return scans.map((scan) => ({ ...scan, tieSurveyId: 'survey-of-0' }))
}

type Drawn = typeof survey extends fc.Arbitrary<infer Values> ? Values : never

function surveyOf(drawn: Drawn, at: number, isOfSizes: boolean): Job['bores'][number]['surveys'][number] {
  const levelsMm = drawn.levels.map((tenths) => tenths / 10)
  const places = levelsMm.flatMap((depthMm) => drawn.axes.map((axisDegrees) => ({ depthMm, axisDegrees })))
  const read = places.map((place, index) => ({ place, index })).filter(({ index }) => drawn.isRead[index])
  const readings = (drawn.turned ? read.reverse() : read).map(({ place, index }) => {
    const confirmed = drawn.confirmed[index]
    return {
      ...place,
      ...(isOfSizes ? { sizesMm: drawn.values[index] ?? [] } : { dialUm: drawn.dials[index] ?? [] }),
      ...(confirmed === undefined ? {} : { confirmed }),
    }
  })
  return {
    id: `survey-of-${at}`,
    setUpId: 'set-up',
    levelsMm,
    axesDegrees: drawn.axes,
    readings,
    ...(drawn.hoursRun === undefined ? {} : { hoursRun: drawn.hoursRun }),
    ...(drawn.name === undefined ? {} : { name: drawn.name }),
  }
}
