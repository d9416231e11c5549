import type { Place } from '../core/findings'
import type { ownerWords } from './owner-words'

/** What is told, in its order. */
export type OwnerTopic = keyof typeof ownerWords.topics

/** Where the picture looks while something is told. */
export interface OwnerLook {
  /** Straight down the bore, or at the wall from the other side. */
  readonly from: 'above' | 'side'
  /** The wall that is looked at, degrees clockwise seen from the deck; the front where absent. */
  readonly angleDegrees?: number
  /** How deep it lies; the whole bore where absent. */
  readonly depthMm?: number
  /** The bore to compare with stands beside it. */
  readonly beside: boolean
}

/** One thing that the owner is told: a sentence in large type, what goes with it, and what it speaks of. */
export interface OwnerStep {
  readonly topic: OwnerTopic
  readonly heading: string
  readonly sentence: string
  readonly beside: readonly string[]
  readonly look: OwnerLook
  /** The findings that hold its figures, by the names of their rows. */
  readonly rows: readonly string[]
}

/** A step without its heading, which goes by its topic. */
export type OwnerPart = Omit<OwnerStep, 'heading'>

/** A place of the wall to look at. */
export function lookAt(place: Place | undefined, beside = false): OwnerLook {
  return place
    ? { from: 'side', angleDegrees: place.axisDegrees, depthMm: place.depthMm, beside }
    : { from: 'side', beside }
}
