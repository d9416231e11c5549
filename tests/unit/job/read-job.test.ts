import { describe, expect, it } from 'vitest'
import type { Problem } from '../../../src/core/problem'
import { largestFileBytes } from '../../../src/job/file-text'
import { readJob } from '../../../src/job/read-job'
import { writeJob } from '../../../src/job/write-job'
import { sampleJob, spoilt } from './sample-job'

const text = writeJob(sampleJob)
const bytes = (string: string) => new TextEncoder().encode(string)

function problemsOf(file: string | Uint8Array): readonly Problem[] {
  const result = readJob(file)
  return result.ok ? [] : result.problems
}

function utf16(string: string, littleEndian: boolean): Uint8Array {
  const units = [...string].map((_, index) => string.charCodeAt(index))
  return Uint8Array.from(
    units.flatMap((unit) => (littleEndian ? [unit & 255, unit >> 8] : [unit >> 8, unit & 255])),
  )
}

describe('reading a job', () => {
  it('gives back what was written, from text and from bytes', () => {
    expect(readJob(text)).toEqual({ ok: true, job: sampleJob })
    expect(readJob(bytes(text))).toEqual({ ok: true, job: sampleJob })
  })

  it('takes a byte order mark in front of UTF-8, and line ends of any system', () => {
    expect(readJob(`\uFEFF${text}`).ok).toBe(true)
    expect(readJob(Uint8Array.from([0xef, 0xbb, 0xbf, ...bytes(text)])).ok).toBe(true)
    expect(readJob(text.replaceAll('\n', '\r\n')).ok).toBe(true)
  })

  it('says in which line and column a value is wrong', () => {
    const lines = text.split('\n')
    const line = lines.findIndex((each) => each.includes('"settingSizeMm"')) + 1
    const column = (lines[line - 1] ?? '').indexOf('"settingSizeMm"') + 1
    expect(problemsOf(text.replace('"settingSizeMm": 54', '"settingSizeMm": 54000'))).toEqual([
      {
        code: 'out-of-range',
        path: 'setUps[0].settingSizeMm',
        found: 54000,
        least: 1,
        most: 2000,
        mostExcluded: false,
        unit: 'mm',
        line,
        column,
      },
    ])
  })

  it('names the line of the part that lacks a field', () => {
    const [problem] = problemsOf(writeJob(sampleJob).replace('"gaugeId": "gauge",', ''))
    const line = text.split('\n').findIndex((each) => each.includes('"id": "set-up"'))
    expect(problem).toMatchObject({ code: 'missing', path: 'setUps[0].gaugeId', line })
  })
})

describe('a file that is no job', () => {
  it('is named empty when there is nothing but white space in it', () => {
    for (const file of ['', ' \n\t ', '\uFEFF', new Uint8Array(0)]) {
      expect(problemsOf(file)).toEqual([{ code: 'file-empty', path: '' }])
    }
  })

  it('is refused by its size before it is looked at: 100 MB against a limit of 20 MB', () => {
    const started = performance.now()
    const flaw = { code: 'file-too-large', bytes: 100_000_000, mostBytes: 20_000_000, path: '' }
    expect(problemsOf(new Uint8Array(100_000_000))).toEqual([flaw])
    expect(problemsOf(' '.repeat(100_000_000))).toEqual([flaw])
    expect(largestFileBytes).toBe(20_000_000)
    expect(performance.now() - started).toBeLessThan(1000)
  })

  it('is told to be saved as UTF-8 when it is UTF-16, with a byte order mark or without', () => {
    for (const littleEndian of [true, false]) {
      expect(problemsOf(utf16(`\uFEFF${text}`, littleEndian))).toEqual([
        { code: 'saved-as-utf-16', path: '' },
      ])
      expect(problemsOf(utf16(text, littleEndian))).toEqual([{ code: 'saved-as-utf-16', path: '' }])
    }
  })

  it('names the line with a Latin-1 letter in it', () => {
    const latin1 = Uint8Array.from([...'{\n"name": "B', 0xfc, ...'chse" }'], (c) =>
      typeof c === 'number' ? c : c.charCodeAt(0),
    )
    expect(problemsOf(latin1)).toEqual([{ code: 'not-utf-8', path: '', line: 2 }])
  })

  it('names the line of a UTF-8 letter that is cut off at the end', () => {
    expect(problemsOf(bytes('{}\n\n"ü"').slice(0, -2))).toEqual([{ code: 'not-utf-8', path: '', line: 3 }])
  })

  const others: [string, string | Uint8Array, string][] = [
    ['a PNG image', Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0]), 'image'],
    ['a JPEG image', Uint8Array.from([0xff, 0xd8, 0xff, 0xe0, 0, 0x10]), 'image'],
    ['a PDF', bytes('%PDF-1.7\n'), 'pdf'],
    ['a ZIP archive, as spreadsheets are', Uint8Array.from([0x50, 0x4b, 3, 4, 20, 0]), 'archive'],
    ['a web page', bytes('<!doctype html><title>Bore</title>'), 'web-page'],
    ['a table', 'depth_mm,axis_deg,read1_mm\n8,0,54.033\n', 'table'],
  ]
  it.each(others)('is named when it is %s', (_, file, kind) => {
    expect(problemsOf(file)).toEqual([{ code: 'other-kind-of-file', kind, path: '' }])
  })

  it('is named when it is JSON of another kind', () => {
    for (const file of [
      '[]',
      '"borewall-job"',
      '54',
      'null',
      '{}',
      '{"format":"another","formatVersion":1}',
    ]) {
      expect(problemsOf(file), file).toEqual([{ code: 'not-a-job', path: '' }])
    }
  })

  it('is left alone when a newer Borewall wrote it, whatever it holds', () => {
    const newer = { format: 'borewall-job', formatVersion: 3, cylinders: [{ novelty: true }] }
    expect(problemsOf(JSON.stringify(newer))).toEqual([
      { code: 'newer-version', path: 'formatVersion', found: 3, supported: 2 },
    ])
  })
})

