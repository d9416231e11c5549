import { NumberWriter } from './code-numbers'
import { codeParts, type ListOfBore, type PartName, type PlacedList, type Way } from './code-parts'
import { writtenReadings } from './code-readings'
import type { Job } from './schema'

/** A job without names of fields and without ids, as a value of JSON, and beside it the values of its readings. */
export interface CodeDocument {
  /** The version of the format, which fields the job has, as bits of a whole number, and what they hold. */
  readonly text: readonly unknown[]
  readonly numbers: Uint8Array
}

export function codeDocument(job: Job): CodeDocument {
  const writer = new PartWriter(job)
  const text = [job.formatVersion, ...writer.part(job, 'job')]
  return { text, numbers: writer.numbers.bytes() }
}

class PartWriter {
  readonly numbers = new NumberWriter()
  private places: Readonly<Record<PlacedList, Places>>

  constructor(private readonly job: Job) {
    this.places = {
      gauges: placesOf(job.gauges),
      standards: placesOf(job.standards),
      thermometers: placesOf(job.thermometers),
      setUps: placesOf(job.setUps),
      bores: placesOf(job.bores),
      ...placesInBore(undefined),
    }
  }

  part(part: object, name: PartName): readonly unknown[] {
    if (name === 'bore') {
      this.places = { ...this.places, ...placesInBore(this.job.bores.find((bore) => bore === part)) }
    }
    let bits = 0
    const values: unknown[] = []
    for (const [index, field] of codeParts[name].entries()) {
      const value: unknown = Reflect.get(part, field.name)
      if (value === undefined) continue
      bits += 2 ** index
      values.push(field.way === 'readings' ? this.readings(part, value) : this.value(value, field.way))
    }
    return [bits, ...values]
  }

  private value(value: unknown, way: Exclude<Way, 'readings'>): unknown {
    if (way === 'as-it-is') return value
    if (way === 'hash') return base64OfHash(String(value))
    if ('part' in way && isObject(value)) return this.part(value, way.part)
    if ('parts' in way && Array.isArray(value)) {
      return value.filter(isObject).map((item) => this.part(item, way.parts))
    }
    const place =
      'placeIn' in way && typeof value === 'string' ? this.places[way.placeIn].get(value) : undefined
    if (place === undefined) throw new Error(`A job that was checked holds ${JSON.stringify(value)}`)
    return place
  }

  /** Readings whose values are no whole steps are written out. */
  private readings(survey: object, readings: unknown): unknown {
    return isSurvey(survey) ? (writtenReadings(survey, this.numbers) ?? readings) : readings
  }
}

type Places = ReadonlyMap<string, number>

function placesOf(list: readonly { readonly id: string }[]): Places {
  return new Map(list.map(({ id }, index) => [id, index]))
}

function placesInBore(bore: Job['bores'][number] | undefined): Readonly<Record<ListOfBore, Places>> {
  return { surveys: placesOf(bore?.surveys ?? []), scans: placesOf(bore?.scans ?? []) }
}

type SurveyOfJob = Job['bores'][number]['surveys'][number]

function isSurvey(part: object): part is SurveyOfJob {
  return 'readings' in part && 'levelsMm' in part && 'axesDegrees' in part
}

function base64OfHash(hash: string): string {
  const pairs = hash.match(/../g) ?? []
  const letters = pairs.map((pair) => String.fromCharCode(Number.parseInt(pair, 16)))
  return btoa(letters.join('')).replace(/=+$/, '')
}

function isObject(value: unknown): value is object {
  return typeof value === 'object' && value !== null
}
