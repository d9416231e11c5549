import type { BoreFinding, Findings } from '../core/findings'
import type { Measured } from '../core/measured'
import { findingRows } from './findings'
import { growthRows } from './growth-rows'
import type { PistonRows } from './piston-rows'
import type { Row } from './row'

/** Told on paper by other rows: the mean by the table, the difference from a bore by the wear since it. */
const leftOut = /^(widest-mean$|difference:|mean-difference:)/

/** The main rows of a bore; what differs from a bore to compare with is left out where wear says it. */
export function paperRows(
  measured: Measured,
  findings: Findings,
  finding: BoreFinding,
  pistons: PistonRows,
): Row[] {
  const wear = growthRows(measured, findings, finding)
  const isInformation = (id: string) => id === 'grades' && finding.pair?.kind === 'wear'
  const isLeftOut = ({ id }: Row) =>
    isInformation(id) || (leftOut.test(id) && (id === 'widest-mean' || wear.length > 0))
  const rows = [...findingRows(finding, findings), ...wear, ...pistons.ofBore(finding)]
  return rows.filter((row) => row.rank === 'main' && !isLeftOut(row))
}

/** What stands beneath a row on paper: where it is, its limit, the rule. */
export function rowUnder({ placeText, brief, detail }: Row): string {
  return [placeText ?? '', brief ?? detail].filter((text) => text !== '').join(' · ')
}
