import { en } from '../../../src/words/en'
import { crossedStudy } from '../../../src/words/english/crossed-study'
import { decision } from '../../../src/words/english/decision'
import { handOver } from '../../../src/words/english/hand-over'
import { letterhead } from '../../../src/words/english/letterhead'
import { owner } from '../../../src/words/english/owner'
import { paper } from '../../../src/words/english/paper'
import { piston } from '../../../src/words/english/piston'
import { scanForm } from '../../../src/words/english/scan-form'
import { scanMarks } from '../../../src/words/english/scan-marks'
import { scanTable } from '../../../src/words/english/scan-table'
import { whatIf } from '../../../src/words/english/what-if'
import type { LanguageTable } from '../../../src/words/language'
import { slots } from '../../../src/words/slots'
import { sampleFlaws } from './sample-flaws'

/** All texts of English. */
export const english: LanguageTable = {
  words: en,
  crossedStudy,
  decision,
  handOver,
  letterhead,
  owner,
  paper,
  piston,
  scanForm,
  scanMarks,
  scanTable,
  whatIf,
}

/** A text, or a function that makes one, where it stands in its table. */
export interface Leaf {
  readonly path: string
  readonly said: unknown
}

/** Every text of a table and every function that makes texts. */
export function leavesOf(said: unknown, path = ''): Leaf[] {
  if (typeof said !== 'object' || said === null) return [{ path, said }]
  return Object.entries(said).flatMap(([key, inner]) => leavesOf(inner, path === '' ? key : `${path}.${key}`))
}

/** The texts in what a function said, whatever its form. */
function textsIn(said: unknown): string[] {
  return leavesOf(said).map((leaf) => String(leaf.said))
}

