import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { entriesOf } from '../../../src/core/diameter/entry'
import { type Entry, gaugeKinds } from '../../../src/core/measured'
import { checkJob } from '../../../src/job/check-job'
import { setRepeats } from '../../../src/job/commands'
import { changeGaugeKind, chooseStandardKind } from '../../../src/job/instrument-kinds'
import {
  addGauge,
  addSetUp,
  addStandard,
  addThermometer,
  chooseGauge,
  chooseSetUp,
  chooseStandard,
  removeInstrument,
  removeSetUp,
  setUpsUsing,
  surveysUsing,
} from '../../../src/job/instrument-list'
import type { Job } from '../../../src/job/schema'
import { findingsOf } from '../../../src/job/selectors'
import { changeEntry, setGauge, setSetUp, setStandard } from '../../../src/job/set-up-commands'
import { runCount } from '../../proof/run-count'
import { countingIds, sampleJob } from './sample-job'

function diameters(job: Job): number[] {
  return findingsOf(job).bores.flatMap((bore) => bore.stations.map((s) => s.diameterMm))
}
const entryIn = (job: Job) => job.setUps[0]?.entry
const readingsIn = (job: Job) => job.bores[0]?.surveys[0]?.readings

function expectValid(job: Job) {
  const checked = checkJob(job)
  expect(checked.ok ? [] : checked.problems).toEqual([])
}

describe('changing how readings are written down', () => {
  it('leaves every diameter as it was, from any way to any other and on, at any temperature (seed 44)', () => {
    const ways = ['size', 'deviation', 'reverse'] as const
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom(...ways), { minLength: 1, maxLength: 6 }),
        fc.record({
          largerIs: fc.constantFrom('clockwise' as const, 'anticlockwise' as const),
          zeroOpenUm: fc.integer({ min: -9, max: 9 }),
          zeroCloseUm: fc.option(fc.integer({ min: -9, max: 9 }), { nil: undefined }),
          settingSizeMm: fc.integer({ min: 53000, max: 55000 }).map((um) => um / 1000),
          boreTemperatureC: fc.integer({ min: 5, max: 40 }),
          referenceTemperatureC: fc.integer({ min: 5, max: 40 }),
          referenceTemperatureCloseC: fc.option(fc.integer({ min: 5, max: 40 }), { nil: undefined }),
        }),
        fc.integer({ min: -500, max: 500 }),
        (entries, setUp, offUm) => {
          const start = setSetUp(sampleJob, 'set-up', setUp)
          const truth = diameters(start)
          const ids = countingIds()
          let job: Job = start
          for (const entry of entries) {
            job = changeEntry(job, 'set-up', entry, ids)
            expectValid(job)
            expect(entryIn(job)).toBe(entry)
            // Each step rounds to 0.001 µm; so does what is taken as measured over the contacts.
            for (const [i, mm] of diameters(job).entries()) expect(mm).toBeCloseTo(truth[i] ?? 0, 5)
          }
          // What was measured over the contacts is put right: going on keeps the diameters that gives.
          const reversed = changeEntry(job, 'set-up', 'reverse', ids)
          const { overContactsMm = 0 } = reversed.setUps[0] ?? {}
          const mended = setSetUp(reversed, 'set-up', { overContactsMm: overContactsMm + offUm / 1000 })
          const after = diameters(changeEntry(mended, 'set-up', 'deviation', ids))
          for (const [i, mm] of diameters(mended).entries()) expect(after[i]).toBeCloseTo(mm, 5)
        },
      ),
      { seed: 44, numRuns: runCount({ quick: 100, full: 5000 }) },
    )
  })

  it('keeps sizes as they were written where they become readings of an internal instrument', () => {
    const direct = changeGaugeKind(sampleJob, 'gauge', 'telescoping', countingIds())
    expect(entryIn(direct)).toBe('direct')
    expect(readingsIn(direct)).toEqual(readingsIn(sampleJob))
    expectValid(direct)
    const back = changeGaugeKind(direct, 'gauge', 'dial-0.01', countingIds())
    expect(entryIn(back)).toBe('size')
    expect(readingsIn(back)).toEqual(readingsIn(sampleJob))
  })

  it('begins the reverse method with nothing over the contacts while nothing is read', () => {
    const places = [
      [8, 0],
      [8, 90],
      [35, 90],
    ] as const
    const empty = places.reduce(
      (job, [depthMm, axisDegrees]) => setRepeats(job, 'bore', 'survey', { depthMm, axisDegrees }, []),
      sampleJob,
    )
    expect(changeEntry(empty, 'set-up', 'reverse', countingIds()).setUps[0]).not.toHaveProperty(
      'overContactsMm',
    )
    expect(changeEntry(sampleJob, 'set-up', 'reverse', countingIds()).setUps[0]).toMatchObject({
      overContactsMm: 54,
      dialOverContactsUm: 0.5,
    })
  })

  it('takes the micrometer of the job for the reverse method where a ring was used, or a new one', () => {
    const ring = setStandard(sampleJob, 'micrometer', { kind: 'ring' })
    const alone = changeEntry(ring, 'set-up', 'reverse', countingIds())
    expect(alone.standards.map(({ kind }) => kind)).toEqual(['ring', 'micrometer'])
    expect(alone.setUps[0]?.standardId).toBe('id-1')
    const listed = addStandard(ring, 'micrometer', () => 'other')
    expect(changeEntry(listed, 'set-up', 'reverse', countingIds()).setUps[0]?.standardId).toBe('other')
    expectValid(alone)
  })

  it('keeps dial readings that have no size yet when the gauge was set to a size after all', () => {
    const { overContactsMm: _, ...open } =
      changeEntry(sampleJob, 'set-up', 'reverse', countingIds()).setUps[0] ?? {}
    const job = { ...changeEntry(sampleJob, 'set-up', 'reverse', countingIds()) }
    const unmeasured: Job = { ...job, setUps: [{ ...job.setUps[0], ...open } as Job['setUps'][number]] }
    const deviation = changeEntry(unmeasured, 'set-up', 'deviation', countingIds())
    expect(readingsIn(deviation)).toEqual(readingsIn(unmeasured))
  })

  it('follows the kind of the gauge wherever that does not allow the way there is', () => {
    for (const before of ['size', 'deviation', 'reverse'] as const) {
      const job = changeEntry(sampleJob, 'set-up', before, countingIds())
      for (const kind of gaugeKinds) {
        const changed = changeGaugeKind(job, 'gauge', kind, countingIds())
        const allowed: readonly Entry[] = entriesOf(kind)
        expect(allowed, `${before} ${kind}`).toContain(entryIn(changed))
        if (allowed.includes(before)) expect(entryIn(changed)).toBe(before)
        expectValid(changed)
      }
    }
  })
})

