/** A label's box on the picture, CSS pixels, y down. */
export interface Box {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

/** Whether two boxes touch or come closer than `gap` pixels. */
function collide(a: Box, b: Box, gap: number): boolean {
  return (
    a.x < b.x + b.width + gap &&
    b.x < a.x + a.width + gap &&
    a.y < b.y + b.height + gap &&
    b.y < a.y + a.height + gap
  )
}

function isWithin(box: Box, width: number, height: number): boolean {
  return box.x >= 0 && box.y >= 0 && box.x + box.width <= width && box.y + box.height <= height
}

/**
 * Keeps boxes so that none overlaps another, in order of importance. Each label offers its boxes best first
 * and gets the first that is free, or none; what does not fit in the picture is never free.
 */
export class LabelRoom {
  readonly #taken: Box[]
  readonly #width: number
  readonly #height: number

  constructor(width: number, height: number, taken: readonly Box[]) {
    this.#width = width
    this.#height = height
    this.#taken = [...taken]
  }

  take(offers: readonly Box[], gap = 2): Box | undefined {
    const free = offers.find(
      (box) =>
        isWithin(box, this.#width, this.#height) && !this.#taken.some((other) => collide(box, other, gap)),
    )
    if (free) this.#taken.push(free)
    return free
  }
}
