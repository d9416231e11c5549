import { scanTable } from './english/scan-table'

/** The texts of a file of radii: kept out of what the first page loads. */
export const scanTableWords: typeof scanTable = scanTable
