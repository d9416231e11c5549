import type { HandedWall } from './handed-wall'

/** What a page that is handed over calls the parts that others look for in it. */
export const handedPage = {
  /** The walls that can be turned, as `packedWalls` writes them. */
  walls: 'borewall-walls',
  /** Of an element that holds the still picture of a wall: its number among them, and what turns together. */
  wall: 'data-wall',
  group: 'data-group',
  /** The class of what holds the pictures that turn together. */
  pictures: 'pictures',
  /** The class of a figure without a still picture, which stays hidden where nothing can be turned. */
  empty: 'is-empty',
} as const

/** Walls as one short text: JSON, gzip (RFC 1952), base64. */
export async function packedWalls(walls: readonly HandedWall[]): Promise<string> {
  const packed = await bytesThrough(new Blob([JSON.stringify(walls)]), new CompressionStream('gzip'))
  let letters = ''
  for (const byte of packed) letters += String.fromCharCode(byte)
  return btoa(letters)
}

/** The walls again. The text is that of `packedWalls`: its page holds it and what reads it as one piece. */
export async function unpackedWalls(text: string): Promise<readonly HandedWall[]> {
  const packed = Uint8Array.from(atob(text.trim()), (letter) => letter.charCodeAt(0))
  const bytes = await bytesThrough(new Blob([packed]), new DecompressionStream('gzip'))
  const walls: readonly HandedWall[] = JSON.parse(new TextDecoder().decode(bytes))
  return walls
}

async function bytesThrough(
  blob: Blob,
  stream: CompressionStream | DecompressionStream,
): Promise<Uint8Array<ArrayBuffer>> {
  return new Uint8Array(await new Response(blob.stream().pipeThrough(stream)).arrayBuffer())
}
