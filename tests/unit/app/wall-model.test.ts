import { describe, expect, it } from 'vitest'
import { makeModel, modelFileName } from '../../../src/app/wall-model'
import { exaggerationOfJob } from '../../../src/job/selectors'
import { setExaggeration } from '../../../src/session/session'
import { inventedJob } from '../cli/invented-job'

const day = new Date(2026, 2, 9)

function firstBore(job = inventedJob()) {
  const bore = job.bores[0]
  if (!bore) throw new Error('no bore')
  return { job, bore }
}

describe('the model of a wall that is saved', () => {
  it('has exaggeration and scale in its name, however long the name of the job', () => {
    const { job, bore } = firstBore(
      inventedJob({ name: 'A job with a name that goes on and on and on and on and on' }),
    )
    const name = modelFileName('stl', job, bore, { exaggeration: 1000, drawnPerPrinted: 2 }, day)
    expect(name).toBe('bore-used-a-job-with-a-name-drawn-x1000-scale-1-2-2026-03-09.stl')
    expect(modelFileName('glb', job, bore, { exaggeration: 2.5, drawnPerPrinted: 1 }, day)).toContain(
      '-drawn-x2-5-scale-1-1-2026-03-09.glb',
    )
  })

  it('is made at the exaggeration of the picture, which its head says', async () => {
    const { job, bore } = firstBore()
    const heads = []
    for (const chosen of [undefined, 120]) {
      setExaggeration(chosen)
      const made = await makeModel('stl', job, bore)
      if (made?.kind !== 'made') throw new Error('expected a model')
      expect(made.file.type).toBe('model/stl')
      heads.push(await made.file.slice(0, 80).text())
    }
    setExaggeration(undefined)
    const own = exaggerationOfJob(job)
    expect(heads.map((head) => head.replace(/\0+$/, ''))).toEqual([
      `Bore wall drawn x${own}, scale 1:1, mm. Not to measure from.`,
      'Bore wall drawn x120, scale 1:1, mm. Not to measure from.',
    ])
  })

  it('is none before the first reading, and says why where the wall would meet the axis', async () => {
    const { job, bore } = firstBore()
    const empty = {
      ...job,
      bores: job.bores.map((one) => ({
        ...one,
        surveys: one.surveys.map((survey) => ({ ...survey, readings: [] })),
      })),
    }
    expect(await makeModel('stl', empty, bore)).toBeUndefined()
    setExaggeration(100_000)
    expect(await makeModel('glb', job, bore)).toEqual({ kind: 'none', why: 'wall-meets-axis' })
    setExaggeration(undefined)
  })
})
