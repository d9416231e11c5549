import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readTableDay } from '../../../src/formats/table-day'
import { readTableFile, readWholeTableFile, type TableChoices } from '../../../src/formats/table-file'
import { runCount } from '../../proof/run-count'

const bytes = (text: string) => new TextEncoder().encode(text)

function read(text: string, choices?: TableChoices) {
  const file = readWholeTableFile(bytes(text), choices)
  if (!file.ok) throw new Error(file.why)
  return file
}

const figures = (text: string, choices?: TableChoices) =>
  read(text, choices).content.readings.map(({ row: _, column: __, text: ___, ...reading }) => reading)

describe('a list of readings', () => {
  it('is read by its heads, several columns of readings as repeats', () => {
    const text =
      'state,depth_mm,axis_deg,read1_mm,read2_mm\nnew,8,0,54.009,54.01\nused 185 h,16,270,54.025,\n'
    const file = read(text)
    expect(file.open).toEqual([])
    expect(file.mapping).toMatchObject({ headRow: 0, decimal: 'point' })
    expect(figures(text)).toEqual([
      { as: 'size', value: 54.009, depthMm: 8, axisDegrees: 0, survey: 'new' },
      { as: 'size', value: 54.01, depthMm: 8, axisDegrees: 0, survey: 'new' },
      { as: 'size', value: 54.025, depthMm: 16, axisDegrees: 90, survey: 'used 185 h' },
    ])
    expect(file.content).toMatchObject({ refused: [], rows: 2, isFolded: true })
  })

  it('has decimal commas found, and says of each refused cell where it stands and why', () => {
    const text =
      'Bore;Depth mm;Angle;Size mm\n1;8,5;0;54,012\n1;8,5;9O;54,013\n1;16;0;54.014\n1;;0;54,015\n1;20;0;n/a\n'
    const { content, open } = read(text, { decimal: 'comma' })
    expect(open).toEqual([])
    expect(content.readings.map(({ value }) => value)).toEqual([54.012])
    expect(content.refused.map(({ row, column, text, why }) => [row, column, text, why])).toEqual([
      [2, 2, '9O', 'letters'],
      [2, 3, '54,013', 'row-refused'],
      [3, 3, '54.014', 'other-mark'],
      [4, 3, '54,015', 'no-depth'],
      [5, 3, 'n/a', 'letters'],
    ])
  })

  it('leaves open what can be read two ways', () => {
    expect(read('depth_mm;axis;size_mm\n8;0;54,012\n8;90;54.013').open).toEqual(['decimal-mark'])
    expect(read('depth;axis;reading\n8;0;12').open).toEqual(['depth-unit', 'value-unit'])
    expect(read('depth_mm;axis;0.0001 in reading\n8;0;12').open).toEqual(['value-unit'])
    expect(read('date;depth_mm;axis;size_mm\n3/4/2024;8;0;54').open).toEqual(['day-order'])
    expect(read('date;depth_mm;axis;size_mm\n31/4/2024;8;0;54').open).toEqual([])
    expect(read('8;0;54').open).toEqual(['no-readings', 'no-depth'])
    expect(read('depth_mm;size_mm\n8;54').open).toEqual(['no-axis'])
    expect(read('depth_mm;axis;angle;size_mm\n8;0;0;54').open).toEqual(['several-of-one-kind'])
    expect(readWholeTableFile(bytes('9,7,12'))).toEqual({ ok: false, why: 'commas-only' })
  })

  it('refuses a row with more cells than heads: a comma may have parted a number in two', () => {
    const { content } = read('depth_mm,axis,size_mm\n8,0,54,012\n8,90,54.013,,\n')
    expect(content.refused).toEqual([{ row: 1, column: 2, text: '54', why: 'too-many-cells' }])
    expect(content.readings).toHaveLength(1)
  })

  it('takes no thousands of hours for decimals of one', () => {
    const { content } = read('hours;depth_mm;axis;size_mm\n4,200;8;0;130,01\n4200;8;0;130,02')
    expect(content.refused.map(({ why }) => why)).toEqual(['thousands-or-decimals', 'row-refused'])
    expect(content.readings).toMatchObject([{ hoursRun: 4200 }])
  })

  it('takes only what was chosen', () => {
    const columns = ['axis', 'depth-inch', 'deviation-ten-thousandth'] as const
    expect(figures('0 0.5 3\n'.replaceAll(' ', ';'), { headRow: 'none', columns })).toEqual([
      { as: 'deviation', value: 7.62, depthMm: 12.7, axisDegrees: 0 },
    ])
  })
})

