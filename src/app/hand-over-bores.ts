import type { BoreFinding } from '../core/findings'
import type { Bore, Survey } from '../core/measured'
import type { WallGrid } from '../core/surface/wall-grid'
import { type Compared, comparedOf } from '../job/compared'
import type { Job } from '../job/schema'
import { exaggerationOfJob, findingsOf, gridOfBore, mapGridOfBore, surveyOf } from '../job/selectors'
import { besideTold, toldBores } from '../job/told-bores'
import { comparedTitle } from '../words/compared'
import { boreHeading } from '../words/findings-page'
import { ownerTalk } from '../words/owner'
import type { OwnerStep } from '../words/owner-step'

/** A wall of a bore that the page shows. */
export interface ShownWall {
  readonly title: string
  readonly bore: Bore
  readonly finding: BoreFinding
  /** As fine as the still picture needs it, and as coarse as a file can take along. */
  readonly grid: WallGrid
  readonly mapGrid: WallGrid
  readonly exaggeration: number
}

/** A bore that the owner is told of. */
export interface ToldBore {
  readonly bore: Bore
  readonly survey: Survey
  readonly finding: BoreFinding
  readonly title: string
  readonly steps: readonly OwnerStep[]
  /** The wall of the bore, and of the new one beside it; none before the first reading. */
  readonly wall: ShownWall | undefined
  readonly besideIt: ShownWall | undefined
}

/** The bores of a job as its owner is told of them, each by its latest survey. */
export function boresToHand(job: Job): readonly ToldBore[] {
  const findings = findingsOf(job)
  const exaggeration = exaggerationOfJob(job)
  const all = comparedOf(job)
  return toldBores(job).flatMap((bore): ToldBore[] => {
    const finding = findings.bores.find(({ boreId }) => boreId === bore.id)
    const survey = surveyOf(bore, finding?.surveyId)
    if (!finding || !survey) return []
    const own = all.find((one) => one.finding === finding)
    const other = own && besideTold(all, own)
    return [
      {
        bore,
        survey,
        finding,
        title: boreHeading(bore, finding),
        steps: ownerTalk(job, findings, finding, exaggeration === undefined ? 'flat' : { exaggeration }),
        wall: own && shownWall(job, own, exaggeration),
        besideIt: other && shownWall(job, other, exaggeration),
      },
    ]
  })
}

function shownWall(job: Job, one: Compared, exaggeration: number | undefined): ShownWall | undefined {
  const { bore, survey, finding } = one
  const grid = gridOfBore(job, bore.id, survey.id)
  const mapGrid = mapGridOfBore(job, bore.id, survey.id)
  if (!grid || !mapGrid || exaggeration === undefined) return undefined
  return { title: comparedTitle(one), bore, finding, grid, mapGrid, exaggeration }
}
