import { describe, expect, it } from 'vitest'
import { scanEntries } from '../../../src/cli/inspect-scans'
import { withoutScans } from '../../../src/job/embedded-scans'
import { inspectedScans } from '../../../src/job/inspected-scans'
import { scanBytes, scanOfBytes } from '../../../src/job/scan-bytes'
import type { Job } from '../../../src/job/schema'
import { scanPassages } from '../../../src/words/scan-passages'
import { scenario } from './scenario'

/** The invented cylinder with a second scan, taken after the smears at 50° and 310° came off and left a groove at 50°. */
function cleanedFile(): Job {
  const file = scenario('E-scuff-scan-72.json')
  const { job, scans } = withoutScans(file)
  const [bore] = job.bores
  const [entry] = bore?.scans ?? []
  const [record] = scans
  const radii = record && scanOfBytes(Buffer.from(record.base64, 'base64'))
  if (!bore || !entry || !record || !radii) throw new Error('no scan')
  const { anglesDegrees, depthsMm } = radii
  const radiiUm = radii.radiiUm.map((radius, at) => {
    const angle = anglesDegrees[at % anglesDegrees.length] ?? 0
    const depth = depthsMm[Math.floor(at / anglesDegrees.length)] ?? 0
    if (depth < 16 || depth > 64) return radius
    if (angle === 50) return radius + 26
    return angle === 45 || angle === 310 || angle === 305 ? wallBetween(radii.radiiUm, at, angle) : radius
  })
  const hash = 'c'.repeat(64)
  const after = { ...entry, id: 'after', name: 'Cleaned', cleaning: 'after' as const, hash }
  const base64 = Buffer.from(scanBytes({ depthsMm, anglesDegrees, radiiUm })).toString('base64')
  return {
    ...job,
    bores: [{ ...bore, scans: [{ ...entry, cleaning: 'before' as const }, after] }],
    scans: [record, { hash, base64 }],
  }
}

/** The wall on either side of a smear, which is two values wide, where there is wall. */
function wallBetween(radiiUm: Float64Array, at: number, angle: number): number {
  const last = angle <= 50 ? 50 : 310
  const beside = [at - (angle - (last - 10)) / 5, at + (last + 10 - angle) / 5]
    .map((step) => radiiUm[step] ?? Number.NaN)
    .filter((radius) => !Number.isNaN(radius))
  return beside.reduce((sum, radius) => sum + radius, 0) / beside.length
}

describe('the invented cylinder before and after cleaning', () => {
  const scans = inspectedScans(cleanedFile())

  it('tells a smear that came off from one that stayed and from a groove beneath, for other programs', () => {
    const [before, after] = scanEntries(scans)
    expect(after?.cleaned).toBeNull()
    const compared = before?.cleaned
    if (!before?.marks || !compared || 'turnedDegrees' in compared || !('marks' in compared))
      throw new Error('not compared')
    const fateAt = (angle: number) => {
      const index = before.marks?.findIndex(
        ({ sign, peak }) => sign === 'smaller' && peak.angleDegrees === angle,
      )
      return compared.marks.find(({ mark }) => mark === index)?.fate
    }
    expect(fateAt(50)).toBe('turned-larger')
    expect(fateAt(310)).toMatch(/gone|less/)
    expect(fateAt(145)).toBe('as-before')
    expect(fateAt(215)).toBe('as-before')
    expect(compared.sameZero).toBe('shown')
  })

  it('says so on the page of text, once, with the scan before cleaning', () => {
    const texts = scanPassages(scans).flatMap((passage) =>
      passage.kind === 'list' ? passage.items : 'text' in passage ? [passage.text] : [],
    )
    expect(texts.filter((text) => text === 'Before and after cleaning')).toHaveLength(1)
    expect(texts.join(' ')).toContain('there is a groove beneath what was stuck on')
    expect(texts.filter((text) => text.includes('stayed as it was')).length).toBeGreaterThanOrEqual(2)
  })

  it('says of a scan whose radii the file lacks that it was not looked through', () => {
    const { job } = withoutScans(scenario('E-scuff-scan-72.json'))
    const bare = inspectedScans(job)
    expect(scanEntries(bare)).toMatchObject([{ marks: null }])
    expect(JSON.stringify(scanPassages(bare))).toContain('not in this file')
  })
})
