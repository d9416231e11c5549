import { describe, expect, it } from 'vitest'
import type { PlannedStation } from '../../../../src/job/selectors'
import { nextStation, stationBefore } from '../../../../src/pages/bench/entry-order'

function station(
  depthMm: number,
  axisDegrees: number,
  repeats = 0,
  blockedBy: string[] = [],
): PlannedStation {
  const reading = { depthMm, axisDegrees, sizesMm: Array.from({ length: repeats }, () => 54) }
  return { depthMm, axisDegrees, blockedBy, isUnreachable: false, ...(repeats > 0 ? { reading } : {}) }
}

const at = (depthMm: number, axisDegrees: number) => ({ depthMm, axisDegrees })
const rows = [
  [station(8, 0, 1), station(8, 90)],
  [station(16, 0, 0, ['exhaust']), station(16, 90)],
  [station(25, 0), station(25, 90, 1)],
]

describe('the order of entry', () => {
  it('goes on to the next station in reach that wants a reading', () => {
    expect(nextStation(rows, 1)).toMatchObject(at(8, 90))
    expect(nextStation(rows, 1, at(8, 90))).toMatchObject(at(16, 90))
    expect(nextStation(rows, 1, at(25, 0))).toMatchObject(at(8, 90))
  })

  it('never asks for a station that is recorded as out of reach', () => {
    const withOne = rows.with(1, [station(16, 0), { ...station(16, 90), isUnreachable: true }])
    expect(nextStation(withOne, 1, at(16, 0))).toMatchObject(at(25, 0))
    expect(stationBefore(withOne, at(25, 0))).toMatchObject(at(16, 0))
  })

  it('leaves out what was passed over, and is at its end when nothing else is left', () => {
    const skipped = [at(16, 90), at(25, 0)]
    expect(nextStation(rows, 1, at(8, 90), skipped)).toMatchObject(at(8, 90))
    expect(nextStation(rows, 1, at(8, 90), [...skipped, at(8, 90)])).toBeUndefined()
  })

  it('goes back to what was read, past what is out of reach, and from the first to the last', () => {
    expect(stationBefore(rows, at(8, 90))).toMatchObject(at(8, 0))
    expect(stationBefore(rows, at(16, 90))).toMatchObject(at(8, 90))
    expect(stationBefore(rows, at(8, 0))).toMatchObject(at(25, 90))
    expect(stationBefore(rows, undefined)).toMatchObject(at(25, 90))
    expect(stationBefore([], at(8, 0))).toBeUndefined()
  })
})
