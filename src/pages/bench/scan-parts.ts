/** What the Bench shows of a scan; none of it is loaded before there is one. */
import { loadedLater } from '../loaded-later'

const list = loadedLater(async () => (await import('./ScanList')).ScanList)
const flatWall = loadedLater(async () => (await import('./ScanFlatWall')).ScanFlatWall)
const marks = loadedLater(async () => (await import('./ScanMarksPanel')).ScanMarksPanel)

export const ScanList = list.Part
export const ScanFlatWall = flatWall.Part
export const ScanMarksPanel = marks.Part

/** For a scan that will be shown soon. */
export async function fetchScanParts(): Promise<void> {
  await Promise.all([list, flatWall, marks].map((part) => part.fetchAhead()))
}
