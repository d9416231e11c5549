import * as z from 'zod/mini'
import type { RadialScan } from '../core/scan/radial-scan'
import { fieldRanges } from './field-ranges'

/** A scan as it is kept: what a probe read. */
export type KeptScan = RadialScan

/** What a record of radii says of itself in its first line. */
const recordFormat = 'borewall-scan'
/** Stands for a place without a radius. */
const noRadius = -0x8000_0000
const bytesOfRadius = 4
/** The first line is no longer than this: a level or an angle takes some twenty characters. */
const mostHeadBytes = 4_000_000

const list = z.array(z.number())
const headSchema = z.strictObject({
  format: z.literal(recordFormat),
  formatVersion: z.literal(1),
  depthsMm: list.check(z.minLength(1), z.maxLength(fieldRanges.levels.most)),
  anglesDegrees: list.check(z.minLength(fieldRanges.angles.least), z.maxLength(fieldRanges.angles.most)),
})

/**
 * A scan as it is kept and hashed: one line of JSON with its depths and angles, filled up with spaces to whole fours, then
 * its radii row by row as whole nanometres, 32 bits each with the sign, the lowest byte first; the least there is stands
 * for none. The same radii always make the same bytes.
 */
export function scanBytes({ depthsMm, anglesDegrees, radiiUm }: RadialScan): Uint8Array<ArrayBuffer> {
  const said = JSON.stringify({ format: recordFormat, formatVersion: 1, depthsMm, anglesDegrees })
  const filled = said.padEnd(Math.ceil((said.length + 1) / bytesOfRadius) * bytesOfRadius - 1, ' ')
  const head = new TextEncoder().encode(`${filled}\n`)
  const bytes = new Uint8Array(head.length + radiiUm.length * bytesOfRadius)
  bytes.set(head)
  const view = new DataView(bytes.buffer, head.length)
  for (const [place, radius] of radiiUm.entries()) {
    const nanometres = Number.isNaN(radius) ? noRadius : Math.round(radius * 1000)
    if (!(Math.abs(nanometres) <= -noRadius)) {
      throw new RangeError(`scanBytes: expected a radius below 2 m, got ${radius} µm`)
    }
    view.setInt32(place * bytesOfRadius, nanometres, true)
  }
  return bytes
}

/** The scan in the bytes of a record; undefined where they are none. */
export function scanOfBytes(bytes: Uint8Array): RadialScan | undefined {
  const end = bytes.subarray(0, mostHeadBytes).indexOf(0x0a)
  const head = end < 0 ? undefined : headOf(bytes.subarray(0, end))
  if (!head) return undefined
  const places = head.depthsMm.length * head.anglesDegrees.length
  const start = end + 1
  if (bytes.length - start !== places * bytesOfRadius) return undefined
  if (!increases(head.depthsMm) || !increases(head.anglesDegrees)) return undefined
  const view = new DataView(bytes.buffer, bytes.byteOffset + start)
  const radiiUm = Float64Array.from({ length: places }, (_, place) => {
    const nanometres = view.getInt32(place * bytesOfRadius, true)
    return nanometres === noRadius ? Number.NaN : nanometres / 1000
  })
  return { depthsMm: head.depthsMm, anglesDegrees: head.anglesDegrees, radiiUm }
}

function headOf(bytes: Uint8Array): z.infer<typeof headSchema> | undefined {
  try {
    const head = headSchema.safeParse(JSON.parse(new TextDecoder().decode(bytes)))
    return head.success ? head.data : undefined
  } catch (error) {
    // The only thing that JSON.parse throws for a text that is no JSON.
    if (error instanceof SyntaxError) return undefined
    throw error
  }
}

function increases(values: readonly number[]): boolean {
  return values.every((value, index) => index === 0 || value > (values[index - 1] ?? value))
}
