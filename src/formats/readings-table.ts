import type { Bore, Measured, Reading, Survey } from '../core/measured'
import { writeTableNumber } from './table-number'
import { type TableCell, type TableStyle, writeTable } from './write-table'

export const tableUnits = ['metric', 'inch'] as const
/** Millimetres with microns on the dial, or inches with ten-thousandths. */
export type TableUnit = (typeof tableUnits)[number]

/** The heads of a table of readings: each names its unit, so that the table can be read back by them. */
const heads = {
  metric: { depth: 'depth_mm', size: 'size_mm', dial: 'dial_um' },
  inch: { depth: 'depth_in', size: 'size_in', dial: 'dial_0.0001in' },
} as const

const mmPerInch = 25.4

/**
 * Every repeat of every reading as a row: bore, survey, day, hours, depth, axis, number of the repeat, and the figure
 * as it was written down. Set-ups, limits, ports and findings of the surface are not in it.
 */
export function readingsTable(measured: Measured, unit: TableUnit, style: TableStyle): string {
  const { bores } = measured
  const readings = bores.flatMap(({ surveys }) => surveys.flatMap((survey) => survey.readings))
  const has = { size: readings.some(({ sizesMm }) => sizesMm), dial: readings.some(({ dialUm }) => dialUm) }
  const { depth, size, dial } = heads[unit]
  const figures = [...(has.size || !has.dial ? [size] : []), ...(has.dial ? [dial] : [])]
  const rows = bores.flatMap((bore) =>
    bore.surveys.flatMap((survey) => {
      const about = aboutSurvey(bore, survey, style)
      return survey.readings.flatMap((reading) => rowsOf(reading, about, figures, unit))
    }),
  )
  return writeTable(['bore', 'survey', 'date', 'hours', depth, 'axis_deg', 'repeat', ...figures], rows, style)
}

/** What tells a survey from the others of its bore; where nothing does, its number. */
function aboutSurvey(bore: Bore, survey: Survey, { decimal }: TableStyle): TableCell[] {
  const { date, hoursRun } = survey
  const same = bore.surveys.filter((other) => alike(other, survey))
  const name = survey.name ?? (same.length > 1 ? String(bore.surveys.indexOf(survey) + 1) : undefined)
  const hours = hoursRun === undefined ? undefined : writeTableNumber(hoursRun, decimal)
  // Three decimals alone would look like thousands.
  const clear = hours !== undefined && /^\d{1,3}[.,]\d{3}$/.test(hours) ? `${hours}0` : hours
  return [bore.name, name, date, clear]
}

/** Whether a table that says all it knows of one survey would say nothing against the other. */
function alike(one: Survey, other: Survey): boolean {
  const fits = <Value>(a: Value | undefined, b: Value | undefined) =>
    a === undefined || b === undefined || a === b
  return fits(one.name, other.name) && fits(one.date, other.date) && fits(one.hoursRun, other.hoursRun)
}

function rowsOf(
  { depthMm, axisDegrees, sizesMm, dialUm }: Reading,
  about: readonly TableCell[],
  figures: readonly string[],
  unit: TableUnit,
): TableCell[][] {
  const values = sizesMm ?? dialUm ?? []
  const field = sizesMm ? heads[unit].size : heads[unit].dial
  const inUnit = (kept: number, perUnit: number) =>
    unit === 'metric' ? kept : Math.round((kept / perUnit) * 1e9) / 1e9
  return values.map((value, index) => [
    ...about,
    inUnit(depthMm, mmPerInch),
    axisDegrees,
    index + 1,
    ...figures.map((figure) =>
      figure === field ? inUnit(value, sizesMm ? mmPerInch : mmPerInch / 10) : undefined,
    ),
  ])
}
