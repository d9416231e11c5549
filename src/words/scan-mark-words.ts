import { scanMarks } from './english/scan-marks'
import { inLanguage } from './language'

/** The texts of marks in a scan: kept out of what the first page loads. */
export const scanMarkWords = inLanguage('scanMarks', scanMarks)