describe('a text that stops being JSON', () => {
  const stops: [string, string, object][] = [
    [
      'NaN',
      '{\n  "a": [1, NaN]\n}',
      { expected: 'finite-number', found: 'NaN]', path: 'a[1]', line: 2, column: 12 },
    ],
    [
      'Infinity',
      '[Infinity]',
      { expected: 'finite-number', found: 'Infinity]', path: '[0]', line: 1, column: 2 },
    ],
    ['a negative Infinity', '[-Infinity]', { expected: 'finite-number', line: 1, column: 2 }],
    ['undefined', '{"a":undefined}', { expected: 'finite-number', path: 'a', column: 6 }],
    ['a comma too many in a list', '[1, 2,]', { expected: 'no-trailing-comma', found: ',]', column: 6 }],
    ['a comma too many in an object', '{"a": 1,\n}', { expected: 'no-trailing-comma', line: 1, column: 8 }],
    ['a decimal comma in a list', '[54,032]', { expected: 'no-leading-zero', found: '032]', column: 5 }],
    [
      'a decimal comma in an object',
      '{"a": 54,132}',
      { expected: 'no-leading-zero', found: '132}', column: 10 },
    ],
    ['a number with zeros in front', '[007]', { expected: 'no-leading-zero', column: 2 }],
    ['a point with nothing behind it', '[1.]', { expected: 'number', found: '1.]' }],
    ['a lone minus', '[-]', { expected: 'number' }],
    ['a plus sign', '[+1]', { expected: 'value', found: '+1]' }],
    ['single quotes', "{'a': 1}", { expected: 'key', found: "'a': 1}", column: 2 }],
    ['a key without quotes', '{a: 1}', { expected: 'key', column: 2 }],
    ['a missing colon', '{"a" 1}', { expected: 'colon', column: 6 }],
    ['a missing comma in a list', '[1 2]', { expected: 'comma-or-end-of-list', column: 4 }],
    ['a missing comma in an object', '{"a": 1 "b": 2}', { expected: 'comma-or-end-of-object', column: 9 }],
    ['the end in the middle of it', '{"a": [1,', { expected: 'value', found: '', path: 'a[1]', column: 10 }],
    ['a text without an end', '["abc', { expected: 'end-of-string', found: '', column: 6 }],
    ['a text over two lines', '["abc\ndef"]', { expected: 'end-of-string', line: 1, column: 6 }],
    ['a wrong escape', '["C:\\job"]', { expected: 'escape', found: '\\job"]', column: 5 }],
    ['more behind it', '{} {}', { expected: 'end-of-text', found: '{}', column: 4 }],
    ['a comment', '{} // done', { expected: 'end-of-text' }],
    ['a plain word', 'hello', { expected: 'value', found: 'hello', line: 1, column: 1 }],
  ]
  it.each(stops)('is refused at the place: %s', (_, file, flaw) => {
    const problems = problemsOf(file)
    expect(problems).toHaveLength(1)
    expect(problems[0]).toMatchObject({ code: 'not-json', ...flaw })
  })

  it('shows no character in its message that a terminal would obey', () => {
    expect(problemsOf('[\u001b[2J]')[0]).toMatchObject({ found: '\uFFFD[2J]' })
  })
})

