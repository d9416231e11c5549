import { useEffect, useRef } from 'react'
import type { EntryActions } from './entry-actions'
import { entryNow } from './entry-state'
import { afterGaugeKey, type GaugeKeys, type GaugePress, type GaugeStep, noGaugeKeys } from './gauge-keys'

/** Lets a gauge that types like a keyboard enter readings while no field has the focus. */
export function useGaugeKeys(actions: EntryActions): void {
  const latest = useRef(actions)
  useEffect(() => {
    latest.current = actions
  })
  useEffect(() => {
    let keys: GaugeKeys = noGaugeKeys
    const act = (step: GaugeStep, target: EventTarget | null) => {
      const { begin, setTyped, enter, leave, type } = latest.current
      if (step.does === 'take') enter()
      if (step.does === 'give-up') leave()
      if (step.does === 'delete') setTyped(entryNow().typed.slice(0, -1))
      if (step.does === 'begin') begin(step.text)
      if (step.does === 'add') setTyped(`${entryNow().typed}${step.text}`)
      if (step.does === 'begin-at-cell') {
        const place = placeOfCell(target)
        if (place) type(place, step.text)
      }
    }
    const onKeyDown = (event: KeyboardEvent) => {
      if (event.defaultPrevented || event.isComposing) return
      const [after, step] = afterGaugeKey(keys, pressOf(event))
      keys = after
      if (step.does === 'pass-on') return
      event.preventDefault()
      event.stopPropagation()
      act(step, event.target)
    }
    // Another thing has the focus now: a line end there is meant for it.
    const onFocus = () => {
      keys = { ...noGaugeKeys, takenAt: keys.takenAt }
    }
    window.addEventListener('keydown', onKeyDown, { capture: true })
    window.addEventListener('focusin', onFocus)
    return () => {
      window.removeEventListener('keydown', onKeyDown, { capture: true })
      window.removeEventListener('focusin', onFocus)
    }
  }, [])
}

function pressOf(event: KeyboardEvent): GaugePress {
  return {
    key: event.key,
    time: event.timeStamp,
    repeat: event.repeat,
    withModifier: event.ctrlKey || event.metaKey || event.altKey,
    focus: focusOf(event.target),
  }
}

function focusOf(target: EventTarget | null): GaugePress['focus'] {
  if (!(target instanceof HTMLElement)) return 'other'
  // An open menu is gone through by typing the name of a choice.
  if (takesText(target) || target.closest('[role="menu"]') || document.querySelector('dialog[open]')) {
    return 'text'
  }
  if (placeOfCell(target)) return 'cell'
  if (target instanceof HTMLSelectElement) return 'list'
  return target.closest('.picture-box') ? 'signs' : 'other'
}

const withoutText = new Set(['button', 'checkbox', 'file', 'radio', 'range', 'reset', 'submit'])

/** Whether typing goes into an element itself; a list to choose from goes to what begins like it. */
function takesText(element: HTMLElement): boolean {
  if (element instanceof HTMLInputElement) return !withoutText.has(element.type)
  if (element instanceof HTMLSelectElement) return beginsLikeNumber(element)
  return element instanceof HTMLTextAreaElement || element.isContentEditable
}

function beginsLikeNumber({ options }: HTMLSelectElement): boolean {
  return [...options].some(({ text }) => /^\s*[\d.,+\-\u2212]/.test(text))
}

/** The station that a cell of the grid stands for. */
function placeOfCell(target: EventTarget | null) {
  if (!(target instanceof HTMLElement) || target.dataset.depth === undefined) return undefined
  return { depthMm: Number(target.dataset.depth), axisDegrees: Number(target.dataset.axis) }
}
