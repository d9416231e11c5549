import type { Reading, Survey } from '../core/measured'
import { mostWritten, type NumberReader, type NumberWriter } from './code-numbers'

/**
 * Readings of a survey in the order in which they were taken. Where they stand is a line of text: s or d (sizes in mm,
 * dial in µm), the decimals of a value, the steps in which they were read, repeats at a station and the first value,
 * parted by commas; then the stations, level by level unless it says otherwise: a number so many in a row, `-` one
 * passed over, `@` with a number goes to a station, `*` with a number says how many repeats the next one has, `!` and
 * `?` that contacts stand on metal there, or not. The values are numbers of steps: the first less the last one read on
 * that axis (or at the station before), the others less the first. Undefined where that does not give every value back.
 */
export function writtenReadings(survey: Survey, numbers: NumberWriter): string | undefined {
  const { readings } = survey
  const [first] = readings
  if (!first) return ''
  const field = first.sizesMm ? 'sizesMm' : 'dialUm'
  const rows = readings.map((reading) => rowOf(reading, survey, field))
  const values = rows.flatMap((row) => row?.values ?? [])
  const decimals = decimalsOf(values)
  if (decimals === undefined || !rows.every((row) => row !== undefined)) return undefined
  const whole = (value: number) => Math.round(value * 10 ** decimals)
  const usual = first[field]?.length ?? 1
  const start = whole(values[0] ?? 0)
  const step = values.reduce((divisor, value) => commonDivisor(divisor, whole(value) - start), 0) || 1
  const steps = rows.map((row) => row.values.map((value) => (whole(value) - start) / step))
  const before = new Before()
  for (const [index, { axis }] of rows.entries()) {
    const [own = 0, ...others] = steps[index] ?? []
    numbers.write(own - before.of(axis), 'first')
    for (const value of others) numbers.write(value - own, 'repeat')
    before.take(axis, own)
  }
  const head = [`${field === 'sizesMm' ? 's' : 'd'}${decimals}`, step, usual, start].join()
  return `${head},${stationsText(rows, usual)}`
}

interface Row {
  readonly place: number
  readonly axis: number
  readonly values: readonly number[]
  readonly confirmed: boolean | undefined
}

function rowOf(reading: Reading, survey: Survey, field: 'sizesMm' | 'dialUm'): Row | undefined {
  const level = survey.levelsMm.indexOf(reading.depthMm)
  const axis = survey.axesDegrees.indexOf(reading.axisDegrees)
  const values = reading.sizesMm && reading.dialUm ? undefined : reading[field]
  if (level < 0 || axis < 0 || !values) return undefined
  return { place: level * survey.axesDegrees.length + axis, axis, values, confirmed: reading.confirmed }
}

function stationsText(rows: readonly Row[], usual: number): string {
  let text = ''
  let next = 0
  let inARow = 0
  const mark = (sign: string) => {
    text += (inARow > 0 ? inARow : '') + sign
    inARow = 0
  }
  for (const { place, values, confirmed } of rows) {
    const ahead = place - next
    if (ahead > 0 && ahead < 4) mark('-'.repeat(ahead))
    else if (ahead !== 0) mark(`@${place},`)
    if (values.length !== usual) mark(`*${values.length},`)
    if (confirmed !== undefined) mark(confirmed ? '!' : '?')
    inARow += 1
    next = place + 1
  }
  mark('')
  return text
}

/** What the next value at a station is likely to be near. */
class Before {
  private readonly onAxis = new Map<number, number>()
  private last = 0

  of(axis: number): number {
    return this.onAxis.get(axis) ?? this.last
  }

  take(axis: number, value: number): void {
    this.onAxis.set(axis, value)
    this.last = value
  }
}

function commonDivisor(one: number, other: number): number {
  return other === 0 ? Math.abs(one) : commonDivisor(other, one % other)
}

const mostDecimals = 9

/** So few decimals that each value comes back from whole steps as it was; undefined where none do. */
function decimalsOf(values: readonly number[]): number | undefined {
  for (let decimals = 0; decimals <= mostDecimals; decimals += 1) {
    const scale = 10 ** decimals
    const comesBack = (value: number) => {
      const steps = Math.round(value * scale)
      return Math.abs(steps) < mostWritten / 2 && steps / scale === value
    }
    if (values.every(comesBack)) return decimals
  }
  return undefined
}

/** The readings again; undefined where text and numbers are none of these. */
export function readReadings(
  text: string,
  levelsMm: readonly unknown[],
  axesDegrees: readonly unknown[],
  numbers: NumberReader,
): readonly unknown[] | undefined {
  if (text === '') return []
  const head = /^([sd])([0-9]),([0-9]+),([0-9]+),(-?[0-9]+),/.exec(text)
  const stations = head && stationsFrom(text.slice(head[0].length), Number(head[4]))
  if (!head || !stations) return undefined
  const field = head[1] === 's' ? 'sizesMm' : 'dialUm'
  const [scale, step, start] = [10 ** Number(head[2]), Number(head[3]), Number(head[5])]
  const before = new Before()
  const readings: unknown[] = []
  for (const { place, repeats, confirmed } of stations) {
    const axis = place % axesDegrees.length
    const steps = stepsAt(before.of(axis), repeats, numbers)
    if (!steps) return undefined
    before.take(axis, steps[0])
    readings.push({
      depthMm: levelsMm[Math.floor(place / axesDegrees.length)],
      axisDegrees: axesDegrees[axis],
      [field]: steps.map((count) => (start + count * step) / scale),
      ...(confirmed === undefined ? {} : { confirmed }),
    })
  }
  return readings
}

function stepsAt(near: number, repeats: number, numbers: NumberReader): [number, ...number[]] | undefined {
  const first = numbers.read('first')
  if (first === undefined) return undefined
  const own = near + first
  const steps: [number, ...number[]] = [own]
  while (steps.length < repeats) {
    const more = numbers.read('repeat')
    if (more === undefined) return undefined
    steps.push(own + more)
  }
  return steps
}

type Station = Pick<Row, 'place' | 'confirmed'> & { readonly repeats: number }

/** More than any survey has stations; where it stops, the schema refuses the rest. */
const mostStations = 72_000

function stationsFrom(text: string, usual: number): readonly Station[] | undefined {
  const stations: Station[] = []
  let place = 0
  let repeats = usual
  let confirmed: boolean | undefined
  const marks = /(-)|([!?])|@([0-9]+),|\*([0-9]+),|([0-9]+)/y
  while (marks.lastIndex < text.length) {
    const mark = marks.exec(text)
    if (!mark) return undefined
    const [, over, stands, goTo, many, inARow] = mark
    if (over) place += 1
    else if (stands) confirmed = stands === '!'
    else if (goTo) place = Number(goTo)
    else if (many) repeats = Number(many)
    else {
      if (stations.length + Number(inARow) > mostStations) return undefined
      for (let count = Number(inARow); count > 0; count -= 1) {
        stations.push({ place, repeats, confirmed })
        place += 1
        repeats = usual
        confirmed = undefined
      }
    }
  }
  return stations
}
