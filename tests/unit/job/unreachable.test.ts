import { describe, expect, it } from 'vitest'
import {
  moveAxis,
  moveLevel,
  removeAxis,
  removeLevel,
  setAxes,
  setLevels,
  setRepeats,
} from '../../../src/job/commands'
import { mendBlunder } from '../../../src/job/mend'
import type { Job } from '../../../src/job/schema'
import { gridOfBore, stationsPlanned } from '../../../src/job/selectors'
import { setUnreachable } from '../../../src/job/unreachable'
import { sampleJob } from './sample-job'

const at = (depthMm: number, axisDegrees: number) => ({ depthMm, axisDegrees })
const outOfReach = (job: Job) => job.bores[0]?.surveys[0]?.unreachable
const mark = (job: Job, place: { depthMm: number; axisDegrees: number }, isOut = true) =>
  setUnreachable(job, 'bore', 'survey', place, isOut)

describe('a station out of reach', () => {
  it('is written down once, and taken back without a trace', () => {
    const twice = mark(mark(sampleJob, at(62, 0)), at(62, 0))
    expect(outOfReach(twice)).toEqual([at(62, 90), at(62, 0)])
    const none = mark(mark(twice, at(62, 0), false), at(62, 90), false)
    expect(none.bores[0]?.surveys[0]).not.toHaveProperty('unreachable')
    expect(mark(none, at(62, 0), false)).toBe(none)
  })

  it('is known where the plan is walked through', () => {
    const rows = stationsPlanned(sampleJob, 'bore')
    const flags = rows.map((row) => row.map(({ isUnreachable }) => isUnreachable))
    expect(flags).toEqual([
      [false, false],
      [false, false],
      [false, true],
    ])
  })

  it('cannot be a station that is read or not planned', () => {
    expect(() => mark(sampleJob, at(8, 0))).toThrow('There is a reading at 8 mm, 0°')
    expect(() => mark(sampleJob, at(9, 0))).toThrow('no station at 9 mm, 0°')
  })

  it('is in reach as soon as it is read', () => {
    const read = setRepeats(sampleJob, 'bore', 'survey', at(62, 90), [54.02])
    expect(outOfReach(read)).toBeUndefined()
    expect(outOfReach(setRepeats(sampleJob, 'bore', 'survey', at(62, 90), []))).toEqual([at(62, 90)])
  })

  it('goes with its level and its axis, wherever these are moved, and out with them', () => {
    expect(outOfReach(moveLevel(sampleJob, 'bore', 'survey', 62, 60))).toEqual([at(60, 90)])
    expect(outOfReach(moveAxis(sampleJob, 'bore', 'survey', 90, 95))).toEqual([at(62, 95)])
    const withReadings = { withReadings: true }
    const gone = [
      setLevels(sampleJob, 'bore', 'survey', [8, 35]),
      removeLevel(sampleJob, 'bore', 'survey', 62),
      removeAxis(sampleJob, 'bore', 'survey', 90, withReadings),
      setAxes(mark(mark(sampleJob, at(62, 90), false), at(62, 0)), 'bore', 'survey', [0, 90, 45]),
    ].map(outOfReach)
    expect(gone).toEqual([undefined, undefined, undefined, [at(62, 0)]])
  })

  it('changes places with the readings of its level when a slip is put right', () => {
    const swapped = mendBlunder(sampleJob, 'bore', 'survey', {
      kind: 'swap-axes',
      depthMm: 62,
      axesDegrees: [0, 90],
    })
    expect(outOfReach(swapped)).toEqual([at(62, 0)])
  })

  it('leaves the wall beside it hatched, as wall that nobody measured', () => {
    const grid = gridOfBore(sampleJob, 'bore')
    if (!grid) throw new Error('nothing drawn')
    const row = grid.depthsMm.indexOf(62) - 1
    const cells = grid.hatched.subarray(row * grid.angles.length, (row + 1) * grid.angles.length)
    expect(cells.every((cell) => cell === 1)).toBe(true)
  })
})
