import type { PictureView } from './picture-view'
import { pixelText } from './pixel-text'
import { type Box, LabelRoom } from './place-labels'
import { type Label, type SizedLabel, stands } from './stand-labels'

interface Standing extends SizedLabel {
  readonly element: HTMLElement
  /** As its style says. */
  isShown: boolean
  x: number
  y: number
  leader: number
}

/** The labels as HTML over the canvas, moved by hand after each frame so that React has no part in it. */
export class LabelLayer {
  readonly #container: HTMLElement
  readonly #room = new LabelRoom()
  #standing: readonly Standing[] = []

  constructor(container: HTMLElement) {
    this.#container = container
  }

  /** Shows these labels, the most important first. Those that were there already keep their elements. */
  set(labels: readonly Label[]): void {
    const before = new Map(this.#standing.map((one) => [one.label, one]))
    const made = labels
      .filter((label) => !before.has(label))
      .map((label) => [label, elementOf(label)] as const)
    this.#container.append(...made.map(([, element]) => element))
    for (const [label, element] of made) before.set(label, hidden(label, element))
    this.#standing = labels.flatMap((label) => before.get(label) ?? [])
    const kept = new Set(this.#standing.map((one) => one.element))
    for (const { element } of before.values()) if (!kept.has(element)) element.remove()
  }

  /** Measures again, when the font has come or changed. */
  measure(): void {
    this.#standing = this.#standing.map((one) => ({ ...one, ...sizeOf(one.element) }))
  }

  /** Stands every label where it is free, or hides it. */
  place(view: PictureView, taken: readonly Box[]): void {
    this.#room.clear(view.width, view.height, taken)
    for (let index = 0; index < this.#standing.length; index++) {
      const one = this.#standing[index]
      if (!one) continue
      if (stands(one, view, this.#room)) move(one, this.#room)
      else if (one.isShown) {
        one.isShown = false
        one.element.style.visibility = 'hidden'
      }
    }
  }
}

/** Moves a label to the place it has got. Its style is told what is new alone. */
function move(one: Standing, { x, y, leader }: LabelRoom): void {
  const { style } = one.element
  if (!one.isShown) style.visibility = 'visible'
  if (one.x !== x) style.setProperty('--x', pixelText(x))
  if (one.y !== y) style.setProperty('--y', pixelText(y))
  if (one.leader !== leader) style.setProperty('--leader', pixelText(Math.round(leader)))
  one.isShown = true
  one.x = x
  one.y = y
  one.leader = leader
}

function elementOf(label: Label): HTMLElement {
  const element = document.createElement('span')
  element.className = `picture-label picture-label-${label.kind}`
  element.textContent = label.text
  return element
}

/** It has stood nowhere: the first place it gets is written. */
function hidden(label: Label, element: HTMLElement): Standing {
  const nowhere = { x: Number.NaN, y: Number.NaN, leader: Number.NaN }
  return { label, element, ...sizeOf(element), isShown: false, ...nowhere }
}

function sizeOf({ offsetWidth, offsetHeight }: HTMLElement) {
  return { width: offsetWidth, height: offsetHeight }
}