describe('a hostile file', () => {
  it('is refused with lists 100,000 deep, and the stack holds', () => {
    const deep = { code: 'too-deep', most: 32, line: 1 }
    expect(problemsOf('['.repeat(100_000))[0]).toMatchObject({ ...deep, column: 33 })
    expect(problemsOf('['.repeat(100_000) + ']'.repeat(100_000))[0]).toMatchObject(deep)
    expect(problemsOf('{"a":'.repeat(100_000))[0]).toMatchObject(deep)
  })

  it('cannot reach the prototype of anything by its keys', () => {
    for (const key of ['__proto__', 'constructor', 'prototype', 'toString', 'hasOwnProperty']) {
      const file = text.replace('"name": "Sample"', `"name": "Sample", "${key}": { "polluted": true }`)
      expect(problemsOf(file), key).toMatchObject([{ code: 'unknown-key', key, path: '' }])
      const inside = text.replace('"depthMm": 8,', `"depthMm": 8, "${key}": { "polluted": true },`)
      const path = 'bores[0].surveys[0].readings[0]'
      expect(problemsOf(inside), key).toMatchObject([{ code: 'unknown-key', key, path }])
    }
    expect(Reflect.get({}, 'polluted')).toBeUndefined()
  })

  it('is refused when a key stands twice in one object, which parsing would drop without a word', () => {
    const file = text.replace('"wearLimitMm": 54.05', '"wearLimitMm": 54.05, "wearLimitMm": 54.5')
    const line = text.split('\n').findIndex((each) => each.includes('"wearLimitMm"')) + 1
    expect(problemsOf(file)).toMatchObject([
      { code: 'duplicate-key', key: 'wearLimitMm', path: 'spec', line },
    ])
    expect(problemsOf('{"a": 1, "\\u0061": 2}')).toMatchObject([{ code: 'duplicate-key', key: 'a' }])
  })

  it('is refused with a number too large for a double, which parsing would make infinite', () => {
    for (const number of ['1e999', '1e308', '-1e999']) {
      const [problem] = problemsOf(text.replace('"settingSizeMm": 54', `"settingSizeMm": ${number}`))
      expect(problem).toMatchObject({ code: 'out-of-range', path: 'setUps[0].settingSizeMm', most: 2000 })
    }
  })

  it('is answered within seconds at the full size that is read, whatever fills it', {
    timeout: 60_000,
  }, () => {
    const head = '{"format":"borewall-job","formatVersion":1'
    const survey = `{"readings":[${'0,'.repeat(4000)}0]}`
    const bore = `{"surveys":[${Array(10).fill(survey).join(',')}]}`
    const files = [
      [`${head},"note":"${'x'.repeat(largestFileBytes - 100)}"}`, 'missing'],
      [`${head},"bores":[${'0,'.repeat(largestFileBytes / 2 - 100)}0]}`, 'list-too-long'],
      [`${head}${Array.from({ length: 900_000 }, (_, n) => `,"k${n}":{}`).join('')}}`, 'unknown-key'],
      [`${head},"bores":[${Array(10).fill(bore).join(',')}]}`, 'more-problems'],
      [`${head},"bores":[${Array(20).fill(bore).join(',')}]}`, 'list-too-long'],
      [`{${'"a":0,'.repeat(3_000_000)}"a":0}`, 'duplicate-key'],
      [`{${'"a":0,\n'.repeat(2_000_000)}"a":0}`, 'duplicate-key'],
      [
        `${head},"spec":${JSON.stringify(Object.fromEntries(Array.from({ length: 190 }, (_, n) => [`k${n}`, 0])))}${'\n'.repeat(15_000_000)}}`,
        'unknown-key',
      ],
      [`[${'"",'.repeat(5_000_000)}""]`, 'list-too-long'],
      [`"${'\\u0061'.repeat(3_000_000)}"`, 'not-a-job'],
    ] as const
    for (const [file, code] of files) {
      const started = performance.now()
      expect(problemsOf(file).map((problem) => problem.code)).toContain(code)
      expect(performance.now() - started).toBeLessThan(30_000)
    }
  })

  it('has long names cut in messages', () => {
    const [problem] = problemsOf(JSON.stringify(spoilt(['x'.repeat(1000)], 1)))
    expect(problem?.code === 'unknown-key' ? problem.key.length : 0).toBe(40)
  })
})
