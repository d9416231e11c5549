import { photographHashes } from './embedded-photographs'
import { scanHashes } from './embedded-scans'
import type { Job } from './schema'

/** A job as a code carries it, and how much of it stays behind. */
export interface CarriedJob {
  readonly job: Job
  readonly leftOut: LeftOut
}

export interface LeftOut {
  readonly photographs: number
  readonly scans: number
  /** The note of the job and those of surface findings. */
  readonly notes: number
}

/**
 * The job without photographs and without the radii of its scans, which no code has room for, and without its notes
 * where asked. What is known of a scan goes along: what to do with a bore may hang on it.
 */
export function carriedJob(whole: Job, withNotes: boolean): CarriedJob {
  const { photographs: _, scans: __, note, ...rest } = whole
  const bores = rest.bores.map((bore) => ({
    ...bore,
    surveys: bore.surveys.map((survey) =>
      survey.surfaceFindings
        ? { ...survey, surfaceFindings: survey.surfaceFindings.map((found) => bareFinding(found, withNotes)) }
        : survey,
    ),
  }))
  const leftOut = {
    photographs: photographHashes(whole).length,
    scans: scanHashes(whole).length,
    notes: withNotes ? 0 : notesIn(whole),
  }
  return { job: { ...rest, ...(withNotes && note !== undefined ? { note } : {}), bores }, leftOut }
}

type Finding = NonNullable<Job['bores'][number]['surveys'][number]['surfaceFindings']>[number]

function bareFinding({ photos: _, note, ...finding }: Finding, withNotes: boolean): Finding {
  return withNotes && note !== undefined ? { ...finding, note } : finding
}

function notesIn({ note, bores }: Job): number {
  const findings = bores.flatMap(({ surveys }) =>
    surveys.flatMap(({ surfaceFindings = [] }) => surfaceFindings),
  )
  return [note, ...findings.map((finding) => finding.note)].filter(
    (text) => text !== undefined && text !== '',
  ).length
}
