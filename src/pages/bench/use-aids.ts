import { useEffect, useRef } from 'react'
import { type PedalAction, pedalActions, session } from '../../session/session'
import { placeText } from '../../words/numbers'
import { spoken } from '../../words/spoken'
import { words } from '../../words/words'
import { openQuestions } from './open-questions'
import { takenText } from './taken-text'
import type { Entry } from './use-entry'
import type { OnBench } from './use-job'
import { useSession } from './use-job'
import { say } from './voice'

/** Voice and pedals for entering readings, where they are chosen. */
export function useAids(bench: OnBench, entry: Entry): void {
  useSpoken(bench, entry)
  usePedals(entry)
}

/** Says what was taken or refused, what is asked about it, and where the next number goes. */
function useSpoken(bench: OnBench, entry: Entry): void {
  const { station, refusal } = entry
  const taken = takenText(entry)
  const isOn = useSession((state) => state.aids.spoken)
  const place = station ? `${bench.bore.id} ${placeText(station)}` : ''
  const asked = isOn ? openQuestions(bench) : []
  const heard = useRef({ place: '', taken: '', refusal: '', questions: new Set<string>() })
  useEffect(() => {
    if (!isOn) return
    const before = heard.current
    const newQuestions = asked.filter(({ key }) => !before.questions.has(key))
    const isNewJob = before.place === ''
    heard.current = { place, taken, refusal: refusal ?? '', questions: new Set(asked.map(({ key }) => key)) }
    if (refusal !== undefined && refusal !== before.refusal) return say(spoken(refusal))
    const parts = [
      ...(taken !== '' && taken !== before.taken ? [taken] : []),
      // Those that stood there when the voice was switched on are on the page.
      ...(isNewJob ? [] : newQuestions.map(({ text }) => text)),
      ...(place !== before.place ? [station ? words.aids.next(placeText(station)) : words.next.allRead] : []),
    ]
    if (parts.length > 0) say(spoken(parts.join(' ')))
  })
}

/** Lets a pedal do what its key was chosen for, wherever the focus is. */
function usePedals(entry: Entry): void {
  const pedals = useSession((state) => state.aids.pedals)
  const latest = useRef(entry)
  useEffect(() => {
    latest.current = entry
  })
  useEffect(() => {
    if (Object.keys(pedals).length === 0) return
    const onKey = (event: KeyboardEvent) => {
      const action = pedalActions.find((each) => pedals[each] === event.key)
      if (!action || document.querySelector('dialog[open]')) return
      event.preventDefault()
      event.stopPropagation()
      if (!event.repeat) actOn(latest.current, action)
    }
    window.addEventListener('keydown', onKey, true)
    return () => window.removeEventListener('keydown', onKey, true)
  }, [pedals])
}

function actOn(entry: Entry, action: PedalAction): void {
  if (action === 'take') entry.enter()
  else entry[action]()
}

/** Whether a key is free for a pedal: one that neither types nor moves. */
export function isFreeForPedal(key: string): boolean {
  return key.length > 1 && !needed.has(key) && !/^Arrow/.test(key)
}

const needed = new Set([
  'Enter',
  'Tab',
  'Escape',
  'Backspace',
  'Delete',
  'Home',
  'End',
  'Shift',
  'Control',
  'Alt',
  'Meta',
  'AltGraph',
  'CapsLock',
  'Dead',
  'Process',
  'Unidentified',
])

/** What a key already stands for. */
export function actionOfPedal(key: string): PedalAction | undefined {
  const { pedals } = session.getState().aids
  return pedalActions.find((action) => pedals[action] === key)
}
