import type { KeptPhoto } from './photo-store'

/** A photograph made small enough to keep. */
export interface ShrunkPhoto extends KeptPhoto {
  readonly widthPx: number
  readonly heightPx: number
}

/** The longer side is at most so long, pixels. */
export const longestSidePx = 1600
/** Written more coarsely until it is no larger, as far as these qualities go. */
const wantedBytes = 350_000
const qualities = [0.85, 0.75, 0.6] as const
const written = 'image/jpeg'

/**
 * A picture file as it is kept: the right way up, its longer side at most 1600 pixels, written anew as JPEG. What
 * the camera wrote beside the picture (place, time, owner) is gone with that. Undefined where the browser cannot
 * read the file as a picture, or draws nothing.
 */
export async function shrinkPhoto(file: Blob): Promise<ShrunkPhoto | undefined> {
  const picture = await decodedPicture(file)
  if (!picture) return undefined
  try {
    const size = sizeWithin(picture.width, picture.height, longestSidePx)
    const canvas = document.createElement('canvas')
    canvas.width = size.width
    canvas.height = size.height
    const pen = canvas.getContext('2d')
    if (!pen) return undefined
    // JPEG has no transparency.
    pen.fillStyle = 'white'
    pen.fillRect(0, 0, size.width, size.height)
    pen.imageSmoothingQuality = 'high'
    pen.drawImage(picture, 0, 0, size.width, size.height)
    const blob = await smallEnough(canvas)
    if (!blob) return undefined
    const bytes = new Uint8Array(await blob.arrayBuffer())
    return { type: written, bytes, widthPx: size.width, heightPx: size.height }
  } finally {
    picture.close()
  }
}

/** The same proportions, no side longer than the longest allowed or shorter than a pixel. */
export function sizeWithin(
  width: number,
  height: number,
  longest: number,
): { readonly width: number; readonly height: number } {
  const factor = Math.min(1, longest / Math.max(width, height))
  return {
    width: Math.max(1, Math.round(width * factor)),
    height: Math.max(1, Math.round(height * factor)),
  }
}

/** The picture in a file, the right way up; undefined where the browser cannot read it as one. */
export async function decodedPicture(file: Blob): Promise<ImageBitmap | undefined> {
  try {
    return await createImageBitmap(file, { imageOrientation: 'from-image' })
  } catch (error) {
    // No picture, a kind that this browser does not read, or a file that it may not read.
    if (error instanceof DOMException) return undefined
    throw error
  }
}

async function smallEnough(canvas: HTMLCanvasElement): Promise<Blob | undefined> {
  let last: Blob | undefined
  for (const quality of qualities) {
    last = await new Promise((resolve) => {
      canvas.toBlob((blob) => resolve(blob ?? undefined), written, quality)
    })
    if (!last || last.type !== written || last.size <= wantedBytes) break
  }
  return last?.type === written ? last : undefined
}
