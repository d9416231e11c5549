import { scanForm } from './english/scan-form'
import { inLanguage } from './language'

/** The texts of the form of a scan: kept out of what the first page loads. */
export const scanFormWords = inLanguage('scanForm', scanForm)
