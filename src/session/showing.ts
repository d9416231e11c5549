import { createStore } from 'zustand/vanilla'

/** Where the talk to the owner stands, in this tab alone. */
export interface Showing {
  /** Which of the things told, from 0. */
  readonly step: number
}

export const showing = createStore<Showing>(() => ({ step: 0 }))

/** Goes to one of the things told. */
export function showStep(step: number) {
  showing.setState({ step })
}
