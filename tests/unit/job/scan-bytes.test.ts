import { createHash } from 'node:crypto'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { scanBytes, scanOfBytes } from '../../../src/job/scan-bytes'
import { runCount } from '../../proof/run-count'

const runs = runCount({ quick: 60, full: 600 })
const scan = {
  depthsMm: [4, 8.5],
  anglesDegrees: [0, 120, 240],
  radiiUm: Float64Array.of(1, -2.5, Number.NaN, 0, 30012.345, 7),
}
const text = (bytes: Uint8Array) => new TextDecoder().decode(bytes)

describe('the record of a scan', () => {
  it('is a line of JSON, then whole nanometres of four bytes each', () => {
    const bytes = scanBytes(scan)
    const end = bytes.indexOf(0x0a)
    expect(JSON.parse(text(bytes.subarray(0, end)))).toEqual({
      format: 'borewall-scan',
      formatVersion: 1,
      depthsMm: [4, 8.5],
      anglesDegrees: [0, 120, 240],
    })
    expect((end + 1) % 4).toBe(0)
    expect([...new Int32Array(bytes.slice(end + 1).buffer)]).toEqual([
      1000, -2500, -2147483648, 0, 30012345, 7000,
    ])
  })

  it('keeps its hash: what was kept by an earlier version is found again', () => {
    const hash = createHash('sha256').update(scanBytes(scan)).digest('hex')
    expect(hash).toBe('dad0cd923d10e51bbf6d5edc8b3039345fa42e13eb6847cfa7bc90407b7a0898')
  })

  it(`gives back every scan to the nanometre, ${runs} times (seed 62)`, () => {
    const lines = (most: number, least: number) =>
      fc.uniqueArray(fc.integer({ min: 0, max: most }), { minLength: least, maxLength: 30 })
    const increasing = (values: readonly number[]) => [...values].sort((a, b) => a - b).map((v) => v / 100)
    const scans = fc.tuple(lines(40_000, 1), lines(35_999, 3)).chain(([depths, angles]) =>
      fc
        .array(fc.option(fc.integer({ min: -2e9, max: 2e9 }), { nil: Number.NaN }), {
          minLength: depths.length * angles.length,
          maxLength: depths.length * angles.length,
        })
        .map((nanometres) => ({
          depthsMm: increasing(depths),
          anglesDegrees: increasing(angles),
          radiiUm: Float64Array.from(nanometres, (value) => value / 1000),
        })),
    )
    fc.assert(
      fc.property(scans, (one) => {
        expect(scanOfBytes(scanBytes(one))).toEqual(one)
      }),
      { seed: 62, numRuns: runs },
    )
  })

  it('is no scan where it is cut short, too long, out of order, or something else', () => {
    const bytes = scanBytes(scan)
    const replaced = (from: string, to: string) => {
      const end = bytes.indexOf(0x0a)
      return Uint8Array.of(
        ...new TextEncoder().encode(text(bytes.subarray(0, end)).replace(from, to)),
        ...bytes.subarray(end),
      )
    }
    expect(scanOfBytes(replaced('', ''))).toEqual(scan)
    for (const broken of [
      bytes.subarray(0, -1),
      Uint8Array.of(...bytes, 0, 0, 0, 0),
      new Uint8Array(),
      new TextEncoder().encode('no scan at all\n'),
      new TextEncoder().encode('{"format":"borewall-scan"\n'),
      replaced('"formatVersion":1', '"formatVersion":2'),
      replaced('[0,120,240]', '[0,240,120]'),
      replaced('[4,8.5]', '["4",8.5]'),
    ]) {
      expect(scanOfBytes(broken)).toBeUndefined()
    }
  })

  it('throws for a radius that no record holds', () => {
    expect(() => scanBytes({ ...scan, radiiUm: scan.radiiUm.map(() => 3e6) })).toThrow(RangeError)
  })
})
