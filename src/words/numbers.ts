/**
 * How figures are written. Lengths are taken in mm and written in the unit of the job in hand. In mm, diameters and
 * their doubt stand with three decimals and everything that is a difference of diameters in whole µm; in inches both
 * have five decimals, a quarter of a µm: the trade's ten-thousandth, 2.5 µm, would hide what a gauge proves. Doubt is
 * rounded up to the next last digit, so that it is never less than computed; only an excess of up to a twentieth of
 * that digit falls away (GUM, JCGM 100:2008, 7.2.6: round up, with common sense). The ends of an interval are rounded
 * outwards in the same way. A figure that is not finite is our own mistake and throws; a zero has no sign. The
 * decimal mark is that of the language.
 */
import type { Place } from '../core/findings'
import { differenceUnitText, lengthUnit, mmPerInch, unitText } from './length-unit'
import { words } from './words'

export { type NumberRefusal, type ReadNumber, readNumber } from './read-number'

const minus = '\u2212'
/** What may fall away where a doubt is rounded up, in its last digit. */
const trifle = 0.05
/** Beyond this no length is meant, mm. */
const mostMm = 1e9
/** From here on a doubt has two digits in ten-thousandths of an inch, mm. */
const coarseDoubtMm = 0.001 * mmPerInch

export interface Signed {
  /** Put + in front of what is above zero. */
  readonly sign?: boolean
}

/** In the unit written in: how a difference of sizes is written with whole steps, and how finely. */
function step(): { readonly mm: number; readonly decimals: number; readonly shown: number } {
  return lengthUnit() === 'inch'
    ? { mm: mmPerInch / 1e5, decimals: 5, shown: 1e-5 }
    : { mm: 0.001, decimals: 0, shown: 1 }
}

/** A length in the unit written in. */
function shown(mm: number): number {
  return lengthUnit() === 'inch' ? mm / mmPerInch : mm
}

/** A diameter: 54.012, or 2.12646. */
export function size(mm: number): string {
  return lengthUnit() === 'inch' ? withDecimals(shown(mm), 4, 5) : fixed(mm, 3)
}

/** A diameter with its unit: 54.012 mm. */
export function sizeWithUnit(mm: number): string {
  return `${size(mm)} ${unitText()}`
}

/** A difference in whole microns, without the unit: 24, with a sign +24; or in inches, 0.00094. */
export function microns(mm: number, { sign = false }: Signed = {}): string {
  return signed(inSteps(mm / step().mm), sign)
}

/** The same with its unit: 24 µm. */
export function inMicrons(mm: number, options: Signed = {}): string {
  return `${microns(mm, options)} ${differenceUnitText()}`
}

/** A round difference, without its unit and with no more digits than it needs: 20, or 0.001. */
export function roundMicrons(mm: number, { sign = false }: Signed = {}): string {
  return lengthUnit() === 'inch' ? signed(plain(shown(mm), 5), sign) : microns(mm, { sign })
}

/** The same with its unit. */
export function inRoundMicrons(mm: number): string {
  return `${roundMicrons(mm)} ${differenceUnitText()}`
}

/** A length in microns with the tenths it has: 15.1 µm; in inches with a sixth decimal. */
export function inTenthsOfMicrons(mm: number, { sign = false }: Signed = {}): string {
  return `${signed(tenthsOfMicrons(mm), sign)} ${differenceUnitText()}`
}

/** The same without its unit. */
export function tenthsOfMicrons(mm: number): string {
  return lengthUnit() === 'inch' ? withDecimals(shown(mm), 5, 6) : plain(mm * 1000, 1)
}

/** A length in microns with hundredths, which a standard deviation deserves: 1.23 µm. */
export function inHundredthsOfMicrons(mm: number): string {
  return `${hundredthsOfMicrons(mm)} ${differenceUnitText()}`
}

