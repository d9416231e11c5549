import { useEffect, useMemo, useState } from 'react'
import { useStore } from 'zustand'
import { jobStore } from '../job/job-store'
import type { Job } from '../job/schema'
import type { Report } from '../pages/report/report-content'
import { pictureKey, type ReportPicture } from '../pages/report/report-look'
import { drawReportPicture, wallsPictured } from './report-pictures'

interface Drawn {
  readonly job: Job
  readonly exaggeration: number | undefined
  readonly pictures: ReadonlyMap<string, ReportPicture>
}

const waiting: ReportPicture = { kind: 'waiting' }

/** The pictures of a report, drawn one after the other; what is not drawn yet waits. */
export function useReportPictures(report: Report): ReadonlyMap<string, ReportPicture> {
  const job = useStore(jobStore, (state) => state.job)
  const { exaggeration } = report
  const [drawn, setDrawn] = useState<Drawn>({ job, exaggeration, pictures: new Map() })
  const known = drawn.job === job && drawn.exaggeration === exaggeration ? drawn.pictures : none
  const walls = useMemo(() => wallsPictured(report), [report])
  const next = walls.find((wall) => !known.has(pictureKey(wall.bore.id, wall.survey.id)))
  useEffect(() => {
    if (!next || exaggeration === undefined) return
    let isGone = false
    const key = pictureKey(next.bore.id, next.survey.id)
    void drawReportPicture(job, next, exaggeration)
      .catch((error: unknown): ReportPicture => {
        reportError(error)
        return { kind: 'none' }
      })
      .then((picture) => {
        if (isGone) forget([picture])
        else setDrawn({ job, exaggeration, pictures: new Map([...known, [key, picture]]) })
      })
    return () => {
      isGone = true
    }
  }, [job, next, exaggeration, known])
  useAddresses(drawn.pictures)
  return useMemo(
    () =>
      new Map(
        walls.map((wall) => {
          const key = pictureKey(wall.bore.id, wall.survey.id)
          return [key, known.get(key) ?? waiting]
        }),
      ),
    [walls, known],
  )
}

const none: ReadonlyMap<string, ReportPicture> = new Map()

/** Gives the addresses of pictures back once they are shown no longer. */
function useAddresses(pictures: ReadonlyMap<string, ReportPicture>): void {
  const [held] = useState(() => new Set<ReportPicture>())
  useEffect(() => {
    const shown = new Set(pictures.values())
    forget([...held].filter((one) => !shown.has(one)))
    for (const one of [...held]) if (!shown.has(one)) held.delete(one)
    for (const one of shown) held.add(one)
  }, [pictures, held])
  useEffect(() => () => forget([...held]), [held])
}

function forget(pictures: readonly ReportPicture[]): void {
  for (const picture of pictures) if (picture.kind === 'drawn') URL.revokeObjectURL(picture.url)
}
