import { createStore } from 'zustand/vanilla'
import type { PlacedPiston } from '../core/piston/piston-in-bore'
import { startReport } from './reporting'
import { showStep } from './showing'

/** Where a person points, and from which part of the page: every part lights the same place. */
export interface Pointed {
  readonly depthMm: number
  readonly angleDegrees: number
  readonly from: 'sheet' | 'map' | 'section' | 'profile' | 'picture' | 'findings'
}

/** The flat views of the wall, of which one is shown. */
export type ChartName = 'map' | 'section' | 'profile' | 'hours'

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

/** A level on an axis. */
export type StationPlace = Omit<InHand, 'boreId'>

/** What is typed for a station and not yet taken. */
export interface Entering {
  readonly typed: string
  /** It replaces all that the station has, or the repeat of this number, from 0. */
  readonly replaces?: 'all' | number
  /** Where it was typed; absent while nothing is. */
  readonly at?: StationPlace
  /** Why it was not taken, in words. */
  readonly refusal?: string
}

/** A number that was typed and gave way to another before it was taken. */
export interface NotTaken {
  readonly surveyId: string
  readonly typed: string
  readonly at?: StationPlace
}

/** The number that was taken last, as it was typed. */
export interface Taken extends InHand {
  readonly typed: string
}

/** What was typed into a field of a sentence and refused there. */
export interface Draft {
  readonly typed: string
  readonly refusal: string
}

/** Ends of a range that were typed and wait for the other end to be typed too. */
export interface WaitingEnds {
  readonly low?: number
  readonly high?: number
}

/** The parts of the page that a phone shows one at a time, and a tablet two at a time. */
export type PartName = 'enter' | 'wall' | 'findings' | 'set-up'

/** The part shown last of all, and last on either side of a tablet. */
export interface PartsShown {
  readonly latest: PartName
  readonly left: 'enter' | 'set-up'
  readonly right: 'wall' | 'findings'
}

/** The ways to stand before a job. */
export const pageNames = ['bench', 'compare', 'show', 'report'] as const
export type PageName = (typeof pageNames)[number]

/** Which station comes next: all of a bore first, or all bores at a level first. */
export type EntryOrder = 'bore-by-bore' | 'level-by-level'

export const pedalActions = ['take', 'again', 'back', 'skip'] as const
export type PedalAction = (typeof pedalActions)[number]

/** What helps hands that hold a gauge; chosen on this machine. */
export interface Aids {
  readonly spoken: boolean
  /** The key that a pedal types, by what it does. */
  readonly pedals: { readonly [Action in PedalAction]?: string }
}

/** A piston shown in the bore on the bench, and where along its stroke: 0 at the top, 1 at the bottom. */
export interface PistonShown {
  readonly id?: string
  readonly share: number
  /** Absent until it was worked out, or where its dimensions were not given. */
  readonly placed?: PlacedPiston
}

/** State of this tab alone: never saved with the job, never undone. */
export interface Session {
  readonly page: PageName
  readonly boreId?: string
  /** Absent: the latest of the bore. */
  readonly surveyId?: string
  readonly pointed?: Pointed
  readonly inHand?: InHand
  /** By survey: another bore is looked at without losing what was typed for this one. */
  readonly entering: Readonly<Record<string, Entering>>
  readonly notTaken: readonly NotTaken[]
  readonly taken?: Taken
  /** By the name of the field within its survey. */
  readonly drafts: Readonly<Record<string, Draft>>
  /** By the name of the range. */
  readonly waiting: Readonly<Record<string, WaitingEnds>>
  /** Stations passed over for now: they are come back to only by choice. */
  readonly skipped: readonly InHand[]
  readonly entryOrder: EntryOrder
  /** Absent: the job's own. */
  readonly exaggeration?: number
  readonly view: View
  /** All bores in a row in the picture. */
  readonly allBores: boolean
  readonly parts: PartsShown
  readonly chart: ChartName
  /** One finger turns the picture and does not scroll the page. */
  readonly fingerTurns: boolean
  /** A finger on the map marks a surface finding and does not scroll the page. */
  readonly marking: boolean
  /** Other walls that fit the same readings take turns in the picture. */
  readonly doubtShown: boolean
  readonly piston?: PistonShown
  /** The surface finding that is being told more of. */
  readonly surfaceOpen?: string
  /** The keys for the right hand lie at the left. */
  readonly leftHanded: boolean
  readonly aids: Aids
}

export const nothingTyped: Entering = { typed: '' }
const start: Session = {
  page: 'bench',
  entering: {},
  notTaken: [],
  drafts: {},
  waiting: {},
  skipped: [],
  entryOrder: 'bore-by-bore',
  view: { name: 'front', turn: 0, zoom: 0 },
  allBores: false,
  parts: { latest: 'enter', left: 'enter', right: 'wall' },
  chart: 'map',
  fingerTurns: false,
  marking: false,
  doubtShown: false,
  leftHanded: false,
  aids: { spoken: false, pedals: {} },
}

export const session = createStore<Session>(() => start)

function set(change: (state: Session) => Session) {
  session.setState(change, true)
}

