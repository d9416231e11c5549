import type { Blunder } from '../findings'
import { type KnownSize, knownSize, outsideBy } from './known-size'
import { type ReadSurvey, separation } from './read-survey'

/** Out of the known size by this many u is asked about, within it by this many fits. */
const isOut = 3
const fits = 2

/** What a caliper is good for, mm: enough to catch a sleeve step, no more. */
const caliperU = 0.05

interface Slip {
  readonly blunder: Blunder
  /** What the slip changes at a station of known size, mm. */
  readonly separationMm: number
  readonly outsideMm: number
}

/**
 * The one slip that would put the whole survey right: readings written with the wrong sign, the setting off
 * by a step of the micrometer's sleeve, or by a turn of the needle.
 *
 * Judged at stations of known size (a land, or a bore that never ran), else by the caliper. Asked when the
 * known size is missed by more than three u, when the slip changes it by more than five, and when without
 * the slip it is met within two; the slip that meets it best is named. A wrong sign must also leave the
 * running surface no tighter than the land, beyond three u. Own derivation.
 */
export function wholeSurveySlip(survey: ReadSurvey): Blunder[] {
  const known = knownSize(survey)
  if (known) {
    if (outsideBy(known, known.meanMm) <= isOut * known.u) return []
    const [best] = [...signTurned(survey, known), ...settingShifted(survey, known)]
      .filter((slip) => slip.separationMm > separation * known.u && slip.outsideMm <= fits * known.u)
      .sort((a, b) => a.outsideMm - b.outsideMm)
    return best ? [best.blunder] : []
  }
  return byCaliper(survey)
}

function signTurned(survey: ReadSurvey, known: KnownSize): Slip[] {
  const { zeroMm } = survey
  if (zeroMm === undefined) return []
  const turned = 2 * zeroMm - known.meanMm
  const running = survey.stations.filter((station) => !known.stations.includes(station))
  const u = Math.max(...survey.stations.map((station) => station.individualMm)) * Math.SQRT2
  if (running.some((station) => 2 * zeroMm - station.diameterMm < turned - separation * u)) return []
  const mend = { kind: 'turn-sign-over' } as const
  return [
    {
      blunder: { code: 'sign', knownMm: turned, readMm: known.meanMm, mend },
      separationMm: Math.abs(turned - known.meanMm),
      outsideMm: outsideBy(known, turned),
    },
  ]
}

function settingShifted(survey: ReadSurvey, known: KnownSize): Slip[] {
  return shifts(survey).map(({ cause, byMm }) => ({
    blunder: {
      code: 'setting',
      cause,
      by: 'known-size',
      byMm,
      mend: { kind: 'shift-setting', byMm },
    },
    separationMm: Math.abs(byMm),
    outsideMm: outsideBy(known, known.meanMm + byMm),
  }))
}

function shifts({ sleeveStepMm, turnMm, zeroMm }: ReadSurvey) {
  const sleeve = sleeveStepMm === undefined ? [] : [sleeveStepMm, -sleeveStepMm]
  const turn = turnMm === undefined || zeroMm === undefined ? [] : [turnMm, -turnMm]
  return [
    ...sleeve.map((byMm) => ({ cause: 'sleeve' as const, byMm })),
    ...turn.map((byMm) => ({ cause: 'turn' as const, byMm })),
  ]
}

function byCaliper(survey: ReadSurvey): Blunder[] {
  const { caliperMm, stations } = survey
  if (caliperMm === undefined || stations.length === 0) return []
  const readMm = stations.reduce((sum, station) => sum + station.diameterMm, 0) / stations.length
  const off = readMm - caliperMm
  if (Math.abs(off) <= separation * caliperU) return []
  const [best] = shifts(survey)
    .filter(({ byMm }) => Math.abs(byMm) > separation * caliperU && Math.abs(off + byMm) <= isOut * caliperU)
    .sort((a, b) => Math.abs(off + a.byMm) - Math.abs(off + b.byMm))
  if (!best) return [{ code: 'caliper-disagrees', caliperMm, readMm }]
  const { cause, byMm } = best
  return [{ code: 'setting', cause, by: 'caliper', byMm, mend: { kind: 'shift-setting', byMm } }]
}

/** Whether a wrong sign and a setting off by a step of the sleeve would stand out. */
export function canSeeWholeSurveySlips(survey: ReadSurvey): boolean {
  const known = knownSize(survey)
  if (!known) return false
  const bandMm = known.toMm - known.fromMm
  const sign =
    survey.zeroMm === undefined || 2 * Math.abs(known.meanMm - survey.zeroMm) > bandMm + separation * known.u
  return sign && (survey.sleeveStepMm ?? Number.POSITIVE_INFINITY) > bandMm + separation * known.u
}
