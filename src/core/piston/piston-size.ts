import { named } from '../conditions-of'
import type { Contribution } from '../findings'
import type { Measured, Piston, Standard } from '../measured'
import { type Expansion, pistonExpansion, standardExpansion } from '../temperature/expansion'
import { type Temperatures, temperaturesOf } from '../temperature/temperatures'
import { typicalStandardDoubtUm, uncheckedMicrometerHalfWidthUm } from '../uncertainty/set-up-contributions'

/** What was not recorded of a piston's measuring, so that something assumed stands in for it. */
export type PistonGap =
  | 'no-micrometer'
  | 'no-micrometer-check'
  | 'no-piston-temperature'
  | 'no-micrometer-temperature'
  | 'no-height'

/** A piston's size across its skirt at 20 °C with everything that its doubt is made of. */
export interface PistonSize20 {
  readonly from: 'reading' | 'range'
  /** At 20 °C, mm. */
  readonly sizeMm: number
  /** Signed with the size: a clearance takes them with the other sign. */
  readonly contributions: readonly Contribution[]
  readonly expansion: Expansion
  /** Temperature at which it was measured; absent where it was not recorded or nobody measured it. */
  readonly pistonC?: number
  readonly gaps: readonly PistonGap[]
}

/** Standard uncertainty of reading a micrometer over a piston, µm (typical, from memory of the trade). */
export const typicalReadingDoubtUm = 2

const infinite = Number.POSITIVE_INFINITY

/**
 * Size of a piston at 20 °C, mm: d20 = (d − e)·(1 + α_r·(T_r − 20)) / (1 + α_p·(T_p − 20)), d as the micrometer
 * showed it and e what the micrometer reads too much. A piston that nobody measured lies anywhere in the sizes that
 * its grade may have: their middle, rectangular (GUM, JCGM 100:2008, 4.3.7). Where both are given, the reading
 * counts. Undefined where neither is. Own derivation, as for `diameterAt20`.
 *
 * Its own errors are the reading, its expansion and its temperature; the micrometer's error, its doubt and its
 * expansion have the identity that they have in a setting by the same micrometer, so that they drop out of a
 * clearance as far as both hold them. With no micrometer named an unknown one stands in, not checked.
 */
export function pistonSizeOf(measured: Measured, piston: Piston): PistonSize20 | undefined {
  const { readMm, minMm, maxMm } = piston
  if (readMm !== undefined) return ofReading(measured, piston, readMm)
  if (minMm === undefined || maxMm === undefined) return undefined
  const expansion = pistonExpansion(piston)
  const range = part('piston-range', `piston-range:${piston.id}`, (maxMm - minMm) / Math.sqrt(12))
  return { from: 'range', sizeMm: (minMm + maxMm) / 2, contributions: [range], expansion, gaps: [] }
}

function ofReading(measured: Measured, piston: Piston, readMm: number): PistonSize20 {
  const standard = micrometerOf(measured, piston)
  const expansion = pistonExpansion(piston)
  const reference = standardExpansion(standard)
  const t = temperaturesOf(recordedOf(piston), measured.thermometers)
  const atReference = (readMm - (standard.errorUm ?? 0) / 1000) * (1 + reference.perK * (t.referenceC - 20))
  const sizeMm = atReference / (1 + expansion.perK * (t.boreC - 20))
  return {
    from: 'reading',
    sizeMm,
    contributions: [
      part('piston-reading', `piston-reading:${piston.id}`, readingDoubtMm(piston)),
      ...ofTemperature(piston, standard, sizeMm, t, expansion, reference),
      ...ofMicrometer(standard),
    ],
    expansion,
    ...(piston.temperatureC === undefined ? {} : { pistonC: piston.temperatureC }),
    gaps: gapsOf(piston, standard),
  }
}

function readingDoubtMm({ readingDoubtUm = typicalReadingDoubtUm }: Piston): number {
  return readingDoubtUm / 1000
}

