import type { Job } from './schema'

/** How many stations of a job have a reading, all bores and surveys together. */
export function readingsIn({ bores }: Pick<Job, 'bores'>): number {
  const surveys = bores.flatMap((bore) => bore.surveys)
  return surveys.reduce((sum, { readings }) => sum + readings.length, 0)
}
