import { entryOf, isOfSizes } from '../../core/diameter/entry'
import { readingReference, sizeFromDial } from '../../core/diameter/reading-reference'
import { standardExpansion } from '../../core/temperature/expansion'
import { isSettingOpen } from '../../job/setting-size'
import { inMicrons } from '../../words/numbers'
import { words } from '../../words/words'
import { sizeMarks } from './marks'
import { readingMarks, readRepeats } from './read-repeats'
import type { OnBench } from './use-job'

type OfSetUp = Pick<OnBench, 'job' | 'setUp' | 'gauge' | 'standard'>

/** What the field for the next reading asks for, with the unit that the gauge is marked in. */
export function readingFieldName({ setUp, gauge }: Pick<OnBench, 'setUp' | 'gauge'>): string {
  const { inchSizeField, sizeField, inchDeviationField, deviationField } = words.next
  const isInch = gauge.markedIn === 'inch'
  if (isOfSizes(setUp.entry)) return isInch ? inchSizeField : sizeField
  return isInch ? inchDeviationField : deviationField
}

/** What was typed in the other unit, a size also as a deviation from the setting, a dial reading as a size. */
export function readingEcho(typed: string, { setUp, gauge, standard }: OfSetUp): string | undefined {
  if (typed.trim() === '') return undefined
  const isOpen = isSettingOpen(setUp)
  const read = readRepeats(typed, setUp, gauge, isOpen)
  const last = read.ok ? read.values.at(-1) : undefined
  if (last === undefined) return undefined
  const inOther = words.next.same(readingMarks(setUp, gauge).echo(last))
  const entry = entryOf(setUp, gauge)
  if (entry === 'direct' || (isOpen && entry === 'size')) return inOther
  if (entry === 'size') {
    const deviation = words.next.asDeviation(inMicrons(last - setUp.settingSizeMm, { sign: true }))
    return `${inOther} · ${deviation}`
  }
  const reference = readingReference(setUp, standardExpansion(standard).perK)
  if (!reference) return `${inOther} · ${words.next.noSizeYet}`
  const sizeMm = sizeFromDial(last, reference, setUp.largerIs)
  const shown = sizeMarks(gauge.markedIn)
  const asSize = words.next.same(words.setUp.withUnit(shown.written(roundedUm(sizeMm)), shown.unit))
  return `${asSize} · ${shown.echo(sizeMm)} · ${inOther}`
}

/** To 0.1 µm, below any step that can be read. */
function roundedUm(mm: number): number {
  return Math.round(mm * 1e4) / 1e4
}

/** Which way the needle goes for a larger bore, and how to type it; nothing where sizes are written down. */
export function directionSentence({ setUp }: Pick<OnBench, 'setUp'>): string | undefined {
  return isOfSizes(setUp.entry) ? undefined : words.next.direction[setUp.largerIs ?? 'unknown']
}
