import { describe, expect, it } from 'vitest'
import { templateOf } from '../../../src/job/kept-spec'
import { readKeptSpecs, specRecord } from '../../../src/storage/kept-specs'
import { sampleJob } from '../job/sample-job'

const kept = (id: string, name: string) => ({
  id,
  name,
  typedOn: '2026-05-31',
  template: templateOf(sampleJob, id, name),
})

describe('records of kept specs', () => {
  it('are read as they were written, by name, and numbers in names by their size', () => {
    const specs = [kept('c', 'Saw 100'), kept('a', 'Saw 54'), kept('b', 'Pump')]
    expect(readKeptSpecs(specs.map(specRecord))).toEqual({
      specs: [specs[2], specs[1], specs[0]],
      unread: [],
    })
  })

  it('that hold no kept spec are told of and hide no other', () => {
    const good = specRecord(kept('a', 'Saw'))
    const bad = [
      { ...good, id: 'b', text: '{' },
      { ...good, id: 'c', typedOn: 'long ago' },
      {
        id: 'd',
        name: 'From a newer page',
        text: good.text.replace('"formatVersion": 1', '"formatVersion": 99'),
      },
      null,
    ]
    const { specs, unread } = readKeptSpecs([...bad, good])
    expect(specs.map(({ id }) => id)).toEqual(['a'])
    expect(unread.map(({ id, name }) => `${id} ${name}`)).toEqual([
      'b Saw',
      'c Saw',
      'd From a newer page',
      ' ',
    ])
  })

  it('may have fields that a newer Borewall added', () => {
    const { specs } = readKeptSpecs([{ ...specRecord(kept('a', 'Saw')), colour: 'red' }])
    expect(specs).toHaveLength(1)
  })
})
