import { useEffect, useMemo, useState } from 'react'
import type { Report } from '../pages/report/report-content'
import type { ReportPhoto } from '../pages/report/report-look'
import { readPhoto } from './use-photo'

const waiting: ReportPhoto = { kind: 'waiting' }

/** The photographs of all surface findings in a report, by their hash. */
export function useReportPhotos({ bores }: Report): ReadonlyMap<string, ReportPhoto> {
  const hashes = useMemo(
    () => [
      ...new Set(
        bores.flatMap(({ finding }) =>
          finding.surface.flatMap(({ photos = [] }) => photos.map(({ hash }) => hash)),
        ),
      ),
    ],
    [bores],
  )
  const [read, setRead] = useState<ReadonlyMap<string, ReportPhoto>>(new Map())
  useEffect(() => {
    let isGone = false
    const made: string[] = []
    void Promise.all(
      hashes.map(async (hash): Promise<[string, ReportPhoto]> => {
        const photo = await readPhoto(hash)
        if (typeof photo === 'string' || isGone) return [hash, { kind: 'absent' }]
        const url = URL.createObjectURL(photo)
        made.push(url)
        return [hash, { kind: 'shown', url }]
      }),
    ).then((all) => {
      if (!isGone) setRead(new Map(all))
    })
    return () => {
      isGone = true
      for (const url of made) URL.revokeObjectURL(url)
    }
  }, [hashes])
  return useMemo(() => new Map(hashes.map((hash) => [hash, read.get(hash) ?? waiting])), [hashes, read])
}
