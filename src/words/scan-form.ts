import type { ScanFit } from '../core/scan/radial-scan'
import type { ScanRange } from '../core/scan/range-of-many'
import type { ScanForm } from '../core/scan/scan-form'
import { amountWithDoubt, degrees, depth, inMicrons, inTenthsOfMicrons, withDecimals } from './numbers'
import { scanFormWords as said } from './scan-form-words'

/** A figure of the form of a scan: what it is, how large, where and by which definition. */
export interface ScanFormRow {
  readonly id: 'roundness' | 'cylindricity' | 'oval' | 'two-contact' | 'axis'
  readonly name: string
  readonly figure: string
  readonly detail: string
}

/** The figures of a form, the most telling first. */
export function scanFormRows(form: ScanForm, fit: Pick<ScanFit, 'axis'>): readonly ScanFormRow[] {
  return [
    ...roundnessRow(form),
    ...cylindricityRow(form),
    ...ovalRow(form),
    ...twoContactRow(form),
    {
      id: 'axis',
      name: said.axis,
      figure: said.axisFigure(inTenthsOfMicrons(fit.axis.farthestUm / 1000)),
      detail: said.axisDetail,
    },
  ]
}

/** What must be said beside them. */
export function scanFormNotes({ levels, cylinder, doubt, filter }: ScanForm): readonly string[] {
  return [
    ...(levels.some(({ leastSquares }) => leastSquares.known) ? [] : [said.noRoundness]),
    ...(cylinder.known ? [] : [said.noCylindricity]),
    said.probeShows(inTenths(doubt.roundShowsUm), inTenths(doubt.cylinderShowsUm)),
    ...(filter && filter.nearGapValues > 0 ? [said.nearGaps(String(filter.nearGapValues))] : []),
  ]
}

function roundnessRow({ levels }: ScanForm): readonly ScanFormRow[] {
  const byZone = levels.flatMap(({ depthMm, minimumZone }) =>
    minimumZone.known ? [{ depthMm, range: minimumZone.roundness }] : [],
  )
  const bySquares = levels.flatMap(({ depthMm, leastSquares }) =>
    leastSquares.known ? [{ depthMm, range: leastSquares.roundness }] : [],
  )
  const worst = widest(byZone.length > 0 ? byZone : bySquares)
  if (!worst) return []
  const detail = byZone.length > 0 ? said.roundnessDetail : said.roundnessSquares
  return [
    {
      id: 'roundness',
      name: said.roundness,
      figure: rangeText(worst.range),
      detail: detail(depth(worst.depthMm)),
    },
  ]
}

function cylindricityRow({ cylinder }: ScanForm): readonly ScanFormRow[] {
  if (!cylinder.known) return []
  const figure = rangeText(cylinder.minimumZone.cylindricity)
  return [{ id: 'cylindricity', name: said.cylindricity, figure, detail: said.cylindricityDetail }]
}

function ovalRow({ levels }: ScanForm): readonly ScanFormRow[] {
  const ovals = levels.flatMap(({ depthMm, oval }) => (oval ? [{ depthMm, oval }] : []))
  const [first, ...others] = ovals
  if (!first) return []
  const { depthMm, oval } = others.reduce((a, b) => (b.oval.ovalUm > a.oval.ovalUm ? b : a), first)
  const at = depth(depthMm)
  return [
    {
      id: 'oval',
      name: said.oval,
      figure: amountWithDoubt(oval.ovalUm / 1000, oval.expandedUm / 1000),
      detail:
        oval.longAxisDegrees === undefined
          ? said.ovalNone(at, inMicrons((oval.atMostUm ?? oval.ovalUm) / 1000))
          : said.ovalDetail(at, degrees(Math.round(oval.longAxisDegrees) % 180)),
    },
  ]
}

function twoContactRow({ levels }: ScanForm): readonly ScanFormRow[] {
  const worst = widest(
    levels.flatMap(({ depthMm, twoContact }) =>
      twoContact ? [{ depthMm, range: twoContact.outOfRound }] : [],
    ),
  )
  if (!worst) return []
  const detail = said.twoContactDetail(depth(worst.depthMm))
  return [{ id: 'two-contact', name: said.twoContact, figure: rangeText(worst.range), detail }]
}

function widest<Level extends { readonly range: ScanRange }>(levels: readonly Level[]): Level | undefined {
  return levels.reduce<Level | undefined>(
    (most, one) => (most && most.range.valueUm >= one.range.valueUm ? most : one),
    undefined,
  )
}

function rangeText({ valueUm, lowUm, highUm }: ScanRange): string {
  return said.range(
    inTenths(valueUm),
    withDecimals(Math.floor(lowUm * 10) / 10, 1, 1),
    withDecimals(Math.ceil(highUm * 10) / 10, 1, 1),
  )
}

function inTenths(um: number): string {
  return inTenthsOfMicrons(um / 1000)
}