/** What a function says to some figures; undefined where it cannot be asked so. */
function saidTo(text: (...figures: unknown[]) => unknown, figures: readonly unknown[]): string[] | undefined {
  try {
    const texts = textsIn(text(...figures))
    return texts.some((one) => /undefined|NaN|\[object/.test(one)) ? undefined : texts
  } catch {
    return undefined
  }
}

const marks = (at: number) => [
  `⟨${at}⟩`,
  7000 + at,
  [`⟨${at}⟩`],
  [`⟨${at}a⟩`, `⟨${at}b⟩`],
  [`⟨${at}a⟩`, `⟨${at}b⟩`, `⟨${at}c⟩`],
  0,
  1,
  2,
  true,
  false,
  undefined,
]

/** Lists of figures that a text can be asked with: one that works, and that with each figure changed in turn. */
function waysToAsk(text: (...figures: unknown[]) => unknown): unknown[][] {
  const places = Array.from({ length: text.length }, (_, at) => at)
  const working = combinations(places.map((at) => marks(at).slice(0, 3))).find((one) => saidTo(text, one))
  if (!working) return []
  const changed = places.flatMap((at) => marks(at).map((mark) => working.with(at, mark)))
  const numbers = [0, 1, 2].map((number) =>
    places.map((at) => (typeof working[at] === 'object' ? working[at] : number)),
  )
  return [working, ...changed, ...numbers].filter((figures) => saidTo(text, figures) !== undefined)
}

function combinations(pools: readonly (readonly unknown[])[]): unknown[][] {
  return pools.reduce<unknown[][]>(
    (all, pool) => all.flatMap((one) => pool.map((mark) => [...one, mark])),
    [[]],
  )
}

/** Texts that take more than single figures, and what to ask them with. */
const asked = new Map<string, unknown[][]>([
  ['crossedStudy.byRanges', [[{ gauge: '⟨1⟩', people: '⟨2⟩', both: '⟨3⟩', share: '⟨4⟩', parts: '⟨5⟩' }]]],
  ['piston.shown.lacks', [[['size']], [['size', 'height', 'crown-height', 'travel']]]],
  ...Object.entries(sampleFlaws).map(([code, [flaw]]): [string, unknown[][]] => [
    `words.problems.${code}`,
    [[flaw]],
  ]),
])

const isText = (said: unknown): said is (...figures: unknown[]) => unknown => typeof said === 'function'

/** What is wrong with a language beside English, a sentence each. */
export function languageProblems(other: unknown): string[] {
  const there = new Map(leavesOf(other).map(({ path, said }) => [path, said]))
  const known = new Set(leavesOf(english).map(({ path }) => path))
  const surplus = [...there.keys()]
    .filter((path) => !known.has(path))
    .map((path) => `${path} is not in English`)
  return [
    ...surplus,
    ...leavesOf(english).flatMap(({ path, said }) => leafProblems(path, said, there.get(path))),
  ]
}

function leafProblems(path: string, english: unknown, other: unknown): string[] {
  if (typeof other !== typeof english) return [`${path} is ${typeof other}, not ${typeof english}`]
  if (typeof english === 'string' && typeof other === 'string') return textProblems(path, english, other)
  if (!isText(english) || !isText(other)) return english === other ? [] : [`${path} differs: ${other}`]
  const ways = asked.has(path) ? (asked.get(path) ?? []) : waysToAsk(english)
  if (ways.length === 0) return [`${path} could not be asked in English`]
  return ways.flatMap((figures) => {
    const question = `${path}(${figures.map((one) => JSON.stringify(one)).join(', ')})`
    const said = saidTo(other, figures)
    if (!said) return [`${question} says nothing`]
    const saidInEnglish = saidTo(english, figures) ?? []
    const wanted = figuresIn(saidInEnglish)
    const found = figuresIn(said)
    const lost = [...wanted].filter((figure) => !found.has(figure))
    return [
      ...unitProblems(question, saidInEnglish.join(' '), said.join(' ')),
      ...lost.map((figure) => `${question} leaves out ${figure}: ${said.join(' | ')}`),
      ...(saidInEnglish.some(isBadlySpaced) ? [] : said.flatMap((one) => formProblems(question, one))),
    ]
  })
}

/** The marks in a text, what it quotes, and its numbers of two digits and more, with a decimal point. */
function figuresIn(texts: readonly string[]): Set<string> {
  const found = texts.flatMap(
    (text) => text.match(/⟨\d+[abc]?⟩|\d+[.,]\d+|\d{2,}|(?<=[“„«]\s?)[\w-]+(?=\s?[”“»])/g) ?? [],
  )
  return new Set(found.map((figure) => figure.replace(/^(\d+),/, '$1.')))
}

function textProblems(path: string, english: string, other: string): string[] {
  const slotsIn = (text: string) =>
    slots(text)
      .flatMap((part) => ('slot' in part ? [part.slot] : []))
      .sort()
      .join(', ')
  if (english !== '' && other === '') return [`${path} is empty`]
  const [wanted, found] = [slotsIn(english), slotsIn(other)]
  return [
    ...(wanted === found ? [] : [`${path} has the fields ${found || 'none'}, not ${wanted || 'none'}`]),
    ...unitProblems(path, english, other),
    ...formProblems(path, other),
  ]
}

/** Units stand in a text as often as in English: a unit lost or doubled makes another figure of it. */
function unitProblems(path: string, english: string, other: string): string[] {
  const unitsIn = (text: string) => (text.match(/(?<!\p{L})(mm|µm|°C)(?!\p{L})/gu) ?? []).sort().join(' ')
  const [wanted, found] = [unitsIn(english), unitsIn(other)]
  return wanted === found
    ? []
    : [`${path} has the units ${found || 'none'}, not ${wanted || 'none'}: ${other}`]
}

function formProblems(path: string, text: string): string[] {
  return isBadlySpaced(text) ? [`${path} has a space too many: ${text}`] : []
}

function isBadlySpaced(text: string): boolean {
  return /\S {2,}\S| [.,;](\s|$)/.test(text)
}
