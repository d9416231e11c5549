import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { inspect } from '../../src/core/inspect'
import { fitScan } from '../../src/core/scan/fit-scan'
import { scanForm } from '../../src/core/scan/scan-form'
import { gridOf } from '../../src/core/surface/grid-of'
import { wallOf } from '../../src/core/surface/wall'
import { readJob } from '../../src/job/read-job'
import type { Job } from '../../src/job/schema'
import { knownScan, probe } from '../proof/known-scans'
import { seededRandom } from '../proof/seeded-random'
import { type Figure, spread } from './figures'

/** How long the readings of one small job take to become findings, and one bore to become a grid. */
export function coreTimes(root: string): Figure[] {
  const text = readFileSync(join(root, 'scenarios', 'A-two-stroke-single.json'), 'utf8')
  const read = readJob(text)
  if (!read.ok) throw new Error('the scenario could not be read')
  const { job } = read
  const bore = job.bores[0]
  const finding = inspect(job).bores[0]
  if (bore === undefined || finding === undefined) throw new Error('the scenario has no bore')
  const block = fourSurveys(root)
  const wall = wallOf(bore, finding)
  if (wall === undefined) throw new Error('the scenario has no counted reading')
  return [
    {
      name: 'job file to job',
      value: spread(
        timesOf(100, () => readJob(text)),
        'ms',
      ),
    },
    {
      name: 'job to findings',
      value: spread(
        timesOf(200, () => inspect(job)),
        'ms',
      ),
      target: '2 ms',
    },
    {
      name: 'job of four cylinders with four surveys each to findings',
      value: spread(
        timesOf(200, () => inspect(block)),
        'ms',
      ),
      target: '10 ms',
    },
    {
      name: 'wall to grid of 256 × 128',
      value: spread(
        timesOf(50, () => gridOf(wall, finding, { rows: 128, columns: 256 })),
        'ms',
      ),
    },
    ...scanTimes(),
  ]
}

/** How long a dense scan with ports and smears takes to be fitted. */
function scanTimes(): Figure[] {
  const bore = { levels: 512, angles: 360, ported: true, smeared: true }
  const { scan } = knownScan(bore, seededRandom(5))
  const fit = fitScan(scan, probe)
  return [
    {
      name: 'scan of 512 levels × 360 angles to axis and smooth form',
      value: spread(
        timesOf(5, () => fitScan(scan, probe)),
        'ms',
      ),
      target: 'with the next well under 1 s',
    },
    {
      name: 'the same to circles, cylinders, harmonics and ovals',
      value: spread(
        timesOf(5, () => scanForm(scan, fit, { ...probe, cutOffUndulations: 50 })),
        'ms',
      ),
    },
  ]
}

/** A block of four whose bores were measured four times. */
function fourSurveys(root: string): Job {
  const read = readJob(readFileSync(join(root, 'scenarios', 'B-four-cylinder-iron.json'), 'utf8'))
  if (!read.ok) throw new Error('the scenario could not be read')
  const bores = read.job.bores.map((bore) => ({
    ...bore,
    surveys: bore.surveys.flatMap((survey) =>
      [1, 2, 3, 4].map((visit) => ({ ...survey, id: `${survey.id}-${visit}`, hoursRun: 100 * visit })),
    ),
  }))
  return { ...read.job, bores }
}

/** Durations in ms of so many calls, after a quarter as many that are not counted. */
function timesOf(count: number, call: () => unknown): number[] {
  for (let index = 0; index < count / 4; index += 1) call()
  return Array.from({ length: count }, () => {
    const started = performance.now()
    call()
    return performance.now() - started
  })
}
