import { blunderKey } from './blunders/blunder-key'
import { blundersOf, unseenOf } from './blunders/blunders'
import { stepOf, surveyAsRead } from './blunders/survey-as-read'
import { conditionsOf } from './conditions-of'
import { boreVerdict } from './conformity/bore-verdict'
import { gradeFindings } from './conformity/grade-findings'
import { limitPair } from './conformity/limit-pair'
import { ovalKeepsInside } from './conformity/oval-keeps-inside'
import { entryOf, roughSizeMm } from './diameter/entry'
import { readingReference } from './diameter/reading-reference'
import { boreDifference } from './difference/bore-difference'
import type { BoreFinding, BoreVerdict, Difference, Findings, Place, StationFinding } from './findings'
import { formAlongDepth } from './form/form-along-depth'
import { largest, levelFinding, levelsOf, smallest } from './form/level'
import { ovality } from './form/ovality'
import { place } from './form/range-finding'
import { taper } from './form/taper'
import { widestOval } from './form/widest-oval'
import { gaugeChecks } from './gauge/gauge-check'
import type { Bore, Measured, Survey } from './measured'
import { notesOf } from './notes'
import { blockedBy } from './ports/blocked'
import { provisionalReasons } from './provisional'
import { stationFindings } from './station-findings'
import { drawnPastLevelsMm } from './surface/drawn-length'
import { surfaceFound } from './surface-findings/surface-found'
import { temperatureEffect } from './temperature/temperature-effect'
import type { SetUpConditions } from './uncertainty/set-up-contributions'

/**
 * What the readings prove: for each bore and survey the diameters at 20 °C with their doubt, the verdicts,
 * level means, ovality and taper by every rule, and for the latest survey of each bore the difference from
 * each comparison bore. Pure; lengths in mm. A survey that names an unknown set-up, gauge or standard is our own mistake
 * (the job file is checked before) and throws.
 */
export function inspect(measured: Measured): Findings {
  const bores: BoreFinding[] = []
  const earlier: BoreFinding[] = []
  for (const bore of measured.bores) {
    for (const [index, survey] of bore.surveys.entries()) {
      const isLatest = index === bore.surveys.length - 1
      ;(isLatest ? bores : earlier).push(inspectBore(measured, bore, survey))
    }
  }
  return {
    bores: bores.map((finding) => ({ ...finding, differences: differences(measured, finding, bores) })),
    earlier,
    gaugeChecks: gaugeChecks(measured),
  }
}

function inspectBore(measured: Measured, bore: Bore, survey: Survey): BoreFinding {
  const conditions = conditionsOf(measured, bore, survey)
  const pair = limitPair(measured.spec, bore)
  const stations = stationFindings(conditions, survey, pair)
  const counted = stations.filter((s) => s.counted)
  const { setUp, gauge, standard } = conditions
  const provisional = provisionalReasons(setUp, gauge, standard, bore, survey)
  const kind = gauge.kind
  const sizeless = readingReference(setUp, conditions.standardExpansion.perK) === undefined
  const verdict: BoreVerdict =
    sizeless && survey.readings.length > 0
      ? { known: false, why: 'no-size-over-contacts' }
      : boreVerdict(stations, pair, provisional.length === 0 && seesOval(measured, bore, survey, stations))
  const levels = levelsOf(stations)
  const temperature = temperatureEffect(conditions, stations)
  const depthForm = formAlongDepth(levels)
  const oval = kind === 'three-contact-micrometer' ? undefined : widestOval(levels)
  const asRead = surveyAsRead(conditions, survey, measured.spec, stations)
  const drawnLengthMm = bore.lengthMm ?? deepest(survey) + drawnPastLevelsMm
  return {
    boreId: bore.id,
    boreName: bore.name,
    role: bore.role,
    surveyId: survey.id,
    entry: entryOf(setUp, gauge),
    gaugeKind: kind,
    ...(pair ? { pair } : {}),
    stations,
    verdict,
    grades: gradeFindings(stations, measured.spec, bore, verdict),
    provisional,
    ...(temperature ? { temperature } : {}),
    ...(counted.length > 0 ? { largest: place(largest(counted)), smallest: place(smallest(counted)) } : {}),
    levels: levels.map((level) => levelFinding(level, kind)),
    ovality: ovality(levels, measured.spec, kind),
    taper: taper(levels, measured.spec),
    ...(oval ? { widestOval: oval } : {}),
    ...(depthForm ? { depthForm } : {}),
    differences: [],
    notes: notesOf({
      bore,
      survey,
      kind,
      setUp,
      standardKind: standard.kind,
      stations,
      pair,
      verdict,
      temperature,
      notRead: notRead(conditions, survey),
      drawnLengthMm,
    }),
    blunders: blundersOf(asRead, stepOf(gauge)).filter(
      (blunder) => !survey.answered?.includes(blunderKey(blunder)),
    ),
    unseen: unseenOf(asRead),
    surface: surfaceFound(survey, bore, roughSizeMm(setUp)),
    drawnLengthMm,
  }
}

/**
 * Whether the readings show an oval, as two contacts do: a verdict on the means that three contacts read is
 * about the wall only where two-contact readings of the same occasion (one date, one count of hours) bound it.
 */
function seesOval(
  measured: Measured,
  bore: Bore,
  survey: Survey,
  stations: readonly StationFinding[],
): boolean {
  const pair = limitPair(measured.spec, bore)
  if (conditionsOf(measured, bore, survey).gauge.kind !== 'three-contact-micrometer') return true
  const others = bore.surveys
    .filter((other) => other.date === survey.date && other.hoursRun === survey.hoursRun)
    .map((other) => ({ other, conditions: conditionsOf(measured, bore, other) }))
    .filter(({ conditions }) => conditions.gauge.kind !== 'three-contact-micrometer')
    .flatMap(({ other, conditions }) => stationFindings(conditions, other, undefined))
  return pair !== undefined && ovalKeepsInside(stations, others, pair)
}

function notRead(c: SetUpConditions, survey: Survey): Place[] {
  const read = survey.readings.filter(({ sizesMm, dialUm }) => (sizesMm ?? dialUm ?? []).length > 0)
  const settled: readonly Place[] = [...read, ...(survey.unreachable ?? [])]
  return survey.levelsMm.flatMap((depthMm) =>
    survey.axesDegrees
      .map((axisDegrees) => ({ depthMm, axisDegrees }))
      .filter(
        (at) =>
          !settled.some((s) => s.depthMm === at.depthMm && s.axisDegrees === at.axisDegrees) &&
          blockedBy(c.bore, c.gauge, at, roughSizeMm(c.setUp)).length === 0,
      ),
  )
}

function differences(measured: Measured, finding: BoreFinding, all: readonly BoreFinding[]): Difference[] {
  if (finding.role !== 'of-this-engine') return []
  return all
    .filter((other) => other.role === 'for-comparison')
    .flatMap((other) => boreDifference(measured, finding, other) ?? [])
}

/** How deep anything is recorded, mm. */
function deepest({ levelsMm, surfaceFindings = [] }: Survey): number {
  return Math.max(0, ...levelsMm, ...surfaceFindings.map(({ toDepthMm }) => toDepthMm))
}
