import type { BoreFinding, Verdict } from '../core/findings'
import type { Measured } from '../core/measured'
import type { ClearanceEnd, ClearanceWindow, Fit, FitVerdict } from '../core/piston/fits'
import { fitsOf } from '../core/piston/fits'
import type { Pairing } from '../core/piston/pairing'
import {
  amountWithDoubt,
  chances,
  doubtFigure,
  inMicrons,
  isAboutEven,
  microns,
  placeText,
  size,
  temperature,
} from './numbers'
import { pistonNamed } from './piston-names'
import { pistonWords } from './piston-words'
import { type Bar, joined, type Row } from './row'

/**
 * How pistons fit a bore: a row for the one that ran here and for the one that the pairing gives it, and one for all
 * others on offer. None while no piston is on the list.
 */
export function clearanceRows(measured: Measured, finding: BoreFinding, pairing: Pairing): Row[] {
  const fits = fitsOf(measured, finding)
  if (fits.length === 0) return []
  const chosen = chosenFor(pairing, finding.boreId)
  const isOwn = (fit: Fit) => fit.ranHere || fit.pistonId === chosen || fits.length === 1
  return [
    ...fits.filter(isOwn).map((fit) => fitRow(measured, fit)),
    ...othersRow(
      measured,
      fits.filter((fit) => !isOwn(fit)),
    ),
  ]
}

function chosenFor(pairing: Pairing, boreId: string): string | undefined {
  return pairing.known ? pairing.pairs.find((pair) => pair.boreId === boreId)?.pistonId : undefined
}

function fitRow(measured: Measured, fit: Fit): Row {
  const said = pistonWords.clearance
  const { least, most, verdict, window } = fit
  const row = {
    id: `clearance:${fit.pistonId}`,
    name: said.name(pistonNamed(fit.pistonId, measured)),
    rank: 'main',
  } as const
  if (!least || !most) {
    return { ...row, figure: said.notYet, detail: fit.unknown ? said.unknown[fit.unknown] : '' }
  }
  const end = nearerEnd(fit, least, most)
  const bar = barOf(end, window)
  return {
    ...row,
    ...(end.end.place ? { place: end.end.place, placeText: placeText(end.end.place) } : {}),
    figure: figureOf(least, most),
    detail: joined(
      fit.ranHere ? said.ranHere : undefined,
      window ? windowText(window) : said.window.none,
      verdict === 'too-close' ? leanText(fit) : undefined,
      fit.unknown && said.unknown[fit.unknown],
      asNewText(fit),
      gradesText(measured, fit),
      said.rules[fit.rule],
      pistonText(fit),
      said.atRest(temperature(fit.atC)),
      asMeasuredText(fit),
      gapsText(fit),
    ),
    brief: joined(
      fit.ranHere ? said.ranHere : undefined,
      window ? windowText(window) : said.window.none,
      verdict === 'too-close' ? leanText(fit) : undefined,
      fit.unknown && said.unknown[fit.unknown],
      said.rules[fit.rule],
      pistonText(fit),
      gapsText(fit),
    ),
    ...(verdict ? { verdict: markOf[verdict], verdictText: said.verdicts[verdict] } : {}),
    ...(bar ? { bar } : {}),
  }
}

const markOf: Readonly<Record<FitVerdict, Verdict>> = {
  inside: 'inside',
  'too-tight': 'below',
  'too-loose': 'above',
  'too-close': 'too-close',
}

/** 40 ± 5 to 62 ± 5 µm; one figure where the rule has one. */
function figureOf(least: ClearanceEnd, most: ClearanceEnd): string {
  const said = pistonWords.clearance
  const whole = amountWithDoubt(most.valueMm, most.expandedMm)
  if (least.valueMm === most.valueMm) return whole
  return said.range(said.withDoubt(microns(least.valueMm), doubtFigure(least.expandedMm)), whole)
}

interface JudgedEnd {
  readonly end: ClearanceEnd
  readonly limit: 'minMm' | 'maxMm'
}

