import type { Bore, Scan } from '../core/measured'
import { type CleanedMarks, cleanedMarks } from '../core/scan/cleaned-marks'
import { canBeFitted, fitScan } from '../core/scan/fit-scan'
import { marksOf } from '../core/scan/marks'
import type { RadialScan } from '../core/scan/radial-scan'
import type { ScanMarks } from '../core/scan/scan-marks'
import { withoutScans } from '../job/embedded-scans'
import { scanOfBytes } from '../job/scan-bytes'
import type { Job } from '../job/schema'
import { nearDiameterOf, otherOfCleaning, scanFormOptions } from '../job/shown-scan'
import type { Passage } from '../words/findings-page'
import { scanMarkWords } from '../words/scan-mark-words'
import { cleanedLines, scanMarkLines } from '../words/scan-marks'
import { scanName } from '../words/scans'

/** What stands out in a scan of a job's file; without marks where the file has no radii of it that can be fitted. */
export interface InspectedScan {
  readonly bore: Bore
  readonly scan: Scan
  readonly name: string
  readonly marks?: { readonly radii: RadialScan; readonly found: ScanMarks }
}

/** The scans that a file takes along, each looked through. */
export function inspectedScans(file: Job): InspectedScan[] {
  const { job, scans } = withoutScans(file)
  const radiiOf = new Map(scans.map(({ hash, base64 }) => [hash, base64]))
  return job.bores.flatMap((bore) =>
    (bore.scans ?? []).map((scan, index) => {
      const base64 = radiiOf.get(scan.hash)
      const radii = base64 === undefined ? undefined : scanOfBytes(Buffer.from(base64, 'base64'))
      const marks = radii && canBeFitted(radii) ? marksIn(job, bore, scan, radii) : undefined
      return { bore, scan, name: scanName(scan, index), ...(marks ? { marks } : {}) }
    }),
  )
}

function marksIn(job: Job, bore: Bore, scan: Scan, radii: RadialScan) {
  const survey = bore.surveys.at(-1)
  if (!survey) return undefined
  const options = scanFormOptions(job, scan, nearDiameterOf(job, bore, survey))
  const fit = fitScan(radii, options)
  return { radii, found: marksOf(radii, fit, { nearDiameterMm: options.nearDiameterMm, ports: bore.ports }) }
}

/** What stands out in the scans, for people. */
export function scanPassages(scans: readonly InspectedScan[]): Passage[] {
  return scans.flatMap((one): Passage[] => {
    const { bore, name, marks } = one
    const heading: Passage = { kind: 'heading', text: scanMarkWords.inScan(bore.name, name) }
    if (!marks) return [heading, { kind: 'paragraph', text: scanMarkWords.notLooked }]
    const isPlated = bore.wall?.kind === 'plated-aluminium'
    const cleaned = cleanedOf(one, scans)
    return [
      heading,
      { kind: 'list', items: scanMarkLines(marks.found, isPlated) },
      ...(cleaned
        ? [
            { kind: 'subheading' as const, text: scanMarkWords.cleaned.title },
            { kind: 'list' as const, items: cleanedLines(marks.found, cleaned.after, cleaned.compared) },
          ]
        : []),
    ]
  })
}

/** The same for other programs: lengths mm, heights µm on the radius, angles degrees. */
export function scanEntries(scans: readonly InspectedScan[]) {
  return scans.map((one) => {
    const { bore, scan, name, marks } = one
    if (!marks) return { bore: bore.id, scan: scan.id, name, marks: null, cleaned: null }
    const { map: _, ...found } = marks.found
    return { bore: bore.id, scan: scan.id, name, ...found, cleaned: cleanedOf(one, scans)?.compared ?? null }
  })
}

/** A scan before cleaning against the one after it. */
function cleanedOf(
  { bore, scan, marks }: InspectedScan,
  scans: readonly InspectedScan[],
): { readonly after: ScanMarks; readonly compared: CleanedMarks } | undefined {
  if (!marks || scan.cleaning !== 'before') return undefined
  const otherId = otherOfCleaning(bore, scan)?.id
  const other = scans.find((one) => one.bore.id === bore.id && one.scan.id === otherId)?.marks
  if (!other) return undefined
  const compared = cleanedMarks(
    { scan: marks.radii, found: marks.found },
    { scan: other.radii, found: other.found },
  )
  return { after: other.found, compared }
}
