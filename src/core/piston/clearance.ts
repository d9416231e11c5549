import type { BoreFinding, Contribution, Place, StationFinding } from '../findings'
import { place } from '../form/range-finding'
import type { ClearanceRule } from '../measured'
import type { Expansion } from '../temperature/expansion'
import { combine, type Term } from '../uncertainty/combine'
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
  const boreFactor = 1 + wall.perK * (at.boreC - 20)
  const pistonFactor = 1 + piston.expansion.perK * (at.pistonC - 20)
  const pistonMm = piston.sizeMm * pistonFactor
  const ofPiston: Term[] = [
    { factor: -pistonFactor, contributions: piston.contributions },
    ...ofGrowth(
      piston.contributions,
      'piston-expansion',
      -piston.sizeMm * (at.pistonC - 20),
      piston.expansion,
    ),
  ]
  const ofBore = (s: StationFinding, share: number): Term[] => [
    { factor: share * boreFactor, contributions: s.contributions },
    ...ofGrowth(s.contributions, 'wall-expansion', share * s.diameterMm * (at.boreC - 20), wall),
  ]
  if (rule === 'mean-bore') return meanClearance(stations, boreFactor, pistonMm, ofBore, ofPiston)
  return stations.map((s): Clearance => {
    const { standardUncertainty, degreesOfFreedom } = combine([...ofBore(s, 1), ...ofPiston])
    // What a piston brings is common to all stations, so that their own part is as it was.
    const individualMm = s.individualMm * boreFactor
    return {
      valueMm: s.diameterMm * boreFactor - pistonMm,
      place: place(s),
      standardUncertaintyMm: standardUncertainty,
      degreesOfFreedom,
      commonMm: Math.sqrt(Math.max(0, standardUncertainty ** 2 - individualMm ** 2)),
      individualMm,
      individualDegreesOfFreedom: s.individualDegreesOfFreedom,
    }
  })
}

function meanClearance(
  stations: readonly StationFinding[],
  boreFactor: number,
  pistonMm: number,
  ofBore: (s: StationFinding, share: number) => Term[],
  ofPiston: readonly Term[],
): Clearance[] {
  if (stations.length === 0) return []
  const share = 1 / stations.length
  const meanMm = stations.reduce((sum, s) => sum + s.diameterMm * share, 0)
  const { standardUncertainty, degreesOfFreedom } = combine([
    ...stations.flatMap((s) => ofBore(s, share)),
    ...ofPiston,
  ])
  return [
    {
      valueMm: meanMm * boreFactor - pistonMm,
      standardUncertaintyMm: standardUncertainty,
      degreesOfFreedom,
      commonMm: 0,
      individualMm: standardUncertainty,
      individualDegreesOfFreedom: degreesOfFreedom,
    },
  ]
}

/** What bringing a length from 20 °C to another temperature adds to the doubt of its expansion. */
function ofGrowth(
  contributions: readonly Contribution[],
  kind: 'wall-expansion' | 'piston-expansion',
  perExpansion: number,
  { perK, doubtPerK, assumed }: Expansion,
): Term[] {
  if (perExpansion === 0) return []
  const known = contributions.find((part) => part.kind === kind)
  const growth: Contribution = {
    kind,
    id: known?.id ?? `${kind}:${perK}`,
    scope: 'job',
    signedMm: perExpansion * doubtPerK,
    input: { u: doubtPerK, unit: '1/K' },
    degreesOfFreedom: Number.POSITIVE_INFINITY,
    assumed,
  }
  return [{ factor: 1, contributions: [growth] }]
}
