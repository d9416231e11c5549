import { NumberReader } from './code-numbers'
import {
  type CodeField,
  codeParts,
  type ListOfBore,
  type PartName,
  type PlacedList,
  partsWithId,
} from './code-parts'
import { readReadings } from './code-readings'
import { jobFormat } from './schema'

export type DocumentOfCode =
  | { readonly ok: true; readonly document: Readonly<Record<string, unknown>> }
  /** It holds fields that this Borewall does not know, or it was not made by any. */
  | { readonly ok: false; readonly why: 'newer' | 'damaged' }

/** What a code holds as a document under the id that is given, to be checked as every other is. */
export function documentOfCode(text: unknown, numbers: Uint8Array, id: string): DocumentOfCode {
  if (!Array.isArray(text)) return { ok: false, why: 'damaged' }
  const [formatVersion, ...part] = text
  const reader = new PartReader(new NumberReader(numbers))
  const job = reader.part(part, 'job')
  if (reader.flaw) return { ok: false, why: reader.flaw }
  return { ok: true, document: { format: jobFormat, formatVersion, id, ...job } }
}

type Read = Readonly<Record<string, unknown>>

/** Reads parts and gives them ids, each kind counted through the whole job; notes the first flaw. */
class PartReader {
  flaw: 'newer' | 'damaged' | undefined
  private readonly counts = new Map<PartName, number>()
  /** How many surveys and scans there were before those of the bore that is read. */
  private before: Readonly<Record<ListOfBore, number>> = { surveys: 0, scans: 0 }

  constructor(private readonly numbers: NumberReader) {}

  part(code: unknown, name: PartName): Read {
    if (!Array.isArray(code) || !isBits(code[0])) return this.damaged()
    const [bits, ...values] = code
    const fields = codeParts[name]
    if (bits >= 2 ** fields.length) {
      this.flaw ??= 'newer'
      return {}
    }
    const present = fields.filter((_, index) => hasBit(bits, index))
    if (values.length !== present.length) return this.damaged()
    if (name === 'bore') this.before = { surveys: this.count('survey'), scans: this.count('scan') }
    const read: Record<string, unknown> = partsWithId.has(name) ? { id: this.freshId(name) } : {}
    for (const [index, field] of present.entries()) {
      read[field.name] = this.value(values[index], field, read)
    }
    return read
  }

  private value(value: unknown, { way }: CodeField, before: Read): unknown {
    if (way === 'as-it-is') return value
    if (way === 'readings') return this.readings(value, before)
    if (way === 'hash') return hashOfBase64(value) ?? this.damaged()
    if ('part' in way) return this.part(value, way.part)
    if ('parts' in way) {
      return Array.isArray(value) ? value.map((item) => this.part(item, way.parts)) : this.damaged()
    }
    if (typeof value !== 'number') return this.damaged()
    const { placeIn } = way
    const from = placeIn === 'surveys' || placeIn === 'scans' ? this.before[placeIn] : 0
    return idOf(partOfList[placeIn], from + value)
  }

  private readings(value: unknown, { levelsMm, axesDegrees }: Read): unknown {
    if (typeof value !== 'string') return value
    if (!Array.isArray(levelsMm) || !Array.isArray(axesDegrees)) return this.damaged()
    return readReadings(value, levelsMm, axesDegrees, this.numbers) ?? this.damaged()
  }

  private freshId(name: PartName): string {
    const count = this.count(name)
    this.counts.set(name, count + 1)
    return idOf(name, count)
  }

  private count(name: PartName): number {
    return this.counts.get(name) ?? 0
  }

  private damaged(): Read {
    this.flaw ??= 'damaged'
    return {}
  }
}

const partOfList: Readonly<Record<PlacedList, PartName>> = {
  gauges: 'gauge',
  standards: 'standard',
  thermometers: 'thermometer',
  setUps: 'set-up',
  bores: 'bore',
  surveys: 'survey',
  scans: 'scan',
}

/** The parts of the lists that others refer to stand nowhere else, so their count tells their place. */
function idOf(name: PartName, place: number): string {
  return `${name}-${place + 1}`
}

function hashOfBase64(text: unknown): string | undefined {
  if (typeof text !== 'string' || !/^[A-Za-z0-9+/]{43}$/.test(text)) return undefined
  return [...atob(text)].map((letter) => letter.charCodeAt(0).toString(16).padStart(2, '0')).join('')
}

function isBits(value: unknown): value is number {
  return typeof value === 'number' && Number.isSafeInteger(value) && value >= 0
}

function hasBit(bits: number, index: number): boolean {
  return Math.floor(bits / 2 ** index) % 2 === 1
}
