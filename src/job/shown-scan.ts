import { roughSizeMm } from '../core/diameter/entry'
import type { StationFinding } from '../core/findings'
import { presetOf } from '../core/gauge/presets'
import type { Bore, Scan, Survey } from '../core/measured'
import type { ScanFormOptions } from '../core/scan/scan-form'
import type { Job } from './schema'
import { findingOf, middleOfBore, wallOfBore } from './selectors'

/**
 * The scan of a bore that is drawn: the one that was chosen; with none chosen the latest that the survey gives a size,
 * or, where the survey has no readings to draw, the latest. Undefined: the readings are drawn.
 */
export function shownScan(
  job: Job,
  bore: Bore,
  survey: Survey,
  chosen: string | 'readings' | undefined,
): Scan | undefined {
  const { scans = [] } = bore
  if (chosen === 'readings') return undefined
  const named = scans.find(({ id }) => id === chosen)
  if (named) return named
  const hasWall = wallOfBore(job, bore.id, survey.id) !== undefined
  return scans.findLast(({ tieSurveyId }) => !hasWall || tieSurveyId === survey.id)
}

/** Roughly the bore that a scan is of, mm: its limits or readings, else what the gauge is set to. */
export function nearDiameterOf(job: Job, bore: Bore, survey: Survey): number {
  const setUp = job.setUps.find(({ id }) => id === survey.setUpId)
  const size = middleOfBore(job, bore.id) ?? (setUp && roughSizeMm(setUp))
  if (size === undefined) throw new Error(`No set-up with the id "${survey.setUpId}"`)
  return size
}

/** What the form of a scan is worked out with: the figures of its probe, typical ones where none are known. */
export function scanFormOptions(job: Job, scan: Scan, nearDiameterMm: number): ScanFormOptions {
  const gauge = job.gauges.find(({ id }) => id === scan.gaugeId)
  const typical = presetOf('radial-probe')
  return {
    nearDiameterMm,
    repeatabilityUm: gauge?.repeatabilityUm ?? typical.repeatabilityUm,
    repeatabilityDegreesOfFreedom:
      gauge?.repeatabilityDegreesOfFreedom ?? typical.repeatabilityDegreesOfFreedom,
    scaleUm: gauge?.scaleUm ?? typical.scaleUm,
    ...(scan.cutOffUndulations === undefined ? {} : { cutOffUndulations: scan.cutOffUndulations }),
  }
}

/** The stations that give a scan its size; none where no survey does. */
export function tieStations(job: Job, bore: Bore, { tieSurveyId }: Scan): readonly StationFinding[] {
  return tieSurveyId === undefined ? [] : (findingOf(job, bore.id, tieSurveyId)?.stations ?? [])
}