/** The end that is nearer to its limit, or further past it, in its doubt. */
function nearerEnd({ window }: Fit, least: ClearanceEnd, most: ClearanceEnd): JudgedEnd {
  const room = (end: ClearanceEnd, mm: number) => mm / Math.max(end.standardUncertaintyMm, 1e-9)
  const below =
    window?.minMm === undefined ? Number.POSITIVE_INFINITY : room(least, least.valueMm - window.minMm)
  const above =
    window?.maxMm === undefined ? Number.POSITIVE_INFINITY : room(most, window.maxMm - most.valueMm)
  return below < above ? { end: least, limit: 'minMm' } : { end: most, limit: 'maxMm' }
}

function barOf({ end, limit }: JudgedEnd, window: ClearanceWindow | undefined): Bar | undefined {
  const limitMm = window?.[limit]
  if (limitMm === undefined) return undefined
  const { valueMm: value, expandedMm } = end
  return { low: value - expandedMm, value, high: value + expandedMm, limit: limitMm }
}

function windowText({ minMm, maxMm, maxIs }: ClearanceWindow): string {
  const said = pistonWords.clearance.window
  if (minMm !== undefined && maxMm !== undefined) {
    return said.both[maxIs](maxIs === 'new' ? microns(minMm) : inMicrons(minMm), inMicrons(maxMm))
  }
  if (maxMm !== undefined) return said.max[maxIs](inMicrons(maxMm))
  return minMm === undefined ? said.none : said.min(inMicrons(minMm))
}

function leanText({ lean, leanProbability }: Fit): string | undefined {
  const said = pistonWords.clearance
  if (lean === undefined || leanProbability === undefined) return undefined
  return isAboutEven(leanProbability) ? said.even : said.leans[lean](chances(leanProbability))
}

/** Whether it is as good as a new pair; what the verdict says already is not said again. */
function asNewText({ asNew, window, verdict }: Fit): string | undefined {
  const said = pistonWords.clearance.asNew
  const max = inMicrons(window?.newMaxMm ?? 0)
  if (!asNew || verdict === 'too-tight' || verdict === 'too-loose') return undefined
  const text = said[asNew.verdict]
  return typeof text === 'string' ? text : text(max)
}

/** Grades of bores and pistons are matched; where both are known and differ it is told. */
function gradesText(measured: Measured, { boreId, pistonId }: Fit): string | undefined {
  const bore = measured.bores.find(({ id }) => id === boreId)?.grade
  const piston = measured.pistons?.find(({ id }) => id === pistonId)?.grade
  if (bore === undefined || piston === undefined || bore === piston) return undefined
  return pistonWords.clearance.otherGrade(bore, piston)
}

function pistonText({ sizeMm, sizeFrom }: Fit): string | undefined {
  const said = pistonWords.clearance
  if (sizeMm === undefined) return undefined
  return sizeFrom === 'range' ? said.fromRange(size(sizeMm)) : said.read(size(sizeMm))
}

function gapsText({ gaps }: Fit): string | undefined {
  const said = pistonWords.clearance
  return gaps.length > 0 ? said.provisional(gaps.map((gap) => said.gaps[gap])) : undefined
}

function asMeasuredText({ asMeasured }: Fit): string | undefined {
  if (!asMeasured) return undefined
  const { least, most, boreC, pistonC } = asMeasured
  return pistonWords.clearance.asMeasured(figureOf(least, most), temperature(boreC), temperature(pistonC))
}

function othersRow(measured: Measured, fits: readonly Fit[]): Row[] {
  if (fits.length === 0) return []
  const said = pistonWords.clearance
  const fitting = fits.filter(({ verdict }) => verdict === 'inside').length
  return [
    {
      id: 'clearance:others',
      name: said.others,
      rank: 'main',
      figure: said.othersFit(fitting, fits.length),
      detail: fits.map((fit) => otherText(measured, fit)).join(' · '),
    },
  ]
}

function otherText(measured: Measured, fit: Fit): string {
  const said = pistonWords.clearance
  const { least, most, verdict, unknown, gaps } = fit
  const how = unknown ? said.unknown[unknown] : verdict ? said.verdicts[verdict] : said.window.none
  return said.other(
    pistonNamed(fit.pistonId, measured),
    least && most ? figureOf(least, most) : '',
    [
      how,
      verdict === 'too-close' ? leanText(fit) : undefined,
      gaps.length > 0 ? said.provisionalShort : undefined,
    ]
      .filter((text) => text !== undefined)
      .join(', '),
  )
}
