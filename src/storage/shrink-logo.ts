import { base64Of } from './base64'
import type { LetterheadPicture } from './letterhead'
import { decodedPicture, sizeWithin } from './shrink-photo'

/** At 30 mm on paper that is 500 dots to the inch. */
const longestSidePx = 600
/** Larger than that a drawing is a photograph. */
const mostPngBytes = 150_000

/**
 * A picture file as it stands in a letterhead: its longer side at most 600 pixels, as PNG with what is clear in it, or
 * as JPEG on white where that is smaller. Undefined where the browser cannot read the file as a picture, or draws
 * nothing.
 */
export async function shrinkLogo(file: Blob): Promise<LetterheadPicture | undefined> {
  const picture = await decodedPicture(file)
  if (!picture) return undefined
  try {
    const size = sizeWithin(picture.width, picture.height, longestSidePx)
    const clear = await drawn(picture, size, 'image/png')
    const isSmall = clear !== undefined && clear.size <= mostPngBytes
    const blob = isSmall ? clear : await drawn(picture, size, 'image/jpeg')
    if (!blob) return undefined
    const base64 = base64Of(new Uint8Array(await blob.arrayBuffer()))
    const type = isSmall ? 'image/png' : 'image/jpeg'
    return { type, base64, widthPx: size.width, heightPx: size.height }
  } finally {
    picture.close()
  }
}

async function drawn(
  picture: ImageBitmap,
  { width, height }: { readonly width: number; readonly height: number },
  type: LetterheadPicture['type'],
): Promise<Blob | undefined> {
  const canvas = document.createElement('canvas')
  canvas.width = width
  canvas.height = height
  const pen = canvas.getContext('2d')
  if (!pen) return undefined
  if (type === 'image/jpeg') {
    // It has no transparency.
    pen.fillStyle = 'white'
    pen.fillRect(0, 0, width, height)
  }
  pen.imageSmoothingQuality = 'high'
  pen.drawImage(picture, 0, 0, width, height)
  const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, type, 0.9))
  return blob?.type === type ? blob : undefined
}
