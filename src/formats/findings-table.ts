import type { BoreFinding, Findings, StationFinding } from '../core/findings'
import type { Measured } from '../core/measured'
import { type TableCell, type TableStyle, writeTable } from './write-table'

/** A head that names its unit, and the figure below it. */
type Column = readonly [string, (station: StationFinding, finding: BoreFinding) => TableCell]

const micrometres = (mm: number | undefined) => (mm === undefined ? undefined : rounded(mm * 1000, 3))
const yesOrNo = (is: boolean) => (is ? 'yes' : 'no')

const columns: readonly Column[] = [
  ['level_mm', ({ depthMm }) => depthMm],
  ['axis_deg', ({ axisDegrees }) => axisDegrees],
  ['repeats', ({ repeats }) => repeats],
  ['spread_um', ({ spreadMm }) => micrometres(spreadMm)],
  ['diameter_at_20C_mm', ({ diameterMm }) => rounded(diameterMm, 6)],
  ['correction_um', ({ correctionMm }) => micrometres(correctionMm)],
  ['U_95_um', ({ expandedMm }) => micrometres(expandedMm)],
  ['limit_min_mm', (_, { pair }) => (pair?.kind === 'wear' ? undefined : pair?.minMm)],
  ['limit_max_mm', (_, { pair }) => pair?.maxMm],
  ['verdict', ({ conformity }) => conformity?.verdict],
  ['lean', ({ conformity }) => conformity?.lean],
  ['probability_of_lean', ({ conformity }) => probability(conformity?.leanProbability)],
  ['probability_inside', ({ conformity }) => probability(conformity?.probabilityInside)],
  ['probability_above', ({ conformity }) => probability(conformity?.probabilityAbove)],
  ['probability_below', ({ conformity }) => probability(conformity?.probabilityBelow)],
  ['counted', ({ counted }) => yesOrNo(counted)],
  ['land', ({ land }) => yesOrNo(land)],
  ['blocked_by', ({ blockedBy }) => blockedBy.join(', ')],
  ['provisional', (_, { provisional }) => yesOrNo(provisional.length > 0)],
]

/** Every station of every survey as a row: its diameter at 20 °C with U (95 %), the verdict and its probabilities. */
export function findingsTable(measured: Measured, findings: Findings, style: TableStyle): string {
  const heads = ['bore', 'role', 'survey', 'date', 'hours', ...columns.map(([head]) => head)]
  const rows = [...findings.bores, ...findings.earlier].flatMap((finding) => {
    const bore = measured.bores.find(({ id }) => id === finding.boreId)
    const index = bore?.surveys.findIndex(({ id }) => id === finding.surveyId) ?? -1
    const survey = bore?.surveys[index]
    const name = survey?.name ?? String(index + 1)
    const about = [finding.boreName, finding.role, name, survey?.date, survey?.hoursRun]
    return finding.stations.map((station) => [
      ...about,
      ...columns.map(([, figure]) => figure(station, finding)),
    ])
  })
  return writeTable(heads, rows, style)
}

function probability(value: number | undefined): number | undefined {
  return value === undefined ? undefined : rounded(value, 6)
}

function rounded(value: number, decimals: number): number {
  return Math.round(value * 10 ** decimals) / 10 ** decimals + 0
}
