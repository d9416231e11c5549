let painted: (() => void) | undefined

/** Resolves when the findings of the first job have been painted. */
export const firstNumbersPainted = new Promise<void>((resolve) => {
  painted = resolve
})

/** To be called when the findings of a job are on the page; the frame that paints them is marked, once. */
export function markFirstNumbers(): void {
  const done = painted
  if (!done) return
  painted = undefined
  // The first callback runs before the frame is painted, the second after it.
  requestAnimationFrame(() =>
    requestAnimationFrame(() => {
      performance.mark('borewall:first-numbers')
      done()
    }),
  )
}

let pictureSeen = false

/** To be called when the picture has drawn a frame; the first one is marked, once. */
export function markFirstPicture(): void {
  if (pictureSeen) return
  pictureSeen = true
  performance.mark('borewall:first-picture')
}

/** To be called when all that a scan proves has been worked out. */
export function markScanFitted(): void {
  performance.mark('borewall:scan-fitted')
}

/** To be called when the picture of a scan has drawn its first frame. */
export function markScanPicture(): void {
  performance.mark('borewall:scan-picture')
}
