/** A window that shows what the bench does is known by its name, which outlives a reload, and so is the bench. */
const prefix = 'borewall-show '
const kept = 'borewall-second-window'

/** Whether this window was opened by a bench, to show the owner what it shows. */
export function isSecondWindow(): boolean {
  return window.name.startsWith(prefix)
}

/** What joins a bench and its second window; undefined for a window that has none. */
export function tokenOfTwo(): string | undefined {
  if (isSecondWindow()) return window.name.slice(prefix.length)
  return storage()?.getItem(kept) ?? undefined
}

/** The name of the second window of this bench. */
export function nameForSecond(newToken: () => string): string {
  const token = tokenOfTwo() ?? newToken()
  storage()?.setItem(kept, token)
  return `${prefix}${token}`
}

/** Absent where the browser keeps nothing: the two then lose each other with a reload. */
function storage(): Storage | undefined {
  try {
    return window.sessionStorage
  } catch (error) {
    if (error instanceof DOMException) return undefined
    throw error
  }
}
