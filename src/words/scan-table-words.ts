import { scanTable } from './english/scan-table'
import { inLanguage } from './language'

/** The texts of a file of radii: kept out of what the first page loads. */
export const scanTableWords = inLanguage('scanTable', scanTable)
