import type { BoreFinding, Findings } from '../../core/findings'
import type { Bore, Survey } from '../../core/measured'
import type { WallGrid } from '../../core/surface/wall-grid'
import { comparedOf } from '../../job/compared'
import type { Job } from '../../job/schema'
import { findingsOf, mapGridOfBore, surveyOf } from '../../job/selectors'
import { besideTold, toldBores } from '../../job/told-bores'
import { type BorePaper, borePaper, reportedName } from '../../words/bore-paper'
import { type EnginePaper, enginePaper } from '../../words/engine-paper'
import { jobFacts } from '../../words/paper-facts'
import { pistonRows } from '../../words/piston-rows'
import { type ChartPlace, chartPlace } from '../bench/chart-place'

/** A survey of a bore as the report draws it. */
export interface ReportWall {
  readonly bore: Bore
  readonly survey: Survey
  readonly finding: BoreFinding
  /** Absent while nothing was read. */
  readonly grid?: WallGrid
  readonly cut?: ChartPlace
}

/** A bore with what is said of it and what stands beside it. */
export interface ReportBore extends ReportWall {
  readonly paper: BorePaper
  /** As it was when new, or a bore to compare with. */
  readonly besideIt?: ReportWall
}

/** What a report holds: one bore, or all bores of an engine with what is said of them together. */
export interface Report {
  readonly name: string
  readonly invented: boolean
  readonly facts: ReturnType<typeof jobFacts>
  readonly bores: readonly ReportBore[]
  readonly engine?: EnginePaper
  /** At which walls are drawn; absent while there is none. */
  readonly exaggeration?: number
}

export interface ReportChoice {
  /** Absent: all bores of the engine, the only one where there is one. */
  readonly boreId?: string
  readonly withNote?: boolean
  readonly exaggeration?: number
}

/** All that the report of a job says and draws. */
export function reportOf(job: Job, { boreId, withNote, exaggeration }: ReportChoice): Report {
  const findings = findingsOf(job)
  const pistons = pistonRows(job, findings)
  const all = toldBores(job)
  const chosen = all.find(({ id }) => id === boreId)
  const isEngine = !chosen && all.length > 1
  const bores = (chosen ? [chosen] : all).map((bore) => {
    const finding = findings.bores.find((one) => one.boreId === bore.id)
    if (!finding) throw new Error(`reportOf: no finding of bore ${bore.id}`)
    const paper = borePaper(job, findings, finding, pistons, withNote === true && !isEngine)
    return reportBore(job, findings, bore, finding, paper)
  })
  return {
    name: reportedName(job),
    invented: job.invented === true,
    facts: jobFacts(job),
    bores,
    ...(isEngine ? { engine: enginePaper(job, findings, bores, pistons, withNote) } : {}),
    ...(exaggeration === undefined ? {} : { exaggeration }),
  }
}

function reportBore(
  job: Job,
  findings: Findings,
  bore: Bore,
  finding: BoreFinding,
  paper: BorePaper,
): ReportBore {
  const survey = surveyOf(bore, finding.surveyId)
  if (!survey) throw new Error(`reportOf: bore ${bore.id} has no survey`)
  const compared = comparedOf(job)
  const own = compared.find((one) => one.finding === finding)
  const other = own && findings.bores.includes(finding) ? besideTold(compared, own) : undefined
  return {
    ...reportWall(job, { bore, survey, finding }),
    paper,
    ...(other ? { besideIt: reportWall(job, other) } : {}),
  }
}

function reportWall(job: Job, { bore, survey, finding }: Pick<ReportWall, 'bore' | 'survey' | 'finding'>) {
  const grid = mapGridOfBore(job, bore.id, survey.id)
  const cut = chartPlace({ survey, finding }, grid, undefined)
  return { bore, survey, finding, ...(grid ? { grid } : {}), ...(cut ? { cut } : {}) }
}
