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
  const chosen = useSession((state) => state.boreId)
  const bore = job.bores.find(({ id }) => id === chosen) ?? job.bores[0]
  const chosenSurvey = useSession((state) => state.surveyId)
  const survey = bore && surveyOf(bore, chosenSurvey)
  const setUp = job.setUps.find(({ id }) => id === survey?.setUpId)
  const finding = bore && findingOf(job, bore.id, survey?.id)
  const gauge = job.gauges.find(({ id }) => id === setUp?.gaugeId)
  const standard = job.standards.find(({ id }) => id === setUp?.standardId)
  if (!bore || !survey || !setUp || !gauge || !standard || !finding) {
    throw new Error('Bench: the job has no bore with a survey')
  }
  return { job, bore, survey, setUp, gauge, standard, finding, findings: findingsOf(job) }
}
