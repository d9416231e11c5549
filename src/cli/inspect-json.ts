import { blockDecisionOf } from '../core/decision/block-decision'
import type { BoreFinding, Contribution, Findings, StationFinding } from '../core/findings'
import { crossedStudies } from '../core/gauge/crossed-study'
import { growthOf } from '../core/outlook/growth'
import { fitsOf } from '../core/piston/fits'
import { oversizeChoice } from '../core/piston/oversize-choice'
import { pairingOf } from '../core/piston/pairing'
import { ringGapsOf } from '../core/ring/ring-gaps'
import { budgetAtLargest } from '../core/uncertainty/budget'
import { distributionOf } from '../core/uncertainty/distribution-of'
import { inspectedScans } from '../job/inspected-scans'
import type { Job } from '../job/schema'
import { blockDecisionTexts } from '../words/block-decision'
import { blunderText } from '../words/blunders'
import { studyText } from '../words/crossed-study'
import { decisionTexts, surenessTexts } from '../words/decision'
import { decidedOf } from '../words/decision-passages'
import { cautions, noteText, temperatureSentence } from '../words/findings'
import { checkSentences } from '../words/gauge-check'
import {
  aboutSentence,
  leanSentence,
  provisionalSentence,
  settleSentence,
  verdictSentence,
} from '../words/verdict'
import { scanEntries } from './inspect-scans'

/**
 * The findings of a job as one object for other programs. Lengths are mm, angles degrees, probabilities 0
 * to 1. `stations` holds every reading of every survey; `bores` holds verdict, ovality, taper, levels and
 * differences for each bore by its latest survey, then by its earlier ones. Null stands where there is no such figure, and for infinite degrees of freedom.
 */
export function inspectJson(job: Job, findings: Findings): Record<string, unknown> {
  return {
    format: 'borewall-findings',
    formatVersion: 1,
    job: {
      id: job.id,
      name: job.name,
      machine: job.machine ?? null,
      note: job.note ?? null,
      invented: job.invented ?? false,
    },
    bores: [
      ...findings.bores.map((finding) => boreEntry(job, findings, finding, true)),
      ...findings.earlier.map((finding) => boreEntry(job, findings, finding, false)),
    ],
    /** Which piston in which bore, and what the bores would be bored to. */
    pairing: pairingOf(job, findings),
    oversize: oversizeChoice(job, findings),
    /** Of an engine of several bores. */
    decision: blockEntry(job, findings),
    /** What stands out of the smooth form of each scan. */
    scans: scanEntries(inspectedScans(job)),
    gaugeChecks: findings.gaugeChecks.map((check) => ({ ...check, text: checkSentences(check).join(' ') })),
    crossedStudies: crossedStudies(job).map((study) => ({ ...study, text: studyText(study) })),
    stations: [...findings.bores, ...findings.earlier].flatMap((finding) =>
      finding.stations.map((station) => stationEntry(finding, station)),
    ),
  }
}

function boreEntry(job: Job, findings: Findings, finding: BoreFinding, latest: boolean) {
  const bore = job.bores.find(({ id }) => id === finding.boreId)
  const judged = finding.role === 'of-this-engine' && finding.verdict.known
  return {
    bore: finding.boreId,
    name: finding.boreName,
    role: finding.role,
    survey: finding.surveyId,
    latest,
    entry: finding.entry,
    gaugeKind: finding.gaugeKind,
    limits: finding.pair ?? null,
    verdict: judged ? finding.verdict : null,
    whyNoVerdict: finding.verdict.known ? (judged ? null : finding.role) : finding.verdict.why,
    /** Beside a wear limit they are for information: the wear limit alone is judged. */
    grades: finding.grades,
    provisional: finding.provisional,
    ovality: finding.ovality,
    taper: finding.taper,
    temperature: finding.temperature ?? null,
    oversizeMm: bore?.oversizeMm ?? null,
    surface: finding.surface,
    drawnLengthMm: finding.drawnLengthMm,
    largest: finding.largest ?? null,
    smallest: finding.smallest ?? null,
    levels: finding.levels,
    widestOval: finding.widestOval ?? null,
    formAlongDepth: finding.depthForm ?? null,
    doubt: doubtEntry(job, finding),
    differences: finding.differences,
    growth: growthOf(job, findings, finding),
    /** How each piston on offer fits, by this survey. */
    clearance: fitsOf(job, finding),
    ringGap: ringGapsOf(job, finding),
    decision: decisionEntry(job, findings, finding),
    notes: finding.notes.map((note) => ({ ...note, text: noteText(note) })),
    questions: finding.blunders.map((blunder) => ({ ...blunder, text: blunderText(blunder) })),
    /** Slips that these readings could not have shown. */
    unseen: finding.unseen,
    sentences: {
      verdict: verdictSentence(finding),
      lean: leanSentence(finding) ?? null,
      settle: settleSentence(finding) ?? null,
      temperature: temperatureSentence(finding) ?? null,
      provisional: provisionalSentence(finding) ?? null,
      about: aboutSentence(finding) ?? null,
    },
    cautions: cautions(finding, bore ?? {}),
  }
}

