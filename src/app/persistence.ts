import { createStore } from 'zustand/vanilla'

/** Whether the browser has promised to keep what is stored until the user deletes it. */
export type Persistence = 'not-asked' | 'granted' | 'refused' | 'unknown'

export const persistence = createStore<{ readonly answer: Persistence }>(() => ({ answer: 'not-asked' }))

/** Asks for it once, at a save that follows something the user did; a page nobody has touched asks for nothing. */
export async function askToPersist(): Promise<void> {
  if (persistence.getState().answer !== 'not-asked') return
  if (navigator.userActivation && !navigator.userActivation.hasBeenActive) return
  persistence.setState({ answer: 'unknown' })
  // Absent in an insecure page (WHATWG Storage).
  const storage: StorageManager | undefined = navigator.storage
  if (typeof storage?.persist !== 'function') return
  try {
    persistence.setState({ answer: (await storage.persist()) ? 'granted' : 'refused' })
  } catch (error) {
    if (!(error instanceof TypeError || error instanceof DOMException)) throw error
  }
}
