import type { CleanedMark, CleanedMarks } from '../core/scan/cleaned-marks'
import type { MarkPattern, ScanMark, ScanMarks } from '../core/scan/scan-marks'
import { degrees, depth, inMicrons, inTenthsOfMicrons, microns, plusMinusMicrons } from './numbers'
import { scanMarkWords } from './scan-mark-words'
import { surfacePlaceText } from './surface'
import { words } from './words'

const said = scanMarkWords

/** A mark by its number in the list, from 1, and what it looks like: 1 streak along the stroke. */
export function scanMarkTitle(number: number, { shape, within }: Pick<ScanMark, 'shape' | 'within'>): string {
  return said.numbered(number, within === undefined ? said.shapes[shape] : said.line)
}

/** Where a mark lies, to a tenth of a millimetre and a tenth of a degree. */
export function scanMarkPlace(mark: ScanMark): string {
  return surfacePlaceText(roundedPlace(mark))
}

/** The same place with no more digits than it is good for. */
export function roundedPlace({ fromDepthMm, toDepthMm, fromDegrees, toDegrees }: ScanMark) {
  const tenth = (value: number) => Math.round(value * 10) / 10
  const isAllRound = toDegrees - fromDegrees >= 360
  return {
    fromDepthMm: tenth(fromDepthMm),
    toDepthMm: tenth(toDepthMm),
    fromDegrees: tenth(fromDegrees),
    toDegrees: isAllRound ? 360 : tenth(toDegrees),
  }
}

/** How far a mark stands out, with its doubt: reads smaller by 16 ± 2 µm. */
export function scanMarkHeight({ sign, heightUm, expandedUm }: ScanMark): string {
  const doubt = plusMinusMicrons(expandedUm / 1000)
  return said.height(said.signs[sign], microns(Math.abs(heightUm) / 1000), doubt)
}

/** What is known of a mark beside its place. */
export function scanMarkParts(mark: ScanMark): string[] {
  const { within, bridge, besideOpening, acrossMm, alongMm } = mark
  const tenth = (mm: number) => depth(Math.round(mm * 10) / 10)
  return [
    scanMarkHeight(mark),
    said.size(tenth(acrossMm), tenth(alongMm)),
    ...(within === undefined ? [] : [said.within(within + 1)]),
    ...(bridge === undefined
      ? []
      : [
          bridge.ports
            ? said.onBridgeNamed(...bridge.ports)
            : said.onBridge(wholeDegrees(bridge.fromDegrees), wholeDegrees(bridge.toDegrees)),
        ]),
    ...(besideOpening ? [said.besideOpening] : []),
  ]
}

/** How marks lie, and the usual causes, a sentence or two. */
export function scanPatternText(pattern: MarkPattern): { readonly name: string; readonly causes: string } {
  const { patterns } = said
  const { causes } = patterns
  switch (pattern.kind) {
    case 'four-corners':
      return {
        name: patterns.fourCorners(
          words.app.and(pattern.atDegrees.map(wholeDegrees)),
          words.app.and(pattern.pinDegrees.map(wholeDegrees)),
        ),
        causes: causes['four-corners'],
      }
    case 'both-sides':
      return {
        name: patterns.bothSides(wholeDegrees(pattern.atDegrees[0]), wholeDegrees(pattern.atDegrees[1])),
        causes: causes['both-sides'],
      }
    case 'one-side':
      return { name: patterns.oneSide(wholeDegrees(pattern.atDegrees)), causes: causes['one-side'] }
    case 'all-round':
      return { name: patterns.allRound, causes: causes['all-round'] }
    case 'bridge':
      return bridgeText(pattern)
    case 'band':
      return { name: patterns.band, causes: causes.band }
  }
}

function bridgeText({ bridge, sign }: Extract<MarkPattern, { kind: 'bridge' }>) {
  const { patterns } = said
  const where = bridge.ports
    ? patterns.portsNamed(...bridge.ports)
    : patterns.portsAt(wholeDegrees(bridge.fromDegrees), wholeDegrees(bridge.toDegrees))
  return sign === 'smaller'
    ? { name: patterns.proudBridge(where), causes: patterns.causes['bridge-smaller'] }
    : { name: patterns.relievedBridge(where), causes: patterns.causes['bridge-larger'] }
}

/** What the marks of a scan are in general: how small ones show, or that there are none, and lone values. */
export function scanMarksLead({ marks, loneValues, leastHeightUm }: ScanMarks): string[] {
  const least = inTenthsOfMicrons(Math.max(0.1, Math.ceil(leastHeightUm * 10) / 10) / 1000)
  return [
    marks.length === 0 ? said.none(least) : said.lead(least),
    ...(loneValues > 0 ? [said.lone(loneValues)] : []),
  ]
}

/** What the sign of marks says of a wall, and the care that cleaning needs; nothing without marks. */
export function scanSignText({ marks }: ScanMarks, isPlated: boolean): string[] {
  if (marks.length === 0) return []
  return [isPlated ? said.sign.plated : said.sign.other, said.sign.care]
}

/** All that is said of the marks of a scan, a line each, for a page of text. */
export function scanMarkLines(found: ScanMarks, isPlated: boolean): string[] {
  return [
    ...scanMarksLead(found),
    ...found.marks.map((mark, index) =>
      said.text(scanMarkTitle(index + 1, mark), scanMarkPlace(mark), scanMarkParts(mark)),
    ),
    ...(found.patterns.length > 0 ? [said.patterns.lead] : []),
    ...found.patterns.map((pattern) => {
      const { name, causes } = scanPatternText(pattern)
      return `${name} ${causes}`
    }),
    ...scanSignText(found, isPlated),
  ]
}

/** What became of the marks of a scan when the bore was cleaned, a line each. */
export function cleanedLines(before: ScanMarks, after: ScanMarks, compared: CleanedMarks): string[] {
  if ('turnedDegrees' in compared) return [said.cleaned.turned(degrees(compared.turnedDegrees))]
  const fresh = compared.fresh.flatMap((index) => {
    const mark = after.marks[index]
    return mark ? [`${scanMarkTitle(index + 1, mark)}, ${scanMarkPlace(mark)}`] : []
  })
  return [
    ...compared.marks.flatMap((one) => {
      const mark = before.marks[one.mark]
      return mark ? [cleanedLine(one, mark)] : []
    }),
    ...(fresh.length > 0 ? [said.cleaned.fresh(words.app.and(fresh))] : []),
    ...(compared.sameZero === 'taken' ? [said.cleaned.taken] : []),
  ]
}

function cleanedLine(one: CleanedMark, mark: ScanMark): string {
  const { fates, groove, line, figures } = said.cleaned
  const isGroove = mark.sign === 'larger' && one.fate === 'as-before'
  const signed = (um: number) => inMicrons(um / 1000, { sign: true })
  const doubt = (um: number) => plusMinusMicrons(um / 1000)
  const written = one.after
    ? figures(signed(one.before.um), `${signed(one.after.um)} ${doubt(one.after.expandedUm)}`)
    : signed(one.before.um)
  const title = scanMarkTitle(one.mark + 1, mark)
  return line(title, scanMarkPlace(mark), isGroove ? groove : fates[one.fate], written)
}

function wholeDegrees(angle: number): string {
  return degrees(Math.round(angle) % 360)
}