/** The same without its unit. */
export function hundredthsOfMicrons(mm: number): string {
  return lengthUnit() === 'inch' ? withDecimals(shown(mm), 5, 7) : plain(mm * 1000, 2)
}

/** U in whole microns, rounded up; at least 1 where there is any doubt at all. */
export function doubtInMicrons(expandedMm: number): number {
  return doubtInSteps(expandedMm, 0.001)
}

/** U as it is written behind ±, without its unit: 5, or 0.00020. */
export function doubtFigure(expandedMm: number): string {
  return inSteps(doubtInSteps(expandedMm, step().mm))
}

/** ± 5 µm */
export function plusMinusMicrons(expandedMm: number): string {
  return `± ${doubtFigure(expandedMm)} ${differenceUnitText()}`
}

/** 54.012 ± 0.005; in inches four decimals are enough from a doubt of a thousandth on. */
export function sizeWithDoubt(mm: number, expandedMm: number): string {
  if (lengthUnit() === 'mm') return `${size(mm)} ± ${fixed(doubtInMicrons(expandedMm) / 1000, 3)}`
  const decimals = expandedMm < coarseDoubtMm ? 5 : 4
  const steps = doubtInSteps(expandedMm, mmPerInch / 10 ** decimals)
  return `${fixed(shown(mm), decimals)} ± ${fixed(steps / 10 ** decimals, decimals)}`
}

/** A difference with its doubt, both in µm: +24 ± 4 µm. */
export function differenceWithDoubt(mm: number, expandedMm: number): string {
  return `${microns(mm, { sign: true })} ± ${doubtFigure(expandedMm)} ${differenceUnitText()}`
}

/** The same of what has no sign: 24 ± 4 µm. */
export function amountWithDoubt(mm: number, expandedMm: number): string {
  return `${microns(mm)} ± ${doubtFigure(expandedMm)} ${differenceUnitText()}`
}

/** A difference with its interval, which need not lie evenly about it: 13 µm (7 to 19). */
export function differenceWithInterval(mm: number, lowMm: number, highMm: number): string {
  const sign = lowMm < 0
  const low = signed(inSteps(down(checked(lowMm) / step().mm)), sign)
  const high = signed(inSteps(up(checked(highMm) / step().mm)), sign)
  return words.number.range(inMicrons(mm, { sign }), low, high)
}

/**
 * The U that a reading may have at most, rounded down so that it is never more than computed: tenths of a
 * micron below 10 µm, whole ones above. Undefined below half a micron, which no bore gauge reaches.
 */
export function doubtNeeded(expandedMm: number): string | undefined {
  const um = checked(expandedMm) * 1000
  const rounded = um < 10 ? Math.floor(um * 10 + 1e-6) / 10 : Math.floor(um + 1e-6)
  if (rounded < 0.5) return undefined
  if (lengthUnit() === 'mm') return `± ${plain(rounded, 1)} µm`
  return `± ${inSteps(Math.floor(expandedMm / step().mm + 1e-6))} ${differenceUnitText()}`
}

/** An angle: 45°. */
export function degrees(angle: number): string {
  return `${plain(angle, 1)}°`
}

/** A depth or a distance along the wall: 8 mm, 12.5 mm, or 0.315 in. */
export function depth(mm: number): string {
  return `${depthFigure(mm)} ${unitText()}`
}

/** The same without its unit. */
export function depthFigure(mm: number): string {
  return lengthUnit() === 'inch' ? withDecimals(shown(mm), 2, 3) : plain(mm, 2)
}

/** A length with at most so many decimals in mm, and one more in inches, without its unit: 0.25, or 0.0098. */
export function lengthFigure(mm: number, decimals: number): string {
  return plain(shown(mm), lengthUnit() === 'inch' ? decimals + 1 : decimals)
}

/** The same with its unit. */
export function length(mm: number, decimals: number): string {
  return `${lengthFigure(mm, decimals)} ${unitText()}`
}

/** 26 °C, 26.5 °C */
export function temperature(celsius: number): string {
  return `${plain(celsius, 1)} °C`
}

