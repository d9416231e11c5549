import type { VerdictPlace } from '../core/conformity/standing'
import type { BoreFinding, Conformity, StationFinding } from '../core/findings'
import type { Survey } from '../core/measured'
import { markText } from './findings'
import { degrees, depth, sizeWithDoubt } from './numbers'
import { words } from './words'

/** A cell of the table of stations. */
export interface PaperCell {
  readonly figure: string
  /** How it stands to its limits, in a word; absent for a bore to compare with and where nobody read. */
  readonly standing?: string
  readonly place?: VerdictPlace
}

/** Diameters at 20 °C with their doubt, a row for each level from the deck down. */
export interface PaperTable {
  readonly axes: readonly string[]
  readonly rows: readonly { readonly level: string; readonly cells: readonly PaperCell[] }[]
  /** The marks that stand in it, each once, with their words. */
  readonly marks: readonly { readonly place: VerdictPlace; readonly text: string }[]
}

/** The table of a survey; undefined without a reading that has a size. */
export function paperTable(finding: BoreFinding, survey: Survey): PaperTable | undefined {
  if (finding.stations.length === 0) return undefined
  const axes = [...survey.axesDegrees].sort((a, b) => a - b)
  const levels = [...survey.levelsMm].sort((a, b) => a - b)
  const byPlace = new Map(finding.stations.map((s) => [`${s.depthMm} ${s.axisDegrees}`, s]))
  const rows = levels.map((level) => ({
    level: depth(level),
    cells: axes.map((axis) => cellOf(byPlace.get(`${level} ${axis}`), finding)),
  }))
  const marks = new Map<VerdictPlace, string>()
  for (const { place, standing } of rows.flatMap(({ cells }) => cells)) {
    if (place && standing !== undefined && !marks.has(place)) marks.set(place, standing)
  }
  return {
    axes: axes.map(degrees),
    rows,
    marks: [...marks].map(([place, text]) => ({ place, text })),
  }
}

function cellOf(station: StationFinding | undefined, { role }: BoreFinding): PaperCell {
  if (!station) return { figure: words.report.notMeasured }
  const figure = sizeWithDoubt(station.diameterMm, station.expandedMm)
  if (role === 'for-comparison' && station.counted) return { figure }
  const { conformity, counted } = station
  return {
    figure,
    standing: markText(station),
    ...(counted && conformity ? { place: placeOf(conformity) } : {}),
  }
}

/** Where a station lies about its limits; too close to call, across the limit that is nearer. */
function placeOf({ verdict, probabilityAbove, probabilityBelow }: Conformity): VerdictPlace {
  if (verdict !== 'too-close') return verdict
  return probabilityBelow > probabilityAbove ? 'close-below' : 'close-above'
}