describe('the lists of instruments and set-ups', () => {
  it('grow by what is added, and shrink by what nothing uses', () => {
    const ids = countingIds()
    const more = addThermometer(addStandard(addGauge(sampleJob, 'air-plug', ids), 'ring', ids), ids)
    expect(more.gauges.at(-1)).toEqual({ id: 'id-1', kind: 'air-plug' })
    expect(more.standards.at(-1)).toEqual({ id: 'id-2', kind: 'ring' })
    expect(more.thermometers.at(-1)).toEqual({ id: 'id-3' })
    expectValid(more)
    const fewer = removeInstrument(
      removeInstrument(removeInstrument(more, 'gauges', 'id-1'), 'standards', 'id-2'),
      'thermometers',
      'id-3',
    )
    expect(fewer).toEqual(sampleJob)
  })

  it('keep what is used: by which set-ups and surveys is told', () => {
    expect(setUpsUsing(sampleJob, 'gauges', 'gauge').map(({ id }) => id)).toEqual(['set-up'])
    expect(setUpsUsing(sampleJob, 'thermometers', 'thermometer')).toHaveLength(1)
    expect(surveysUsing(sampleJob, 'set-up').map(({ bore, survey }) => [bore.name, survey.id])).toEqual([
      ['1', 'survey'],
    ])
    for (const [list, id] of [
      ['gauges', 'gauge'],
      ['standards', 'micrometer'],
      ['thermometers', 'thermometer'],
    ] as const) {
      expect(() => removeInstrument(sampleJob, list, id)).toThrow('"set-up" uses')
      expect(() => removeInstrument(sampleJob, list, 'nothing')).toThrow('nothing')
    }
    expect(() => removeSetUp(sampleJob, 'set-up')).toThrow('"survey" uses')
    expect(() => removeSetUp(sampleJob, 'nothing')).toThrow('nothing')
  })

  it('give another setting the same instruments and direction, and nothing that was read at the first', () => {
    const job = addSetUp(sampleJob, 'set-up', countingIds())
    expect(job.setUps.at(-1)).toEqual({
      id: 'id-1',
      gaugeId: 'gauge',
      standardId: 'micrometer',
      entry: 'size',
      settingSizeMm: 54,
      largerIs: 'anticlockwise',
      boreThermometerId: 'thermometer',
      referenceThermometerId: 'thermometer',
    })
    expectValid(job)
    expect(removeSetUp(job, 'id-1')).toEqual(sampleJob)
  })

  it('name what a set-up uses; a gauge that is read otherwise changes how readings are written down', () => {
    const more = addStandard(
      addGauge(sampleJob, 'telescoping', () => 'g2'),
      'ring',
      () => 'r2',
    )
    const telescoping = chooseGauge(more, 'set-up', 'g2', countingIds())
    expect(telescoping.setUps[0]).toMatchObject({ gaugeId: 'g2', entry: 'direct' })
    expectValid(telescoping)
    expect(chooseGauge(sampleJob, 'set-up', 'gauge', countingIds())).toBe(sampleJob)
    expect(chooseStandard(more, 'set-up', 'r2').setUps[0]?.standardId).toBe('r2')
    expect(chooseStandard(sampleJob, 'set-up', 'micrometer')).toBe(sampleJob)
    expect(() => chooseGauge(sampleJob, 'set-up', 'none', countingIds())).toThrow('none')
    expect(() => chooseStandard(sampleJob, 'set-up', 'none')).toThrow('none')
  })
})

