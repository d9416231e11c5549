/** Does something with the browser's own store of choices; undefined where the browser keeps nothing. */
export function withLocalStorage<Result>(step: (storage: Storage) => Result): Result | undefined {
  try {
    return step(window.localStorage)
  } catch (error) {
    if (error instanceof DOMException) return undefined
    throw error
  }
}
