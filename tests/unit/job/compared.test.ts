import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { columnAt, deviationAt, rowAt } from '../../../src/core/surface/drawn-position'
import {
  comparedOf,
  differenceOf,
  timeLinesOf,
  usualDifference,
  usuallyCompared,
} from '../../../src/job/compared'
import { readJob } from '../../../src/job/read-job'
import type { Job } from '../../../src/job/schema'
import { comparedTitle, differenceHeading, differenceTable } from '../../../src/words/compared'

function scenario(name: string): Job {
  const read = readJob(readFileSync(new URL(`../../../scenarios/${name}.json`, import.meta.url), 'utf8'))
  if (!read.ok) throw new Error(`${name} is no job`)
  return read.job
}

const saw = scenario('A-two-stroke-single')
const block = scenario('B-four-cylinder-iron')
const liner = scenario('C-wet-liner-diesel')
const shownOf = (job: Job) => comparedOf(job).filter(({ key }) => usuallyCompared(job).includes(key))

describe('what is compared before anybody chose', () => {
  it('is the used bore beside the new one, a block in its order, a liner through its visits', () => {
    expect(shownOf(saw).map(comparedTitle)).toEqual(['Bore 1', 'New'])
    expect(shownOf(block).map(comparedTitle)).toEqual(['Bore 1', 'Bore 2', 'Bore 3', 'Bore 4'])
    expect(shownOf(liner).map(comparedTitle)).toEqual([
      'Bore 1, 0 h',
      'Bore 1, 4200 h',
      'Bore 1, 8900 h',
      'Bore 1, 13600 h',
    ])
  })

  it('is one less another only where both are the one bore, or one is there for comparison', () => {
    const nameOf = (job: Job) => {
      const pair = usualDifference(shownOf(job))
      return pair && differenceHeading(...pair)
    }
    expect(nameOf(saw)).toBe('Bore 1 less New')
    expect(nameOf(liner)).toBe('Bore 1, 13600 h less 0 h')
    expect(nameOf(block)).toBeUndefined()
  })
})

describe('a bore through its surveys', () => {
  const [line] = timeLinesOf(liner)

  it('has each where its hours put it', () => {
    expect(line?.places.map((place) => place.toFixed(4))).toEqual(['0.0000', '0.3088', '0.6544', '1.0000'])
  })

  it('has for each a wall on the same lines that passes through every reading of it', () => {
    for (const { grid, finding } of line?.points ?? []) {
      expect(grid.angles).toEqual(line?.points[0]?.grid.angles)
      expect(grid.depthsMm).toEqual(line?.points[0]?.grid.depthsMm)
      for (const { depthMm, axisDegrees, diameterMm } of finding.stations) {
        const drawn = deviationAt(grid, columnAt(grid, (axisDegrees * Math.PI) / 180), rowAt(grid, depthMm))
        expect(drawn).toBeCloseTo((diameterMm - grid.middleMm) * 1000, 3)
      }
    }
  })
})

describe('a difference as a table', () => {
  it('is what the findings say of the same bores, and empty where not both were read', () => {
    const [one, other] = comparedOf(saw)
    const found = one && other && differenceOf(saw, one, other)
    if (!found) throw new Error('no difference')
    expect(found.difference).toEqual(one.finding.differences[0])
    expect(differenceOf(saw, one, other), 'worked out once').toBe(found)
    const { axes, rows } = differenceTable(found.difference)
    expect(axes).toEqual(['0°', '45°', '90°', '135°'])
    expect(rows[0]?.cells[0]).toEqual({ text: '+24 ± 3', standsOut: true })
    expect(rows.find(({ level }) => level === '35 mm')?.cells.map((cell) => cell?.text)).toEqual([
      undefined,
      undefined,
      expect.stringMatching(/^\+10 ± /),
      undefined,
    ])
  })
})