type OptionalPart =
  | 'piston'
  | 'boreId'
  | 'surveyId'
  | 'pointed'
  | 'inHand'
  | 'taken'
  | 'exaggeration'
  | 'surfaceOpen'

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
    doubtShown: false,
  }))
}

/** Chooses a survey of the bore on the bench; undefined for the latest. */
export function chooseSurvey(surveyId: string | undefined) {
  set(({ pointed: _, inHand: __, ...rest }) => withPart({ ...rest, doubtShown: false }, 'surveyId', surveyId))
}

export function showPage(page: PageName) {
  set((state) => (state.page === page ? state : { ...state, page }))
}

/** Starts over for another job; the view, the hand and what helps it stay. */
export function startSession() {
  showStep(0)
  startReport()
  set(({ view, leftHanded, entryOrder, aids }) => ({ ...start, view, leftHanded, entryOrder, aids }))
}

export function pointAt(pointed: Pointed | undefined) {
  set((state) => (samePointed(state.pointed, pointed) ? state : withPart(state, 'pointed', pointed)))
}

function samePointed(one: Pointed | undefined, other: Pointed | undefined): boolean {
  return (
    one?.depthMm === other?.depthMm && one?.angleDegrees === other?.angleDegrees && one?.from === other?.from
  )
}

/** Takes a station in hand; one that was passed over is so no longer. */
export function takeInHand(inHand: InHand | undefined) {
  set((state) => ({
    ...withPart(state, 'inHand', inHand),
    skipped: inHand ? without(state.skipped, inHand) : state.skipped,
  }))
}

/** What is typed for a station of a survey; nothing leaves no trace. */
export function setEntering(surveyId: string, entering: Entering) {
  set((state) => {
    const { [surveyId]: _, ...others } = state.entering
    const { typed, replaces, refusal } = entering
    const isNothing = typed === '' && replaces === undefined && refusal === undefined
    return { ...state, entering: isNothing ? others : { ...others, [surveyId]: entering } }
  })
}

/** So many numbers that gave way to others are remembered. */
const mostNotTaken = 20

export function setAsideTyped(one: NotTaken) {
  set((state) => ({ ...state, notTaken: [...state.notTaken, one].slice(-mostNotTaken) }))
}

export function forgetNotTaken(one: NotTaken) {
  set((state) => ({ ...state, notTaken: state.notTaken.filter((other) => other !== one) }))
}

export function setTaken(taken: Taken | undefined) {
  set((state) => withPart(state, 'taken', taken))
}

/** Keeps what was refused in a field, or forgets it. */
export function keepDraft(field: string, draft: Draft | undefined) {
  set((state) => {
    const { [field]: before, ...others } = state.drafts
    if (before === draft) return state
    return { ...state, drafts: draft ? { ...others, [field]: draft } : others }
  })
}

export function setEntryOrder(entryOrder: EntryOrder) {
  set((state) => ({ ...state, entryOrder }))
}

/** Goes on to a station of another bore, by its latest survey. */
export function goOnTo(inHand: InHand) {
  chooseBore(inHand.boreId)
  takeInHand(inHand)
}

export function setWaiting(range: string, ends: WaitingEnds) {
  set((state) => {
    const { [range]: _, ...others } = state.waiting
    const isEmpty = ends.low === undefined && ends.high === undefined
    return { ...state, waiting: isEmpty ? others : { ...others, [range]: ends } }
  })
}

export function setExaggeration(exaggeration: number | undefined) {
  set((state) => withPart(state, 'exaggeration', exaggeration))
}

export function showAllBores(allBores: boolean) {
  set((state) => ({ ...state, allBores }))
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

export function showPart(name: PartName) {
  set((state) => ({
    ...state,
    parts: {
      latest: name,
      left: name === 'enter' || name === 'set-up' ? name : state.parts.left,
      right: name === 'wall' || name === 'findings' ? name : state.parts.right,
    },
  }))
}

export function showChart(chart: ChartName) {
  set((state) => ({ ...state, chart }))
}

export function letFingerTurn(fingerTurns: boolean) {
  set((state) => ({ ...state, fingerTurns }))
}

export function setMarking(marking: boolean) {
  set((state) => ({ ...state, marking }))
}

/** Has other walls that fit the same readings drawn, or the wall again. */
export function showDoubt(doubtShown: boolean) {
  set((state) => ({ ...state, doubtShown }))
}

/** Shows a piston in the bore, moves it, or takes it out again. */
export function showPiston(piston: PistonShown | undefined) {
  set((state) => withPart(state, 'piston', piston))
}

/** Opens a surface finding, or closes that which is open. */
export function openSurface(id: string | undefined) {
  set((state) => withPart(state, 'surfaceOpen', id))
}

export function setLeftHanded(leftHanded: boolean) {
  set((state) => ({ ...state, leftHanded }))
}

/** Passes a station over until it is taken in hand again. */
export function skipStation(station: InHand) {
  set((state) => ({ ...state, skipped: [...without(state.skipped, station), station] }))
}

function without(list: readonly InHand[], { boreId, depthMm, axisDegrees }: InHand): readonly InHand[] {
  return list.filter(
    (one) => one.boreId !== boreId || one.depthMm !== depthMm || one.axisDegrees !== axisDegrees,
  )
}

export function setAids(aids: Aids) {
  set((state) => ({ ...state, aids }))
}
