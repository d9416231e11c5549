import type { Blunder } from '../findings'
import { offsFromOthers } from './expected-from-others'
import type { ReadStation, ReadSurvey } from './read-survey'

/** A reading must be off by this many times the scatter, and the likelier number within so many. */
const isOff = 10
const fits = 2
/** Stations with an expectation. */
const leastStations = 4

/**
 * Readings that lie far off what the other stations let expect, and fit once two neighbouring digits are
 * changed over ("86.083" for "86.038") or their deviation is ten times more or less ("3" for "30").
 *
 * Asked when the reading is off by more than ten times the scatter of such offs and the likelier number lies
 * within twice of it. The last two digits changed over move a number by a multiple of nine, so a coarse
 * gauge finds such a number for most readings that are far off: it is a question, not a finding. At least
 * four stations with an expectation. Own derivation.
 */
export function typingSlips({ stations, zeroMm }: ReadSurvey): Blunder[] {
  const { offsMm, scatterMm } = offsFromOthers(stations)
  if (offsMm.filter((off) => off !== undefined).length < leastStations) return []
  return stations.flatMap((station, index): Blunder[] => {
    const off = offsMm[index]
    return off === undefined ? [] : slipsAt(station, off, scatterMm, zeroMm)
  })
}

/**
 * Whether a slip in one reading would stand out: by repeats at every station, or because the others' offs are left
 * as they are. Own derivation: with three axes or fewer, half or more of the parallelograms of a station at the same
 * level have the wrong one for a corner, and likewise with levels; such a station is off too, and where those are half
 * of all, the scatter is that of the slip. A grid with holes is counted as a whole one.
 */
export function canSeeTypingSlips({ stations }: ReadSurvey): boolean {
  if (stations.length > 0 && stations.every(({ sizesMm }) => sizesMm.length > 1)) return true
  const levels = new Set(stations.map(({ depthMm }) => depthMm)).size
  const axes = new Set(stations.map(({ axisDegrees }) => axisDegrees)).size
  const moved = 1 + (axes <= 3 ? axes - 1 : 0) + (levels <= 3 ? levels - 1 : 0)
  return stations.length >= leastStations && 2 * moved < stations.length
}

function slipsAt(
  station: ReadStation,
  offMm: number,
  scatterMm: number,
  zeroMm: number | undefined,
): Blunder[] {
  const { depthMm, axisDegrees, sizesMm } = station
  const place = { depthMm, axisDegrees }
  return sizesMm.flatMap((readMm, repeat): Blunder[] => {
    const own = offOf(sizesMm, repeat, offMm)
    if (Math.abs(own) <= isOff * scatterMm) return []
    const [likelierMm] = otherwiseTyped(readMm, zeroMm)
      .filter((other) => Math.abs(own + other - readMm) <= fits * scatterMm)
      .sort((a, b) => Math.abs(own + a - readMm) - Math.abs(own + b - readMm))
    if (likelierMm === undefined) return []
    const mend = { kind: 'shift-repeats', place, repeats: [repeat], byMm: likelierMm - readMm } as const
    return [{ code: 'digits', place, readMm, likelierMm, mend }]
  })
}

/** How far one repeat is off, mm, where the mean of the station's repeats is off by `offMm`. */
function offOf(sizesMm: readonly number[], repeat: number, offMm: number): number {
  const mean = sizesMm.reduce((sum, size) => sum + size, 0) / sizesMm.length
  return offMm + (sizesMm[repeat] ?? mean) - mean
}

/** The number with each pair of neighbouring digits changed over, and its deviation ten times more or less. */
function otherwiseTyped(readMm: number, zeroMm: number | undefined): number[] {
  const text = readMm.toFixed(3)
  const swapped = [...text].slice(1).flatMap((digit, i) => {
    const before = text.charAt(i)
    if (before === '.' || digit === '.' || before === digit) return []
    return [Number(text.slice(0, i) + digit + before + text.slice(i + 2))]
  })
  const tenfold =
    zeroMm === undefined ? [] : [zeroMm + 10 * (readMm - zeroMm), zeroMm + (readMm - zeroMm) / 10]
  return [...swapped, ...tenfold]
}
