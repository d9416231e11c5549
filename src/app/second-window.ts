/**
 * A second window, on the owner's screen, that shows what lies on the bench. The job itself comes as it does to any
 * tab that follows (`job-pen.ts`); which job, which bore and what is told is said here, from the bench to the window.
 */
import * as z from 'zod/mini'
import { jobStore } from '../job/job-store'
import { newId } from '../job/new-id'
import { chooseBore, session } from '../session/session'
import { showing, showStep } from '../session/showing'
import { desk, goToPage, openKept } from './desk'
import { askedIn, exampleNames } from './examples'
import { saveLoop } from './keeping'
import { addressOf } from './page-address'
import { isSecondWindow, nameForSecond, tokenOfTwo } from './second-window-name'

const shownSchema = z.object({
  kind: z.literal('shown'),
  token: z.string(),
  jobId: z.string(),
  /** The job is an example that nobody changed, and is kept nowhere. */
  example: z.optional(z.enum(exampleNames)),
  boreId: z.optional(z.string()),
  /** What is told there, or was last. */
  step: z.number(),
})
type Shown = z.output<typeof shownSchema>
const messageSchema = z.discriminatedUnion('kind', [
  shownSchema,
  z.object({ kind: z.literal('begun'), token: z.string() }),
])
type Message = z.output<typeof messageSchema>

let channel: BroadcastChannel | undefined

/** Opens the second window of this bench, or brings it to the front; false where the browser opens none. */
export function openSecondWindow(): boolean {
  const name = nameForSecond(newId)
  joinTwo()
  const { pathname, search } = location
  const asked = askedIn(location.hash)
  const example = asked.kind === 'example' ? asked.name : undefined
  return window.open(`${pathname}${search}${addressOf(example, 'show')}`, name, 'popup') !== null
}

/** Joins this window to its other one, once. */
export function joinTwo(): void {
  const token = tokenOfTwo()
  if (channel || token === undefined || typeof BroadcastChannel === 'undefined') return
  channel = new BroadcastChannel('borewall-show')
  const send = (message: Message) => channel?.postMessage(message)
  const heard = (take: (message: Message) => void) =>
    channel?.addEventListener('message', ({ data }) => {
      const message = messageSchema.safeParse(data)
      if (message.success && message.data.token === token) take(message.data)
    })
  if (isSecondWindow()) {
    const follow = inOrder(followShown)
    heard((message) => (message.kind === 'shown' ? follow(message) : undefined))
    send({ kind: 'begun', token })
    return
  }
  const tell = () => {
    if (desk.getState().shows === 'bench') send(shownNow(token))
  }
  heard((message) => (message.kind === 'begun' ? tell() : undefined))
  const tellOf = (part: (shown: Shown) => unknown) => {
    let before: unknown
    return () => {
      const now = part(shownNow(token))
      if (now === before) return
      before = now
      tell()
    }
  }
  const tellChange = tellOf((shown) => JSON.stringify(shown))
  for (const store of [jobStore, session, showing, desk]) store.subscribe(tellChange)
  // A job is found on the shelf once it was saved.
  saveLoop.state.subscribe(({ kind }) => (kind === 'saved' ? tell() : undefined))
}

function shownNow(token: string): Shown {
  const { boreId } = session.getState()
  const asked = askedIn(location.hash)
  return {
    kind: 'shown',
    token,
    jobId: jobStore.getState().job.id,
    ...(asked.kind === 'example' ? { example: asked.name } : {}),
    ...(boreId === undefined ? {} : { boreId }),
    step: showing.getState().step,
  }
}

/** One after the other, and of those that came meanwhile the last alone. */
function inOrder(take: (shown: Shown) => Promise<void>): (shown: Shown) => void {
  let next: Shown | undefined
  let isBusy = false
  return (shown) => {
    next = shown
    if (isBusy) return
    isBusy = true
    void (async () => {
      while (next) {
        const now = next
        next = undefined
        await take(now)
      }
      isBusy = false
    })()
  }
}

/** What the bench told last: while it stays there, this window may be gone through by itself. */
let toldLast: number | undefined

async function followShown({ jobId, example, boreId, step }: Shown): Promise<void> {
  const { job } = jobStore.getState()
  const asked = askedIn(location.hash)
  if (example !== undefined) {
    if (asked.kind !== 'example' || asked.name !== example) location.hash = addressOf(example, 'show')
  } else if (job.id !== jobId) {
    await openKept(jobId, '')
  }
  goToPage('show')
  if (boreId !== undefined && session.getState().boreId !== boreId) chooseBore(boreId)
  if (step !== toldLast || jobStore.getState().job.id !== job.id) showStep(step)
  toldLast = step
}
