import { scanMarks } from './english/scan-marks'

/** The texts of marks in a scan: kept out of what the first page loads. */
export const scanMarkWords: typeof scanMarks = scanMarks
