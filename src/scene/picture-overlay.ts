import { scaleStep } from '../core/surface/scale-bar'
import { roundStepUm } from '../words/length-unit'
import { LabelLayer } from './label-layer'
import type { PictureLabels } from './picture-labels'
import type { PictureView } from './picture-view'
import { pixelText } from './pixel-text'
import type { Box } from './place-labels'
import type { Label } from './stand-labels'

const longestBarPx = 90
/** Left free round each corner's text, CSS pixels. */
const room = 6
const cornerParts = '.picture-corner p, .picture-corner li, .picture-scale-bar, .picture-ramp'

/** What the overlay moves by hand, once for each frame. */
export interface OverlayElements {
  readonly frame: HTMLElement
  readonly labels: HTMLElement
  readonly bar: HTMLElement
  readonly barText: HTMLElement
}

/** The HTML over the canvas: labels and scale bar follow the picture without React. */
export class PictureOverlay {
  readonly #elements: OverlayElements
  readonly #layer: LabelLayer
  #taken: readonly Box[] | undefined
  /** What the scale bar was made for, and what it says. */
  #exaggeration = 0
  #pixelsPerMm = 0
  #micrometres = 0

  constructor(elements: OverlayElements) {
    this.#elements = elements
    this.#layer = new LabelLayer(elements.labels)
  }

  setLabels(labels: readonly Label[]): void {
    this.#layer.set(labels)
    this.#taken = undefined
  }

  /** Measures again at the next frame: the size or the font has changed. */
  remeasure(): void {
    this.#layer.measure()
    this.#taken = undefined
  }

  follow(view: PictureView, labels: PictureLabels): void {
    this.#showScale(view, labels)
    this.#layer.place(view, this.#corners())
  }

  #showScale(view: PictureView, labels: PictureLabels): void {
    if (view.exaggeration === this.#exaggeration && view.pixelsPerMm === this.#pixelsPerMm) return
    this.#exaggeration = view.exaggeration
    this.#pixelsPerMm = view.pixelsPerMm
    const pixelsPerUm = (view.exaggeration * view.pixelsPerMm) / 1000
    const micrometres = scaleStep(longestBarPx / pixelsPerUm / roundStepUm()) * roundStepUm()
    this.#elements.bar.style.width = pixelText(micrometres * pixelsPerUm)
    if (micrometres === this.#micrometres) return
    this.#micrometres = micrometres
    this.#elements.barText.textContent = labels.onDiameter(micrometres)
    this.#taken = undefined
  }

  /** The boxes of the corners' texts with room round them, CSS pixels: nothing may be drawn under them. */
  get corners(): readonly Box[] {
    return this.#corners().map(({ x, y, width, height }) => ({
      x: x - room,
      y: y - room,
      width: width + 2 * room,
      height: height + 2 * room,
    }))
  }

  #corners(): readonly Box[] {
    this.#taken ??= this.#measureCorners()
    return this.#taken
  }

  #measureCorners(): readonly Box[] {
    const { frame } = this.#elements
    const from = frame.getBoundingClientRect()
    return [...frame.querySelectorAll(cornerParts)].map((corner) => {
      const { left, top, width, height } = corner.getBoundingClientRect()
      return { x: left - from.left, y: top - from.top, width, height }
    })
  }
}
