import type { EmbeddedPhotograph } from './photograph-record'
import type { Job } from './schema'

/** The content hashes of every photograph that a job names, each once. */
export function photographHashes(job: Pick<Job, 'bores'>): readonly string[] {
  const findings = job.bores.flatMap((bore) => bore.surveys.flatMap((survey) => survey.surfaceFindings ?? []))
  return [...new Set(findings.flatMap(({ photos = [] }) => photos.map(({ hash }) => hash)))]
}

/** The job as it is written to a file, with these of its photographs; without any, as it is. */
export function withPhotographs(job: Job, photographs: readonly EmbeddedPhotograph[]): Job {
  const named = new Set(photographHashes(job))
  const own = photographs.filter(({ hash }) => named.has(hash))
  return own.length === 0 ? job : { ...job, photographs: own }
}

/** The job as it is worked on and kept, and the photographs that its file brought along. */
export function withoutPhotographs(job: Job): {
  readonly job: Job
  readonly photographs: readonly EmbeddedPhotograph[]
} {
  const { photographs, ...bare } = job
  return photographs === undefined ? { job, photographs: [] } : { job: bare, photographs }
}