describe('a table with depths down and angles across', () => {
  it('takes the axis of a reading from the head above it, and the unit from the title', () => {
    const text = 'Bore 2, sizes in mm\ndepth;0°;45°;90°\n8;54,012;54,013;\n16;54,010;;54,011'
    const file = read(text)
    expect(file.mapping).toMatchObject({ headRow: 1, columns: ['depth-mm', 'size-mm', 'size-mm', 'size-mm'] })
    expect(file.open).toEqual([])
    expect(
      file.content.readings.map(({ depthMm, axisDegrees, value }) => [depthMm, axisDegrees, value]),
    ).toEqual([
      [8, 0, 54.012],
      [8, 45, 54.013],
      [16, 0, 54.01],
      [16, 90, 54.011],
    ])
  })

  it('asks for units where nothing says them, and keeps angles of one head apart from numbers of readings', () => {
    const file = read('\t0\t90\t180\n8\t9\t-3\t8')
    expect(file.open).toEqual(['depth-unit', 'value-unit'])
    const chosen = read('\t0\t90\t180\n8\t9\t-3\t8', {
      columns: ['depth-mm', 'deviation-um', 'deviation-um', 'deviation-um'],
    })
    expect(chosen.content.readings.map(({ axisDegrees, value }) => [axisDegrees, value])).toEqual([
      [0, 9],
      [90, -3],
      [0, 8],
    ])
    expect(chosen.content.isFolded).toBe(true)
  })
})

describe('a file of a table', () => {
  it('may be UTF-8, UTF-16 or Windows-1252, and says which', () => {
    const text = 'depth_mm;axis;deviation µm\n8;0;9'
    const utf16 = Uint8Array.from([0xff, 0xfe, ...[...text].flatMap((sign) => [sign.charCodeAt(0), 0])])
    const latin = Uint8Array.from([...text].map((sign) => sign.charCodeAt(0)))
    const encodings = [bytes(`\uFEFF${text}`), utf16, latin].map((file) => {
      const read = readWholeTableFile(file)
      return read.ok ? [read.encoding, read.open.length, read.content.readings.length] : read.why
    })
    expect(encodings).toEqual([
      ['utf-8', 0, 1],
      ['utf-16', 0, 1],
      ['windows-1252', 0, 1],
    ])
    expect(readWholeTableFile(Uint8Array.from([80, 75, 3, 4, 0]))).toEqual({ ok: false, why: 'no-text' })
  })

  it('of 100,000 rows is read in steps of at most 1,000 rows', () => {
    const rows = Array.from({ length: 100_000 }, (_, row) => `${row % 300};${row % 180};54,012`)
    const steps: number[] = []
    const reading = readTableFile(bytes(`depth_mm;axis;size_mm\n${rows.join('\n')}`))
    let step = reading.next()
    for (; !step.done; step = reading.next()) steps.push(step.value.done)
    expect(step.value).toMatchObject({ ok: true, rowCount: 100_001 })
    expect(steps).toHaveLength(100)
    expect(steps.every((done, index) => index === 0 || done - (steps[index - 1] ?? 0) <= 1000)).toBe(true)
  })

  it('never throws, whatever it holds (seed 4)', () => {
    const sign = fc.constantFrom(
      '5',
      '4',
      ',',
      '.',
      ';',
      '\t',
      '\n',
      '"',
      ' ',
      '°',
      'mm',
      'depth',
      'axis',
      'size',
      '/',
    )
    fc.assert(
      fc.property(fc.array(sign, { maxLength: 60 }), (signs) => {
        expect(typeof readWholeTableFile(bytes(signs.join(''))).ok).toBe('boolean')
      }),
      { seed: 4, numRuns: runCount({ quick: 500, full: 20000 }) },
    )
  })
})

describe('a day in a table', () => {
  it.each([
    ['2024-05-31', undefined, '2024-05-31'],
    ['2024-05-31 10:15', undefined, '2024-05-31'],
    ['31.5.2024', undefined, '2024-05-31'],
    ['3/4/2024', 'day-first', '2024-04-03'],
    ['3/4/2024', 'month-first', '2024-03-04'],
    ['3-4-2024', 'day-first', '2024-04-03'],
  ] as const)('%j (%s) is %s', (text, order, day) => {
    expect(readTableDay(text, order)).toEqual({ ok: true, day })
  })

  it.each([
    ['31/5/2024', 'month-first', 'not-a-day'],
    ['2023-02-29', undefined, 'not-a-day'],
    ['May', undefined, 'not-a-day'],
    ['3/4/2024', undefined, 'day-order-open'],
  ] as const)('%j (%s) is refused: %s', (text, order, why) => {
    expect(readTableDay(text, order)).toEqual({ ok: false, why })
  })
})
