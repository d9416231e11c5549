import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { looksLikeScan } from '../../../src/formats/looks-like-scan'
import { readScanTable, readWholeScanTable, type ScanChoices } from '../../../src/formats/scan-table'
import { runCount } from '../../proof/run-count'

const runs = { quick: 60, full: 600 }
const bytes = (text: string) => new TextEncoder().encode(text)

function read(text: string, choices?: ScanChoices) {
  const table = readWholeScanTable(bytes(text), choices)
  if (!table.ok) throw new Error(table.why)
  return table
}

const refusal = (text: string, choices?: ScanChoices) => {
  const table = readWholeScanTable(bytes(text), choices)
  return table.ok ? undefined : table
}

const list = 'depth_mm,angle_deg,radial_um\n'
const places = (text: string) => {
  const { scan } = read(text)
  return { ...scan, radiiUm: [...scan.radiiUm] }
}

describe('a list of radii', () => {
  it('is put in order by depth and angle, with an empty cell as a port', () => {
    expect(places(`${list}8,120,3.5\n8,0,1\n8,240,\n4,0,-2\n4,120,0.25\n4,240,7\n`)).toEqual({
      depthsMm: [4, 8],
      anglesDegrees: [0, 120, 240],
      radiiUm: [-2, 0.25, 7, 1, 3.5, Number.NaN],
    })
  })

  it('takes its units from its heads: mm, inch, 0.0001 inch, decimal commas', () => {
    const rows = '4;0;0,001\n4;120;0,002\n4;240;-0,003\n'
    expect(places(`Tiefe depth mm;Angle °;Radius (mm)\n${rows}`).radiiUm).toEqual([1, 2, -3])
    expect(places(`Depth inch;Angle;Radius inch\n${rows}`)).toMatchObject({
      depthsMm: [101.6],
      radiiUm: [25.4, 50.8, -76.2],
    })
    expect(places('depth [mm]\tangle\tradius 0.0001 in\n4\t0\t1\n4\t120\t2\n4\t240\t-3\n').radiiUm).toEqual([
      2.54, 5.08, -7.62,
    ])
  })

  it('asks for what its heads leave open', () => {
    const text = 'depth,angle,radius\n4,0,1\n4,120,2\n4,240,3\n'
    expect(read(text).open).toEqual(['depth-unit', 'value-unit'])
    const told = read(text, { depthUnit: 'mm', valueUnit: 'inch' })
    expect(told.open).toEqual([])
    expect([...told.scan.radiiUm]).toEqual([25400, 50800, 76200])
  })

  it('takes angles modulo 360, and turns signs and angles round where it is told to', () => {
    const text = `${list}4,-90,1\n4,360,2\n4,450,3\n4,540,4\n`
    expect(places(text)).toMatchObject({ anglesDegrees: [0, 90, 180, 270], radiiUm: [2, 3, 4, 1] })
    const turned = read(text, { inward: true, counterClockwise: true }).scan
    expect([...turned.radiiUm]).toEqual([-2, -1, -4, -3])
  })

  it('leaves out the closing reading of a turn, and says how far it lies from the first', () => {
    const table = read(`${list}4,0,1\n4,120,2\n4,240,3\n4,360,1.5\n`)
    expect([...table.scan.radiiUm]).toEqual([1, 2, 3])
    expect(table).toMatchObject({ closing: { count: 1, farthestUm: 0.5 }, problemCount: 0 })
  })

  it('names each bad cell by line and column and keeps every other place', () => {
    const table = read(
      `Scan of bore 2\n\n${list}4,0,1\n4,120,2O\n4,240,3\n,0,5\n8,0,6\n8,120,7\n8,240,8\n8,0,9\n8,1.2.3,1\n8,1,2,3\n"8,0,1\n`,
    )
    expect(table.problems.map(({ line, column, code, other }) => [line, column, code, other])).toEqual([
      [5, 3, 'letters', undefined],
      [7, 1, 'no-depth', undefined],
      [11, undefined, 'read-twice', 8],
      [12, 2, 'several-marks', undefined],
      [13, undefined, 'cells-left-over', 3],
      [14, undefined, 'quote-left-open', undefined],
    ])
    expect([...table.scan.radiiUm]).toEqual([1, Number.NaN, 3, 6, 7, 8])
  })

  it('names a depth that is missing from its first rows on, and one that stands there and is no number', () => {
    const table = read(`${list},0,1\n,120,2\n4x,0,1\n4x,0,1\n4,0,1\n4,120,2\n4,240,3\n,0,5\n`)
    expect(table.problems.map(({ line, column, code }) => [line, column, code])).toEqual([
      [2, 1, 'no-depth'],
      [3, 1, 'no-depth'],
      [4, 1, 'letters'],
      [5, 1, 'letters'],
      [9, 1, 'no-depth'],
    ])
    expect(table.scan.depthsMm).toEqual([4])
  })

  it('is refused where its levels do not share their angles, by a line that has one of its own', () => {
    const rows = [0, 1, 2, 3].flatMap((level) =>
      [0, 90, 180, 270].map((angle) => `${level},${angle + 7 * level},1`),
    )
    expect(refusal(list + rows.join('\n'))).toMatchObject({ why: 'angles-differ', line: 6, depthMm: 0 })
  })

  it('keeps unequal steps as they are', () => {
    expect(places(`${list}4,0,1\n4,10,2\n4,200,3\n`).anglesDegrees).toEqual([0, 10, 200])
  })

  it('says what a file is that holds no radii', () => {
    const why = (text: string) => refusal(text)?.why
    expect(why('')).toBe('empty')
    expect(why('\u0000\u0001')).toBe('no-text')
    expect(why('1.5,2,3\n4,5,6\n')).toBe('no-heads')
    expect(why('1,2,3\n4,5,6\n')).toBe('commas-only')
    expect(why('depth mm,angle,diameter mm\n4,0,60\n')).toBe('diameters')
    expect(why(`${list}4,0,\n4,120,\n4,240,\n`)).toBe('no-values')
    expect(why(`${list}4,0,1\n4,180,2\n`)).toBe('too-few-angles')
    expect(why(list)).toBe('no-values')
  })
})

