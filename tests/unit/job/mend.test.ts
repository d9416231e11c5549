import { describe, expect, it } from 'vitest'
import { blunderKey } from '../../../src/core/blunders/blunder-key'
import { inspect } from '../../../src/core/inspect'
import type { Entry, SetUp } from '../../../src/core/measured'
import { answerBlunder, mendBlunder } from '../../../src/job/mend'
import { newJob } from '../../../src/job/new-job'
import type { Job } from '../../../src/job/schema'
import { boreOf } from '../core/measured-bore'

const levelsMm = [4, 10, 40, 80, 125]
const axesDegrees = [0, 45, 90, 135]

/** An invented iron bore, its land of 86.018 at 4 mm; the band lies clear of the setting so that a sign shows. */
const trueMm = (depth: number, axis: number) =>
  depth === 4
    ? 86.018
    : 86.02 + 0.075 * Math.exp(-(depth - 10) / 45) * (1 + 0.3 * Math.cos((2 * axis * Math.PI) / 180))

function jobOf(entry: Entry, change: Partial<SetUp> = {}): Job {
  const dial = (mm: number) => Math.round(500 * (mm - 86)) * 2
  const cell = (mm: number) => (entry === 'size' ? 86 + dial(mm) / 1000 : dial(mm))
  const rows = levelsMm.map((depth) => axesDegrees.map((axis) => [1, 2].map(() => cell(trueMm(depth, axis)))))
  const setUp: SetUp = {
    id: 'set-up',
    gaugeId: 'gauge',
    standardId: 'standard',
    entry,
    settingSizeMm: 86,
    largerIs: 'clockwise',
    zeroOpenUm: 0,
    zeroCloseUm: 0,
    boreTemperatureC: 20,
    referenceTemperatureC: 20,
    ...change,
  }
  const bore = boreOf({ levelsMm, axesDegrees, rows }, setUp, { ringTravelMm: { from: 8, to: 130 } })
  return {
    ...newJob(() => 'id'),
    spec: { newMinMm: 86.012, newMaxMm: 86.022, wearLimitMm: 86.12 },
    gauges: [{ id: 'gauge', kind: 'dial-0.01' }],
    standards: [{ id: 'standard', kind: 'micrometer', errorUm: 0 }],
    thermometers: [],
    setUps: [setUp],
    bores: [bore],
  }
}

const at = (depthMm: number, axisDegrees: number) => ({ depthMm, axisDegrees })
const diametersOf = (job: Job) =>
  Object.fromEntries(
    (inspect(job).bores[0]?.stations ?? []).map((s) => [`${s.depthMm} ${s.axisDegrees}`, s.diameterMm]),
  )
const blundersOf = (job: Job) => inspect(job).bores[0]?.blunders ?? []

/** Mends the one question there is, and gives the job after it. */
function mended(job: Job): Job {
  const [only, ...others] = blundersOf(job)
  expect(others).toEqual([])
  if (!only || !('mend' in only)) throw new Error('no question with a mend')
  return mendBlunder(job, 'bore', 'bore-survey', only.mend)
}

function withReadings(
  job: Job,
  change: (readings: Job['bores'][0]['surveys'][0]['readings']) => unknown,
): Job {
  const copy = structuredClone(job)
  const survey = copy.bores[0]?.surveys[0]
  if (!survey) throw new Error('no survey')
  change(survey.readings)
  return copy
}

describe.each(['size', 'deviation'] as const)('a survey of %ss', (entry) => {
  const clean = jobOf(entry)
  const by = entry === 'size' ? 0.001 : 1

  it('raises no question while it is clean', () => {
    expect(blundersOf(clean)).toEqual([])
  })

  it('is put right after one whole turn of the needle at one station', () => {
    const spoilt = withReadings(clean, (readings) => {
      const reading = readings.find((r) => r.depthMm === 80 && r.axisDegrees === 90)
      const values = (reading?.sizesMm ?? reading?.dialUm) as number[]
      values.forEach((value, i) => {
        values[i] = value + 1000 * by
      })
    })
    expect(blundersOf(spoilt)).toMatchObject([{ code: 'whole-turn', place: at(80, 90), turns: 1 }])
    expect(mended(spoilt)).toEqual(clean)
  })

  it('is put right after two axes were changed over at a level', () => {
    const spoilt = mendBlunder(clean, 'bore', 'bore-survey', {
      kind: 'swap-axes',
      depthMm: 40,
      axesDegrees: [0, 90],
    })
    expect(diametersOf(mended(spoilt))).toEqual(diametersOf(clean))
  })

  it('is put right after the sleeve was misread', () => {
    const spoilt = mendBlunder(clean, 'bore', 'bore-survey', { kind: 'shift-setting', byMm: 0.5 })
    expect(blundersOf(spoilt)).toMatchObject([{ code: 'setting', cause: 'sleeve', byMm: -0.5 }])
    expect(mended(spoilt)).toEqual(clean)
  })

  it('is put right after its sign was turned over', () => {
    const spoilt = mendBlunder(clean, 'bore', 'bore-survey', { kind: 'turn-sign-over' })
    expect(blundersOf(spoilt)).toMatchObject([{ code: 'sign' }])
    expect(mended(spoilt)).toEqual(clean)
  })

  it('is put right after its levels were written from the wrong end', () => {
    const spoilt = mendBlunder(clean, 'bore', 'bore-survey', { kind: 'turn-levels-over' })
    expect(mendBlunder(spoilt, 'bore', 'bore-survey', { kind: 'turn-levels-over' })).toEqual(clean)
  })

  it('asks no more once the user has said that it is right', () => {
    const spoilt = mendBlunder(clean, 'bore', 'bore-survey', { kind: 'shift-setting', byMm: 0.5 })
    const [asked] = blundersOf(spoilt)
    if (!asked) throw new Error('no question')
    expect(blundersOf(answerBlunder(spoilt, 'bore', 'bore-survey', blunderKey(asked)))).toEqual([])
  })
})

it('a turn missed on a dial that goes the other way is taken out the other way', () => {
  const clean = jobOf('deviation', { largerIs: 'anticlockwise' })
  const [first] = clean.bores[0]?.surveys[0]?.readings ?? []
  const mend = { kind: 'shift-repeats', place: at(4, 0), repeats: [0], byMm: -1 } as const
  const after = mendBlunder(clean, 'bore', 'bore-survey', mend).bores[0]?.surveys[0]?.readings[0]
  expect(after?.dialUm?.[0]).toBe((first?.dialUm?.[0] ?? 0) + 1000)
})

it('says the oversize that a bore was proposed to have, which ends the question', () => {
  const clean = jobOf('size')
  const asked = { ...clean, spec: { ...clean.spec, oversizesMm: [0.5] } }
  const codes = (job: Job) => inspect(job).bores.flatMap(({ blunders }) => blunders.map(({ code }) => code))
  expect(codes(asked)).toEqual(['oversize-open'])
  const said = mendBlunder(asked, 'bore', 'bore-survey', { kind: 'say-oversize', oversizeMm: 0 })
  expect(said.bores[0]?.oversizeMm).toBe(0)
  expect(codes(said)).toEqual([])
})
