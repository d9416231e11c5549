/**
 * Changes to the pistons of a job and to the ring gaps of a survey, as pure functions from one document to the next.
 * A change that changes nothing returns the same object; an id or a place that does not exist is our own mistake and
 * throws.
 */
import type { Measured, Piston, PistonState, RingGap } from '../core/measured'
import { type Patch, patched, withEntry } from './patch'
import type { Job } from './schema'
import type { SurveyAt } from './surface-commands'

/** Adds a piston, with the micrometer that measured the one before it. */
export function addPiston(job: Job, state: PistonState, ids: () => string, boreId?: string): Job {
  const pistons = job.pistons ?? []
  const before = pistons.findLast(({ standardId }) => standardId !== undefined)?.standardId
  const isMeasured = state !== 'obtainable'
  const piston: Piston = {
    id: ids(),
    state,
    ...(state === 'fitted' && boreId !== undefined ? { boreId } : {}),
    ...(isMeasured && before !== undefined ? { standardId: before } : {}),
  }
  return { ...job, pistons: [...pistons, piston] }
}

export function setPiston(job: Job, id: string, patch: Patch<Omit<Piston, 'id'>>): Job {
  return patched(job, { pistons: withEntry(job.pistons ?? [], id, (piston) => patched(piston, patch)) })
}

export function removePiston(job: Job, id: string): Job {
  const pistons = job.pistons ?? []
  withEntry(pistons, id, (piston) => piston)
  const rest = pistons.filter((piston) => piston.id !== id)
  return patched(job, { pistons: rest.length > 0 ? rest : undefined })
}

/** Names a new micrometer as the one that a piston was measured with. */
export function measureByNewMicrometer(job: Job, id: string, ids: () => string): Job {
  const standardId = ids()
  const standards = [...job.standards, { id: standardId, kind: 'micrometer' } as const]
  return setPiston({ ...job, standards }, id, { standardId })
}

/** The pistons that were measured with a micrometer or a thermometer. */
export function pistonsUsing({ pistons = [] }: Pick<Measured, 'pistons'>, instrumentId: string): Piston[] {
  return pistons.filter(
    ({ standardId, thermometerId }) => standardId === instrumentId || thermometerId === instrumentId,
  )
}

/** The pistons without what ties them to a bore that goes. */
export function pistonsWithoutBore({ pistons }: Pick<Job, 'pistons'>, boreId: string): Pick<Job, 'pistons'> {
  if (!pistons?.some((piston) => piston.boreId === boreId)) return pistons ? { pistons } : {}
  return {
    pistons: pistons.map((piston) =>
      piston.boreId === boreId ? patched<Piston>(piston, { boreId: undefined }) : piston,
    ),
  }
}

export function addRingGap(job: Job, at: SurveyAt, gap: RingGap): Job {
  return withGaps(job, at, (gaps) => [...gaps, gap])
}

/** Changes the gap at a place in the list. */
export function setRingGap(job: Job, at: SurveyAt, index: number, patch: Partial<RingGap>): Job {
  return withGaps(job, at, (gaps) => {
    const next = patched(gapAt(gaps, index), patch)
    return next === gaps[index] ? gaps : gaps.with(index, next)
  })
}

export function removeRingGap(job: Job, at: SurveyAt, index: number): Job {
  return withGaps(job, at, (gaps) => {
    gapAt(gaps, index)
    return gaps.toSpliced(index, 1)
  })
}

function gapAt(gaps: readonly RingGap[], index: number): RingGap {
  const gap = gaps[index]
  if (!gap) throw new Error(`No ring gap at place ${index} of ${gaps.length}`)
  return gap
}

function withGaps(
  job: Job,
  { boreId, surveyId }: SurveyAt,
  change: (gaps: readonly RingGap[]) => readonly RingGap[],
): Job {
  const bores = withEntry(job.bores, boreId, (bore) => {
    const surveys = withEntry(bore.surveys, surveyId, (survey) => {
      const before = survey.ringGaps ?? []
      const ringGaps = change(before)
      if (ringGaps === before) return survey
      return patched(survey, { ringGaps: ringGaps.length > 0 ? ringGaps : undefined })
    })
    return surveys === bore.surveys ? bore : { ...bore, surveys }
  })
  return bores === job.bores ? job : { ...job, bores }
}
