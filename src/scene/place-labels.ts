/** A label's box on the picture, CSS pixels, y down. */
export interface Box {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

/** A point of the picture, CSS pixels, or which part of a label, 0 to 1 of its width and height. */
export interface Spot {
  readonly x: number
  readonly y: number
}

/** The part of a label that lies on the point it is offered. */
export const parts = {
  middle: { x: 0.5, y: 0.5 },
  left: { x: 0, y: 0.5 },
  right: { x: 1, y: 0.5 },
  top: { x: 0.5, y: 0 },
  foot: { x: 0.5, y: 1 },
} as const

const usualGap = 2
const perBox = 4

/**
 * Keeps boxes so that none overlaps another, in order of importance. Each label offers its places best first and
 * gets the first that is free, or none; what does not fit in the picture is never free. One room does for all frames:
 * it is emptied before each, and makes nothing.
 */
export class LabelRoom {
  /** Whether the label in hand has a place, its left and top, and the length of the line that leads to it. */
  isTaken = false
  x = 0
  y = 0
  leader = 0

  #width = 0
  #height = 0
  #boxWidth = 0
  #boxHeight = 0
  #gap = usualGap
  #boxes = new Float64Array(64 * perBox)
  #count = 0

  /** An empty picture of this size, but for boxes that are taken already. */
  clear(width: number, height: number, taken: readonly Box[]): void {
    this.#width = width
    this.#height = height
    this.#count = 0
    for (let index = 0; index < taken.length; index++) {
      const box = taken[index]
      if (box) this.#add(box.x, box.y, box.width, box.height)
    }
  }

  /** Takes in hand a label of this size that keeps a gap to others, all CSS pixels. */
  seek(width: number, height: number, gap = usualGap): void {
    this.isTaken = false
    this.#boxWidth = width
    this.#boxHeight = height
    this.#gap = gap
  }

  /** Offers a place to the label in hand: a point and which part of the label lies there. True once it has a place. */
  offer(at: Spot, part: Spot, leader = 0): boolean {
    if (this.isTaken) return true
    const x = Math.round(at.x - part.x * this.#boxWidth)
    const y = Math.round(at.y - part.y * this.#boxHeight)
    if (!this.#isFree(x, y)) return false
    this.#add(x, y, this.#boxWidth, this.#boxHeight)
    this.isTaken = true
    this.x = x
    this.y = y
    this.leader = leader
    return true
  }

  #isFree(x: number, y: number): boolean {
    const right = x + this.#boxWidth
    const foot = y + this.#boxHeight
    if (x < 0 || y < 0 || right > this.#width || foot > this.#height) return false
    const boxes = this.#boxes
    const gap = this.#gap
    for (let from = 0; from < this.#count * perBox; from += perBox) {
      const left = boxes[from] ?? 0
      const top = boxes[from + 1] ?? 0
      const isBeside = x >= left + (boxes[from + 2] ?? 0) + gap || left >= right + gap
      if (!isBeside && y < top + (boxes[from + 3] ?? 0) + gap && top < foot + gap) return false
    }
    return true
  }

  #add(x: number, y: number, width: number, height: number): void {
    const from = this.#count * perBox
    if (from === this.#boxes.length) {
      const more = new Float64Array(from * 2)
      more.set(this.#boxes)
      this.#boxes = more
    }
    this.#boxes[from] = x
    this.#boxes[from + 1] = y
    this.#boxes[from + 2] = width
    this.#boxes[from + 3] = height
    this.#count += 1
  }
}
