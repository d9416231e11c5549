import type { Bore, Scan } from '../measured'
import { type CleanedMarks, cleanedMarks } from './cleaned-marks'
import type { RadialScan } from './radial-scan'
import type { ScanMarks } from './scan-marks'

/**
 * A scan of a bore with what stands out in it; without marks where its radii are not at hand, or no axis goes through
 * them. `index`: which of the scans of its bore it is, from 0.
 */
export interface InspectedScan {
  readonly bore: Bore
  readonly scan: Scan
  readonly index: number
  readonly marks?: { readonly radii: RadialScan; readonly found: ScanMarks }
}

/**
 * The scan of a bore to compare one with that says whether it was taken before or after cleaning: the last of those that
 * say the other. Undefined where it says nothing, or no other does.
 */
export function otherOfCleaning({ scans = [] }: Bore, { cleaning }: Scan): Scan | undefined {
  if (cleaning === undefined) return undefined
  return scans.findLast((other) => other.cleaning !== undefined && other.cleaning !== cleaning)
}

/**
 * A scan before cleaning against the one after it, by `cleanedMarks`; undefined where it is none, or where either has no
 * marks that could be looked for.
 */
export function cleanedScan(
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
