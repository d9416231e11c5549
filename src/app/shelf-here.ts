import { openShelf, type Shelf } from '../storage/job-shelf'
import { connectionTo } from '../storage/shelf-database'
import { ShelfError } from '../storage/shelf-error'
import { words } from '../words/words'
import { tell } from './questions'

const connection = connectionTo()
let opened: Promise<Shelf> | undefined

/** The shelf of this browser; a shelf that could not be opened is tried again at each call. */
export function shelf(): Promise<Shelf> {
  opened ??= openShelf({ now: () => new Date(), connection }).catch((error: unknown) => {
    opened = undefined
    throw error
  })
  return opened
}

/** Does something with the shelf; where the shelf fails, says so in front of the page. */
export async function unlessShelfFails<Result>(
  step: (shelf: Shelf) => Promise<Result>,
): Promise<Result | undefined> {
  try {
    return await step(await shelf())
  } catch (error) {
    if (!(error instanceof ShelfError)) throw error
    await tell(words.saving.errors[error.code])
    return undefined
  }
}