/** 0.52 as 52 %. */
export function percent(share: number): string {
  return `${fixed(share * 100, 0)} %`
}

/** Where a station is: 8 mm, 0°. */
export function placeText({ depthMm, axisDegrees }: Place): string {
  return `${depth(depthMm)}, ${degrees(axisDegrees)}`
}

/** A number as a person would type it, with at most so many decimals and no trailing zeros. */
export function plain(value: number, decimals: number): string {
  return withDecimals(value, 0, decimals)
}

/** A number with as many decimals as it has, from `least` of them to `most`. */
export function withDecimals(value: number, least: number, most: number): string {
  const [whole = '', decimals = ''] = pointed(value, most).split('.')
  const needed = decimals.replace(/0+$/, '').padEnd(least, '0')
  return needed === '' ? whole : `${whole}${words.language.decimalMark}${needed}`
}

const chanceSteps = [
  [1, 100],
  [1, 50],
  [1, 20],
  [1, 10],
  [1, 5],
  [1, 4],
  [1, 3],
  [2, 5],
  [3, 5],
  [2, 3],
  [3, 4],
  [4, 5],
  [9, 10],
  [19, 20],
  [49, 50],
  [99, 100],
] as const

/** From here a verdict is proven; below, no words may be used that say as much. */
const proof = 0.95

/**
 * A probability as chances: the nearest of a few plain ones (3 chances in 4), about even from 0.45 to
 * 0.55, and 19 in 20 or better only from 0.95 on, where a verdict is proven.
 */
export function chances(probability: number): string {
  if (!(probability >= 0 && probability <= 1)) {
    throw new RangeError(`chances: expected a probability from 0 to 1, got ${probability}`)
  }
  if (isAboutEven(probability)) return words.number.aboutEven
  if (probability > 0.99) return words.number.moreThan(99, 100)
  if (probability < 0.01) return words.number.fewerThan(100)
  const allowed = chanceSteps.filter(
    ([of, all]) =>
      of / all > 0.5 === probability > 0.5 &&
      of / all >= proof === probability >= proof &&
      of / all <= 1 - proof === probability <= 1 - proof,
  )
  const [of, all] = allowed.reduce((best, step) =>
    Math.abs(step[0] / step[1] - probability) < Math.abs(best[0] / best[1] - probability) ? step : best,
  )
  return words.number.chances(of, all)
}

/** Whether a probability is as good as one half: such chances need a sentence of their own. */
export function isAboutEven(probability: number): boolean {
  return probability >= 0.45 && probability <= 0.55
}

/** A doubt in whole steps of so many mm, rounded up. */
function doubtInSteps(expandedMm: number, stepMm: number): number {
  const steps = checked(expandedMm) / stepMm
  if (steps < 0) throw new RangeError(`A doubt cannot be negative, got ${expandedMm}`)
  return steps === 0 ? 0 : Math.max(1, up(steps))
}

/** So many steps of a difference as they are written. */
function inSteps(steps: number): string {
  const { decimals, shown: each } = step()
  return fixed(steps * each, decimals)
}

function up(steps: number): number {
  return Math.ceil(steps - trifle - 1e-9)
}

function down(steps: number): number {
  return Math.floor(steps + trifle + 1e-9)
}

function fixed(value: number, decimals: number): string {
  return withDecimals(value, decimals, decimals)
}

function pointed(value: number, decimals: number): string {
  const text = checked(value).toFixed(decimals)
  return Number(text) === 0 ? text.replace('-', '') : text.replace('-', minus)
}

function signed(text: string, sign: boolean): string {
  return sign && !text.startsWith(minus) && /[1-9]/.test(text) ? `+${text}` : text
}

function checked(value: number): number {
  if (!Number.isFinite(value) || Math.abs(value) > mostMm) {
    throw new RangeError(`A figure to be written must be finite and below 10⁹, got ${value}`)
  }
  return value
}
