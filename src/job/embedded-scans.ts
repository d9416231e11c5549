import type { EmbeddedScan } from './scan-record'
import type { Job } from './schema'

/** The content hashes of every scan that the bores of a job name, each once. */
export function scanHashes(job: Pick<Job, 'bores'>): readonly string[] {
  return [...new Set(job.bores.flatMap(({ scans = [] }) => scans.map(({ hash }) => hash)))]
}

/** The job as it is written to a file, with these of its scans; without any, as it is. */
export function withScans(job: Job, scans: readonly EmbeddedScan[]): Job {
  const named = new Set(scanHashes(job))
  const own = scans.filter(({ hash }) => named.has(hash))
  return own.length === 0 ? job : { ...job, scans: own }
}

/** The job as it is worked on and kept, and the scans that its file brought along. */
export function withoutScans(job: Job): { readonly job: Job; readonly scans: readonly EmbeddedScan[] } {
  const { scans, ...bare } = job
  return scans === undefined ? { job, scans: [] } : { job: bare, scans }
}
