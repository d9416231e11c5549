import { degrees, depth, inTenthsOfMicrons, plain } from './numbers'
import { scanTableWords } from './scan-table-words'

/** What a file of radii holds, as it is told before it is taken. Lengths in mm and µm, angles in degrees. */
export interface HeldScan {
  readonly depthsMm: readonly number[]
  readonly anglesDegrees: readonly number[]
  readonly values: number
  readonly leastUm: number
  readonly mostUm: number
  readonly layout: 'list' | 'table'
}

/** The figures of a scan with their names. */
export function heldRows(held: HeldScan): readonly (readonly [string, string])[] {
  const said = scanTableWords
  const { depthsMm, anglesDegrees, values } = held
  const places = depthsMm.length * anglesDegrees.length
  const share = ((places - values) / places) * 100
  const missing = said.missing(String(places - values), plain(share, share < 10 ? 1 : 0))
  return [
    [
      said.rows.levels,
      said.levels(String(depthsMm.length), depth(depthsMm[0] ?? 0), depth(depthsMm.at(-1) ?? 0)),
    ],
    [said.rows.angles, anglesText(anglesDegrees)],
    [said.rows.values, String(values)],
    ...(places > values ? [[said.rows.missing, missing] as const] : []),
    [
      said.rows.range,
      said.range(
        inTenthsOfMicrons(held.leastUm / 1000, { sign: true }),
        inTenthsOfMicrons(held.mostUm / 1000, { sign: true }),
      ),
    ],
    [said.rows.layout, said.layouts[held.layout]],
  ]
}

/** Steps that differ by less are even, degrees. */
const evenWithin = 1e-3

function anglesText(angles: readonly number[]): string {
  const said = scanTableWords
  const steps = angles.map((angle, i) => (angles[i + 1] ?? (angles[0] ?? 0) + 360) - angle)
  const least = steps.reduce((a, b) => Math.min(a, b), 360)
  const most = steps.reduce((a, b) => Math.max(a, b), 0)
  const count = String(angles.length)
  return most - least < evenWithin
    ? said.angles(count, degrees(Number(least.toFixed(3))))
    : said.anglesUneven(count, degrees(Number(least.toFixed(3))), degrees(Number(most.toFixed(3))))
}

/** A problem in one place of a file of radii. */
export interface PlacedScanProblem {
  readonly line: number
  readonly column?: number
  readonly code: keyof typeof scanTableWords.problems
  readonly text: string
  readonly other?: number
}

/** Where it is, in words. */
export function scanProblemPlace({ line, column }: PlacedScanProblem): string {
  const said = scanTableWords
  return column === undefined ? said.line(String(line)) : said.place(String(line), String(column))
}

/** What is wrong there and how to mend it. */
export function scanProblemText({ code, text, other }: PlacedScanProblem): string {
  return scanTableWords.problems[code](text, String(other ?? ''))
}

/** Why a file of radii could not be read at all. */
export function scanRefusalText(refused: {
  readonly why: keyof typeof scanTableWords.notRead
  readonly line?: number
  readonly depthMm?: number
}): string {
  const said = scanTableWords.notRead
  if (refused.why !== 'angles-differ') return said[refused.why]
  return said['angles-differ'](String(refused.line ?? 0), depth(refused.depthMm ?? 0))
}
