import type { SetUp, Thermometer } from '../measured'

/** How the two temperatures are known; it decides which errors they share. */
export type TemperatureKnowledge =
  | 'one-thermometer'
  | 'two-thermometers'
  | 'bore-only'
  | 'reference-only'
  | 'none'

/** The temperatures of a set-up, recorded or assumed, °C, with what their doubt rests on, K. */
export interface Temperatures {
  readonly boreC: number
  readonly referenceC: number
  readonly knowledge: TemperatureKnowledge
  /** Standard uncertainty of the reference temperature (of both, where read with one thermometer). */
  readonly referenceDoubtK: number
  /** Standard uncertainty of bore less reference; with two thermometers that of the bore's own reading. */
  readonly differenceDoubtK: number
  readonly boreThermometerId?: string
  readonly referenceThermometerId?: string
}

/** What was recorded of two temperatures: those of a set-up, or of a piston and its micrometer. */
export type RecordedTemperatures = Pick<
  SetUp,
  | 'boreTemperatureC'
  | 'referenceTemperatureC'
  | 'boreThermometerId'
  | 'referenceThermometerId'
  | 'soakedTogether'
>

/** Standard uncertainty of a thermometer that does not say, K (typical). */
export const typicalThermometerDoubtK = 1
/** Standard uncertainty of bore less reference where one thermometer read both, or they lay side by side, K (typical). */
export const typicalDifferenceDoubtK = 0.3
const assumedTemperatureDoubtK = 5 / Math.sqrt(3)
const assumedDifferenceDoubtK = 1 / Math.sqrt(3)

/**
 * What is known of bore and reference temperature. Recorded temperatures are taken as read with one
 * thermometer unless two are named and the parts were not soaked together. Not recorded: the reference
 * is assumed rectangular 20 ± 5 °C, and bore and reference within 1 K of each other (rectangular);
 * where one of the two is recorded the other is assumed equal to it within 1 K.
 * The parametrisation by reference temperature and difference is that of GUM (JCGM 100:2008) H.1.
 */
export function temperaturesOf(
  setUp: RecordedTemperatures,
  thermometers: readonly Thermometer[],
): Temperatures {
  const bore = setUp.boreTemperatureC
  const reference = setUp.referenceTemperatureC
  const doubt = (id: string | undefined) =>
    thermometers.find((t) => t.id === id)?.doubtK ?? typicalThermometerDoubtK
  const named = {
    ...(setUp.boreThermometerId === undefined ? {} : { boreThermometerId: setUp.boreThermometerId }),
    ...(setUp.referenceThermometerId === undefined
      ? {}
      : { referenceThermometerId: setUp.referenceThermometerId }),
  }
  if (bore !== undefined && reference !== undefined) {
    const two =
      setUp.boreThermometerId !== undefined &&
      setUp.referenceThermometerId !== undefined &&
      setUp.boreThermometerId !== setUp.referenceThermometerId &&
      setUp.soakedTogether !== true
    return {
      boreC: bore,
      referenceC: reference,
      knowledge: two ? 'two-thermometers' : 'one-thermometer',
      referenceDoubtK: doubt(setUp.referenceThermometerId ?? setUp.boreThermometerId),
      differenceDoubtK: two ? doubt(setUp.boreThermometerId) : typicalDifferenceDoubtK,
      ...named,
    }
  }
  if (bore !== undefined || reference !== undefined) {
    const known = bore ?? reference ?? 20
    return {
      boreC: known,
      referenceC: known,
      knowledge: bore !== undefined ? 'bore-only' : 'reference-only',
      referenceDoubtK: doubt(bore !== undefined ? setUp.boreThermometerId : setUp.referenceThermometerId),
      differenceDoubtK: assumedDifferenceDoubtK,
      ...named,
    }
  }
  return {
    boreC: 20,
    referenceC: 20,
    knowledge: 'none',
    referenceDoubtK: assumedTemperatureDoubtK,
    differenceDoubtK: assumedDifferenceDoubtK,
    ...named,
  }
}
