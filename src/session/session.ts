import { createStore } from 'zustand/vanilla'

/** Where a person points, and from which part of the page: every part lights the same place. */
export interface Pointed {
  readonly depthMm: number
  readonly angleDegrees: number
  readonly from: 'sheet' | 'map' | 'picture' | 'findings'
}

export type ViewName = 'front' | 'right' | 'rear' | 'left' | 'above' | 'free'

/** How the picture is looked at. `turn` and `zoom` count presses of the buttons since the view was chosen. */
export interface View {
  readonly name: ViewName
  readonly turn: number
  readonly zoom: number
}

/** The station in hand: where the next number goes. */
export interface InHand {
  readonly boreId: string
  readonly depthMm: number
  readonly axisDegrees: number
}

/** What is typed for the station in hand and not yet taken. */
export interface Entering {
  readonly typed: string
  /** It replaces what the station has. */
  readonly correcting: boolean
}

/** State of this tab alone: never saved with the job, never undone. */
export interface Session {
  readonly boreId?: string
  /** Absent: the latest of the bore. */
  readonly surveyId?: string
  readonly pointed?: Pointed
  readonly inHand?: InHand
  readonly entering: Entering
  /** Absent: as many as the survey has already. */
  readonly repeatsPerStation?: number
  /** Absent: the job's own. */
  readonly exaggeration?: number
  readonly view: View
}

const nothingTyped: Entering = { typed: '', correcting: false }
const start: Session = { entering: nothingTyped, view: { name: 'front', turn: 0, zoom: 0 } }

export const session = createStore<Session>(() => start)

function set(change: (state: Session) => Session) {
  session.setState(change, true)
}

type OptionalPart = 'boreId' | 'surveyId' | 'pointed' | 'inHand' | 'repeatsPerStation' | 'exaggeration'

/** The state with one optional part replaced, or taken out where the value is undefined. */
function withPart<Key extends OptionalPart>(
  state: Session,
  key: Key,
  value: Session[Key] | undefined,
): Session {
  const { [key]: _, ...rest } = state
  return (value === undefined ? rest : { ...rest, [key]: value }) as Session
}

export function chooseBore(boreId: string) {
  set(({ boreId: _, surveyId: __, pointed: ___, inHand: ____, ...rest }) => ({
    ...rest,
    boreId,
    entering: nothingTyped,
  }))
}

/** Chooses a survey of the bore on the bench; undefined for the latest. */
export function chooseSurvey(surveyId: string | undefined) {
  set(({ pointed: _, inHand: __, ...rest }) =>
    withPart({ ...rest, entering: nothingTyped }, 'surveyId', surveyId),
  )
}

/** Starts over for another job; the view stays. */
export function startSession() {
  set(({ view }) => ({ ...start, view }))
}

export function pointAt(pointed: Pointed | undefined) {
  set((state) => (samePointed(state.pointed, pointed) ? state : withPart(state, 'pointed', pointed)))
}

function samePointed(one: Pointed | undefined, other: Pointed | undefined): boolean {
  return (
    one?.depthMm === other?.depthMm && one?.angleDegrees === other?.angleDegrees && one?.from === other?.from
  )
}

export function takeInHand(inHand: InHand | undefined) {
  set((state) => withPart(state, 'inHand', inHand))
}

export function setEntering(entering: Entering) {
  set((state) => ({ ...state, entering }))
}

export function setRepeatsPerStation(repeats: number | undefined) {
  set((state) => withPart(state, 'repeatsPerStation', repeats))
}

export function setExaggeration(exaggeration: number | undefined) {
  set((state) => withPart(state, 'exaggeration', exaggeration))
}

export function lookFrom(name: ViewName) {
  set((state) => ({ ...state, view: { name, turn: 0, zoom: 0 } }))
}

/** Turns by a number of steps, clockwise seen from the deck. */
export function turnView(steps: number) {
  set((state) => ({ ...state, view: { ...state.view, turn: state.view.turn + steps } }))
}

export function zoomView(steps: number) {
  set((state) => ({ ...state, view: { ...state.view, zoom: state.view.zoom + steps } }))
}

/** The picture was turned by hand: no named view holds any longer. */
export function turnedByHand() {
  set((state) =>
    state.view.name === 'free' ? state : { ...state, view: { name: 'free', turn: 0, zoom: 0 } },
  )
}
