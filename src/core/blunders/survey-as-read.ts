import { newBand } from '../conformity/limit-pair'
import { specOfBore } from '../conformity/spec-of-bore'
import { entryOf } from '../diameter/entry'
import { readingReference } from '../diameter/reading-reference'
import type { StationFinding } from '../findings'
import { presetOf, stepReadUm, typicalTurnUm } from '../gauge/presets'
import type { Gauge, Spec, Survey } from '../measured'
import type { SetUpConditions } from '../uncertainty/set-up-contributions'
import type { ReadStation, ReadSurvey } from './read-survey'

/** What a micrometer's sleeve shows twice in a turn too often or too seldom, mm. */
const sleeveStepMm = { mm: 0.5, inch: 0.635 } as const

/**
 * A survey as the blunder tests see it. A station's own doubt is taken from the gauge's figures alone: a
 * slip among the repeats, or the slope that one makes, must not excuse itself by the doubt it causes.
 */
export function surveyAsRead(
  conditions: SetUpConditions,
  survey: Survey,
  spec: Spec,
  stations: readonly StationFinding[],
): ReadSurvey {
  const { setUp, gauge, standard, bore } = conditions
  const counted = stations.filter((station) => station.counted)
  const figures = figuresOf(gauge)
  const isDirect = entryOf(setUp, gauge) === 'direct'
  const reference = readingReference(setUp, conditions.standardExpansion.perK)
  const [first] = counted
  const turnUm = gauge.turnValueUm ?? typicalTurnUm(gauge)
  const ofBore = specOfBore(spec, bore)
  const grade = ofBore.grades?.find(({ name }) => name === bore.grade)
  const band = newBand(ofBore)
  const newMinMm = grade?.minMm ?? band.minMm
  const newMaxMm = grade?.maxMm ?? band.maxMm
  return {
    stations: counted.map((station) => stationAsRead(station, figures)),
    commonMm: Math.max(0, ...counted.map((station) => station.commonMm)),
    repeatMm: figures.repeatMm,
    repeatDegreesOfFreedom: figures.repeatDegreesOfFreedom,
    unworn: survey.hoursRun === 0,
    ...(isDirect || turnUm === undefined ? {} : { turnMm: turnUm / 1000 }),
    ...(isDirect || !reference || !first ? {} : { zeroMm: reference.sizeMm + first.correctionMm }),
    ...(isDirect || standard.kind !== 'micrometer'
      ? {}
      : { sleeveStepMm: sleeveStepMm[standard.markedIn ?? 'mm'] }),
    ...(newMinMm === undefined ? {} : { newMinMm }),
    ...(newMaxMm === undefined ? {} : { newMaxMm }),
    ...(spec.oversizesMm === undefined || bore.oversizeMm !== undefined
      ? {}
      : { oversizesMm: spec.oversizesMm }),
    ...(survey.caliperMm === undefined ? {} : { caliperMm: survey.caliperMm }),
  }
}

interface GaugeFigures {
  readonly repeatMm: number
  readonly repeatDegreesOfFreedom: number
  readonly scaleMm: number
  readonly stepMm: number
}

function figuresOf(gauge: Gauge): GaugeFigures {
  const preset = presetOf(gauge.kind)
  return {
    repeatMm: (gauge.repeatabilityUm ?? preset.repeatabilityUm) / 1000,
    repeatDegreesOfFreedom: gauge.repeatabilityDegreesOfFreedom ?? preset.repeatabilityDegreesOfFreedom,
    scaleMm: (gauge.scaleUm ?? preset.scaleUm) / 1000,
    stepMm: stepOf(gauge),
  }
}

/** The step that is read, mm. */
export function stepOf(gauge: Gauge): number {
  return stepReadUm(gauge) / 1000
}

function stationAsRead(station: StationFinding, figures: GaugeFigures): ReadStation {
  const { depthMm, axisDegrees, sizesMm, diameterMm, land } = station
  const own = Math.max(figures.repeatMm / Math.sqrt(sizesMm.length), figures.stepMm / Math.sqrt(12))
  return { depthMm, axisDegrees, sizesMm, diameterMm, land, individualMm: Math.hypot(own, figures.scaleMm) }
}
