import { conformity, doubtEdges, judgedLimits } from './conformity/conformity'
import { diameterAt20 } from './diameter/diameter-at-20'
import { entryOf, isOfSizes } from './diameter/entry'
import { type ReadingReference, readingReference, sizeFromDial } from './diameter/reading-reference'
import type { Contribution, LimitPair, StationFinding } from './findings'
import type { Bore, Reading, SetUp, Survey } from './measured'
import { blockedBy } from './ports/blocked'
import { contactAngles } from './ports/contact-angles'
import { type SetUpConditions, setUpContributions } from './uncertainty/set-up-contributions'
import { repeatabilityOf, stationContributions } from './uncertainty/station-contributions'
import { stationDoubt } from './uncertainty/station-doubt'

/** The wall that the rings never touch: above their travel, below it, or neither. */
type Land = 'upper' | 'lower' | 'none'

/** A station's mean on the way to a finding. */
interface Measured20 {
  readonly reading: Reading
  readonly sizesMm: readonly number[]
  readonly meanMm: number
  readonly diameterMm: number
  readonly land: Land
  readonly blockedBy: readonly string[]
  readonly counted: boolean
}

/**
 * The stations of a survey: mean of the repeats brought to 20 °C, with every part of its doubt and, where
 * there are limits, its verdict. Readings without a value are left out, and so are those of a gauge zeroed in
 * the bore that was not measured over its contacts: they have no size.
 */
export function stationFindings(
  conditions: SetUpConditions,
  survey: Survey,
  pair: LimitPair | undefined,
): StationFinding[] {
  const measured = survey.readings.flatMap((reading) => measured20(conditions, reading))
  const counted = measured.filter((m) => m.counted)
  const repeatability = repeatabilityOf(
    conditions.gauge,
    survey.id,
    counted.map((m) => m.sizesMm.map((mm) => mm * 1000)),
  )
  const shared = setUpContributions(conditions)
  const contactDegrees = contactAngles(conditions.gauge.kind)
  return measured.map((m): StationFinding => {
    const id = `${conditions.bore.id}:${survey.id}:${m.reading.depthMm}:${m.reading.axisDegrees}`
    const contributions = [
      ...shared(m.diameterMm),
      ...stationContributions({
        id,
        repeats: m.sizesMm.length,
        setUp: conditions.setUp,
        gauge: conditions.gauge,
        standard: conditions.standard,
        repeatability,
        slope: slopeAt(m, counted),
      }),
    ]
    const station = finding(conditions.bore.id, survey.id, m, contributions, pair)
    return contactDegrees.length === 2 ? station : { ...station, contactDegrees }
  })
}

function finding(
  boreId: string,
  surveyId: string,
  m: Measured20,
  contributions: readonly Contribution[],
  pair: LimitPair | undefined,
): StationFinding {
  const doubt = stationDoubt(contributions)
  const { standardUncertaintyMm: standardUncertainty, degreesOfFreedom } = doubt
  const doubtful = { value: m.diameterMm, standardUncertainty, degreesOfFreedom }
  return {
    boreId,
    surveyId,
    depthMm: m.reading.depthMm,
    axisDegrees: m.reading.axisDegrees,
    repeats: m.sizesMm.length,
    sizesMm: m.sizesMm,
    ...(m.sizesMm.length > 1 ? { spreadMm: Math.max(...m.sizesMm) - Math.min(...m.sizesMm) } : {}),
    diameterMm: m.diameterMm,
    correctionMm: m.diameterMm - m.meanMm,
    ...doubt,
    contributions,
    land: m.land !== 'none',
    blockedBy: m.blockedBy,
    counted: m.counted,
    ...(pair
      ? { conformity: conformity(doubtful, judgedLimits(pair)), doubt: doubtEdges(doubtful, pair) }
      : {}),
  }
}

function measured20(c: SetUpConditions, reading: Reading): Measured20[] {
  const reference = readingReference(c.setUp, c.standardExpansion.perK)
  const sizesMm = reference ? sizesOf(c.setUp, reference, reading) : []
  if (!reference || sizesMm.length === 0) return []
  const meanMm = sizesMm.reduce((a, b) => a + b, 0) / sizesMm.length
  const settingMm = entryOf(c.setUp, c.gauge) === 'direct' ? meanMm : reference.sizeMm
  const diameterMm = diameterAt20({
    settingMm,
    standardErrorMm: (c.standard.errorUm ?? 0) / 1000,
    standardPerK: c.standardExpansion.perK,
    wallPerK: c.wall.perK,
    referenceC: c.temperatures.referenceC,
    boreC: c.temperatures.boreC,
    deviationMm: meanMm - settingMm,
  })
  // A dial slip can make a size that is no diameter; the setting then serves for the angle of a contact.
  const inTheWay = blockedBy(c.bore, c.gauge, reading, meanMm > 0 ? meanMm : reference.sizeMm)
  return [
    {
      reading,
      sizesMm,
      meanMm,
      diameterMm,
      land: landOf(c.bore, reading.depthMm),
      blockedBy: inTheWay,
      counted: inTheWay.length === 0 || reading.confirmed === true,
    },
  ]
}

/** Sizes as read, mm: those written down stand as they are, a dial reading is taken from its reference. */
function sizesOf(setUp: SetUp, reference: ReadingReference, reading: Reading): readonly number[] {
  if (isOfSizes(setUp.entry)) return reading.sizesMm ?? []
  return (reading.dialUm ?? []).map((x) => sizeFromDial(x, reference, setUp.largerIs))
}

function landOf({ ringTravelMm: travel }: Bore, depthMm: number): Land {
  if (travel === undefined) return 'none'
  if (depthMm < travel.from) return 'upper'
  return depthMm > travel.to ? 'lower' : 'none'
}

/**
 * Change of diameter with depth at a station, mm per mm: from the station above to the one below on the
 * same axis, one-sided at the ends, 0 where the axis has one level. A land takes no slope from outside it.
 */
function slopeAt(m: Measured20, counted: readonly Measured20[]): number {
  let above = m
  let below = m
  for (const other of counted) {
    if (other.reading.axisDegrees !== m.reading.axisDegrees) continue
    if (m.land !== 'none' && other.land !== m.land) continue
    const depth = other.reading.depthMm
    if (depth < m.reading.depthMm && (above === m || depth > above.reading.depthMm)) above = other
    if (depth > m.reading.depthMm && (below === m || depth < below.reading.depthMm)) below = other
  }
  const span = below.reading.depthMm - above.reading.depthMm
  return span > 0 ? (below.diameterMm - above.diameterMm) / span : 0
}
