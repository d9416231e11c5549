import type { BoreFinding, Findings } from '../core/findings'
import type { Bore, Measured } from '../core/measured'
import { growthOf } from '../core/outlook/growth'
import type { NextCheck } from '../core/outlook/next-check'
import type { Outlook } from '../core/outlook/outlook'
import type { PlatingShare, Wear } from '../core/outlook/wear'
import { dayText } from './day-text'
import {
  differenceWithDoubt,
  inMicrons,
  microns,
  percent,
  placeText,
  plain,
  plusMinusMicrons,
  size,
} from './numbers'
import { joined, type Row } from './row'
import { words } from './words'

/**
 * How much a bore has worn, when it would meet its limit and when to measure it again; none for a bore to compare
 * with. With the day that it is, as in 2026-03-09, a check that is due is said to be.
 */
export function growthRows(
  measured: Measured,
  findings: Findings,
  finding: BoreFinding,
  today?: string,
): Row[] {
  const bore = measured.bores.find(({ id }) => id === finding.boreId)
  const { wear, outlook, nextCheck } = growthOf(measured, findings, finding)
  if (!bore) return []
  return [
    ...wear.map((one, index) => wearRow(one, index, bore, measured)),
    ...(outlook && wear.length > 0 ? outlookRow(outlook) : []),
    ...(nextCheck && nextCheck.by !== 'at-limit' ? [nextCheckRow(nextCheck, measured, today)] : []),
  ]
}

function wearRow(wear: Wear, index: number, bore: Bore, { bores }: Pick<Measured, 'bores'>): Row {
  const said = words.growth
  const { largest, since, stations, allowedShare: allowed, platingShare, clampings, shrunk } = wear
  const bolted = words.setUp.more.clampings
  const share = allowed && said.share(percent(Math.max(0, allowed.low)), percent(Math.max(0, allowed.high)))
  const boltedApart = clampings && words.findings.clampingsApart(bolted[clampings[0]], bolted[clampings[1]])
  const figure =
    since === 'new-band'
      ? said.range(microns(largest.lowMm, { sign: true }), inMicrons(largest.highMm, { sign: true }))
      : differenceWithDoubt(largest.wearMm, largest.expandedMm)
  return {
    id: `wear:${index}`,
    name: wearName(wear, bore, bores),
    rank: 'main',
    place: largest,
    placeText: placeText(largest),
    figure,
    detail: joined(
      share,
      platingShare && platingText(platingShare),
      wear.asMadeExpandedMm === undefined ? undefined : said.asMade(plusMinusMicrons(wear.asMadeExpandedMm)),
      since === 'new-band' ? said.anywhere : stations > 1 ? said.read(stations) : undefined,
      shrunk.length > 0 ? said.shrunk(shrunk.map(placeText).join('; ')) : undefined,
      boltedApart,
    ),
    brief: joined(share, index === 0 && platingShare ? platingText(platingShare) : undefined, boltedApart),
  }
}

function platingText({ bothSides, oneSide, low, high }: PlatingShare): string {
  return words.growth.plating(percent(bothSides), percent(oneSide), percent(low), percent(high))
}

function wearName({ since, surveyId, boreId }: Wear, { surveys }: Bore, bores: readonly Bore[]): string {
  const said = words.growth
  if (since === 'bore') return said.wear.from(bores.find(({ id }) => id === boreId)?.name ?? '')
  if (since !== 'survey') return said.wear[since]
  const number = surveys.findIndex(({ id }) => id === surveyId)
  const survey = surveys[number]
  if (survey?.hoursRun === 0) return said.wear.whenNew
  return said.wear.since(
    survey?.date === undefined ? said.visitNumber(number + 1) : said.visitOn(dayText(survey.date)),
  )
}

/** Hours rounded down: a check comes sooner rather than later. */
function nextCheckRow(
  check: NextCheck,
  { hoursPerWeek }: Pick<Measured, 'hoursPerWeek'>,
  today: string | undefined,
): Row {
  const said = words.growth.check
  const { afterHours, date, by } = check
  const isDue = date !== undefined && today !== undefined && date <= today
  return {
    id: 'next-check',
    name: said.name,
    rank: 'main',
    figure:
      check.hours === undefined
        ? said.after(hours(Math.floor(afterHours)))
        : said.by(hours(Math.floor(check.hours))),
    detail: joined(
      said.why[by],
      date === undefined || hoursPerWeek === undefined
        ? undefined
        : said.date(dayText(date), plain(hoursPerWeek, 2)),
      isDue ? said.due : undefined,
    ),
  }
}

const hours = (value: number) => plain(value, 0)

function outlookRow(outlook: Outlook): Row[] {
  const said = words.growth
  const row = { id: 'outlook', name: said.outlook, rank: 'main' } as const
  if (!outlook.known) {
    if (outlook.why === 'no-limit') return []
    return [{ ...row, figure: words.findings.notYet, detail: said.reasons[outlook.why] }]
  }
  const { place, limitMm, earliestHours, expectedHours, latestHours } = outlook
  const from = outlook.from === 'surveys' ? said.from.surveys(outlook.surveys) : said.from[outlook.from]
  return [
    {
      ...row,
      place,
      placeText: placeText(place),
      figure: outlook.now
        ? said.now
        : earliestHours === undefined
          ? said.never
          : said.earliest(hours(Math.floor(earliestHours))),
      detail: joined(
        said.limit(size(limitMm)),
        outlook.now ? said.nowDetail : said.oneSided,
        expectedHours === undefined ? undefined : said.expected(hours(expectedHours)),
        outlook.lastTwoExpectedHours === undefined
          ? undefined
          : said.lastTwo(hours(outlook.lastTwoExpectedHours)),
        latestHours === undefined ? undefined : said.latest(hours(Math.ceil(latestHours))),
        outlook.now || !outlook.slopeUncertain ? undefined : said.uncertain,
        outlook.rateChanged ? said.changed : undefined,
        from,
        said.manual,
      ),
      brief: joined(
        said.limit(size(limitMm)),
        outlook.now ? said.nowDetail : said.oneSided,
        latestHours === undefined ? undefined : said.latest(hours(Math.ceil(latestHours))),
        outlook.rateChanged ? said.changed : undefined,
      ),
    },
  ]
}
