import type { TableChoices, TableFile } from '../formats/table-file'
import { useFileReading } from './use-file-reading'

const open = () => new Worker(new URL('../workers/table.worker.ts', import.meta.url), { type: 'module' })

/** Reads a table of readings. */
export function useTableFile(bytes: Uint8Array, choices: TableChoices) {
  return useFileReading<TableChoices, TableFile>(open, bytes, choices)
}
