import type { ScanChoices, ScanTable } from '../formats/scan-table'
import { useFileReading } from './use-file-reading'

const open = () => new Worker(new URL('../workers/scan-table.worker.ts', import.meta.url), { type: 'module' })

/** Reads a file of radii. */
export function useScanTable(bytes: Uint8Array, choices: ScanChoices, onRead: (table: ScanTable) => void) {
  return useFileReading<ScanChoices, ScanTable>(open, bytes, choices, onRead)
}
