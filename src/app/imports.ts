import { loadedLater } from '../pages/loaded-later'

export const { Part: ImportTable, fetchAhead: fetchImportTable } = loadedLater(
  async () => (await import('./ImportTable')).ImportTable,
)
export const { Part: ImportScan, fetchAhead: fetchImportScan } = loadedLater(
  async () => (await import('./ImportScan')).ImportScan,
)
