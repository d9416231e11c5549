import type { BoreVerdict, GradeFinding, Place, StationFinding } from '../findings'
import type { Bore, Grade, Spec } from '../measured'
import { canProveInside, probabilities, proof } from './conformity'
import { specOfBore } from './spec-of-bore'

/** A station with its probabilities about one grade, and how far out of it it is in u. */
interface Judged {
  readonly station: StationFinding
  readonly chance: { readonly below: number; readonly inside: number; readonly above: number }
  readonly pastMax: number
  readonly pastMin: number
}

/**
 * For each size grade whether the stations measured lie inside it, by the rule and the factor of the bore's own
 * verdict: inside when every counted station is inside with 95 %, out when some station is past a limit by
 * factor·u, else too close to call. None where the only grade is what the bore is judged by, where the bore has
 * no verdict, and for a bore for comparison. Source: as for `conformity` and `boreVerdict`.
 */
export function gradeFindings(
  stations: readonly StationFinding[],
  spec: Spec,
  bore: Pick<Bore, 'role' | 'oversizeMm'>,
  verdict: BoreVerdict,
): GradeFinding[] {
  const grades = specOfBore(spec, bore).grades ?? []
  const onlyOneJudged = grades.length === 1 && spec.wearLimitMm === undefined
  if (!verdict.known || bore.role !== 'of-this-engine' || onlyOneJudged) return []
  const counted = stations.filter((s) => s.counted)
  return grades.map((grade) => gradeFinding(counted, grade, verdict.factor))
}

function gradeFinding(counted: readonly StationFinding[], grade: Grade, factor: number): GradeFinding {
  const judged = counted.map((station) => judge(station, grade))
  const provenAbove = judged.filter(({ chance, pastMax }) => chance.above >= proof && pastMax >= factor)
  const provenBelow = judged.filter(({ chance, pastMin }) => chance.below >= proof && pastMin >= factor)
  const isInside = judged.every(({ chance }) => chance.inside >= proof)
  const deciding = judged.reduce((a, b) => (isFurther(b, a) ? b : a))
  const { below, inside, above } = deciding.chance
  const lean = inside >= above && inside >= below ? 'inside' : above >= below ? 'above' : 'below'
  return {
    gradeName: grade.name,
    minMm: grade.minMm,
    maxMm: grade.maxMm,
    verdict: isInside
      ? 'inside'
      : provenAbove.length > 0
        ? 'above'
        : provenBelow.length > 0
          ? 'below'
          : 'too-close',
    provenAbove: provenAbove.map(placeOf),
    provenBelow: provenBelow.map(placeOf),
    deciding: placeOf(deciding),
    lean,
    leanProbability: deciding.chance[lean],
    canBeProven: counted.some((s) =>
      canProveInside(s.standardUncertaintyMm, s.degreesOfFreedom, grade.maxMm - grade.minMm),
    ),
  }
}

function judge(station: StationFinding, { minMm, maxMm }: Grade): Judged {
  const { diameterMm: value, standardUncertaintyMm, degreesOfFreedom } = station
  return {
    station,
    chance: probabilities(
      { value, standardUncertainty: standardUncertaintyMm, degreesOfFreedom },
      { min: minMm, max: maxMm },
    ),
    pastMax: (value - maxMm) / standardUncertaintyMm,
    pastMin: (minMm - value) / standardUncertaintyMm,
  }
}

/** Less likely inside; far out all are equally unlikely, and the distance in u then tells. */
function isFurther(a: Judged, b: Judged): boolean {
  const apart = b.chance.inside - a.chance.inside
  return apart > 0 || (apart === 0 && Math.max(a.pastMax, a.pastMin) > Math.max(b.pastMax, b.pastMin))
}

function placeOf({ station: { depthMm, axisDegrees } }: Judged): Place {
  return { depthMm, axisDegrees }
}
