import { cleanedScan, type InspectedScan } from '../core/scan/inspected-scan'
import { scanName } from '../words/scans'

/** What stands out in the scans for other programs: lengths mm, heights µm on the radius, angles degrees. */
export function scanEntries(scans: readonly InspectedScan[]) {
  return scans.map((one) => {
    const { bore, scan, index, marks } = one
    const name = scanName(scan, index)
    if (!marks) return { bore: bore.id, scan: scan.id, name, marks: null, cleaned: null }
    const { map: _, ...found } = marks.found
    return {
      bore: bore.id,
      scan: scan.id,
      name,
      ...found,
      cleaned: cleanedScan(one, scans)?.compared ?? null,
    }
  })
}
