/** Radii of scans in this tab: each fetched once from the browser's database, and those of a file kept in mind. */
import type { RadialScan } from '../core/scan/radial-scan'
import type { EmbeddedScan } from '../job/scan-record'
import { scanInFile } from '../storage/scan-store'
import { ShelfError } from '../storage/shelf-error'
import { shelf } from './shelf-here'

const known = new Map<string, RadialScan>()

/** A scan that need not be fetched any more. */
export function scanAtHand(hash: string): RadialScan | undefined {
  return known.get(hash)
}

/** Undefined where it is not in this browser, or damaged here. */
export async function scanHere(hash: string): Promise<RadialScan | undefined> {
  const before = known.get(hash)
  if (before) return before
  try {
    const scan = await (await shelf()).scans.read(hash)
    if (scan) known.set(hash, scan)
    return scan
  } catch (error) {
    if (!(error instanceof ShelfError)) throw error
    return undefined
  }
}

/** Keeps a scan and gives the hash of its record; one that cannot be kept rejects with a `ShelfError`. */
export async function keepScan(scan: RadialScan): Promise<string> {
  const hash = await (await shelf()).scans.put(scan)
  known.set(hash, scan)
  return hash
}

/** Scans that a file brought along can be looked at, also where this browser keeps nothing. */
export async function keepInMind(scans: readonly EmbeddedScan[]): Promise<void> {
  for (const embedded of scans) {
    if (known.has(embedded.hash)) continue
    const found = await scanInFile(embedded)
    if (found) known.set(embedded.hash, found.scan)
  }
}
