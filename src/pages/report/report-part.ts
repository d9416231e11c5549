import type { ReactNode } from 'react'

/** A piece of a report that stays in one piece: right across the sheet, or in one of its columns. */
export interface ReportPart {
  readonly id: string
  readonly across: 'sheet' | 'column'
  /** A heading, that goes with what follows. */
  readonly withNext?: boolean
  readonly node: ReactNode
}
