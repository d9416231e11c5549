import { scanHead } from './scan-head'
import { scanLines } from './scan-lines'
import { tableText } from './table-bytes'
import { separatorOf } from './table-text'

/** So many bytes at the start say what a table holds. */
const sampleBytes = 65_536
/** A table of readings has no more axes than this, nor a list of them so many rows. */
const mostAxes = 24
const mostReadings = 400

/** Whether a file holds the radii of a scan rather than readings across the bore, by its heads and its size. */
export function looksLikeScan(bytes: Uint8Array): boolean {
  const decoded = tableText(bytes.subarray(0, sampleBytes))
  if (!decoded.ok) return false
  const text = decoded.text.replace(/^\uFEFF/, '')
  const separator = separatorOf(text)
  if (separator === undefined || separator === 'unclear') return false
  const rows = [...scanLines(text, separator)].map(({ cells }) => cells ?? [])
  const head = scanHead(rows)
  if (!head || head.isDiameter) return false
  if (head.isRadius) return true
  return head.layout === 'table' ? (rows[head.row]?.length ?? 0) > mostAxes : rows.length > mostReadings
}
