import { createStore } from 'zustand/vanilla'

/** What is put into the report, in this tab alone. */
export interface Reporting {
  /** Absent: as usual where this machine is. */
  readonly paper?: 'a4' | 'letter'
  /** Absent: all bores of the engine. */
  readonly boreId?: string
  readonly withNote: boolean
}

export const reporting = createStore<Reporting>(() => ({ withNote: false }))

export function choosePaper(paper: 'a4' | 'letter') {
  reporting.setState({ paper })
}

/** Undefined for all bores of the engine. */
export function reportOn(boreId: string | undefined) {
  reporting.setState(
    ({ boreId: _, ...rest }) => ({ ...rest, ...(boreId === undefined ? {} : { boreId }) }),
    true,
  )
}

export function reportNote(withNote: boolean) {
  reporting.setState({ withNote })
}

/** Another job is reported on as a whole; the paper stays. */
export function startReport() {
  reporting.setState(({ paper }) => ({ withNote: false, ...(paper === undefined ? {} : { paper }) }), true)
}
