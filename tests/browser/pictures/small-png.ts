import { crc32, deflateSync } from 'node:zlib'

export interface Pixels {
  readonly width: number
  readonly height: number
  /** Red, green and blue of each pixel, row by row. */
  readonly rgb: Uint8Array
}

/** Red, green and blue are kept to so much: no eye tells, and a third of the bytes goes. */
const step = 4

/** A PNG of a drawn page, smaller than the browser's own: no filter suits flat paper and thin lines best. */
export function smallPng({ width, height, rgb }: Pixels): Buffer {
  const row = 3 * width
  const lines = Buffer.alloc(height * (row + 1))
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < row; x += 1) {
      const rounded = Math.round((rgb[y * row + x] ?? 0) / step) * step
      lines[y * (row + 1) + 1 + x] = Math.min(255, rounded)
    }
  }
  const header = Buffer.alloc(13)
  header.writeUInt32BE(width, 0)
  header.writeUInt32BE(height, 4)
  // Eight bits a channel, three channels, and the only ways of packing, filtering and order there are.
  header.set([8, 2, 0, 0, 0], 8)
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    chunk('IHDR', header),
    chunk('IDAT', deflateSync(lines, { level: 9, memLevel: 9 })),
    chunk('IEND', Buffer.alloc(0)),
  ])
}

function chunk(kind: string, data: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(kind, 'latin1'), data])
  const length = Buffer.alloc(4)
  length.writeUInt32BE(data.length)
  const check = Buffer.alloc(4)
  check.writeUInt32BE(crc32(body))
  return Buffer.concat([length, body, check])
}
