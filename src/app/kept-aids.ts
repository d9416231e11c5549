import * as z from 'zod/mini'
import { type Aids, pedalActions, session, setAids } from '../session/session'
import { withLocalStorage } from './local-storage'

const storedUnder = 'borewall-aids'

const aidsSchema = z.object({
  spoken: z.boolean(),
  pedals: z.partialRecord(z.enum(pedalActions), z.string().check(z.maxLength(40))),
})

/** Takes up the voice and the pedals chosen on this machine, and keeps each choice to come. */
export function keepAids(): void {
  const aids = stored()
  if (aids) setAids(aids)
  session.subscribe(({ aids: now }, { aids: before }) => {
    if (now === before) return
    withLocalStorage((storage) => storage.setItem(storedUnder, JSON.stringify(now)))
  })
}

/** Undefined where nothing was chosen, or what is there is no choice of ours. */
function stored(): Aids | undefined {
  const text = withLocalStorage((storage) => storage.getItem(storedUnder))
  if (text == null) return undefined
  try {
    const read = aidsSchema.safeParse(JSON.parse(text))
    return read.success ? read.data : undefined
  } catch (error) {
    if (error instanceof SyntaxError) return undefined
    throw error
  }
}
