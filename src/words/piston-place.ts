import {
  type DrawnPiston,
  depthOfHeight,
  type LevelClearance,
  type LevelGap,
} from '../core/piston/piston-in-bore'
import { depth, inMicrons, length, lengthFigure, microns, plusMinusMicrons } from './numbers'
import { pistonWords } from './piston-words'

/** Where the crown's edge of a piston stands, in words. */
export function pistonPlaceText(drawn: DrawnPiston, share: number): string {
  const crownMm = depthOfHeight(drawn, drawn.crownHeightMm, share)
  return pistonWords.shown.crown(depth(crownMm))
}

/** Nearer than this a height of the piston is at a level, mm. */
const atLevelMm = 0.25

/** Where a piston stands and what was measured there; between levels, that nothing was. */
export function pistonStandText(
  drawn: DrawnPiston,
  share: number,
  levels: { readonly clearances: readonly LevelClearance[]; readonly gaps: readonly LevelGap[] },
): string {
  const said = pistonWords.shown
  const at = <Level extends { readonly depthMm: number }>(heightMm: number, all: readonly Level[]) =>
    all.find(({ depthMm }) => Math.abs(depthMm - depthOfHeight(drawn, heightMm, share)) <= atLevelMm)
  const clearance = at(drawn.measuredAtMm, levels.clearances)
  const ring = drawn.topRingHeightMm
  const gap = ring === undefined ? undefined : at(ring, levels.gaps)
  const figures = [
    ...(clearance
      ? [
          said.clearance(
            depth(clearance.depthMm),
            clearance.axes === 1
              ? inMicrons(clearance.leastMm)
              : said.range(microns(clearance.leastMm), inMicrons(clearance.mostMm)),
            plusMinusMicrons(clearance.expandedMm),
          ),
        ]
      : []),
    ...(gap
      ? [said.gap[gap.from](depth(gap.depthMm), lengthFigure(gap.gapMm, 2), length(gap.expandedMm, 2))]
      : []),
  ]
  return [pistonPlaceText(drawn, share), ...(figures.length > 0 ? figures : [said.between])].join(' ')
}
