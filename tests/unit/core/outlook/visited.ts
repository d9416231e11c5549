import type { Bore, Measured, SetUp, Spec, Survey } from '../../../../src/core/measured'
import { first, measuredBore, onlyScaleDoubt } from '../measured-bore'

export const spec: Spec = { newMinMm: 80, newMaxMm: 80.01, wearLimitMm: 80.05 }
/** Of each station. */
export const standardDoubtMm = 0.002
const levelsMm = [10, 60]
const axesDegrees = [0]

/** A visit: sizes at 10 and at 60 mm on one axis. */
export interface Seen {
  readonly hoursRun?: number
  readonly sizesMm: readonly number[]
  readonly survey?: Partial<Survey>
}

/** A bore measured several times, each with a setting of its own that has no doubt; each station ± u of 2 µm. */
export function visited(visits: readonly Seen[], bore: Partial<Bore> = {}, ofSpec: Spec = spec): Measured {
  const given = onlyScaleDoubt(standardDoubtMm * 1000)
  const each = visits.map(({ sizesMm }) =>
    measuredBore(
      { levelsMm, axesDegrees, rows: sizesMm.map((size) => [size]) },
      { ...given, spec: ofSpec, bore: { ...given.bore, ...bore } },
    ),
  )
  const measured = first(each)
  const setUps = visits.map((_, i): SetUp => ({ ...first(measured.setUps), id: `set-up-${i}` }))
  const surveys = each.map((one, i): Survey => {
    const survey = first(first(one.bores).surveys)
    const { hoursRun, survey: more } = visits[i] ?? { sizesMm: [] }
    return {
      ...survey,
      id: `visit-${i}`,
      setUpId: `set-up-${i}`,
      ...(hoursRun === undefined ? {} : { hoursRun }),
      ...more,
    }
  })
  return { ...measured, setUps, bores: [{ ...first(measured.bores), surveys }] }
}
