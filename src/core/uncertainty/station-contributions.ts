import { closingZeroUm, openingZeroUm } from '../diameter/reading-reference'
import type { Contribution } from '../findings'
import { presetOf, stepReadUm, typicalDepthDoubtMm } from '../gauge/presets'
import type { Gauge, SetUp, Standard } from '../measured'
import { scatter } from '../statistics/scatter'
import { standardExpansion } from '../temperature/expansion'

/** A standard deviation of repeats, µm, with what it rests on. */
export interface Repeatability {
  readonly um: number
  readonly degreesOfFreedom: number
  /** Name of the estimate: contributions that rest on it share its degrees of freedom. */
  readonly estimate: string
}

/** Fewest degrees of freedom at which a survey's own scatter takes the place of the gauge's figure. */
const enoughDegreesOfFreedom = 8

/**
 * Repeatability of a survey, µm: its own pooled standard deviation when that has 8 degrees of freedom or
 * more, else the gauge's. `repeats` holds one list for each station, µm or any one unit of µm scale.
 * Source: pooled estimate of variance, GUM (JCGM 100:2008) H.3.6 and 4.2.4.
 */
export function repeatabilityOf(
  gauge: Gauge,
  surveyId: string,
  repeats: readonly (readonly number[])[],
): Repeatability {
  let squares = 0
  let freedom = 0
  for (const values of repeats) {
    if (values.length < 2) continue
    const own = scatter(values)
    squares += own.squares
    freedom += own.degreesOfFreedom
  }
  if (freedom >= enoughDegreesOfFreedom) {
    return { um: Math.sqrt(squares / freedom), degreesOfFreedom: freedom, estimate: `repeats:${surveyId}` }
  }
  const preset = presetOf(gauge.kind)
  return {
    um: gauge.repeatabilityUm ?? preset.repeatabilityUm,
    degreesOfFreedom: gauge.repeatabilityDegreesOfFreedom ?? preset.repeatabilityDegreesOfFreedom,
    estimate: `repeatability:${gauge.id}`,
  }
}

/** What a station's own doubt is made of. */
export interface StationConditions {
  /** Identity of the station within the job. */
  readonly id: string
  readonly repeats: number
  readonly setUp: SetUp
  readonly gauge: Gauge
  readonly standard: Standard
  readonly repeatability: Repeatability
  /** Change of diameter with depth at the station, mm per mm. */
  readonly slope: number
}

/**
 * A station's own errors, mm: repeatability (with the step that is read), dial or scale (not averaged by
 * repeats), place (slope times the doubt of the depth), what rocking left of a tilt where the user gives it
 * (not averaged either: it errs large) and, with a closing zero, the measured drift, |closing − opening|/√12
 * for each repeat on its own (rectangular, GUM, JCGM 100:2008, 4.3.7), what the standard's own change of
 * temperature did to the closing zero taken out first.
 */
export function stationContributions(c: StationConditions): Contribution[] {
  const { gauge, setUp } = c
  const preset = presetOf(gauge.kind)
  const step = stepReadUm(gauge) / Math.sqrt(12)
  const fromRepeats = c.repeatability.um / Math.sqrt(c.repeats)
  const byStep = step > fromRepeats
  const infinite = Number.POSITIVE_INFINITY
  const depthDoubtMm = gauge.depthDoubtMm ?? typicalDepthDoubtMm
  const parts: Contribution[] = [
    {
      kind: 'repeatability',
      id: `repeatability:${c.id}`,
      scope: 'station',
      signedMm: Math.max(step, fromRepeats) / 1000,
      degreesOfFreedom: byStep ? infinite : c.repeatability.degreesOfFreedom,
      ...(byStep ? {} : { estimate: c.repeatability.estimate }),
      assumed: false,
    },
    {
      kind: 'scale',
      id: `scale:${c.id}`,
      scope: 'station',
      signedMm: (gauge.scaleUm ?? preset.scaleUm) / 1000,
      degreesOfFreedom: infinite,
      assumed: false,
    },
    {
      kind: 'place',
      id: `place:${c.id}`,
      scope: 'station',
      signedMm: Math.abs(c.slope) * depthDoubtMm,
      input: { u: depthDoubtMm, unit: 'mm' },
      degreesOfFreedom: infinite,
      assumed: false,
    },
  ]
  if (gauge.rockingUm !== undefined) {
    parts.push({
      kind: 'rocking',
      id: `rocking:${c.id}`,
      scope: 'station',
      signedMm: gauge.rockingUm / 1000,
      degreesOfFreedom: infinite,
      assumed: false,
    })
  }
  const closeUm = closingZeroUm(setUp, standardExpansion(c.standard).perK)
  if (closeUm !== undefined) {
    const openUm = openingZeroUm(setUp, gauge, c.standard)
    parts.push({
      kind: 'drift-measured',
      id: `drift:${c.id}`,
      scope: 'repeat',
      signedMm: Math.abs(closeUm - (openUm ?? 0)) / Math.sqrt(12 * c.repeats) / 1000,
      degreesOfFreedom: infinite,
      assumed: openUm === undefined,
    })
  }
  return parts
}
