import { isOfSizes } from '../../../src/core/diameter/entry'
import type { BoreFinding } from '../../../src/core/findings'
import { inspect } from '../../../src/core/inspect'
import type {
  Bore,
  Gauge,
  Measured,
  Reading,
  SetUp,
  Spec,
  Standard,
  Thermometer,
} from '../../../src/core/measured'

/** Readings as a table: a row for each level, a column for each axis; one size, its repeats, or nothing. */
export interface ReadingTable {
  readonly levelsMm: readonly number[]
  readonly axesDegrees: readonly number[]
  readonly rows: readonly (readonly (number | readonly number[] | undefined)[])[]
}

export interface Circumstances {
  readonly spec?: Spec
  readonly gauge?: Partial<Gauge>
  readonly standard?: Partial<Standard>
  readonly thermometers?: readonly Thermometer[]
  readonly setUp?: Partial<SetUp>
  readonly bore?: Partial<Bore>
}

/** Everything recorded: both at 20 °C, zeros the same, the micrometer right, the wall iron. */
const recorded: SetUp = {
  id: 'set-up',
  gaugeId: 'gauge',
  standardId: 'standard',
  entry: 'size',
  settingSizeMm: 80,
  largerIs: 'clockwise',
  zeroOpenUm: 0,
  zeroCloseUm: 0,
  boreTemperatureC: 20,
  referenceTemperatureC: 20,
}

/** One bore, one survey, one set-up, from a table of sizes (mm) or dial deviations (µm). */
export function measuredBore(table: ReadingTable, given: Circumstances = {}): Measured {
  const setUp: SetUp = { ...recorded, ...given.setUp }
  return {
    spec: given.spec ?? {},
    gauges: [{ id: 'gauge', kind: 'dial-0.001-micrometer', ...given.gauge }],
    standards: [{ id: 'standard', kind: 'micrometer', errorUm: 0, ...given.standard }],
    thermometers: given.thermometers ?? [],
    setUps: [setUp],
    bores: [boreOf(table, setUp, given.bore)],
  }
}

/** A bore with one survey under a set-up. */
export function boreOf(table: ReadingTable, setUp: Pick<SetUp, 'id' | 'entry'>, bore?: Partial<Bore>): Bore {
  const id = bore?.id ?? 'bore'
  return {
    id,
    name: id,
    role: 'of-this-engine',
    lengthMm: 120,
    wall: { kind: 'grey-iron' },
    ports: [],
    belts: [],
    surveys: [
      {
        id: `${id}-survey`,
        setUpId: setUp.id,
        levelsMm: table.levelsMm,
        axesDegrees: table.axesDegrees,
        readings: readingsOf(table, setUp.entry),
      },
    ],
    ...bore,
  }
}

function readingsOf(table: ReadingTable, entry: SetUp['entry']): Reading[] {
  return table.levelsMm.flatMap((depthMm, i) =>
    table.axesDegrees.flatMap((axisDegrees, j): Reading[] => {
      const cell = table.rows[i]?.[j]
      if (cell === undefined) return []
      const values = typeof cell === 'number' ? [cell] : cell
      return [{ depthMm, axisDegrees, ...(isOfSizes(entry) ? { sizesMm: values } : { dialUm: values }) }]
    }),
  )
}

/** The same with some fields of the set-up not recorded. */
export function without(measured: Measured, ...fields: readonly NotRecorded[]): Measured {
  return { ...measured, setUps: measured.setUps.map((setUp) => fields.reduce(withoutField, setUp)) }
}

/** Fields of a set-up that need not be recorded. */
export type NotRecorded =
  | 'largerIs'
  | 'zeroOpenUm'
  | 'zeroCloseUm'
  | 'boreTemperatureC'
  | 'referenceTemperatureC'

function withoutField(setUp: SetUp, field: NotRecorded): SetUp {
  const { [field]: _, ...rest } = setUp
  return rest
}

/** A gauge, standard and wall without any doubt but that of the dial: u of every station is `um`, ν infinite. */
export function onlyScaleDoubt(um: number): Circumstances {
  return {
    gauge: {
      kind: 'dial-0.001-ring',
      stepUm: 1e-9,
      repeatabilityUm: 0,
      settingUm: 0,
      scaleUm: um,
      depthDoubtMm: 0,
    },
    standard: { kind: 'ring', doubtUm: 0, expansionPerK: 0, expansionDoubtPerK: 0 },
    bore: { wall: { kind: 'grey-iron', expansionPerK: 0, expansionDoubtPerK: 0 } },
  }
}

/** The finding of a bore (the first by default), or an error that says there is none. */
export function findingOf(measured: Measured, boreId?: string): BoreFinding {
  const { bores } = inspect(measured)
  const found = boreId === undefined ? bores[0] : bores.find((bore) => bore.boreId === boreId)
  if (!found) throw new Error(`no finding for ${boreId ?? 'the first bore'}`)
  return found
}

/** A list's only or first entry, or an error. */
export function first<T>(list: readonly T[]): T {
  const [one] = list
  if (one === undefined) throw new Error('the list is empty')
  return one
}
