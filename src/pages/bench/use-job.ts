import { useStore } from 'zustand'
import type { BoreFinding, Findings } from '../../core/findings'
import type { Bore, Gauge, SetUp, Standard, Survey } from '../../core/measured'
import { jobStore } from '../../job/job-store'
import type { Job } from '../../job/schema'
import { findingOf, findingsOf, surveyOf } from '../../job/selectors'
import { type Session, session } from '../../session/session'

/** The bore on the bench with the survey that is shown, its set-up and what its readings prove. */
export interface OnBench {
  readonly job: Job
  readonly bore: Bore
  readonly survey: Survey
  readonly setUp: SetUp
  readonly gauge: Gauge
  readonly standard: Standard
  readonly finding: BoreFinding
  readonly findings: Findings
}

export function useSession<Value>(select: (state: Session) => Value): Value {
  return useStore(session, select)
}

export function useOnBench(): OnBench {
  const job = useStore(jobStore, (state) => state.job)
  const boreId = useSession((state) => state.boreId)
  const surveyId = useSession((state) => state.surveyId)
  return onBench(job, boreId, surveyId)
}

/** What is on the bench at this moment, also between two drawings of the page. */
export function onBenchNow(): OnBench {
  const { boreId, surveyId } = session.getState()
  return onBench(jobStore.getState().job, boreId, surveyId)
}

function onBench(job: Job, boreId: string | undefined, surveyId: string | undefined): OnBench {
  const bore = job.bores.find(({ id }) => id === boreId) ?? job.bores[0]
  const survey = bore && surveyOf(bore, surveyId)
  const setUp = job.setUps.find(({ id }) => id === survey?.setUpId)
  const finding = bore && findingOf(job, bore.id, survey?.id)
  const gauge = job.gauges.find(({ id }) => id === setUp?.gaugeId)
  const standard = job.standards.find(({ id }) => id === setUp?.standardId)
  if (!bore || !survey || !setUp || !gauge || !standard || !finding) {
    throw new Error('Bench: the job has no bore with a survey')
  }
  return { job, bore, survey, setUp, gauge, standard, finding, findings: findingsOf(job) }
}
