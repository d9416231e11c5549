import { readTable } from '../../formats/table-text'
import { setRepeats } from '../../job/commands'
import { newId } from '../../job/new-id'
import type { Job } from '../../job/schema'
import { surveyOf } from '../../job/selectors'
import { isSettingOpen } from '../../job/setting-size'
import { placeText } from '../../words/numbers'
import { words } from '../../words/words'
import type { CellAt } from './grid-block'
import {
  emptyReport,
  type PasteReport,
  type RefusedCell,
  type StationTaken,
  showPasted,
} from './paste-report'
import { hasStation, type PastedCell, type PasteTarget, pastedBlock } from './pasted-block'
import type { SheetOfBore } from './pasted-heads'
import { attempt, refusalOf } from './perform'
import { readRepeats } from './read-repeats'
import type { Refusal } from './TypedField'
import { type OnBench, onBenchNow } from './use-job'

/** Takes a block of text from the clipboard as readings, as one change, and reports what came of every cell. */
export function pasteReadings(text: string, from: CellAt): void {
  const bench = onBenchNow()
  const read = readTable(text)
  if (!read.ok) {
    showPasted({ ...emptyReport(bench.job.id), unreadable: words.paste.unreadable[read.why], text })
    return
  }
  const couldBeReading = (cell: string) => readRepeats(cell, bench.setUp, bench.gauge).ok
  const { cells, heads } = pastedBlock(read.rows, { ...sheetsOf(bench), from, couldBeReading })
  const named = [
    ...(heads.depths ? (['depths'] as const) : []),
    ...(heads.axes || heads.rowAxes ? (['axes'] as const) : []),
    ...(heads.bores ? (['bores'] as const) : []),
  ]
  showPasted({ ...takenFrom(bench, cells), heads: named })
}

/** Takes a refused cell that was mended; says why it is refused still. */
export function mendRefused(cell: RefusedCell, typed: string, isAdded: boolean): Refusal {
  if (!cell.to) return cell.why
  const { job } = onBenchNow()
  const read = readAt(job, cell.to, typed)
  if (!read.ok) return read.why
  const before = isAdded ? repeatsOf(job, cell.to) : []
  return refusalOf(
    attempt(words.changes.reading(placeText(cell.to.place)), (now) =>
      withStation(now, { to: cell.to, values: [...before, ...read.values] }),
    ),
  )
}

interface StationRead {
  readonly to: PasteTarget | undefined
  readonly values: readonly number[]
}

function sheetsOf({ job, bore, survey }: OnBench) {
  const sheets = job.bores.flatMap((one): SheetOfBore[] => {
    const measured = one.id === bore.id ? survey : surveyOf(one)
    if (!measured) return []
    const inOrder = (values: readonly number[]) => [...values].sort((a, b) => a - b)
    return [
      {
        boreId: one.id,
        surveyId: measured.id,
        name: one.name,
        levelsMm: inOrder(measured.levelsMm),
        axesDegrees: inOrder(measured.axesDegrees),
      },
    ]
  })
  const here = sheets.find(({ boreId }) => boreId === bore.id)
  if (!here) throw new Error('The bore on the bench has no sheet')
  return { sheets, here }
}

function takenFrom(bench: OnBench, cells: readonly PastedCell[]): PasteReport {
  const refused: RefusedCell[] = []
  const stations = new Map<
    string,
    StationTaken & { cells: PastedCell[]; values: number[]; to: PasteTarget }
  >()
  for (const cell of cells) {
    const { to } = cell
    if (!hasStation(to)) {
      refused.push(refusedCell(bench, cell, words.paste.noStation[to.code](to.text)))
      continue
    }
    const read = readAt(bench.job, to, cell.text)
    if (!read.ok) {
      refused.push(refusedCell(bench, cell, read.why))
      continue
    }
    const key = `${to.surveyId} ${to.place.depthMm} ${to.place.axisDegrees}`
    const station = stations.get(key) ?? {
      key,
      where: whereOf(bench, to),
      replaces: repeatsOf(bench.job, to).length,
      cells: [],
      values: [],
      to,
    }
    station.cells.push(cell)
    station.values.push(...read.values)
    stations.set(key, station)
  }
  const kept = [...stations.values()]
  const problems = performed(kept)
  const taken = kept.filter(({ key }) => !problems.has(key))
  for (const station of kept) {
    const why = problems.get(station.key)
    if (why !== undefined) refused.push(...station.cells.map((cell) => refusedCell(bench, cell, why)))
  }
  return {
    ...emptyReport(bench.job.id),
    taken: taken.map(({ key, where, replaces, cells: own }) => ({
      key,
      where,
      replaces,
      text: own.map(({ text }) => text).join(' '),
    })),
    readings: taken.reduce((sum, { values }) => sum + values.length, 0),
    refused,
  }
}

/** All stations as one change; where one of them may not be, each by itself, and why those that may not. */
function performed(stations: readonly (StationRead & { readonly key: string })[]): Map<string, string> {
  if (stations.length === 0) return new Map()
  const merge = `paste ${newId()}`
  const label = words.changes.pasted(stations.length)
  if (attempt(label, (job) => stations.reduce(withStation, job), merge).length === 0) return new Map()
  return new Map(
    stations.flatMap((station) => {
      const why = refusalOf(attempt(label, (job) => withStation(job, station), merge))
      return why === undefined ? [] : [[station.key, why] as const]
    }),
  )
}

function withStation(job: Job, { to, values }: StationRead): Job {
  return to ? setRepeats(job, to.boreId, to.surveyId, to.place, values) : job
}

function readAt(job: Job, to: PasteTarget, text: string) {
  const survey = surveyAt(job, to)
  const setUp = job.setUps.find(({ id }) => id === survey?.setUpId)
  const gauge = job.gauges.find(({ id }) => id === setUp?.gaugeId)
  if (!setUp || !gauge) throw new Error(`No set-up for the survey "${to.surveyId}"`)
  return readRepeats(text.replaceAll('/', ' '), setUp, gauge, isSettingOpen(setUp))
}

function surveyAt(job: Job, { boreId, surveyId }: PasteTarget) {
  return job.bores.find(({ id }) => id === boreId)?.surveys.find(({ id }) => id === surveyId)
}

function repeatsOf(job: Job, to: PasteTarget): readonly number[] {
  const { depthMm, axisDegrees } = to.place
  const reading = surveyAt(job, to)?.readings.find(
    (one) => one.depthMm === depthMm && one.axisDegrees === axisDegrees,
  )
  return reading?.sizesMm ?? reading?.dialUm ?? []
}

function refusedCell(bench: OnBench, { row, column, text, to }: PastedCell, why: string): RefusedCell {
  const cell = words.paste.cell(row + 1, column + 1)
  return hasStation(to)
    ? { key: `${row} ${column}`, where: words.paste.cellAt(cell, whereOf(bench, to)), text, why, to }
    : { key: `${row} ${column}`, where: cell, text, why }
}

function whereOf({ job }: OnBench, { boreName, place }: PasteTarget): string {
  const at = placeText(place)
  return job.bores.length > 1 ? words.next.inBore(words.bar.boreNamed(boreName), at) : at
}
