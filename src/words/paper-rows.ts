import type { BoreFinding, Findings } from '../core/findings'
import type { Measured } from '../core/measured'
import { findingRows } from './findings'
import { growthRows } from './growth-rows'
import type { PistonRows } from './piston-rows'
import type { Row } from './row'

/** The rows of a bore that paper has room for, by what they are about. */
export interface PaperRows {
  readonly size: readonly Row[]
  readonly wear: readonly Row[]
  readonly piston: readonly Row[]
}

/** Told on paper by other rows: the mean by the table, the difference from a bore by the wear since it. */
const leftOut = /^(widest-mean$|difference:|mean-difference:)/

/** The main rows of a bore; what differs from a bore to compare with is left out where wear says it. */
export function paperRows(
  measured: Measured,
  findings: Findings,
  finding: BoreFinding,
  pistons: PistonRows,
): PaperRows {
  const wear = growthRows(measured, findings, finding)
  const isLeftOut = ({ id }: Row) => leftOut.test(id) && (id === 'widest-mean' || wear.length > 0)
  const main = (rows: readonly Row[]) => rows.filter(({ rank }) => rank === 'main')
  return {
    size: main(findingRows(finding, findings)).filter((row) => !isLeftOut(row)),
    wear: main(wear),
    piston: main(pistons.ofBore(finding)),
  }
}

/** What stands beneath a row on paper: where it is, its limit, the rule. */
export function rowUnder({ placeText, brief, detail }: Row): string {
  return [placeText ?? '', brief ?? detail].filter((text) => text !== '').join(' · ')
}
