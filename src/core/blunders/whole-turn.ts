import type { Blunder } from '../findings'
import { offsFromOthers } from './expected-from-others'
import { type ReadStation, type ReadSurvey, separation } from './read-survey'

/** At most this share of a turn may be left once the turns are taken out. */
const leftOver = 0.25

/**
 * Readings that lie off what the other stations let expect by whole turns of the needle: the hand went round
 * once more (or less) than was noticed. Asked for single repeats too.
 *
 * A turn must be at least five times the scatter of such offs; a reading is asked about when what is left
 * once the turns are taken out is under five times that scatter and under a quarter of a turn. No clean
 * reading is three quarters of a turn off. Own derivation.
 */
export function wholeTurns({ stations, turnMm }: ReadSurvey): Blunder[] {
  if (turnMm === undefined) return []
  const { offsMm, scatterMm } = offsFromOthers(stations)
  if (turnMm < separation * scatterMm) return []
  const leftMm = Math.min(leftOver * turnMm, separation * scatterMm)
  return stations.flatMap((station, index) => {
    const off = offsMm[index]
    return off === undefined ? [] : turnsOf(station, off, turnMm, leftMm)
  })
}

/** A question for each number of turns that repeats of the station are off by. */
function turnsOf(station: ReadStation, offMm: number, turnMm: number, leftMm: number): Blunder[] {
  const { depthMm, axisDegrees, sizesMm } = station
  const place = { depthMm, axisDegrees }
  const mean = sizesMm.reduce((sum, size) => sum + size, 0) / sizesMm.length
  const offBy = new Map<number, number[]>()
  sizesMm.forEach((size, index) => {
    const off = offMm + size - mean
    const turns = Math.round(off / turnMm)
    if (turns !== 0 && Math.abs(off - turns * turnMm) <= leftMm) {
      offBy.set(turns, [...(offBy.get(turns) ?? []), index])
    }
  })
  return [...offBy].map(([turns, repeats]) => ({
    code: 'whole-turn',
    place,
    turns,
    mend: { kind: 'shift-repeats', place, repeats, byMm: -turns * turnMm },
  }))
}

/** Whether a reading that is off by a turn would stand out at every station. */
export function canSeeWholeTurns({ stations, turnMm }: ReadSurvey): boolean {
  if (turnMm === undefined) return false
  const { offsMm, scatterMm } = offsFromOthers(stations)
  return turnMm >= separation * scatterMm && offsMm.every((off) => off !== undefined)
}
