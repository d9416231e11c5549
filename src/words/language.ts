/**
 * The language that texts are taken from. It is chosen once, before any module with texts is evaluated: what
 * takes a text out of its table as it loads is right from then on, and another language is another load of
 * the page. English needs no table, for its texts are where they are used.
 */
import type { en } from './en'
import type { crossedStudy } from './english/crossed-study'
import type { decision } from './english/decision'
import type { handOver } from './english/hand-over'
import type { letterhead } from './english/letterhead'
import type { owner } from './english/owner'
import type { paper } from './english/paper'
import type { piston } from './english/piston'
import type { scanForm } from './english/scan-form'
import type { scanMarks } from './english/scan-marks'
import type { scanTable } from './english/scan-table'
import type { whatIf } from './english/what-if'
import type { Texts } from './texts'

/** All texts of a language: those of the first page, and each block that English loads later. */
export interface LanguageTable {
  readonly words: Texts<typeof en>
  readonly crossedStudy: Texts<typeof crossedStudy>
  readonly decision: Texts<typeof decision>
  readonly handOver: Texts<typeof handOver>
  readonly letterhead: Texts<typeof letterhead>
  readonly owner: Texts<typeof owner>
  readonly paper: Texts<typeof paper>
  readonly piston: Texts<typeof piston>
  readonly scanForm: Texts<typeof scanForm>
  readonly scanMarks: Texts<typeof scanMarks>
  readonly scanTable: Texts<typeof scanTable>
  readonly whatIf: Texts<typeof whatIf>
}

let table: LanguageTable | undefined
let isBound = false

/** Takes the texts from a language, or from English where there is no table; before any of them was taken. */
export function takeTextsFrom(chosen: LanguageTable | undefined): void {
  if (isBound) throw new Error('The language must be chosen before texts are taken from it')
  table = chosen
}

/** A block of texts in the language chosen. */
export function inLanguage<Block extends keyof LanguageTable>(
  block: Block,
  english: LanguageTable[Block],
): LanguageTable[Block] {
  isBound = true
  return table?.[block] ?? english
}
