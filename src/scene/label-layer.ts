import type { PictureView } from './picture-view'
import { type Box, LabelRoom } from './place-labels'

/** A place where a label may stand: the point it is tied to, and which part of its box lies there (0 to 1). */
export interface LabelOffer {
  readonly x: number
  readonly y: number
  readonly alignX: number
  readonly alignY: number
  /** Length of the line from the label's left edge to what it names, CSS pixels. */
  readonly leader?: number
}

export type LabelKind = 'depth' | 'pointed' | 'side' | 'sign' | 'limit' | 'iso'

/** A text tied to the bore. Its offers are asked for at every frame, best first. */
export interface Label {
  readonly text: string
  readonly kind: LabelKind
  /** Room to other labels, CSS pixels; 2 where absent. */
  readonly gapPx?: number
  offers(view: PictureView): readonly LabelOffer[]
}

interface Standing {
  readonly label: Label
  readonly element: HTMLElement
  readonly width: number
  readonly height: number
}

/** The labels as HTML over the canvas, moved by hand after each frame so that React has no part in it. */
export class LabelLayer {
  readonly #container: HTMLElement
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
    for (const [label, element] of made) before.set(label, measured(label, element))
    this.#standing = labels.flatMap((label) => before.get(label) ?? [])
    const kept = new Set(this.#standing.map((one) => one.element))
    for (const { element } of before.values()) if (!kept.has(element)) element.remove()
  }

  /** Measures again, when the font has come or changed. */
  measure(): void {
    this.#standing = this.#standing.map(({ label, element }) => measured(label, element))
  }

  /** Stands every label where it is free, or hides it. */
  place(view: PictureView, taken: readonly Box[]): void {
    const room = new LabelRoom(view.width, view.height, taken)
    for (const { label, element, width, height } of this.#standing) {
      const offers = label.offers(view)
      const boxes = offers.map((offer) => ({
        x: Math.round(offer.x - offer.alignX * width),
        y: Math.round(offer.y - offer.alignY * height),
        width,
        height,
      }))
      const box = room.take(boxes, label.gapPx)
      element.style.visibility = box ? 'visible' : 'hidden'
      if (!box) continue
      element.style.transform = `translate(${box.x}px, ${box.y}px)`
      const leader = offers[boxes.indexOf(box)]?.leader
      if (leader !== undefined) element.style.setProperty('--leader', `${Math.round(leader)}px`)
    }
  }
}

function elementOf(label: Label): HTMLElement {
  const element = document.createElement('span')
  element.className = `picture-label picture-label-${label.kind}`
  element.textContent = label.text
  return element
}

function measured(label: Label, element: HTMLElement): Standing {
  return { label, element, width: element.offsetWidth, height: element.offsetHeight }
}
