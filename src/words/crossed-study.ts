import type { CrossedRanges } from '../core/gauge/crossed-ranges'
import type { CrossedStudyFinding } from '../core/gauge/crossed-study'
import type { CrossedRefusal } from '../core/gauge/crossed-table'
import type { CrossedVariance, Spread } from '../core/gauge/crossed-variance'
import type { Measured } from '../core/measured'
import { dayText } from './day-text'
import { answerSentences } from './gauge-check'
import { gaugeName } from './instrument-names'
import { differenceUnitText } from './length-unit'
import { hundredthsOfMicrons, percent, tenthsOfMicrons } from './numbers'
import { studyWords } from './study-words'
import { words } from './words'

type Variance = Omit<CrossedVariance, 'ofMean'>

/** A spread of a crossed study, written. */
export interface StudyRow {
  readonly name: string
  readonly amount: string
  readonly interval: string
  readonly share: string
}

const spreads = ['gauge', 'people', 'peopleByPart', 'gaugeAndPeople', 'parts', 'all'] as const

/** The gauge of a crossed study, and the day where it was recorded. */
export function studyHeading(study: CrossedStudyFinding, lists: Measured): string {
  const gauge = lists.gauges.find(({ id }) => id === study.gaugeId)
  if (!gauge) throw new Error(`studyHeading: no gauge ${study.gaugeId} in the job`)
  const day = study.date === undefined ? undefined : dayText(study.date)
  return words.gaugeCheck.of(gaugeName(gauge, lists), day)
}

/** How many read what how often; what is wanting where nothing can be worked out. */
export function studyReadText({ shown }: CrossedStudyFinding): string {
  if (!shown.known) return refusalText(shown)
  return studyWords.read(shown.people.length, shown.parts.length, shown.trials)
}

/** What the spread of the readings is made of; by one person there are fewer rows. */
export function studyRows({ shown }: CrossedStudyFinding): StudyRow[] {
  if (!shown.known) return []
  const { variance } = shown
  const several = variance.people !== undefined
  return spreads.flatMap((which) => {
    const spread = variance[which]
    return spread && (several || which !== 'gaugeAndPeople') ? [rowOf(which, spread)] : []
  })
}

function rowOf(which: (typeof spreads)[number], { deviationUm, lowUm, highUm, share }: Spread): StudyRow {
  const said = studyWords
  return {
    name: said.rows[which],
    amount: amountText(deviationUm),
    interval: said.interval(fine(lowUm), amountText(highUm)),
    share: percent(share),
  }
}

/** What the study means, in sentences. */
export function studySentences({ shown }: CrossedStudyFinding): string[] {
  if (!shown.known) return []
  const { variance, ranges, answer } = shown
  return [
    tellsSentence(variance),
    ...(answer ? answerSentences(answer, studyWords) : [words.gaugeCheck.notUsed]),
    studyWords.doubt,
    ...interactionSentence(variance),
    ...rangesSentences(ranges, variance),
  ]
}

/** The whole of a study as one text. */
export function studyText(study: CrossedStudyFinding): string {
  const said = studyWords
  const rows = studyRows(study).map(
    ({ name, amount, interval, share }) => `${said.rowText(name, amount, interval, share)}.`,
  )
  return [studyReadText(study), ...rows, ...studySentences(study)].join(' ')
}

function refusalText(refusal: CrossedRefusal): string {
  const { wanting } = studyWords
  switch (refusal.why) {
    case 'too-many':
      return wanting['too-many'](refusal.readings, refusal.most)
    case 'uneven': {
      const { person, part, found, usual, others } = refusal
      const here = wanting.uneven(person, part, found, usual)
      return others > 0 ? `${here} ${wanting.others(others)}` : here
    }
    default:
      return wanting[refusal.why]
  }
}

function interactionSentence({ interaction, pooled }: Variance): string[] {
  const said = studyWords
  if (!interaction) return []
  const chance = interaction.chance < 0.01 ? said.underOne : percent(interaction.chance)
  return [pooled ? said.pooled(chance) : said.apart(chance)]
}

function tellsSentence({ categories, categoriesLow, categoriesHigh }: Variance): string {
  const said = studyWords
  return categories < 2
    ? said.tellsNone(categoriesLow, categoriesHigh)
    : said.tells(categories, categoriesLow, categoriesHigh)
}

function rangesSentences(
  { gauge, people, gaugeAndPeople, parts, categories }: CrossedRanges,
  variance: Variance,
): string[] {
  const said = studyWords
  return [
    said.byRanges({
      gauge: amountText(gauge.deviationUm),
      people: amountText(people.deviationUm),
      both: amountText(gaugeAndPeople.deviationUm),
      share: percent(gaugeAndPeople.share),
      parts: amountText(parts.deviationUm),
    }),
    said.rangesTell(categories, categories !== variance.categories),
  ]
}

function amountText(um: number): string {
  return `${fine(um)} ${differenceUnitText()}`
}

/** A standard deviation with the digits it deserves. */
function fine(um: number): string {
  return um < 10 ? hundredthsOfMicrons(um / 1000) : tenthsOfMicrons(um / 1000)
}
