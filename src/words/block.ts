import { type Standing, standingOf } from '../core/conformity/standing'
import type { BoreFinding, Findings, Place, ShapeFinding } from '../core/findings'
import type { OvalityRule, Role, TaperRule } from '../core/measured'
import { inMicrons, microns, plusMinusMicrons, size } from './numbers'
import { words } from './words'

type Shape = ShapeFinding<OvalityRule> | ShapeFinding<TaperRule>

/** A figure with what its doubt is written beneath it as. */
export interface BlockFigure {
  readonly figure: string
  readonly doubt: string
}

/** A bore in the table of all: what is missing was not measured or cannot be said. */
export interface BlockRow {
  readonly boreId: string
  readonly name: string
  readonly role: Role
  readonly standing: Standing
  readonly standingText: string
  readonly largest?: BlockFigure
  readonly smallest?: BlockFigure
  readonly ovality?: BlockFigure
  readonly taper?: BlockFigure
}

/** The bores of the engine, then those for comparison, a row for each. */
export function blockRows(findings: Findings): readonly BlockRow[] {
  const own = findings.bores.filter(({ role }) => role === 'of-this-engine')
  const compared = findings.bores.filter(({ role }) => role === 'for-comparison')
  return [...own, ...compared].map(blockRow)
}

function blockRow(finding: BoreFinding): BlockRow {
  const standing = standingOf(finding)
  return {
    boreId: finding.boreId,
    name: finding.boreName,
    role: finding.role,
    standing,
    standingText: finding.role === 'for-comparison' ? words.block.compared : words.block.standings[standing],
    ...extreme('largest', finding, finding.largest),
    ...extreme('smallest', finding, finding.smallest),
    ...shape('ovality', finding.ovality[0]),
    ...shape('taper', finding.taper[0]),
  }
}

function extreme<Which extends 'largest' | 'smallest'>(which: Which, finding: BoreFinding, place?: Place) {
  const station = finding.stations.find(
    (s) => s.counted && s.depthMm === place?.depthMm && s.axisDegrees === place.axisDegrees,
  )
  if (!station) return {}
  return { [which]: { figure: size(station.diameterMm), doubt: plusMinusMicrons(station.expandedMm) } } as {
    readonly [Key in Which]: BlockFigure
  }
}

function shape<Which extends 'ovality' | 'taper'>(which: Which, found: Shape | undefined) {
  if (!found?.known) return {}
  const { valueMm, lowMm, highMm } = found
  const [low, high] = highMm <= 0 && lowMm < 0 ? [-highMm, -lowMm] : [lowMm, highMm]
  const value = highMm <= 0 && lowMm < 0 ? -valueMm : valueMm
  return {
    [which]: { figure: inMicrons(value), doubt: words.block.interval(microns(low), microns(high)) },
  } as {
    readonly [Key in Which]: BlockFigure
  }
}

/** How the bores of the engine stand, in a sentence; undefined for an engine of one bore. */
export function blockSentence(findings: Findings): string | undefined {
  const own = findings.bores.filter(({ role }) => role === 'of-this-engine')
  if (own.length < 2) return undefined
  const said = words.block
  const named = (standing: Standing) =>
    own.filter((finding) => standingOf(finding) === standing).map(({ boreName }) => boreName)
  const all = (['out', 'too-close', 'inside', 'none'] as const).find(
    (standing) => named(standing).length === own.length,
  )
  if (all) return said.all[all](own.length)
  return (['out', 'too-close', 'inside', 'none'] as const)
    .filter((standing) => named(standing).length > 0)
    .map((standing) => said.some[standing](named(standing)))
    .join(' ')
}
