import type { TableChoices, TableFile } from '../formats/table-file'
import type { FileAsked, FileSaid } from './file-messages'

export type TableAsked = FileAsked<TableChoices>
export type TableSaid = FileSaid<TableFile>
