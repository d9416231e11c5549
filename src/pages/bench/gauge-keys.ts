/** A key as it came, and what has the focus meanwhile. */
export interface GaugePress {
  readonly key: string
  /** Milliseconds, on any clock. */
  readonly time: number
  readonly repeat: boolean
  /** Control, Alt or the command key is held down. */
  readonly withModifier: boolean
  /**
   * `text`: something that takes typing itself, or a question in front of the page. `cell`: a station of the
   * grid. `signs`: something that has a use of its own for plus and minus. `list`: one to choose from by typing
   * how a choice begins, of which none begins like a number.
   */
  readonly focus: 'text' | 'cell' | 'signs' | 'list' | 'other'
}

/** What has come of a number so far. */
export interface GaugeKeys {
  /** A number was begun and neither taken nor given up. */
  readonly begun: boolean
  /** A sign that may turn out to belong to a number. */
  readonly sign: string
  /** When a number was taken last, on the clock of the presses. */
  readonly takenAt: number
  /** The station that has the focus had its number: the next belongs to the station after it. */
  readonly cellUsed: boolean
  /** When a key was passed on last that a list may have taken for the beginning of a choice. */
  readonly listedAt: number
}

export const noGaugeKeys: GaugeKeys = {
  begun: false,
  sign: '',
  takenAt: Number.NEGATIVE_INFINITY,
  cellUsed: false,
  listedAt: Number.NEGATIVE_INFINITY,
}

/** What a key does; nothing of it is left for what has the focus, unless it is passed on. */
export type GaugeStep =
  | { readonly does: 'pass-on' | 'nothing' | 'take' | 'give-up' | 'delete' }
  | { readonly does: 'begin' | 'begin-at-cell' | 'add'; readonly text: string }

/** A second line end this soon after the first is the gauge's, not a finger's, ms. */
const lineEndMs = 100

/** So long a list goes on with what was typed before, ms. */
const listMs = 1000

/** Keys that only change what others mean. */
const silent = new Set(['Shift', 'CapsLock', 'NumLock', 'ScrollLock'])

/** Whether a line end follows one that took a number so closely that it belongs to it. */
export function isSecondLineEnd({ takenAt }: GaugeKeys, time: number, repeat: boolean): boolean {
  return repeat || time - takenAt < lineEndMs
}

/**
 * A gauge that types like a keyboard sends digits, marks, a sign and a line end to whatever has the focus. While
 * that takes no text, the number goes to the station in hand, and its line end presses no button. A line end with
 * no number begun is the user's own.
 */
export function afterGaugeKey(keys: GaugeKeys, press: GaugePress): [GaugeKeys, GaugeStep] {
  const { key, time, focus } = press
  if (silent.has(key)) return [keys, { does: 'pass-on' }]
  const rested = { ...keys, begun: false, sign: '' }
  if (press.withModifier || focus === 'text') return [rested, { does: 'pass-on' }]
  if (key === 'Enter') return afterLineEnd(keys, press)
  if (/^[\d.,+\-\u2212]$/.test(key)) return afterSign(keys, press)
  if (keys.begun && key === 'Backspace') return [keys, { does: 'delete' }]
  if (keys.begun && key === 'Escape') return [{ ...rested, takenAt: time }, { does: 'give-up' }]
  return [{ ...rested, ...listed(press) }, { does: 'pass-on' }]
}

function listed({ key, time, focus }: GaugePress): Partial<GaugeKeys> {
  return focus === 'list' && key.length === 1 ? { listedAt: time } : {}
}

function afterLineEnd(keys: GaugeKeys, { time, repeat }: GaugePress): [GaugeKeys, GaugeStep] {
  const rested = { ...keys, begun: false, sign: '', takenAt: time }
  if (keys.begun) return [rested, { does: 'take' }]
  const isSecond = Number.isFinite(keys.takenAt) && isSecondLineEnd(keys, time, repeat)
  return isSecond ? [rested, { does: 'nothing' }] : [{ ...keys, sign: '' }, { does: 'pass-on' }]
}

function afterSign(keys: GaugeKeys, press: GaugePress): [GaugeKeys, GaugeStep] {
  const { key, time, focus } = press
  if (keys.begun) return [keys, { does: 'add', text: key }]
  if (focus === 'list' && (/[.,]/.test(key) || time - keys.listedAt < listMs)) {
    return [{ ...keys, sign: '', ...listed(press) }, { does: 'pass-on' }]
  }
  // Whatever moves by it moves; the sign still stands in front of the digits that follow at once.
  const isSign = /[+\-\u2212]/.test(key)
  if (isSign && (focus === 'signs' || focus === 'list')) return [{ ...keys, sign: key }, { does: 'pass-on' }]
  const isHere = focus === 'cell' && !keys.cellUsed
  const begun = { ...keys, begun: true, sign: '', cellUsed: focus === 'cell' }
  return [begun, { does: isHere ? 'begin-at-cell' : 'begin', text: `${keys.sign}${key}` }]
}
