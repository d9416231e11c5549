import type { BoreFinding, Contribution, Place, StationFinding } from '../findings'
import { place } from '../form/range-finding'
import type { ClearanceRule } from '../measured'
import type { Expansion } from '../temperature/expansion'
import { stationDoubt } from '../uncertainty/station-doubt'
import type { JudgedValue } from './judged-extreme'
import type { WindowEnds } from './judged-window'
import type { PistonSize20 } from './piston-size'

/** Temperatures that a clearance is reckoned at, °C. */
export interface ClearanceTemperatures {
  readonly boreC: number
  readonly pistonC: number
}

/** The clearance at one station, or of the mean of all, mm. */
export interface Clearance extends JudgedValue {
  /** Where the bore was measured; absent for the mean. */
  readonly place?: Place
  readonly expandedMm: number
}

/** Least from the smallest diameter and most from the largest; a rule with one diameter has both ends from it. */
export const endsOf: Readonly<Record<ClearanceRule, WindowEnds>> = {
  'smallest-to-largest': { least: 'smallest', most: 'largest' },
  'largest-bore': { least: 'largest', most: 'largest' },
  'smallest-bore': { least: 'smallest', most: 'smallest' },
  'mean-bore': { least: 'smallest', most: 'largest' },
}

/** Stations that a clearance may come from: counted, and where the rings run. */
export function runningStations({ stations }: Pick<BoreFinding, 'stations'>): StationFinding[] {
  return stations.filter((s) => s.counted && !s.land)
}

/**
 * Clearances of a piston in a bore, mm on the diameter, station by station, or the one of the stations' mean:
 * C = D20·(1 + α_b·(T_b − 20)) − d20·(1 + α_p·(T_p − 20)), the temperatures being named and without doubt. Errors
 * that bore and piston share drop out by their identity (GUM, JCGM 100:2008, 5.2.2): so do a micrometer's own
 * errors where it set the gauge and measured the piston. Own derivation from the linear law of expansion.
 */
export function clearancesOf(
  stations: readonly StationFinding[],
  wall: Expansion,
  piston: PistonSize20,
  rule: ClearanceRule,
  at: ClearanceTemperatures,
): Clearance[] {
  const boreGrowth = wall.perK * (at.boreC - 20)
  const pistonGrowth = piston.expansion.perK * (at.pistonC - 20)
  const pistonMm = piston.sizeMm * (1 + pistonGrowth)
  const ofPiston = [
    ...scaled(piston.contributions, -(1 + pistonGrowth)),
    ...ofGrowth(
      piston.contributions,
      'piston-expansion',
      -piston.sizeMm * (at.pistonC - 20),
      piston.expansion,
    ),
  ]
  const ofBore = (s: StationFinding, share: number) => [
    ...scaled(s.contributions, share * (1 + boreGrowth)),
    ...ofGrowth(s.contributions, 'wall-expansion', share * s.diameterMm * (at.boreC - 20), wall),
  ]
  if (rule === 'mean-bore') {
    const share = 1 / stations.length
    const meanMm = stations.reduce((sum, s) => sum + s.diameterMm * share, 0)
    const contributions = [...stations.flatMap((s) => ofBore(s, share)), ...ofPiston]
    const valueMm = meanMm * (1 + boreGrowth) - pistonMm
    return stations.length === 0 ? [] : [{ valueMm, ...stationDoubt(contributions) }]
  }
  return stations.map((s) => ({
    valueMm: s.diameterMm * (1 + boreGrowth) - pistonMm,
    place: place(s),
    ...stationDoubt([...ofBore(s, 1), ...ofPiston]),
  }))
}

function scaled(contributions: readonly Contribution[], factor: number): Contribution[] {
  return contributions.map((part) => ({ ...part, signedMm: part.signedMm * factor }))
}

/** What bringing a length from 20 °C to another temperature adds to the doubt of its expansion. */
function ofGrowth(
  contributions: readonly Contribution[],
  kind: 'wall-expansion' | 'piston-expansion',
  perExpansion: number,
  { perK, doubtPerK, assumed }: Expansion,
): Contribution[] {
  if (perExpansion === 0) return []
  const known = contributions.find((part) => part.kind === kind)
  return [
    {
      kind,
      id: known?.id ?? `${kind}:${perK}`,
      scope: 'job',
      signedMm: perExpansion * doubtPerK,
      input: { u: doubtPerK, unit: '1/K' },
      degreesOfFreedom: Number.POSITIVE_INFINITY,
      assumed,
    },
  ]
}
