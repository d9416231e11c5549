import { describe, expect, it } from 'vitest'
import { cleanedMarks, type MarkedScan } from '../../../../src/core/scan/cleaned-marks'
import { fitScan } from '../../../../src/core/scan/fit-scan'
import { marksOf } from '../../../../src/core/scan/marks'
import { cleanForm, type PlantedMark, portedBore, simulatedScan } from '../../../proof/simulated-scan'

const depthsMm = Array.from({ length: 28 }, (_, k) => 4 + 3 * k)
const probe = { nearDiameterMm: 60, repeatabilityUm: 0.8, repeatabilityDegreesOfFreedom: 50 }

function marked(
  marks: readonly PlantedMark[],
  seed: number,
  more: { angles?: number; turn?: number; ports?: boolean } = {},
): MarkedScan {
  const { angles = 180, turn = 0, ports = true } = more
  const openings = ports
    ? portedBore.map((port) => ({
        ...port,
        fromDegrees: port.fromDegrees + turn,
        toDegrees: port.toDegrees + turn,
      }))
    : []
  const bore = { depthsMm, angles, ports: openings, sigmaUm: 0.8, form: cleanForm(seed), marks }
  const scan = simulatedScan(bore, seed)
  const fit = fitScan(scan, probe)
  return { scan, found: marksOf(scan, fit, { nearDiameterMm: 60, ports: openings }) }
}

const at = (fromDegrees: number, heightUm: number, toDegrees = fromDegrees + 8): PlantedMark => ({
  fromDepthMm: 16,
  toDepthMm: 28,
  fromDegrees,
  toDegrees,
  heightUm,
})

const before = [at(20, -12), at(80, -12), at(140, -12), at(200, 10), at(260, -12)]

describe('marks before and after cleaning', () => {
  it('says of each what became of it, on another grid and another spindle too', () => {
    const after = [at(80, 8), at(140, -12), at(200, 10), at(260, -5), at(310, 7)]
    const first = marked(before, 41)
    const second = marked(after, 42, { angles: 360 })
    const compared = cleanedMarks(first, second)
    if ('turnedDegrees' in compared) throw new Error('expected a comparison')
    const byAngle = compared.marks
      .map((one) => ({ ...one, from: first.found.marks[one.mark]?.fromDegrees ?? 0 }))
      .sort((a, b) => a.from - b.from)
    expect(byAngle.map(({ fate }) => fate)).toEqual([
      'gone',
      'turned-larger',
      'as-before',
      'as-before',
      'less',
    ])
    expect(byAngle[0]?.now).toEqual([])
    expect(byAngle[1]?.now).toHaveLength(1)
    expect(byAngle[1]?.after?.um).toBeGreaterThan(5)
    expect(compared.sameZero).toBe('shown')
    expect(
      compared.fresh.map((index) => Math.round(second.found.marks[index]?.peak.angleDegrees ?? 0)),
    ).toEqual([expect.closeTo(314, -1)])
  })

  it('compares nothing when the openings of the second scan lie at other angles', () => {
    const turned = marked(
      before.map((mark) => ({ ...mark, fromDegrees: mark.fromDegrees + 8, toDegrees: mark.toDegrees + 8 })),
      43,
      { turn: 8 },
    )
    expect(cleanedMarks(marked(before, 44), turned)).toEqual({ turnedDegrees: 8 })
  })

  it('takes the same 0° for granted in a bore without openings, and says so', () => {
    const compared = cleanedMarks(
      marked([at(20, -12)], 45, { ports: false }),
      marked([], 46, { ports: false }),
    )
    expect(compared).toMatchObject({ sameZero: 'taken', marks: [{ fate: 'gone' }], fresh: [] })
  })

  it('cannot say what became of a mark where the second scan has no value', () => {
    const first = marked([at(20, -12)], 47, { ports: false })
    const covered = marked([], 48, { ports: false })
    for (const [index] of covered.found.map.values.entries()) {
      const angle = (index % 180) * 2
      if (angle >= 10 && angle <= 40) covered.found.map.values[index] = Number.NaN
    }
    expect(cleanedMarks(first, covered)).toMatchObject({ marks: [{ fate: 'not-seen', now: [] }] })
  })
})
