import * as z from 'zod/mini'
import { type JobSummary, mapsSchema, summaryFields, summaryVersion } from './job-summary'

/** Why there is no summary of a job. */
export const unreadReasons = [
  /** A newer Borewall wrote it; it is left as it is. */
  'newer',
  /** No job can be read from it. */
  'unreadable',
  /** It can be read, and something went wrong while it was summed up. */
  'not-summed-up',
] as const
export type UnreadReason = (typeof unreadReasons)[number]

/** A job as a list has it: its summary, and where it stands on the shelf. */
export interface ListedJob extends JobSummary {
  readonly id: string
  /** Date and time of the last change, ISO 8601, UTC. */
  readonly changedAt: string
  /** It was put away, and when. */
  readonly archivedAt?: string
  /** It was deleted, and when: it is kept for some days more. */
  readonly deletedAt?: string
  readonly unread?: UnreadReason
}

/** Days for which a deleted job is kept. */
export const deletedKeptDays = 30

/** What was marked on an entry by hand: kept when its summary is made anew. */
export const entryMarksSchema = z.object({
  archivedAt: z.exactOptional(z.string()),
  deletedAt: z.exactOptional(z.string()),
})
export type EntryMarks = z.infer<typeof entryMarksSchema>

// Fields that a newer Borewall may have added are no reason to make an entry anew.
const listedSchema = z.object({
  id: z.string(),
  version: z.literal(summaryVersion),
  changedAt: z.string(),
  ...summaryFields,
  archivedAt: z.exactOptional(z.string()),
  deletedAt: z.exactOptional(z.string()),
  unread: z.exactOptional(z.enum(unreadReasons)),
})

/** A stored entry; undefined where it is damaged or of another version, and has to be made anew. */
export function listedJob(stored: unknown): ListedJob | undefined {
  const entry = listedSchema.safeParse(stored)
  if (!entry.success) return undefined
  const { version: _, ...listed } = entry.data
  return listed
}

const storedMapsSchema = z.object({ maps: mapsSchema })

/** Stored maps of a job; undefined where they are damaged. */
export function storedMaps(stored: unknown): z.infer<typeof mapsSchema> | undefined {
  const maps = storedMapsSchema.safeParse(stored)
  return maps.success ? maps.data.maps : undefined
}

/** Whether a deleted job has been kept for as long as it was promised. */
export function isPastKeeping({ deletedAt }: EntryMarks, now: Date): boolean {
  if (deletedAt === undefined) return false
  const age = now.getTime() - Date.parse(deletedAt)
  return age > deletedKeptDays * 24 * 60 * 60 * 1000
}
