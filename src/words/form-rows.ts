import type { BoreFinding, DepthForm, LevelFinding, WidestOval } from '../core/findings'
import { amountWithDoubt, degrees, depth, differenceWithDoubt, inMicrons } from './numbers'
import type { Row } from './row'
import { words } from './words'

/** The widest oval: fitted from three axes on; with two what it is at least, by the interval of the range. */
export function ovalRow({ levels, widestOval, ovality }: BoreFinding): Row[] {
  const level = levels.find(({ depthMm }) => depthMm === widestOval?.depthMm)
  if (widestOval && level) return [fittedRow(level, widestOval)]
  const range = ovality.find(({ rule }) => rule === 'largest-less-smallest-at-a-level')
  if (!range?.known || range.lowMm <= 0) return []
  return [
    {
      id: 'oval',
      name: words.findings.ovalAtLeast,
      rank: 'main',
      placeText: depth(range.larger.depthMm),
      figure: words.findings.ovalAtLeastFigure(inMicrons(range.lowMm)),
      detail: words.findings.ovalAtLeastDetail,
    },
  ]
}

function fittedRow(level: LevelFinding, oval: WidestOval): Row {
  const said = words.findings
  const { longAxisDegrees, longAxisExpandedDegrees, atMostMm, axes } = oval
  const direction =
    longAxisDegrees !== undefined && longAxisExpandedDegrees !== undefined
      ? said.fittedAcross(
          degrees(Math.round(longAxisDegrees) % 180),
          degrees(Math.ceil(longAxisExpandedDegrees)),
          axes,
        )
      : said.fittedNoDirection(inMicrons(atMostMm ?? 0))
  const row = {
    id: 'oval',
    name: said.fittedOval,
    rank: 'main',
    placeText: depth(level.depthMm),
    figure: amountWithDoubt(oval.ovalMm, oval.expandedMm),
    detail: axes === 3 ? `${direction} · ${said.fittedThree}` : direction,
  } as const
  return longAxisDegrees === undefined
    ? row
    : { ...row, place: { depthMm: level.depthMm, axisDegrees: nearestAxis(level, longAxisDegrees) } }
}

/** The axis that was read nearest to a direction: what a press on the row can show. */
function nearestAxis({ axesDegrees }: LevelFinding, direction: number): number {
  const apart = (axis: number) => {
    const between = Math.abs(axis - direction) % 180
    return Math.min(between, 180 - between)
  }
  return axesDegrees.reduce((best, axis) => (apart(axis) < apart(best) ? axis : best))
}

/** What the level means show of the form along the depth, and by how much. */
export function depthFormRow({ depthForm }: BoreFinding): Row[] {
  if (!depthForm) return []
  const said = words.findings
  return [
    {
      id: 'depth-form',
      name: said.depthForm,
      rank: 'main',
      figure: depthForm.names.map((name) => said.depthForms[name]).join(', '),
      detail: depthDetail(depthForm),
    },
  ]
}

function depthDetail({ names, ends, middle, bell, step }: DepthForm): string {
  const said = words.findings
  if (names.includes('straight')) return said.depthStraight
  const written = ({ valueMm, expandedMm }: { valueMm: number; expandedMm: number }) =>
    differenceWithDoubt(valueMm, expandedMm)
  return [
    ...(names.includes('tapered') && ends ? [said.depthEnds(written(ends))] : []),
    ...((names.includes('barrel') || names.includes('waisted')) && middle
      ? [said.depthMiddle(depth(middle.depthMm), written(middle))]
      : []),
    ...(names.includes('bell-mouthed') && bell ? [said.depthBell[bell.end](written(bell))] : []),
    ...(names.includes('stepped') && step
      ? [said.depthStep(depth(step.depthMm), depth(step.landDepthMm), written(step))]
      : []),
  ].join(' · ')
}
