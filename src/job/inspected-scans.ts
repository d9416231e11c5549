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
      const bytes = base64 === undefined ? undefined : bytesOf(base64)
      const radii = bytes && scanOfBytes(bytes)
      const marks = radii && canBeFitted(radii) ? marksIn(job, bore, scan, radii) : undefined
      return { bore, scan, index, ...(marks ? { marks } : {}) }
    }),
  )
}

/** Undefined for letters of base64 that make no bytes, as in a file that was cut: its radii are as good as absent. */
function bytesOf(base64: string): Uint8Array<ArrayBuffer> | undefined {
  try {
    return Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0))
  } catch (error) {
    if (error instanceof DOMException) return undefined
    throw error
  }
}

function marksIn(job: Job, bore: Bore, scan: Scan, radii: RadialScan) {
  const survey = bore.surveys.at(-1)
  if (!survey) return undefined
  const options = scanFormOptions(job, scan, nearDiameterOf(job, bore, survey))
  const fit = fitScan(radii, options)
  return { radii, found: marksOf(radii, fit, { nearDiameterMm: options.nearDiameterMm, ports: bore.ports }) }
}