describe('a table of radii', () => {
  it('has its depths down and its angles across, the unit in its corner or above', () => {
    const rows = '4;1,5;2;3\n8;;5;6\n'
    const expected = {
      depthsMm: [4, 8],
      anglesDegrees: [0, 120, 240],
      radiiUm: [1.5, 2, 3, Number.NaN, 5, 6],
    }
    expect(places(`depth mm / radius µm;0°;120°;240°\n${rows}`)).toEqual(expected)
    expect(places(`Radial deviation, µm\n"depth, mm";0;120;240\n${rows}`)).toEqual(expected)
    expect(read(`depth mm / radius µm;0°;120°;240°\n${rows}`).layout).toBe('table')
  })

  it('refuses a row that is too short or too long, by its line, and reads the others', () => {
    const table = read('depth mm / radius um,0,120,240\n4,1,2\n8,1,2,3,4\n12,1,2,3\n16,1,2,3,\n')
    expect(table.problems).toEqual([
      { line: 2, code: 'cells-missing', text: '3', other: 4 },
      { line: 3, code: 'cells-left-over', text: '5', other: 4 },
    ])
    expect(table.scan.depthsMm).toEqual([12, 16])
  })
})

describe('both layouts', () => {
  it(`give back any scan that is written in them, ${runCount(runs)} times (seed 61)`, () => {
    const radius = fc.option(fc.integer({ min: -99_999, max: 99_999 }), { nil: undefined, freq: 9 })
    const scans = fc
      .tuple(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 3, max: 40 }))
      .chain(([levels, angles]) =>
        fc.record({
          angles: fc.constant(angles),
          levels: fc.constant(levels),
          tenths: fc.array(radius, { minLength: levels * angles, maxLength: levels * angles }),
          comma: fc.boolean(),
        }),
      )
    fc.assert(
      fc.property(scans, ({ levels, angles, tenths, comma }) => {
        fc.pre(tenths.some((value) => value !== undefined))
        const written = (value: number | undefined) =>
          value === undefined ? '' : (value / 10).toFixed(1).replace('.', comma ? ',' : '.')
        const angleOf = (column: number) => String(column * 9)
        const rows = Array.from({ length: levels }, (_, level) =>
          tenths.slice(level * angles, (level + 1) * angles),
        )
        const asList = rows.flatMap((row, level) =>
          row.map((value, column) => `${level * 6};${angleOf(column)};${written(value)}`),
        )
        const asTable = rows.map((row, level) => [level * 6, ...row.map(written)].join(';'))
        const heads = ['depth mm radius um', ...Array.from({ length: angles }, (_, c) => angleOf(c))].join(
          ';',
        )
        const expected = tenths.map((value) => (value === undefined ? Number.NaN : value / 10 + 0))
        for (const text of [
          `depth mm;angle;radius um\n${asList.join('\n')}`,
          `${heads}\n${asTable.join('\n')}\n`,
        ]) {
          const table = read(text)
          expect(table.problemCount).toBe(0)
          expect([...table.scan.radiiUm]).toEqual(expected)
          expect(table.scan.depthsMm).toEqual(rows.map((_, level) => level * 6))
        }
      }),
      { seed: 61, numRuns: runCount(runs) },
    )
  })

  it('read a million radii in steps, name the one bad line and lose nothing else', () => {
    const [levels, angles] = [1000, 1000]
    const rows: string[] = ['depth_mm,angle_deg,radial_um']
    for (let level = 0; level < levels; level++) {
      for (let column = 0; column < angles; column++) {
        rows.push(`${level / 8},${(column * 36) / 100},${((level * 7 + column * 13) % 997) / 10}`)
      }
    }
    const at = 654_321
    rows[at] = rows[at]?.replace(/,[^,]*$/, ',12.x4') ?? ''
    const reading = readScanTable(bytes(rows.join('\n')))
    let [steps, last] = [0, 0]
    let step = reading.next()
    for (; !step.done; step = reading.next()) {
      steps += 1
      expect(step.value.done).toBeGreaterThan(last)
      last = step.value.done
    }
    const table = step.value
    if (!table.ok) throw new Error(table.why)
    expect(steps).toBeGreaterThan(20)
    expect(table.problems).toEqual([{ line: at + 1, column: 3, code: 'letters', text: '12.x4' }])
    expect(table.values).toBe(levels * angles - 1)
    const bad = at - 1
    const sum = table.scan.radiiUm.reduce((total, value) => total + (Number.isNaN(value) ? 0 : value), 0)
    const whole = Array.from({ length: levels * angles }, (_, place) =>
      place === bad ? 0 : ((Math.floor(place / angles) * 7 + (place % angles) * 13) % 997) / 10,
    ).reduce((total, value) => total + value, 0)
    expect(table.scan.radiiUm[bad]).toBeNaN()
    expect(sum).toBeCloseTo(whole, 3)
  })
})

describe('whether a table holds a scan', () => {
  it('is told by its heads', () => {
    expect(looksLikeScan(bytes(`${list}4,0,1\n`))).toBe(true)
    expect(looksLikeScan(bytes('depth_mm,axis_deg,read1_mm\n8,0,54.009\n'))).toBe(false)
    expect(looksLikeScan(bytes('depth mm,angle,diameter mm\n4,0,60\n'))).toBe(false)
    expect(looksLikeScan(bytes('depth mm;0;45;90;135\n4;60,01;60,02;60,01;60,00\n'))).toBe(false)
  })
})
