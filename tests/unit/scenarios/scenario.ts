import { readdirSync, readFileSync } from 'node:fs'
import { resolve } from 'node:path'
import { pathToFileURL } from 'node:url'
import type { BoreFinding, Place, StationFinding } from '../../../src/core/findings'
import { readJob } from '../../../src/job/read-job'
import type { Job } from '../../../src/job/schema'
import { findingOf } from '../../../src/job/selectors'

// From the folder the tests are run in: this file is bundled elsewhere where times are measured.
const folder = pathToFileURL(`${resolve('scenarios')}/`)

/** The names of all job files that lie among the scenarios. */
export const scenarioFiles: readonly string[] = readdirSync(folder)
  .filter((name) => name.endsWith('.json'))
  .sort()

/** A scenario as the app reads it; throws with every problem in the file. */
export function scenario(file: string): Job {
  const result = readJob(readFileSync(new URL(file, folder)))
  if (!result.ok) throw new Error(`${file}: ${JSON.stringify(result.problems, null, 2)}`)
  return result.job
}

/** What the readings of a bore prove. */
export function proven(job: Job, boreId: string): BoreFinding {
  const finding = findingOf(job, boreId)
  if (!finding) throw new Error(`${job.name} has no bore ${boreId}`)
  return finding
}

/** The finding at one place of a bore. */
export function stationAt(finding: BoreFinding, { depthMm, axisDegrees }: Place): StationFinding {
  const found = finding.stations.find((s) => s.depthMm === depthMm && s.axisDegrees === axisDegrees)
  if (!found) throw new Error(`no reading at ${depthMm} mm, ${axisDegrees}°`)
  return found
}

/** The out-of-round or the taper by the rule of the spec, in whole µm, with its verdict. */
export function judged(finding: BoreFinding, shape: 'ovality' | 'taper') {
  const [first] = finding[shape]
  if (!first?.known) throw new Error(`no ${shape} of ${finding.boreName}`)
  return { um: Math.round(first.valueMm * 1000), verdict: first.verdict, lean: first.lean }
}
