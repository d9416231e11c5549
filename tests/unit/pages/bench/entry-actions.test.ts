import fc from 'fast-check'
import { beforeEach, describe, expect, it } from 'vitest'
import { addBore } from '../../../../src/job/bore-commands'
import { describeJob } from '../../../../src/job/commands'
import { jobStore } from '../../../../src/job/job-store'
import { entryActions } from '../../../../src/pages/bench/entry-actions'
import { entryNow } from '../../../../src/pages/bench/entry-state'
import { afterGaugeKey, noGaugeKeys } from '../../../../src/pages/bench/gauge-keys'
import { chooseBore, session, startSession } from '../../../../src/session/session'
import { runCount } from '../../../proof/run-count'
import { countingIds, sampleJob } from '../../job/sample-job'

const at = (depthMm: number, axisDegrees: number) => ({ depthMm, axisDegrees })
const entry = entryActions({ current: null })

/** The sample's plan with nothing in the way, nothing read and a second bore; one reading to a station. */
function start(): void {
  const [bore] = sampleJob.bores
  const [survey] = bore?.surveys ?? []
  if (!bore || !survey) throw new Error('The sample has no survey')
  const { unreachable: _, ...open } = survey
  const clear = { ...bore, ports: [], belts: [], surveys: [{ ...open, readings: [] }] }
  const job = describeJob({ ...sampleJob, bores: [clear] }, { repeatsPerStation: 1 })
  jobStore.getState().openJob(addBore(job, countingIds(), 'of-this-engine'))
  startSession()
}

const readings = (bore = 0) => jobStore.getState().job.bores[bore]?.surveys[0]?.readings ?? []
const typeAndEnter = (text: string) => {
  entry.setTyped(text)
  entry.enter()
}

describe('entering readings', () => {
  beforeEach(start)

  it('goes from station to station, and on to the next bore, without waiting for the page to be drawn', () => {
    for (const text of ['54.01', '54,02', '54.03', '54.04', '54.05', '54.06', '54.07']) typeAndEnter(text)
    expect(readings().map(({ sizesMm }) => sizesMm)).toEqual([
      [54.01],
      [54.02],
      [54.03],
      [54.04],
      [54.05],
      [54.06],
    ])
    expect(readings(1)).toEqual([{ ...at(8, 0), sizesMm: [54.07] }])
    expect(jobStore.getState().past.map(({ label }) => label)).toHaveLength(7)
  })

  it('keeps what was refused with its station, also while another bore is looked at', () => {
    typeAndEnter('54.01')
    typeAndEnter('5.4')
    chooseBore('id-1')
    expect(entryNow()).toMatchObject({ typed: '' })
    expect(entryNow().refusal).toBeUndefined()
    chooseBore('bore')
    expect(entryNow()).toMatchObject({ typed: '5.4', station: at(8, 90) })
    expect(entryNow().refusal).toContain('5.4 is far from the setting')
    // A new number sets it aside; it can be put back where it was typed.
    entry.begin('54.02')
    entry.enter()
    const [aside] = session.getState().notTaken
    if (!aside) throw new Error('nothing was set aside')
    expect(aside).toMatchObject({ typed: '5.4', at: at(8, 90) })
    entry.putBack(aside)
    expect(entryNow()).toMatchObject({ typed: '5.4', station: at(8, 90) })
    expect(session.getState().notTaken).toEqual([])
  })

  it('sets nothing aside that is kept already', () => {
    typeAndEnter('54.01')
    entry.correct(at(8, 0))
    expect(entryNow()).toMatchObject({ typed: '54.010', correcting: true })
    entry.correct(at(8, 90))
    expect(session.getState().notTaken).toEqual([])
  })

  it('writes down a station out of reach and goes on, and takes that back when it is read or cleared', () => {
    entry.cannotReach()
    expect(entryNow().station).toMatchObject(at(8, 90))
    typeAndEnter('54.01')
    expect(readings()).toEqual([{ ...at(8, 90), sizesMm: [54.01] }])
    const outOfReach = () => jobStore.getState().job.bores[0]?.surveys[0]?.unreachable
    expect(outOfReach()).toEqual([at(8, 0)])
    entry.clear([at(8, 0), at(8, 90)])
    expect(outOfReach()).toBeUndefined()
    expect(readings()).toEqual([])
    jobStore.getState().undo()
    expect(outOfReach()).toEqual([at(8, 0)])
    expect(readings()).toHaveLength(1)
  })

  it('loses no number of a gauge, takes none twice and keeps their order, whatever is refused between (seed 1)', () => {
    const good = fc.integer({ min: 53950, max: 54050 }).map((um) => (um / 1000).toFixed(3))
    const bad = fc.constantFrom('5.4', '1,2,3', '+', '540')
    const burst = fc.array(fc.oneof({ weight: 3, arbitrary: good }, bad), { maxLength: 12 })
    fc.assert(
      fc.property(burst, (numbers) => {
        start()
        let keys = noGaugeKeys
        let time = 0
        for (const key of numbers.flatMap((text) => [...text, 'Enter'])) {
          time += 1
          const press = { key, time, repeat: false, withModifier: false, focus: 'other' as const }
          const [after, step] = afterGaugeKey(keys, press)
          keys = after
          if (step.does === 'begin') entry.begin(step.text)
          if (step.does === 'add') entry.setTyped(`${entryNow().typed}${step.text}`)
          if (step.does === 'take') entry.enter()
        }
        const isGood = (text: string) => text.startsWith('5') && text.length === 6
        const taken = [...readings(0), ...readings(1)].flatMap(({ sizesMm = [] }) => sizesMm)
        expect(taken).toEqual(numbers.filter(isGood).map(Number))
        const left = [...session.getState().notTaken.map(({ typed }) => typed), entryNow().typed]
        expect(left.filter((text) => text !== '')).toEqual(numbers.filter((text) => !isGood(text)))
      }),
      { seed: 1, numRuns: runCount({ quick: 60, full: 2000 }) },
    )
  })
})
