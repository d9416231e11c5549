import type { BoreFinding, DepthSpan, Note } from '../core/findings'
import type { Bore, OvalityRule, TaperRule } from '../core/measured'
import { unseenText } from './blunders'
import {
  degrees,
  depth,
  doubtNeeded,
  inTenthsOfMicrons,
  placeText,
  plain,
  plusMinusMicrons,
  temperature,
} from './numbers'
import { isAboutMeanOnly } from './verdict'
import { words } from './words'

/** More places than these are only counted. */
const mostPlaces = 6

/** A rule for out-of-round or taper, as it is printed beside the figure. */
export function ruleText(rule: OvalityRule | TaperRule): string {
  return { ...words.ovalityRules, ...words.taperRules }[rule]
}

/** What the method or the readings cannot show, or what must be asked, in a sentence. */
export function noteText(note: Note): string {
  const { notes } = words
  switch (note.code) {
    case 'gauge-cannot-prove-band':
      return notes.cannotProve(
        plusMinusMicrons(note.expandedMm),
        doubtNeeded(note.neededExpandedMm) ?? words.notes.lessThanAnyGauge,
      )
    case 'below-smallest-new':
      return notes.belowNew(placeText(note.place))
    case 'blocked-reading':
      return notes.blocked(placeText(note.place), words.app.and(note.by))
    case 'soaked-but-apart':
      return notes.soakedApart(...soakedApart(note))
    case 'temperature-decides':
      return notes.temperatureDecides[note.verdict](
        placeText(note.place),
        plusMinusMicrons(note.expandedMm),
        plusMinusMicrons(note.withoutMm),
      )
    case 'correction-exceeds-half-band':
      return notes.largeCorrection(
        inTenthsOfMicrons(note.correctionMm, { sign: true }),
        inTenthsOfMicrons(note.halfMm),
      )
    case 'part-and-standard-apart':
      return notes.apart[note.differenceK > 0 ? 'warmer' : 'colder'](plain(Math.abs(note.differenceK), 1))
    case 'two-contacts-see-even-lobes-only':
      return notes.evenLobes
    case 'two-axes-can-miss-an-oval':
      return notes.twoAxes(degrees(betweenAxes(note.axesDegrees)))
    case 'one-axis-sees-no-oval':
      return notes.oneAxis
    case 'no-reading-between':
      return notes.gaps(words.app.and(gapTexts(note.gaps)))
    case 'stations-not-read':
      return notes.notRead(notes.places(...shortened(note.places, placeText)))
    case 'stations-out-of-reach':
      return notes.outOfReach(notes.places(...shortened(note.places, placeText)))
    case 'length-not-known':
      return notes.lengthNotKnown(depth(note.drawnMm))
  }
}

/** The two temperatures, with what the second is of. */
export function soakedApart(note: Extract<Note, { code: 'soaked-but-apart' }>): [string, string, string] {
  return [temperature(note.boreC), words.setUp.references[note.reference], temperature(note.referenceC)]
}

/** The first of a list in words, and how many more there are. */
function shortened<Item>(items: readonly Item[], text: (item: Item) => string): [string[], number] {
  const shown = items.slice(0, mostPlaces).map(text)
  return [shown, items.length - shown.length]
}

function gapTexts(gaps: readonly DepthSpan[]): readonly string[] {
  const [shown, more] = shortened(gaps, (gap) =>
    words.notes.gap(depth(gap.fromDepthMm), depth(gap.toDepthMm)),
  )
  return more > 0 ? [...shown, words.notes.moreGaps(more)] : shown
}

/** Half way between two axes, where an oval that both miss would show. */
function betweenAxes([first = 0, second = 0]: readonly number[]): number {
  return (first + second) / 2
}

/** What keeps a verdict open belongs beside it. */
function isBesideVerdict({ code }: Note): boolean {
  return code === 'temperature-decides'
}

/** Where the doubt of the temperatures alone keeps the verdict open: that it does, and what to do. */
export function temperatureSentence({ notes }: BoreFinding): string | undefined {
  const note = notes.find(isBesideVerdict)
  return note && noteText(note)
}

/** Every note of a bore in sentences, with what out-of-round and taper mean where they are shown. */
export function noteTexts(finding: BoreFinding): string[] {
  const unseen = unseenText(finding.unseen)
  const shapes = [...finding.ovality, ...finding.taper].some((shape) => shape.known)
  return [
    ...(isAboutMeanOnly(finding) ? [words.notes.threeContacts] : []),
    ...(finding.gaugeKind === 'three-contact-micrometer' && !isAboutMeanOnly(finding)
      ? [words.notes.threeContactsBounded]
      : []),
    ...finding.notes.filter((note) => !isBesideVerdict(note)).map(noteText),
    ...(shapes ? [words.notes.differenceOfDiameters] : []),
    ...(unseen === undefined ? [] : [unseen]),
  ]
}

/** What to heed before a decision: who has the last word, and what figures do not show. */
export function cautions(finding: BoreFinding, bore: Pick<Bore, 'wall'>): string[] {
  const { cautions: said } = words
  const kind = bore.wall?.kind
  const ofWall = kind && said.walls[kind]
  return [
    said.manual,
    kind === 'plated-aluminium' ? said.surfacePlated : said.surface,
    ...(ofWall ? [ofWall] : []),
    said.warm,
    ...(finding.provisional.length > 0 && finding.stations.length > 0 ? [said.provisional] : []),
  ]
}
