import { useEffect, useMemo } from 'react'
import { useStore } from 'zustand'
import type { BoreFinding, Findings } from '../../core/findings'
import type { Bore } from '../../core/measured'
import { comparedOf } from '../../job/compared'
import { jobStore } from '../../job/job-store'
import type { Job } from '../../job/schema'
import { exaggerationOfJob, findingsOf } from '../../job/selectors'
import { besideTold, toldBores } from '../../job/told-bores'
import { showing, showStep } from '../../session/showing'
import { ownerTalk } from '../../words/owner'
import type { OwnerStep } from '../../words/owner-step'
import { useSession } from '../bench/use-job'
import { type ComparedWall, surveyWall } from '../compare/compared-walls'

/** What is told of a bore, where the telling stands, and the walls that go with it. */
export interface Talk {
  readonly job: Job
  /** The bores that can be told of. */
  readonly bores: readonly Bore[]
  readonly bore: Bore
  readonly finding: BoreFinding
  readonly findings: Findings
  readonly steps: readonly OwnerStep[]
  readonly at: number
  readonly step: OwnerStep
  /** The wall of the bore, and of the new one beside it; none before the first reading. */
  readonly wall: ComparedWall | undefined
  readonly besideIt: ComparedWall | undefined
  readonly goTo: (step: number) => void
}

/** The talk about the bore on the bench, or about the first of the engine where that is one to compare with. */
export function useTalk(isFlat: boolean): Talk {
  const job = useStore(jobStore, (state) => state.job)
  const boreId = useSession((state) => state.boreId)
  const asked = useStore(showing, (state) => state.step)
  const bores = useMemo(() => toldBores(job), [job])
  const bore = bores.find(({ id }) => id === boreId) ?? bores[0]
  const findings = findingsOf(job)
  const finding = findings.bores.find((one) => one.boreId === bore?.id)
  if (!bore || !finding) throw new Error('Show: the job has no bore with a survey')
  const exaggeration = exaggerationOfJob(job)
  const steps = useMemo(
    () => ownerTalk(job, findings, finding, isFlat || exaggeration === undefined ? 'flat' : { exaggeration }),
    [job, findings, finding, isFlat, exaggeration],
  )
  const walls = useMemo(() => wallsOf(job, finding), [job, finding])
  const at = Math.min(asked, steps.length - 1)
  const step = steps[at]
  if (!step) throw new Error('Show: nothing to tell')
  const last = steps.length - 1
  useEffect(() => {
    if (asked > last) showStep(last)
  }, [asked, last])
  return {
    job,
    bores,
    bore,
    finding,
    findings,
    steps,
    at,
    step,
    ...walls,
    goTo: (to) => showStep(Math.max(0, Math.min(last, to))),
  }
}

function wallsOf(job: Job, finding: BoreFinding): Pick<Talk, 'wall' | 'besideIt'> {
  const all = comparedOf(job)
  const used = all.find((one) => one.finding === finding)
  const other = used && besideTold(all, used)
  return { wall: used && surveyWall(job, used), besideIt: other && surveyWall(job, other) }
}
