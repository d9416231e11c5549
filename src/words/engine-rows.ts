import { standingOf } from '../core/conformity/standing'
import type { Findings } from '../core/findings'
import type { Measured } from '../core/measured'
import { type OversizeChoice, type OversizeOfBore, oversizeChoice } from '../core/piston/oversize-choice'
import type { Pair, Pairing } from '../core/piston/pairing'
import { inMicrons, inTenthsOfMicrons, length, lengthFigure, size, sizeWithUnit } from './numbers'
import { oversizeText } from './oversize'
import { pistonNamed } from './piston-names'
import { pistonWords } from './piston-words'
import { joined, type Row } from './row'
import { words } from './words'

/** What is of the engine rather than of one bore: which piston goes in which bore, and what it would be bored to. */
export function engineRows(measured: Measured, findings: Findings, pairing: Pairing): Row[] {
  return [...pairingRow(measured, pairing), ...oversizeRow(measured, findings)]
}

function pairingRow(measured: Measured, pairing: Pairing): Row[] {
  if (!pairing.known) return []
  const said = pistonWords.pairing
  const { pairs, fitNone, left, notMeasured, sparePistonIds } = pairing
  const all = pairs.length + fitNone.length + left.length
  const names = (ids: readonly string[]) => words.app.and(ids.map((id) => boreName(measured, id)))
  const isOne = all + notMeasured.length === 1
  const [only] = pairs
  if (isOne && (measured.pistons ?? []).length === 1) return []
  return [
    {
      id: 'pairing',
      name: isOne ? said.one : said.name,
      rank: 'main',
      figure:
        pairs.length === 0
          ? said.nothing
          : isOne && only
            ? pistonNamed(only.pistonId, measured)
            : said.served(pairs.length, all),
      detail: joined(
        isOne
          ? only?.fit.verdict === 'too-close'
            ? said.closeAlone
            : undefined
          : pairs.map((pair) => pairText(measured, pair)).join(', '),
        worstText(measured, pairing, isOne),
        fitNone.length > 0 && !isOne ? said.fitNone(names(fitNone)) : undefined,
        left.length > 0 ? said.left(names(left)) : undefined,
        notMeasured.length > 0 ? said.notMeasured(names(notMeasured)) : undefined,
        sparePistonIds.length > 0
          ? said.spare(words.app.and(sparePistonIds.map((id) => pistonNamed(id, measured))))
          : undefined,
      ),
    },
  ]
}

function pairText(measured: Measured, { boreId, pistonId, fit }: Pair): string {
  const said = pistonWords.pairing
  const text = said.pair(boreName(measured, boreId), pistonNamed(pistonId, measured))
  return fit.verdict === 'too-close' ? said.close(text) : text
}

function worstText(
  measured: Measured,
  { worst, middleMm }: Extract<Pairing, { readonly known: true }>,
  isOne: boolean,
): string | undefined {
  const said = pistonWords.pairing
  if (!worst) return undefined
  const [departure, middle] = [inMicrons(worst.departureMm), inTenthsOfMicrons(middleMm)]
  return isOne
    ? said.worstAlone(departure, middle)
    : said.worst(departure, middle, boreName(measured, worst.boreId))
}

/** Shown where the manual has oversizes, and where pistons are on the list and a bore is not inside its limits. */
function oversizeRow(measured: Measured, findings: Findings): Row[] {
  const choice = oversizeChoice(measured, findings)
  const isAsked =
    measured.spec.oversizesMm !== undefined ||
    ((measured.pistons ?? []).length > 0 &&
      findings.bores.some((finding) => ['out', 'too-close'].includes(standingOf(finding))))
  if (!isAsked) return []
  const row = { id: 'oversize', name: pistonWords.oversize.name, rank: 'main' } as const
  return [
    choice.known ? { ...row, ...chosenText(measured, choice) } : { ...row, ...noneText(measured, choice) },
  ]
}

function noneText(
  measured: Measured,
  { why, boreId, cleanUpMm, bores = [] }: Extract<OversizeChoice, { readonly known: false }>,
): Pick<Row, 'figure' | 'detail'> {
  const said = pistonWords.oversize
  const isOpen = why === 'wall-not-recorded' || why.startsWith('no-') || why === 'none-given'
  const cleanUp = length(cleanUpMm ?? 0, 3)
  return {
    figure: isOpen ? said.open : said.none,
    detail: joined(
      said.why[why](boreId === undefined ? '' : boreName(measured, boreId), cleanUp),
      bores.length > 0 ? said.order(orderText(measured, bores, cleanUpMm ?? 0)) : undefined,
    ),
  }
}

function chosenText(
  measured: Measured,
  choice: Extract<OversizeChoice, { readonly known: true }>,
): Pick<Row, 'figure' | 'detail' | 'verdict' | 'verdictText'> {
  const said = pistonWords.oversize
  const { alike, oversizeMm, cleanUpMm, cleanUpIsHint, bores, notMeasured, pistonIds } = choice
  const isClose = bores.some(({ verdict }) => verdict === 'too-close')
  const isOne = bores.length + notMeasured.length === 1
  return {
    figure: oversizeMm === undefined ? said.each : oversizeText(oversizeMm),
    detail: joined(
      alike && !isOne ? said.alike : undefined,
      alike ? undefined : bores.map((bore) => ownText(measured, bore)).join(', '),
      isClose ? said.close : undefined,
      said.order(orderText(measured, bores, cleanUpMm)),
      cleanUpIsHint ? said.hint(length(cleanUpMm, 3)) : undefined,
      said.honed,
      measured.bores.some(({ wall }) => wall?.liner === true) ? said.liner : undefined,
      pistonIds.length > 0
        ? said.pistons(words.app.and(pistonIds.map((id) => pistonNamed(id, measured))))
        : (measured.pistons ?? []).length > 0
          ? said.noPistons
          : undefined,
      notMeasured.length > 0
        ? said.notMeasured(words.app.and(notMeasured.map((id) => boreName(measured, id))))
        : undefined,
    ),
    ...(isClose
      ? { verdict: 'too-close', verdictText: words.marks['too-close'] }
      : { verdict: 'inside', verdictText: said.proven }),
  }
}

function ownText(measured: Measured, { boreId, ownOversizeMm = 0 }: OversizeOfBore): string {
  return pistonWords.oversize.boreTo(boreName(measured, boreId), oversizeText(ownOversizeMm))
}

function orderText(measured: Measured, bores: readonly OversizeOfBore[], cleanUpMm: number): string {
  return bores
    .map((bore) =>
      pistonWords.oversize.bore(
        boreName(measured, bore.boreId),
        size(bore.largest.diameterMm),
        lengthFigure(cleanUpMm, 3),
        size(bore.neededMm),
        offText(bore),
      ),
    )
    .join(', ')
}

function offText({ takenOff }: OversizeOfBore): string {
  return takenOff ? pistonWords.oversize.off(size(takenOff.leastMm), sizeWithUnit(takenOff.mostMm)) : ''
}

function boreName(measured: Measured, boreId: string): string {
  const bore = measured.bores.find(({ id }) => id === boreId)
  if (!bore) throw new Error(`engineRows: no bore ${boreId}`)
  return bore.name
}
