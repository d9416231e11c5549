import type { Place, Verdict } from '../core/findings'
import { words } from './words'

/** A figure among the findings, with what it is judged by. */
export interface Row {
  readonly id: string
  readonly name: string
  /** `minor`: by another rule than the spec's, a smaller line under the row before it. */
  readonly rank: 'main' | 'minor'
  readonly place?: Place
  readonly placeText?: string
  readonly figure: string
  /** Limit, rule, chances. */
  readonly detail: string
  /** What of the detail a sheet of paper has room for, where it has not for all of it. */
  readonly brief?: string
  readonly verdict?: Verdict
  readonly verdictText?: string
  /** The figure with its interval against its limit, mm. */
  readonly bar?: Bar
}

export interface Bar {
  readonly low: number
  readonly value: number
  readonly high: number
  readonly limit: number
}

/** The mark of a row with a verdict. */
export function marked(verdict: Verdict): { verdict: Verdict; verdictText: string } {
  return { verdict, verdictText: words.marks[verdict] }
}

/** What stands beneath a row, one after the other, without what is empty. */
export function joined(...parts: readonly (string | undefined)[]): string {
  return parts.filter((part) => part !== undefined && part !== '').join(' · ')
}
