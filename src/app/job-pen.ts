import * as z from 'zod/mini'
import { createStore, type StoreApi } from 'zustand/vanilla'

/** What became of the last change of this tab when another took the job over. */
export type Lost = 'saved' | 'set-aside' | 'unsaved'

/** Which tab writes the job on the bench. */
export type PenState =
  /** No kept job is on the bench. */
  | { readonly kind: 'none' }
  /** This tab writes it, and no other. */
  | { readonly kind: 'held' }
  /** Another tab writes it. */
  | { readonly kind: 'following'; readonly lost?: Lost }
  /** Another tab has asked for it and gets it in a moment. */
  | { readonly kind: 'handing-over' }
  /** This browser has no means to tell. */
  | { readonly kind: 'unguarded' }

export interface JobPen {
  readonly state: StoreApi<PenState>
  /** Takes the pen of a job where no other tab has it, and lets go of that of the job before. */
  take(id: string): Promise<void>
  /** Lets go of the pen, unless it is that of the job with this id. */
  release(except?: string): void
  /**
   * Takes the pen from the tab that has it, once that has saved what it has; `unsaved` where it could not, and
   * then only when it is asked for all the same.
   */
  takeOver(allTheSame?: boolean): Promise<'taken' | 'unsaved'>
  /** Tells the tabs that follow that the job was saved. */
  tellSaved(id: string): void
  /** Whether another tab writes the job, as far as this browser can tell. */
  isElsewhere(id: string): Promise<boolean>
}

export interface PenOptions {
  /** Web Locks (W3C Working Draft); absent in an old browser or an insecure page. */
  readonly locks: Pick<LockManager, 'request'> | undefined
  /** Absent where tabs cannot speak to each other. */
  readonly channel: Pick<BroadcastChannel, 'postMessage' | 'addEventListener'> | undefined
  /** Saves what is not saved yet; true once it is. */
  readonly settle: () => Promise<boolean>
  /** The tab that writes the job has saved it. */
  readonly onSaved: (id: string) => void
  /** This tab may write the job from now on, which another may have changed. */
  readonly onTaken: (id: string) => Promise<void>
  /** Another tab has taken the job over. */
  readonly onLost: (id: string) => Promise<Lost>
  /** This tab only looks on: it takes no pen unless it is asked to take one over. */
  readonly looksOn?: boolean
  /** How long the other tab gets to answer, ms. */
  readonly patience?: number
}

const messageSchema = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('saved'), id: z.string() }),
  z.object({ kind: z.literal('asked-for'), id: z.string() }),
  z.object({ kind: z.literal('ready'), id: z.string(), saved: z.boolean() }),
])
type Message = z.output<typeof messageSchema>

/** The turn of one job on the bench of this tab. */
interface Turn {
  readonly id: string
  /** Lets go of the lock, while this tab has it. */
  letGo?: () => void
  /** Gives up waiting for the lock. */
  waiting?: AbortController
}

/** One tab writes a job at a time: the one that holds its lock. */
export function createJobPen(options: PenOptions): JobPen {
  const { locks, channel, patience = 2000 } = options
  const state = createStore<PenState>(() => ({ kind: 'none' }))
  let turn: Turn | undefined
  let heard: ((saved: boolean) => void) | undefined

  const set = (next: PenState) => state.setState(next, true)
  const post = (message: Message) => channel?.postMessage(message)

  /** Resolves with whether the lock was granted; it is held until `letGo`. */
  function request(of: Turn, how: LockOptions): Promise<boolean> {
    let had = false
    return new Promise((resolve, reject) => {
      const asked = locks?.request(lockName(of.id), how, (lock) => {
        if (lock === null || turn !== of) return resolve(false)
        had = true
        return new Promise<void>((letGo) => {
          of.letGo = letGo
          resolve(true)
        })
      })
      asked?.catch((error: unknown) => {
        const aborted = error instanceof DOMException && error.name === 'AbortError'
        if (!aborted) return reject(error)
        resolve(false)
        if (had) void lost(of)
      })
    })
  }

  /** Another tab took the lock away. */
  async function lost(of: Turn) {
    delete of.letGo
    if (turn !== of) return
    set({ kind: 'following', lost: 'saved' })
    waitFor(of)
    const what = await options.onLost(of.id)
    if (turn === of && state.getState().kind === 'following') set({ kind: 'following', lost: what })
  }

  /** Takes the pen when the tab that has it lets go of it. */
  function waitFor(of: Turn) {
    of.waiting = new AbortController()
    void request(of, { signal: of.waiting.signal }).then((granted) => {
      if (granted) return taken(of)
    })
  }

  async function taken(of: Turn) {
    delete of.waiting
    await options.onTaken(of.id)
    if (turn === of && of.letGo) set({ kind: 'held' })
  }

  function release(except?: string) {
    if (turn !== undefined && turn.id === except) return
    turn?.waiting?.abort()
    turn?.letGo?.()
    turn = undefined
    set({ kind: 'none' })
  }

  async function handOver(of: Turn) {
    const settled = options.settle()
    set({ kind: 'handing-over' })
    const saved = await settled
    post({ kind: 'ready', id: of.id, saved })
    // The tab that asked may be gone, or may not want a job with unsaved changes.
    setTimeout(() => {
      if (turn === of && of.letGo && state.getState().kind === 'handing-over') set({ kind: 'held' })
    }, patience)
  }

  channel?.addEventListener('message', ({ data }) => {
    const message = messageSchema.safeParse(data)
    if (!message.success || !turn || message.data.id !== turn.id) return
    const { kind } = state.getState()
    if (message.data.kind === 'saved' && kind !== 'held') options.onSaved(turn.id)
    if (message.data.kind === 'asked-for' && kind === 'held') void handOver(turn)
    if (message.data.kind === 'ready') heard?.(message.data.saved)
  })

  return {
    state,
    async take(id) {
      if (turn?.id === id) return
      release()
      const of: Turn = { id }
      turn = of
      if (options.looksOn) return set({ kind: 'following' })
      if (!locks) return set({ kind: 'unguarded' })
      const granted = await request(of, { ifAvailable: true }).catch(() => undefined)
      if (turn !== of) return
      if (granted === undefined) return set({ kind: 'unguarded' })
      set({ kind: granted ? 'held' : 'following' })
      if (!granted) waitFor(of)
    },
    release,
    async takeOver(allTheSame = false) {
      const of = turn
      if (!of || of.letGo) return 'taken'
      const answer = new Promise<boolean>((resolve) => {
        heard = resolve
        // It may sleep in the background, or hang: what it has saved is there all the same.
        setTimeout(() => resolve(true), patience)
      })
      post({ kind: 'asked-for', id: of.id })
      const saved = await answer
      heard = undefined
      if (!saved && !allTheSame) return 'unsaved'
      of.waiting?.abort()
      if (await request(of, { steal: true })) await taken(of)
      return 'taken'
    },
    tellSaved: (id) => post({ kind: 'saved', id }),
    async isElsewhere(id) {
      if (turn?.id === id) return state.getState().kind === 'following'
      const free = await locks
        ?.request(lockName(id), { ifAvailable: true }, (lock) => lock !== null)
        .catch(() => true)
      return free === false
    },
  }
}

function lockName(id: string): string {
  return `borewall-job ${id}`
}
