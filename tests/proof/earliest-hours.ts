import { inspect } from '../../src/core/inspect'
import type { Measured, Survey } from '../../src/core/measured'
import { growthOf } from '../../src/core/outlook/growth'
import { type SeededRandom, seededRandom } from './seeded-random'
import { type SimulatedCase, sharedErrors, simulatedSurvey } from './simulated-survey'

/** A bore that grows in proportion to its hours, and the hours at which it is measured. */
export interface GrowingCase extends Omit<SimulatedCase, 'trueMm'> {
  readonly visits: readonly number[]
  readonly newMm: number
  /** At a station, µm in a thousand hours. */
  readonly rateUm: (depthMm: number, axisDegrees: number) => number
}

export interface EarliestFound {
  readonly surveys: number
  /** Share in which the earliest hours came before the bore truly met its limit, or it was said to be there now. */
  readonly before: number
  /** Share in which the slope did not stand out from its doubt. */
  readonly uncertain: number
  /** Hours ahead at the last visit: in truth, and the mean of what was named as the earliest. */
  readonly trueAhead: number
  readonly namedAhead: number
}

/** Measures a growing bore again and again, and counts how often the earliest hours come before the true ones. */
export function earliestHours(c: GrowingCase, surveys: number, seed: number): EarliestFound {
  const random = seededRandom(seed)
  const last = c.visits.at(-1) ?? 0
  const rates = c.levelsMm.flatMap((depth) => c.axesDegrees.map((axis) => c.rateUm(depth, axis)))
  const allowedUm = 1000 * ((c.spec.wearLimitMm ?? c.newMm) - c.newMm)
  const trueHours = (1000 * allowedUm) / Math.max(...rates)
  let [before, uncertain, named] = [0, 0, 0]
  for (let i = 0; i < surveys; i++) {
    const measured = simulatedVisits(c, random)
    const findings = inspect(measured)
    const [finding] = findings.bores
    const { outlook } = finding ? growthOf(measured, findings, finding) : {}
    if (!outlook?.known) continue
    const earliest = outlook.now ? last : (outlook.earliestHours ?? Number.POSITIVE_INFINITY)
    if (earliest <= trueHours) before += 1 / surveys
    if (outlook.slopeUncertain) uncertain += 1 / surveys
    named += (earliest - last) / surveys
  }
  return { surveys, before, uncertain, trueAhead: trueHours - last, namedAhead: named }
}

function simulatedVisits({ visits, newMm, rateUm, ...c }: GrowingCase, random: SeededRandom): Measured {
  const at = (hours: number): SimulatedCase => ({
    ...c,
    trueMm: (depth, axis) => newMm + (rateUm(depth, axis) * hours) / 1e6,
  })
  const shared = sharedErrors(at(0), random)
  const each = visits.map((hours) => ({ hours, measured: simulatedSurvey(at(hours), random, shared) }))
  const [one] = each
  const [bore] = one?.measured.bores ?? []
  if (!one || !bore) throw new Error('a simulation without a visit')
  const surveys = each.flatMap(({ hours, measured }, i): Survey[] => {
    const [survey] = measured.bores[0]?.surveys ?? []
    return survey ? [{ ...survey, id: `visit-${i}`, setUpId: `set-up-${i}`, hoursRun: hours }] : []
  })
  const setUps = each.flatMap(({ measured }, i) =>
    measured.setUps.map((setUp) => ({ ...setUp, id: `set-up-${i}` })),
  )
  return { ...one.measured, setUps, bores: [{ ...bore, surveys }] }
}