/** What to do with the bore; null for one that none is made about. */
function decisionEntry(job: Job, findings: Findings, finding: BoreFinding) {
  const made = decidedOf(job, findings, finding)
  const texts = made && decisionTexts(made)
  if (!made || !texts) return null
  const { sureness } = made
  return {
    ...made.decision,
    sureness: sureness ?? null,
    texts: { ...texts, sure: surenessTexts(made.decision, sureness) },
  }
}

/** What to do with an engine of several bores; null for one bore. */
function blockEntry(job: Job, findings: Findings) {
  const block = blockDecisionOf(job, findings)
  return block ? { ...block, text: blockDecisionTexts(job, block).join(' ') } : null
}

/** What would shrink the doubt of the largest diameter, and to what U. */
function doubtEntry(job: Job, finding: BoreFinding) {
  const largest = budgetAtLargest(job, finding)
  if (!largest) return null
  const { station, budget } = largest
  const { expandedMm, improvements } = budget
  return { levelMm: station.depthMm, axisDegrees: station.axisDegrees, expandedMm, improvements }
}

function stationEntry(finding: BoreFinding, station: StationFinding) {
  const { conformity } = station
  return {
    bore: station.boreId,
    boreName: finding.boreName,
    survey: station.surveyId,
    levelMm: station.depthMm,
    axisDegrees: station.axisDegrees,
    diameterAt20Mm: station.diameterMm,
    expandedUncertaintyMm: station.expandedMm,
    standardUncertaintyMm: station.standardUncertaintyMm,
    degreesOfFreedom: station.degreesOfFreedom,
    verdict: conformity?.verdict ?? null,
    /** Of the verdict; for too close to call, of the side it leans to. */
    probability: conformity?.leanProbability ?? null,
    lean: conformity?.lean ?? null,
    probabilityInside: conformity?.probabilityInside ?? null,
    probabilityAbove: conformity?.probabilityAbove ?? null,
    probabilityBelow: conformity?.probabilityBelow ?? null,
    settledByExpandedMm: conformity?.settledByExpandedMm ?? null,
    counted: station.counted,
    blockedBy: station.blockedBy,
    land: station.land,
    repeats: station.repeats,
    spreadMm: station.spreadMm ?? null,
    correctionMm: station.correctionMm,
    budget: station.contributions.map(budgetEntry),
  }
}

function budgetEntry(part: Contribution) {
  const { kind, id, scope, signedMm, degreesOfFreedom, assumed, input } = part
  const distribution = distributionOf(part)
  return { kind, id, scope, distribution, signedMm, input: input ?? null, degreesOfFreedom, assumed }
}

/** JSON text: infinite numbers become null, and one that is not a number throws as our own mistake. */
export function jsonText(value: unknown): string {
  const text = JSON.stringify(
    value,
    (key, item: unknown) => {
      if (typeof item !== 'number' || Number.isFinite(item)) return item
      if (Number.isNaN(item)) throw new Error(`jsonText: "${key}" is not a number`)
      return null
    },
    2,
  )
  return `${text}\n`
}
