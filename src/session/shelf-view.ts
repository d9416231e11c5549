import { createStore } from 'zustand/vanilla'

export const shelfPlaces = ['shelf', 'archived', 'deleted'] as const
export type ShelfPlace = (typeof shelfPlaces)[number]

export const shelfOrders = ['changed', 'surveyed', 'check', 'name', 'verdict'] as const
export type ShelfOrder = (typeof shelfOrders)[number]

export const soughtStandings = ['out', 'too-close', 'inside', 'none'] as const

/** A next check that is due by today, within thirty days, on some day, or on none that is known. */
export const soughtChecks = ['due', 'soon', 'some', 'none'] as const

/** What of the shelf is shown, and in what order; empty texts stand for any. */
export interface ShelfQuery {
  readonly sought: string
  readonly machine: string
  /** Days, as in 2024-05-31. */
  readonly from: string
  readonly to: string
  readonly standing: (typeof soughtStandings)[number] | ''
  readonly check: (typeof soughtChecks)[number] | ''
  readonly place: ShelfPlace
  readonly order: ShelfOrder
}

export const wholeShelf: ShelfQuery = {
  sought: '',
  machine: '',
  from: '',
  to: '',
  standing: '',
  check: '',
  place: 'shelf',
  order: 'changed',
}

/** The shelf as it was looked at last in this tab. */
export const shelfView = createStore<ShelfQuery>(() => wholeShelf)

export function lookFor(change: Partial<ShelfQuery>): void {
  shelfView.setState(change)
}
