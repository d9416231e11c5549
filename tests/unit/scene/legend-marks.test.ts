import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { markText } from '../../../src/app/send-legend'
import { readJob } from '../../../src/job/read-job'
import type { Job } from '../../../src/job/schema'
import { findingOf, gridOfBore } from '../../../src/job/selectors'
import { addSurfaceFinding } from '../../../src/job/surface-commands'
import { isoStepOf } from '../../../src/scene/iso-step-of'
import { legendMarkKinds, legendMarks } from '../../../src/scene/legend-marks'
import { inventedJob } from '../cli/invented-job'

function example(spec: Partial<Job['spec']> = {}): Job {
  const file = new URL('../../../scenarios/A-two-stroke-single.json', import.meta.url)
  const read = readJob(readFileSync(file))
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return { ...read.job, spec: { ...read.job.spec, ...spec } }
}

function marks(job: Job, { exaggeration = 500, ported = true, flat = false } = {}) {
  const bore = job.bores[0]
  const grid = bore && gridOfBore(job, bore.id)
  const finding = bore && findingOf(job, bore.id)
  if (!grid || !finding) throw new Error('nothing is drawn')
  const { pair, stations } = finding
  const ports = ported ? bore.ports : []
  return legendMarks({
    grid,
    pair,
    stations,
    ports,
    surface: finding.surface,
    isoStepUm: isoStepOf(grid),
    exaggeration: flat ? undefined : exaggeration,
  })
}

describe('the legend of a wall', () => {
  it('explains readings, hatch, lines and ports of a wall inside its limits, and the dots along its rings', () => {
    expect(marks(example())).toEqual(['disc', 'hatch', 'stipple', 'iso-lines', 'hole'])
    expect(marks(example(), { exaggeration: 5 })).not.toContain('stipple')
    expect(marks(example(), { flat: true, ported: false })).toEqual(['disc', 'hatch', 'iso-lines'])
  })

  it('explains crossing and patch where the wear limit is passed, and dots on the wall', () => {
    expect(marks(example({ wearLimitMm: 54.018 }), { flat: true })).toEqual([
      'disc',
      'hatch',
      'stipple',
      'dashed',
      'firm-above',
      'iso-lines',
      'hole',
    ])
  })

  it('tells a wall under the smallest from one over the largest', () => {
    const { spec, ...job } = example()
    const band = { ovalityLimitMm: spec.ovalityLimitMm ?? 0.015, newMinMm: 54.022, newMaxMm: 54.1 }
    const found = marks({ ...job, spec: band })
    expect(found).toContain('firm-below')
    expect(found).toContain('dashed')
    expect(found).not.toContain('firm-above')
  })

  it('explains no limit where there is none', () => {
    expect(marks({ ...example(), spec: {} })).toEqual(['disc', 'hatch', 'iso-lines', 'hole'])
  })

  it('tells a reading that is in no verdict from one that is', () => {
    expect(marks(inventedJob())).toContain('disc-open')
    expect(marks(example())).not.toContain('disc-open')
  })

  it('explains the double outline where a surface finding is recorded', () => {
    const job = example()
    const [bore] = job.bores
    const [survey] = bore?.surveys ?? []
    if (!bore || !survey) throw new Error('nothing is measured')
    const { boreId, surveyId } = { boreId: bore.id, surveyId: bore.surveys.at(-1)?.id ?? survey.id }
    const rust = { id: 'x', kind: 'rust', shape: 'patch', fromDepthMm: 10, toDepthMm: 20 } as const
    const found = addSurfaceFinding(job, { boreId, surveyId }, { ...rust, fromDegrees: 0, toDegrees: 9 })
    expect(marks(found)).toContain('surface')
    expect(marks(job)).not.toContain('surface')
  })

  it('has words for every mark, none said twice', () => {
    const texts = legendMarkKinds.map((kind) => markText(kind, 2))
    expect(texts).toContain('lines every 2 µm')
    expect(texts.every((text) => text.length > 3)).toBe(true)
    expect(new Set(texts).size).toBe(legendMarkKinds.length)
  })
})
