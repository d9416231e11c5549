import type { Place } from '../../core/findings'

/** Something to be asked, in words, with what can be answered in one touch. */
export interface Question {
  readonly key: string
  readonly text: string
  readonly place?: Place
  readonly answers: readonly Answer[]
}

export interface Answer {
  readonly label: string
  readonly give: () => void
}
