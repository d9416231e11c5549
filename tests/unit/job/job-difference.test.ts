import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { differenceOf, type Operation, withDifference } from '../../../src/job/job-difference'

/** RFC 6902, JavaScript Object Notation (JSON) Patch, 2013, appendix A: the examples of the operations used here. */
const published: readonly (readonly [string, unknown, readonly Operation[], unknown])[] = [
  [
    'A.1 adding a member',
    { foo: 'bar' },
    [{ op: 'add', path: '/baz', value: 'qux' }],
    { baz: 'qux', foo: 'bar' },
  ],
  [
    'A.2 adding an array element',
    { foo: ['bar', 'baz'] },
    [{ op: 'add', path: '/foo/1', value: 'qux' }],
    { foo: ['bar', 'qux', 'baz'] },
  ],
  ['A.3 removing a member', { baz: 'qux', foo: 'bar' }, [{ op: 'remove', path: '/baz' }], { foo: 'bar' }],
  [
    'A.4 removing an array element',
    { foo: ['bar', 'qux', 'baz'] },
    [{ op: 'remove', path: '/foo/1' }],
    { foo: ['bar', 'baz'] },
  ],
  [
    'A.5 replacing a value',
    { baz: 'qux', foo: 'bar' },
    [{ op: 'replace', path: '/baz', value: 'boo' }],
    { baz: 'boo', foo: 'bar' },
  ],
  [
    'A.10 adding a nested member',
    { foo: 'bar' },
    [{ op: 'add', path: '/child', value: { grandchild: {} } }],
    { foo: 'bar', child: { grandchild: {} } },
  ],
]

describe('a JSON Patch', () => {
  it.each(published)('does what RFC 6902 %s says', (_, before, operations, after) => {
    expect(withDifference(before, operations)).toEqual({ ok: true, value: after })
  })

  it('fails on a target that does not exist, as RFC 6902 A.12 says', () => {
    const operations: readonly Operation[] = [{ op: 'add', path: '/baz/bat', value: 'qux' }]
    expect(withDifference({ foo: 'bar' }, operations)).toEqual({ ok: false })
  })

  it('takes ~01 for ~1 and not for a slash, as RFC 6902 A.14 says', () => {
    const operations: readonly Operation[] = [{ op: 'replace', path: '/~01', value: 9 }]
    expect(withDifference({ '/': 9, '~1': 10 }, operations)).toEqual({ ok: true, value: { '/': 9, '~1': 9 } })
  })

  it.each<readonly [string, Operation]>([
    ['a field that is not there', { op: 'remove', path: '/none' }],
    ['a place past the end of a list', { op: 'add', path: '/list/3', value: 0 }],
    ['an entry past the end of a list', { op: 'replace', path: '/list/2', value: 0 }],
    ['an index with a zero in front', { op: 'remove', path: '/list/01' }],
    ['a part of a number', { op: 'add', path: '/list/0/part', value: 0 }],
    ['the whole taken away', { op: 'remove', path: '' }],
  ])('fails on %s', (_, operation) => {
    expect(withDifference({ list: [1, 2] }, [operation])).toEqual({ ok: false })
  })

  it('leaves what it is applied to as it was, and what it does not reach the same object', () => {
    const before = Object.freeze({ one: Object.freeze({ a: 1 }), two: Object.freeze({ b: 2 }) })
    const after = withDifference(before, [{ op: 'replace', path: '/one/a', value: 3 }])
    expect(after).toEqual({ ok: true, value: { one: { a: 3 }, two: { b: 2 } } })
    expect(after.ok && Reflect.get(Object(after.value), 'two')).toBe(before.two)
  })
})

describe('the difference of two documents', () => {
  it('is nothing for equal ones, and one step for one reading put in, taken out or changed', () => {
    const list = Array.from({ length: 50 }, (_, depth) => ({ depth, sizes: [54] }))
    expect(differenceOf({ list }, { list: list.map((each) => ({ ...each })) })).toEqual([])
    const reading = { depth: 7.5, sizes: [54.01] }
    const more = list.toSpliced(8, 0, reading)
    expect(differenceOf(list, more)).toEqual([{ op: 'add', path: '/8', value: reading }])
    expect(differenceOf(more, list)).toEqual([{ op: 'remove', path: '/8' }])
    expect(differenceOf(list, list.with(3, { depth: 3, sizes: [54.02] }))).toEqual([
      { op: 'replace', path: '/3/sizes/0', value: 54.02 },
    ])
  })

  it('leads from any document to any other, 500 pairs (seed 5)', () => {
    const value = fc.jsonValue({ maxDepth: 4 })
    fc.assert(
      fc.property(value, value, (from, to) => {
        // −0 is 0 in a text of JSON.
        const [plainFrom, plainTo]: unknown[] = JSON.parse(JSON.stringify([from, to]))
        const operations: readonly Operation[] = JSON.parse(JSON.stringify(differenceOf(plainFrom, plainTo)))
        expect(withDifference(plainFrom, operations)).toEqual({ ok: true, value: plainTo })
      }),
      { seed: 5, numRuns: 500 },
    )
  })
})
