/**
 * Changes to the surface findings of a survey, as pure functions from one document to the next. A change that
 * changes nothing returns the same object; an id that does not exist is our own mistake and throws.
 */
import type { Photograph, SurfaceFinding, SurfacePlace, SurfaceShape, Survey } from '../core/measured'
import { surfaceWidthDegrees } from '../core/surface-findings/surface-place'
import { type Patch, patched, withEntry } from './patch'
import type { Job } from './schema'

/** Which survey of which bore. */
export interface SurveyAt {
  readonly boreId: string
  readonly surveyId: string
}

/** So many times longer than it is wide, a mark along the stroke is a streak. */
const streakFrom = 4

/** What a mark of this place looks like in a bore of about this diameter, mm. */
export function shapeOfPlace(place: SurfacePlace, diameterMm: number): SurfaceShape {
  const acrossMm = (Math.PI * diameterMm * surfaceWidthDegrees(place)) / 360
  return place.toDepthMm - place.fromDepthMm > streakFrom * acrossMm ? 'streak' : 'patch'
}

export function addSurfaceFinding(job: Job, at: SurveyAt, finding: SurfaceFinding): Job {
  return withFindings(job, at, (findings) => [...findings, finding])
}

export function setSurfaceFinding(
  job: Job,
  at: SurveyAt,
  id: string,
  patch: Patch<Omit<SurfaceFinding, 'id' | 'photos'>>,
): Job {
  return withFindings(job, at, (findings) => withEntry(findings, id, (finding) => patched(finding, patch)))
}

export function removeSurfaceFinding(job: Job, at: SurveyAt, id: string): Job {
  return withFindings(job, at, (findings) => {
    withEntry(findings, id, (finding) => finding)
    return findings.filter((finding) => finding.id !== id)
  })
}

/** Adds a photograph to a finding; one that it has already changes nothing. */
export function addPhotograph(job: Job, at: SurveyAt, id: string, photo: Photograph): Job {
  return withPhotos(job, at, id, (photos) =>
    photos.some(({ hash }) => hash === photo.hash) ? photos : [...photos, photo],
  )
}

/** Takes a photograph off a finding; its picture stays where pictures are kept, for undo and other jobs. */
export function removePhotograph(job: Job, at: SurveyAt, id: string, hash: string): Job {
  return withPhotos(job, at, id, (photos) => photos.filter((photo) => photo.hash !== hash))
}

function withPhotos(
  job: Job,
  at: SurveyAt,
  id: string,
  change: (photos: readonly Photograph[]) => readonly Photograph[],
): Job {
  return withFindings(job, at, (findings) =>
    withEntry(findings, id, (finding) => {
      const photos = change(finding.photos ?? [])
      return patched(finding, { photos: photos.length > 0 ? photos : undefined })
    }),
  )
}

function withFindings(
  job: Job,
  { boreId, surveyId }: SurveyAt,
  change: (findings: readonly SurfaceFinding[]) => readonly SurfaceFinding[],
): Job {
  const changed = (survey: Survey) => {
    const surfaceFindings = change(survey.surfaceFindings ?? [])
    return patched(survey, { surfaceFindings: surfaceFindings.length > 0 ? surfaceFindings : undefined })
  }
  const bores = withEntry(job.bores, boreId, (bore) => {
    const surveys = withEntry(bore.surveys, surveyId, changed)
    return surveys === bore.surveys ? bore : { ...bore, surveys }
  })
  return bores === job.bores ? job : { ...job, bores }
}
