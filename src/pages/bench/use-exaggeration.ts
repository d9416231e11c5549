import type { PlacedPiston } from '../../core/piston/piston-in-bore'
import { exaggerationEnd, exaggerationOf } from '../../core/surface/exaggeration'
import type { Job } from '../../job/schema'
import { exaggerationEndOfJob, exaggerationOfJob } from '../../job/selectors'
import { useSession } from './use-job'

/** The exaggeration that a job and what is shown in its bores need, and the most that can be drawn. */
export interface ExaggerationRange {
  readonly own: number | undefined
  readonly end: number | undefined
}

/** What all walls of the job need; with a piston in the bore, so little that the piston has room too. */
export function useExaggerationRange(job: Job, middleMm: number | undefined): ExaggerationRange {
  const placed = useSession((state) => state.piston?.placed)
  const range = { own: exaggerationOfJob(job), end: exaggerationEndOfJob(job) }
  return placed && middleMm !== undefined ? withPiston(range, middleMm, placed) : range
}

function withPiston(
  { own, end }: ExaggerationRange,
  middleMm: number,
  placed: PlacedPiston,
): ExaggerationRange {
  const sizes = placed.sizes.map(({ sizeMm }) => sizeMm)
  return {
    own: own && Math.min(own, exaggerationOf(middleMm, sizes)),
    end: end && Math.min(end, exaggerationEnd(middleMm, sizes)),
  }
}
