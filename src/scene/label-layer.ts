import type { PictureView } from './picture-view'
import type { Box } from './place-labels'
import { type Label, type SizedLabel, standLabels } from './stand-labels'

interface Standing extends SizedLabel {
  readonly element: HTMLElement
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
    const stood = new Map(standLabels(this.#standing, view, taken).map((one) => [one.sized, one]))
    for (const one of this.#standing) {
      const { style } = one.element
      const place = stood.get(one)
      style.visibility = place ? 'visible' : 'hidden'
      if (!place) continue
      style.transform = `translate(${place.box.x}px, ${place.box.y}px)`
      if (place.leader !== undefined) style.setProperty('--leader', `${Math.round(place.leader)}px`)
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