describe('choosing what a gauge was set by', () => {
  it('never gives a ring what a micrometer read on its own standard, and finds the micrometer again', () => {
    const ring = chooseStandardKind(sampleJob, 'set-up', 'ring', countingIds())
    expect(ring.standards).toEqual([...sampleJob.standards, { id: 'id-1', kind: 'ring' }])
    expect(ring.setUps[0]?.standardId).toBe('id-1')
    expectValid(ring)
    const back = chooseStandardKind(ring, 'set-up', 'micrometer', countingIds())
    expect(back.setUps[0]?.standardId).toBe('micrometer')
    expect(chooseStandardKind(back, 'set-up', 'micrometer', countingIds())).toBe(back)
  })

  it('follows the kind of a gauge that says what it is set by, and takes that kind along', () => {
    const inRing = changeGaugeKind(sampleJob, 'gauge', 'dial-0.001-ring', countingIds())
    expect(inRing.standards.find(({ id }) => id === inRing.setUps[0]?.standardId)?.kind).toBe('ring')
    expectValid(inRing)
    const byMicrometer = chooseStandardKind(inRing, 'set-up', 'micrometer', countingIds())
    expect(byMicrometer.gauges[0]?.kind).toBe('dial-0.001-micrometer')
    expect(byMicrometer.setUps[0]?.standardId).toBe('micrometer')
    const plain = changeGaugeKind(inRing, 'gauge', 'dial-0.01', countingIds())
    expect(plain.setUps[0]?.standardId).toBe(inRing.setUps[0]?.standardId)
  })

  it('leaves a gauge alone that another setting uses too', () => {
    const two = addSetUp(sampleJob, 'set-up', () => 'second')
    const ring = chooseStandardKind(two, 'second', 'ring', countingIds())
    expect(ring.gauges[0]?.kind).toBe('dial-0.001-micrometer')
    expect(ring.setUps.map(({ standardId }) => standardId)).toEqual(['micrometer', 'id-1'])
  })

  it('keeps the micrometer of the reverse method, whatever the kind of the gauge', () => {
    const reverse = changeEntry(sampleJob, 'set-up', 'reverse', countingIds())
    const changed = changeGaugeKind(reverse, 'gauge', 'dial-0.001-ring', countingIds())
    expect(changed.setUps[0]).toMatchObject({ entry: 'reverse', standardId: 'micrometer' })
    expectValid(changed)
  })

  it('turns one of which nothing is recorded into the other kind', () => {
    const blank: Job = { ...sampleJob, standards: [{ id: 'micrometer', kind: 'micrometer' }] }
    expect(chooseStandardKind(blank, 'set-up', 'ring', countingIds()).standards).toEqual([
      { id: 'micrometer', kind: 'ring' },
    ])
  })
})

describe('naming the set-up of a survey', () => {
  const second = setSetUp(
    addSetUp(sampleJob, 'set-up', () => 'second'),
    'second',
    { settingSizeMm: 54.02 },
  )

  it('keeps what was written down, so that another setting gives other diameters to dial readings', () => {
    const dials = changeEntry(
      changeEntry(second, 'second', 'deviation', countingIds()),
      'set-up',
      'deviation',
      countingIds(),
    )
    const moved = chooseSetUp(dials, 'bore', 'survey', 'second')
    expect(readingsIn(moved)).toEqual(readingsIn(dials))
    expectValid(moved)
    expect(moved.bores[0]?.surveys[0]?.setUpId).toBe('second')
    // 20 µm from the setting, 0.5 µm from the zero, the temperatures not recorded at the second.
    expect(diameters(moved)[0]).toBeGreaterThan((diameters(dials)[0] ?? 0) + 0.018)
  })

  it('rewrites sizes as dial readings where the other set-up has those, with the same sizes', () => {
    const dial = changeEntry(second, 'second', 'deviation', countingIds())
    const moved = chooseSetUp(dial, 'bore', 'survey', 'second')
    expectValid(moved)
    // Larger is anticlockwise: 54.033 stands 13 µm above 54.020; settings at other temperatures differ by 54·α·5 K.
    expect(readingsIn(moved)?.[0]?.dialUm?.[0]).toBeLessThan(-10)
    expect(chooseSetUp(moved, 'bore', 'survey', 'second')).toBe(moved)
    expect(() => chooseSetUp(moved, 'bore', 'survey', 'none')).toThrow('none')
  })
})

describe('changing a gauge', () => {
  it('records its marks, turn and calibration', () => {
    const job = setGauge(sampleJob, 'gauge', {
      markedIn: 'inch',
      turnValueUm: 254,
      calibratedOn: '2024-02-29',
    })
    expect(job.gauges[0]).toMatchObject({ markedIn: 'inch', turnValueUm: 254, calibratedOn: '2024-02-29' })
    expectValid(job)
    const wrong = checkJob(setGauge(sampleJob, 'gauge', { calibratedOn: '29.2.2024' }))
    expect(wrong.ok ? [] : wrong.problems).toMatchObject([{ problem: { code: 'not-a-date' } }])
  })
})
