import { typicalDepthDoubtMm } from '../gauge/presets'
import type { Gauge } from '../measured'
import type { Footing } from '../ports/blocked'
import { axisPeriodDegrees, isInRanges } from './clear-axes'
import { type ClearBand, contactHalfMm } from './clear-bands'
import type { LevelReason, LevelTarget } from './level-targets'

/** A depth that was chosen, mm, and why. */
export interface ChosenLevel {
  readonly depthMm: number
  readonly land: boolean
  readonly reasons: readonly LevelReason[]
  readonly band: ClearBand
}

export type GaugePlanned = Footing & Pick<Gauge, 'depthDoubtMm'>

/** Depths are whole mm where that will do, else halves, else tenths. */
const roundSteps = [1, 0.5, 0.1]

/**
 * A level for each target that finds one, in order of depth. A target takes the nearest depth at which the most of
 * the axes are clear; one that an earlier level serves as well lends it its reason, and one that comes closer to
 * another level than a contact is wide finds none. `standing` levels are there already and come first.
 */
export function chooseLevels(
  targets: readonly LevelTarget[],
  standing: readonly LevelTarget[],
  bands: readonly ClearBand[],
  axesDegrees: readonly number[],
  gauge: GaugePlanned,
): ChosenLevel[] {
  const chosen: ChosenLevel[] = []
  const apartMm = 2 * contactHalfMm(gauge) + 1
  for (const target of standing) {
    const band = bandAt(bands, target.depthMm)
    if (!band || band.clear.length === 0) continue
    const twin = chosen.find(({ depthMm }) => depthMm === target.depthMm)
    if (!twin) chosen.push({ depthMm: target.depthMm, land: target.land, reasons: [target.reason], band })
  }
  for (const target of targets) {
    const served = chosen.findIndex((level) => serves(level, target, apartMm))
    const twin = chosen[served]
    if (twin) chosen[served] = { ...twin, reasons: [...twin.reasons, target.reason] }
    else {
      const level = newLevel(target, chosen, bands, axesDegrees, gauge, apartMm)
      if (level) chosen.push(level)
    }
  }
  return chosen.sort((a, b) => a.depthMm - b.depthMm)
}

/**
 * A chosen level serves a target when it lies near it and within its depths. One that stands already may lie a
 * little outside or, but for the ends of ring travel, where a few mm matter, anywhere within; and one level beside
 * a port is enough.
 */
function serves({ depthMm, land, reasons }: ChosenLevel, target: LevelTarget, apartMm: number): boolean {
  if (land !== target.land) return false
  const isWithin = depthMm >= target.fromMm && depthMm <= target.toMm
  const isNear = Math.abs(depthMm - target.depthMm) < apartMm
  const isStanding = reasons.some(({ code }) => code === 'read' || code === 'read-before')
  switch (target.reason.code) {
    case 'beside-ports':
      return isWithin
    case 'top-of-travel':
    case 'bottom-of-travel':
      return isNear && (isWithin || isStanding)
    default:
      return isStanding ? isWithin || isNear : isWithin && isNear
  }
}

function newLevel(
  target: LevelTarget,
  chosen: readonly ChosenLevel[],
  bands: readonly ClearBand[],
  axesDegrees: readonly number[],
  gauge: GaugePlanned,
  apartMm: number,
): ChosenLevel | undefined {
  const period = axisPeriodDegrees(gauge.kind)
  const candidates = bands.flatMap((band) => {
    if (band.clear.length === 0) return []
    const depthMm = depthWithin(band, target, gauge)
    if (depthMm === undefined) return []
    const isTooClose = chosen.some(
      (level) => level.land === target.land && Math.abs(level.depthMm - depthMm) < apartMm,
    )
    if (isTooClose) return []
    const clear = axesDegrees.filter((axis) => isInRanges(band.clear, axis, period)).length
    return [{ band, depthMm, clear, away: Math.abs(depthMm - target.depthMm) }]
  })
  const [best] = candidates.sort((a, b) => b.clear - a.clear || a.away - b.away)
  if (!best) return undefined
  return { depthMm: best.depthMm, land: target.land, reasons: [target.reason], band: best.band }
}

/** The roundest depth near the target within band and target, kept from the edges of the band by its doubt. */
function depthWithin(band: ClearBand, target: LevelTarget, gauge: GaugePlanned): number | undefined {
  const inset = Math.min(2 * (gauge.depthDoubtMm ?? typicalDepthDoubtMm), (band.toMm - band.fromMm) / 2.5)
  const from = Math.max(band.fromMm + inset, target.fromMm)
  const to = Math.min(band.toMm - inset, target.toMm)
  if (from > to) return undefined
  const wanted = Math.min(Math.max(target.depthMm, from), to)
  for (const step of roundSteps) {
    const at = Math.round(wanted / step)
    const depths = [at - 1, at, at + 1]
      .map((count) => Number((count * step).toFixed(1)))
      .filter((depthMm) => depthMm >= from && depthMm <= to)
      .sort((a, b) => Math.abs(a - wanted) - Math.abs(b - wanted))
    if (depths[0] !== undefined) return depths[0]
  }
  return Number(wanted.toFixed(3)) >= from && Number(wanted.toFixed(3)) <= to
    ? Number(wanted.toFixed(3))
    : undefined
}

function bandAt(bands: readonly ClearBand[], depthMm: number): ClearBand | undefined {
  return bands.find(({ fromMm, toMm }) => depthMm > fromMm && depthMm < toMm)
}
