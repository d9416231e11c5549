import { describe, expect, it } from 'vitest'
import { addBore } from '../../../src/job/bore-commands'
import { setRepeats } from '../../../src/job/commands'
import type { Job } from '../../../src/job/schema'
import { nextElsewhere } from '../../../src/pages/bench/entry-across'
import type { EntryOrder, InHand } from '../../../src/session/session'
import { boreOf } from '../core/measured-bore'
import { sampleJob } from '../job/sample-job'

const levelsMm = [10, 40]
const axesDegrees = [0, 90]

/** Three bores with the same plan of two levels and two axes, nothing read; the comparison bore listed first. */
function job(): Job {
  const empty = [
    [undefined, undefined],
    [undefined, undefined],
  ]
  let count = 0
  const ids = () => `id-${++count}`
  const own = boreOf({ levelsMm, axesDegrees, rows: empty }, { id: 'set-up', entry: 'size' }, { id: '1' })
  const plain = { ...sampleJob, bores: [own] }
  const two = addBore(plain, ids, 'for-comparison', 'New')
  const three = addBore(two, ids, 'of-this-engine')
  const [first, compared, second] = three.bores
  if (!first || !compared || !second) throw new Error('three bores expected')
  return {
    ...three,
    bores: [{ ...compared, id: 'N' }, first, { ...second, id: '2' }],
  }
}

/** The order in which stations come up when each is read once, from bore 1 at the top. */
function orderOf(order: EntryOrder): string[] {
  let current = job()
  let at: InHand | undefined = { boreId: '1', depthMm: 10, axisDegrees: 0 }
  const seen: string[] = []
  while (at && seen.length < 20) {
    seen.push(`${at.boreId}:${at.depthMm}/${at.axisDegrees}`)
    const survey: string = current.bores.find(({ id }) => id === at?.boreId)?.surveys[0]?.id ?? ''
    current = setRepeats(current, at.boreId, survey, at, [54.01])
    const across = { job: current, order, wanted: 1, skipped: [] }
    const elsewhere: InHand | undefined = nextElsewhere(at, across)
    at = elsewhere ?? nextHere(current, at)
  }
  return seen
}

/** The next open station of the same bore, as the page finds it. */
function nextHere(current: Job, at: InHand): InHand | undefined {
  const bore = current.bores.find(({ id }) => id === at.boreId)
  const read = new Set(bore?.surveys[0]?.readings.map((r) => `${r.depthMm}/${r.axisDegrees}`))
  const open = levelsMm
    .flatMap((depthMm) => axesDegrees.map((axisDegrees) => ({ depthMm, axisDegrees })))
    .find(({ depthMm, axisDegrees }) => !read.has(`${depthMm}/${axisDegrees}`))
  return open && { boreId: at.boreId, ...open }
}

describe('the order of entry over several bores', () => {
  it('goes bore by bore through the engine, then through what it is compared with', () => {
    expect(orderOf('bore-by-bore')).toEqual([
      '1:10/0',
      '1:10/90',
      '1:40/0',
      '1:40/90',
      '2:10/0',
      '2:10/90',
      '2:40/0',
      '2:40/90',
      'N:10/0',
      'N:10/90',
      'N:40/0',
      'N:40/90',
    ])
  })

  it('goes level by level through all bores, so that one setting serves', () => {
    expect(orderOf('level-by-level')).toEqual([
      '1:10/0',
      '1:10/90',
      '2:10/0',
      '2:10/90',
      'N:10/0',
      'N:10/90',
      '1:40/0',
      '1:40/90',
      '2:40/0',
      '2:40/90',
      'N:40/0',
      'N:40/90',
    ])
  })

  it('passes over what was skipped', () => {
    const skipped = axesDegrees.map((axisDegrees) => ({ boreId: '2', depthMm: 10, axisDegrees }))
    const across = { job: job(), order: 'level-by-level', wanted: 1, skipped } as const
    const done = setRepeats(
      setRepeats(across.job, '1', '1-survey', { depthMm: 10, axisDegrees: 0 }, [54]),
      '1',
      '1-survey',
      { depthMm: 10, axisDegrees: 90 },
      [54],
    )
    expect(nextElsewhere({ boreId: '1', depthMm: 10, axisDegrees: 90 }, { ...across, job: done })).toEqual({
      boreId: 'N',
      depthMm: 10,
      axisDegrees: 0,
    })
  })
})
