import { entryOf } from '../diameter/entry'
import { readingReference } from '../diameter/reading-reference'
import type { Contribution, SourceKind, StationFinding, TemperatureEffect } from '../findings'
import { combine, expanded } from '../uncertainty/combine'
import type { SetUpConditions } from '../uncertainty/set-up-contributions'

/** The sources of error that the correction to 20 °C brings with it. */
const sources: readonly SourceKind[] = [
  'wall-expansion',
  'standard-expansion',
  'reference-temperature',
  'bore-thermometer',
  'temperature-difference',
]

/** Whether an error is one of the correction to 20 °C; a gauge that warmed since its setting is another matter. */
export function isOfTemperature({ kind }: Contribution): boolean {
  return sources.includes(kind)
}

/**
 * What bringing readings to 20 °C (ISO 1:2022) does to them, mm, at the mean size of the stations, in two parts:
 * the standard was (S − e)·α_r·(T_r − 20) longer than it shows, so that readings are too small by as much; the
 * bore at T_b is longer than at 20 °C by its own expansion. Their sum is the correction of a station but for
 * what the micrometer reads too much. Own derivation from the model of `diameterAt20`; exact within it. U is
 * that of the temperature sources alone. Undefined without a counted station or a size.
 */
export function temperatureEffect(
  c: SetUpConditions,
  stations: readonly StationFinding[],
): TemperatureEffect | undefined {
  const counted = stations.filter((s) => s.counted)
  const [first] = counted
  const reference = readingReference(c.setUp, c.standardExpansion.perK)
  if (!first || !reference) return undefined
  const readMm = counted.reduce((sum, s) => sum + s.diameterMm - s.correctionMm, 0) / counted.length
  const settingMm = entryOf(c.setUp, c.gauge) === 'direct' ? readMm : reference.sizeMm
  const errorMm = (c.standard.errorUm ?? 0) / 1000
  const { boreC, referenceC, knowledge } = c.temperatures
  const standardMm = (settingMm - errorMm) * c.standardExpansion.perK * (referenceC - 20)
  const warmMm = readMm - errorMm + standardMm
  const boreMm = warmMm / (1 + c.wall.perK * (boreC - 20)) - warmMm
  const contributions = first.contributions.filter(isOfTemperature)
  return {
    sizeMm: readMm,
    boreC,
    referenceC,
    reference: c.standard.kind,
    recorded: knowledge === 'one-thermometer' || knowledge === 'two-thermometers',
    standardMm,
    boreMm,
    totalMm: standardMm + boreMm,
    expandedMm: expanded(combine([{ factor: 1, contributions }])),
  }
}
