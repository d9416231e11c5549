import { conditionsOf } from '../conditions-of'
import { isOfSizes } from '../diameter/entry'
import type { Place } from '../findings'
import { inspect } from '../inspect'
import type { Bore, Measured, Piston, Reading, SetUp, Spec } from '../measured'
import { type Decision, decisionFrom } from './decision'
import type { DecisionFacts } from './decision-facts'
import { type Evidence, evidenceOf } from './evidence'
import { factsOf } from './facts-of'
import { isAt } from './grounds-fact'

/** What is tried out; absent: as it is. */
export interface WhatIf {
  /** Hours run on after the latest survey. */
  readonly hours?: number
  readonly boreTemperatureC?: number
  /** Largest size allowed, mm. */
  readonly limitMm?: number
  /** The piston at hand as the micrometer shows it, mm; of one that nobody measured the middle of its sizes. */
  readonly pistonMm?: number
  /** The diameter at 20 °C of one station, mm. */
  readonly reading?: Place & { readonly diameterMm: number }
}

/** What a decision would be, with what it was made from. */
export interface TriedOut {
  readonly evidence: Evidence
  readonly decision: Decision
}

/**
 * The decision as it would be with something changed: the bore's temperature, its limit, its piston, one reading, or
 * hours run on from here. The job stays as it is. Only this bore is looked at, so that what all bores choose together is left out.
 * Over the hours only the size moves, along the outlook: inside until the earliest, over from the latest on, too close to call between. Own derivation.
 */
export function tryOut(evidence: Evidence, whatIf: WhatIf): TriedOut {
  const changed = isChanged(whatIf) ? evidenceFor(evidence, whatIf) : evidence
  return { evidence: changed, decision: decisionFrom(changed, factsAfter(changed, whatIf.hours ?? 0)) }
}

function isChanged({ boreTemperatureC, limitMm, pistonMm, reading }: WhatIf): boolean {
  return [boreTemperatureC, limitMm, pistonMm, reading].some((value) => value !== undefined)
}

function evidenceFor(evidence: Evidence, whatIf: WhatIf): Evidence {
  const measured = measuredFor(evidence, whatIf)
  const findings = inspect(measured)
  const [finding] = findings.bores
  if (!finding) throw new Error('tryOut: the bore was lost')
  return evidenceOf(measured, findings, finding)
}

function measuredFor(evidence: Evidence, whatIf: WhatIf): Measured {
  const { measured, setUp } = evidence
  const { boreTemperatureC, limitMm, pistonMm } = whatIf
  return {
    ...measured,
    spec: limitMm === undefined ? measured.spec : withLimit(evidence, limitMm),
    setUps:
      boreTemperatureC === undefined
        ? measured.setUps
        : measured.setUps.map((one): SetUp => (one.id === setUp.id ? { ...one, boreTemperatureC } : one)),
    bores: [withReading(evidence, whatIf.reading)],
    ...(measured.pistons
      ? { pistons: pistonMm === undefined ? measured.pistons : withPiston(evidence, pistonMm) }
      : {}),
  }
}

/** The spec's limits are of the standard size. */
function withLimit({ measured: { spec }, bore, finding: { pair } }: Evidence, limitMm: number): Spec {
  const standardMm = limitMm - (bore.oversizeMm ?? 0)
  if (pair?.kind === 'wear') return { ...spec, wearLimitMm: standardMm }
  if (pair?.kind !== 'grade') return { ...spec, newMaxMm: standardMm }
  const grades = (spec.grades ?? []).map((grade) =>
    grade.name === pair.gradeName ? { ...grade, maxMm: standardMm } : grade,
  )
  return { ...spec, grades }
}

function withPiston({ measured: { pistons = [] }, pistons: choice }: Evidence, mm: number): Piston[] {
  return pistons.map((piston) => {
    if (piston.id !== choice.atHand?.pistonId) return piston
    const { readMm, minMm, maxMm } = piston
    if (readMm !== undefined || minMm === undefined || maxMm === undefined) return { ...piston, readMm: mm }
    const by = mm - (minMm + maxMm) / 2
    return { ...piston, minMm: minMm + by, maxMm: maxMm + by }
  })
}

function withReading({ bore, survey, finding, measured }: Evidence, moved: WhatIf['reading']): Bore {
  const station = moved && finding.stations.find((s) => isAt(s, moved))
  if (!moved || !station) return bore
  const byMm = moved.diameterMm - station.diameterMm
  const { setUp } = conditionsOf(measured, bore, survey)
  const inDial = (setUp.largerIs === 'anticlockwise' ? -1000 : 1000) * byMm
  const shifted = (reading: Reading): Reading => {
    if (!isAt(reading, moved)) return reading
    return isOfSizes(setUp.entry)
      ? { ...reading, sizesMm: (reading.sizesMm ?? []).map((mm) => mm + byMm) }
      : { ...reading, dialUm: (reading.dialUm ?? []).map((um) => um + inDial) }
  }
  return {
    ...bore,
    surveys: bore.surveys.map((one) =>
      one.id === survey.id ? { ...one, readings: one.readings.map(shifted) } : one,
    ),
  }
}

function factsAfter(evidence: Evidence, hours: number): DecisionFacts {
  const facts = factsOf(evidence)
  const { outlook } = evidence.growth
  if (hours <= 0 || facts.size !== 'inside' || !outlook?.known || outlook.now) return facts
  const { lastHours, earliestHours = Number.POSITIVE_INFINITY, latestHours } = outlook
  const then = lastHours + hours
  if (latestHours !== undefined && then >= latestHours) return { ...facts, size: 'above' }
  return then >= earliestHours ? { ...facts, size: 'too-close' } : facts
}
