import type { ScanChoices, ScanTable } from '../formats/scan-table'
import type { FileAsked, FileSaid } from './file-messages'

export type ScanTableAsked = FileAsked<ScanChoices>
export type ScanTableSaid = FileSaid<ScanTable>
