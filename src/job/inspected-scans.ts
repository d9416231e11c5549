import type { Bore, Scan } from '../core/measured'
import { canBeFitted, fitScan } from '../core/scan/fit-scan'
import type { InspectedScan } from '../core/scan/inspected-scan'
import { marksOf } from '../core/scan/marks'
import type { RadialScan } from '../core/scan/radial-scan'
import { withoutScans } from './embedded-scans'
import { scanOfBytes } from './scan-bytes'
import type { Job } from './schema'
import { nearDiameterOf, scanFormOptions } from './shown-scan'

/** The scans that a file takes along, each looked through. */
export function inspectedScans(file: Job): InspectedScan[] {
  const { job, scans } = withoutScans(file)
  const radiiOf = new Map(scans.map(({ hash, base64 }) => [hash, base64]))
  return job.bores.flatMap((bore) =>
    (bore.scans ?? []).map((scan, index) => {
      const base64 = radiiOf.get(scan.hash)
      const radii = base64 === undefined ? undefined : scanOfBytes(bytesOf(base64))
      const marks = radii && canBeFitted(radii) ? marksIn(job, bore, scan, radii) : undefined
      return { bore, scan, index, ...(marks ? { marks } : {}) }
    }),
  )
}

/** The schema has seen to it that it is base64. */
function bytesOf(base64: string): Uint8Array<ArrayBuffer> {
  return Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0))
}

function marksIn(job: Job, bore: Bore, scan: Scan, radii: RadialScan) {
  const survey = bore.surveys.at(-1)
  if (!survey) return undefined
  const options = scanFormOptions(job, scan, nearDiameterOf(job, bore, survey))
  const fit = fitScan(radii, options)
  return { radii, found: marksOf(radii, fit, { nearDiameterMm: options.nearDiameterMm, ports: bore.ports }) }
}
