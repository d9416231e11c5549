import { jobStore } from '../job/job-store'
import { showKeys } from './questions'

/** Undo and redo by the keys that every program has for them, outside of fields that have their own. */
export function listenForUndo(): void {
  window.addEventListener('keydown', (event) => {
    const step = undoStep(event)
    if (!step || takesText(event.target) || document.querySelector('dialog[open]')) return
    event.preventDefault()
    jobStore.getState()[step]()
  })
}

/** The list of all keys by the key for it, outside of fields in which it is typed. */
export function listenForKeyList(): void {
  window.addEventListener('keydown', (event) => {
    const { key, ctrlKey, metaKey, altKey, target } = event
    if (key !== '?' || ctrlKey || metaKey || altKey || takesText(target)) return
    if (document.querySelector('dialog[open]')) return
    event.preventDefault()
    showKeys()
  })
}

function undoStep({ key, ctrlKey, metaKey, shiftKey, altKey }: KeyboardEvent): 'undo' | 'redo' | undefined {
  if (!(ctrlKey || metaKey) || altKey) return undefined
  const pressed = key.toLowerCase()
  if (pressed === 'z') return shiftKey ? 'redo' : 'undo'
  return pressed === 'y' && ctrlKey && !shiftKey ? 'redo' : undefined
}

const withoutText = new Set(['button', 'checkbox', 'file', 'radio', 'range', 'reset', 'submit'])

function takesText(target: EventTarget | null): boolean {
  if (target instanceof HTMLInputElement) return !withoutText.has(target.type)
  return target instanceof HTMLTextAreaElement || (target instanceof HTMLElement && target.isContentEditable)
}