function micrometerOf(measured: Measured, { id, standardId }: Piston): Standard {
  if (standardId !== undefined) return named(measured.standards, standardId, 'standard')
  return { id: `not-recorded:${id}`, kind: 'micrometer' }
}

function recordedOf({ temperatureC, micrometerTemperatureC, thermometerId }: Piston) {
  return {
    ...(temperatureC === undefined ? {} : { boreTemperatureC: temperatureC }),
    ...(micrometerTemperatureC === undefined ? {} : { referenceTemperatureC: micrometerTemperatureC }),
    ...(thermometerId === undefined
      ? {}
      : { boreThermometerId: thermometerId, referenceThermometerId: thermometerId }),
  }
}

function gapsOf(piston: Piston, standard: Standard): PistonGap[] {
  const { standardId, temperatureC, micrometerTemperatureC, heightMm } = piston
  return [
    ...(standardId === undefined ? (['no-micrometer'] as const) : []),
    ...(standardId !== undefined && standard.kind === 'micrometer' && standard.errorUm === undefined
      ? (['no-micrometer-check'] as const)
      : []),
    ...(temperatureC === undefined ? (['no-piston-temperature'] as const) : []),
    ...(micrometerTemperatureC === undefined ? (['no-micrometer-temperature'] as const) : []),
    ...(heightMm === undefined ? (['no-height'] as const) : []),
  ]
}

/** Sensitivities as for a bore with one thermometer: ∂d/∂T_r = d·(α_r − α_p), ∂d/∂(T_p − T_r) = −d·α_p. */
function ofTemperature(
  { id, thermometerId }: Piston,
  standard: Standard,
  sizeMm: number,
  t: Temperatures,
  expansion: Expansion,
  reference: Expansion,
): Contribution[] {
  const thermometer = thermometerId === undefined || t.knowledge === 'none' ? undefined : thermometerId
  return [
    {
      ...part(
        'piston-expansion',
        `piston-expansion:${expansion.perK}`,
        -sizeMm * (t.boreC - 20) * expansion.doubtPerK,
      ),
      scope: 'job',
      input: { u: expansion.doubtPerK, unit: '1/K' },
    },
    {
      ...part(
        'standard-expansion',
        `standard-expansion:${standard.id}`,
        sizeMm * (t.referenceC - 20) * reference.doubtPerK,
      ),
      scope: 'standard',
      input: { u: reference.doubtPerK, unit: '1/K' },
    },
    {
      ...part(
        'reference-temperature',
        thermometer === undefined ? `temperature:piston:${id}` : `thermometer:${thermometer}`,
        sizeMm * (reference.perK - expansion.perK) * t.referenceDoubtK,
      ),
      scope: thermometer === undefined ? 'piston' : 'thermometer',
      input: { u: t.referenceDoubtK, unit: 'K' },
      assumed: t.knowledge === 'none',
    },
    {
      ...part(
        'temperature-difference',
        `temperature-difference:piston:${id}`,
        -sizeMm * (t.knowledge === 'bore-only' ? reference : expansion).perK * t.differenceDoubtK,
      ),
      input: { u: t.differenceDoubtK, unit: 'K' },
      assumed: t.knowledge !== 'one-thermometer',
    },
  ]
}

function ofMicrometer(standard: Standard): Contribution[] {
  const doubtMm = (standard.doubtUm ?? typicalStandardDoubtUm[standard.kind]) / 1000
  const own: Contribution = { ...part('standard', `standard:${standard.id}`, doubtMm), scope: 'standard' }
  if (standard.kind !== 'micrometer' || standard.errorUm !== undefined) return [own]
  const errorMm = -uncheckedMicrometerHalfWidthUm / Math.sqrt(3) / 1000
  const error = part('standard-error', `standard-error:${standard.id}`, errorMm)
  return [own, { ...error, scope: 'standard', assumed: true }]
}

function part(kind: Contribution['kind'], id: string, signedMm: number): Contribution {
  return { kind, id, scope: 'piston', signedMm, degreesOfFreedom: infinite, assumed: false }
}
