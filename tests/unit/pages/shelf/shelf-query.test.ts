import { describe, expect, it } from 'vitest'
import type { ListedJob } from '../../../../src/job/listed-job'
import {
  asked,
  filtersSet,
  inOrder,
  machinesOf,
  placeOf,
  withoutMachine,
} from '../../../../src/pages/shelf/shelf-query'
import { shelfOrders, wholeShelf } from '../../../../src/session/shelf-view'

function listed(id: string, fields: Partial<ListedJob> = {}): ListedJob {
  const name = fields.name ?? id
  return {
    id,
    name,
    changedAt: '2026-01-01T00:00:00.000Z',
    readings: 0,
    bores: 1,
    judged: 0,
    marked: 0,
    sought: name.toLowerCase(),
    ...fields,
  }
}

const today = '2026-03-09'

const ids = (jobs: readonly ListedJob[]) => jobs.map(({ id }) => id).join(' ')

const jobs = [
  listed('a', {
    name: 'Saw 10',
    machine: 'Saw',
    surveyedOn: '2025-03-08',
    place: 'inside',
    sought: 'saw 10\nsaw\nzoe\nclean',
  }),
  listed('b', {
    name: 'saw 9',
    surveyedOn: '2025-04-01',
    place: 'close-below',
    changedAt: '2026-01-03T00:00:00.000Z',
  }),
  listed('c', { name: 'Écrou', machine: 'Pump', place: 'below', sought: 'ecrou\npump' }),
  listed('d', { name: 'Ecrou', machine: ' ', changedAt: '2026-01-02T00:00:00.000Z' }),
]

describe('the order of the list', () => {
  it('is by the last change where nothing else tells two apart', () => {
    expect(ids(inOrder(jobs, 'changed'))).toBe('b d a c')
    expect(ids(inOrder(jobs, 'surveyed'))).toBe('b a d c')
    // Écrou and Ecrou are one name to a search and to this order; 9 comes before 10.
    expect(ids(inOrder(jobs, 'name'))).toBe('d c b a')
    expect(ids(inOrder(jobs, 'verdict'))).toBe('c b a d')
  })

  it('loses no job and leaves the list it was given as it was', () => {
    const before = ids(jobs)
    for (const order of shelfOrders) expect([...inOrder(jobs, order)].sort()).toHaveLength(jobs.length)
    expect(ids(jobs)).toBe(before)
  })
})

describe('what is asked for', () => {
  const found = (query: Partial<typeof wholeShelf>) => ids(asked(jobs, { ...wholeShelf, ...query }, today))

  it('has every word sought, in any order, whatever capitals and accents', () => {
    expect(found({ sought: '' })).toBe('a b c d')
    expect(found({ sought: '  ZOË saw ' })).toBe('a')
    expect(found({ sought: 'saw pump' })).toBe('')
    expect(found({ sought: 'écr' })).toBe('c d')
  })

  it('has the machine, blank and absent ones being none', () => {
    expect(found({ machine: 'Saw' })).toBe('a')
    expect(found({ machine: withoutMachine })).toBe('b d')
    expect(machinesOf(jobs)).toEqual(['Pump', 'Saw', withoutMachine])
    expect(machinesOf([listed('x')])).toEqual([])
  })

  it('was surveyed within the days given, both of them included; a job without a day is in no span', () => {
    expect(found({ from: '2025-03-08' })).toBe('a b')
    expect(found({ to: '2025-03-08' })).toBe('a')
    expect(found({ from: '2025-03-09', to: '2025-03-31' })).toBe('')
    expect(found({ to: '2026-01-01' })).toBe('a b')
  })

  it('stands as asked: beyond either limit is out', () => {
    expect(found({ standing: 'out' })).toBe('c')
    expect(found({ standing: 'too-close' })).toBe('b')
    expect(found({ standing: 'inside' })).toBe('a')
    expect(found({ standing: 'none' })).toBe('d')
  })

  it('is due by the day that it is, soon within thirty days, or has no day', () => {
    const due = [
      listed('x', { checkOn: '2026-03-09' }),
      listed('y', { checkOn: '2026-03-10' }),
      listed('z', { checkOn: '2026-04-08' }),
      listed('later', { checkOn: '2026-04-09' }),
      listed('never'),
    ]
    const found = (check: (typeof wholeShelf)['check']) => ids(asked(due, { ...wholeShelf, check }, today))
    expect(found('due')).toBe('x')
    expect(found('soon')).toBe('x y z')
    expect(found('some')).toBe('x y z later')
    expect(found('none')).toBe('never')
    expect(ids(inOrder([...due].reverse(), 'check'))).toBe('x y z later never')
    expect(filtersSet({ ...wholeShelf, check: 'due' })).toBe(1)
  })

  it('lies where asked: what is deleted is no longer among the archived', () => {
    const archived = listed('x', { archivedAt: '2026-01-01' })
    const deleted = listed('y', { archivedAt: '2026-01-01', deletedAt: '2026-01-02' })
    expect([archived, deleted, listed('z')].map(placeOf)).toEqual(['archived', 'deleted', 'shelf'])
    expect(ids(asked([archived, deleted, listed('z')], { ...wholeShelf, place: 'archived' }, today))).toBe(
      'x',
    )
  })

  it('counts as filtered by all but the search and the order', () => {
    expect(filtersSet(wholeShelf)).toBe(0)
    expect(filtersSet({ ...wholeShelf, sought: 'saw', order: 'name' })).toBe(0)
    expect(filtersSet({ ...wholeShelf, machine: 'Saw', to: '2025-01-01', place: 'archived' })).toBe(3)
  })
})
