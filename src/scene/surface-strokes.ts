import type { SurfaceFinding, SurfacePlace } from '../core/measured'
import type { WallGrid } from '../core/surface/wall-grid'
import { surfaceWidthDegrees } from '../core/surface-findings/surface-place'
import { deviationAt } from './grid-reading'
import type { BorePlace, Stroke } from './stroke-geometry'

/** So far apart at most lie the places of an outline: around in rad, along the depth in mm. */
const stepAround = Math.PI / 90
const stepsAlong = 24
/** A smaller mark is drawn so large, mm of wall. */
const leastMm = 0.6
/** Corners are rounded by so much of the diameter at most: lines of some width meet badly in a corner. */
const cornerShare = 0.03
const stepsInCorner = 8

/** Widths of the two lines that make a double outline of one, CSS pixels. */
const outline = { ink: 4.6, middle: 2, litInk: 7.4, litMiddle: 4 }
/** What lies on the wall nearest the eye would cover what is looked at. */
const nearOpacity = 0.28

const radians = Math.PI / 180

/**
 * Surface findings as double outlines on the drawn wall: a line in ink and a paler one along its middle, all of the
 * first before any of the second, so that a streak narrower than its lines still shows one outline.
 */
export function surfaceStrokes(
  grid: WallGrid,
  surface: readonly SurfaceFinding[],
  lit: readonly SurfaceFinding[],
): readonly Stroke[] {
  const lines = surface.map((finding) => ({
    isLit: lit.some(({ id }) => id === finding.id),
    paths: outlinePaths(grid, finding),
  }))
  const layer = (role: 'surface' | 'surface-middle'): readonly Stroke[] =>
    lines.flatMap(({ isLit, paths }) =>
      paths.map((places) => ({
        places,
        widthPx: widthOf(role, isLit),
        role,
        farOpacity: 1,
        nearOpacity: isLit ? 0.7 : nearOpacity,
      })),
    )
  return [...layer('surface'), ...layer('surface-middle')]
}

function widthOf(role: 'surface' | 'surface-middle', isLit: boolean): number {
  if (role === 'surface') return isLit ? outline.litInk : outline.ink
  return isLit ? outline.litMiddle : outline.middle
}

/** One closed line round a place, or two rings where it goes all round; none past the end of the wall. */
export function outlinePaths(grid: WallGrid, place: SurfacePlace): readonly (readonly BorePlace[])[] {
  const onWall = (angle: number, depthMm: number): BorePlace => ({
    angle,
    depthMm,
    deviationUm: deviationAt(grid, depthMm, angle),
  })
  const { top, bottom } = depthsOf(grid, place)
  if (top > bottom) return []
  const width = surfaceWidthDegrees(place) * radians
  const first = place.fromDegrees * radians
  if (width >= 2 * Math.PI - 1e-9) {
    return [top, bottom].map((depthMm) =>
      between(0, 2 * Math.PI, stepAround).map((angle) => onWall(angle, depthMm)),
    )
  }
  const perMm = 2 / grid.middleMm
  const half = Math.max(width, leastMm * perMm) / 2
  const middle = first + width / 2
  const box = { left: middle - half, right: middle + half, top, bottom }
  return [rounded(box, perMm).map(([angle, depthMm]) => onWall(angle, depthMm))]
}

/** A line down the middle of a place; none past the end of the wall. */
export function linePaths(grid: WallGrid, place: SurfacePlace): readonly (readonly BorePlace[])[] {
  const { top, bottom } = depthsOf(grid, place)
  if (top > bottom) return []
  const angle = (place.fromDegrees + surfaceWidthDegrees(place) / 2) * radians
  const step = Math.max((bottom - top) / stepsAlong, 1e-6)
  return [
    between(top, bottom, step).map((depthMm) => ({
      angle,
      depthMm,
      deviationUm: deviationAt(grid, depthMm, angle),
    })),
  ]
}

/** The depths of its two ends, apart at least by the least, within the bore. */
function depthsOf({ lengthMm }: WallGrid, { fromDepthMm, toDepthMm }: SurfacePlace) {
  const middle = (fromDepthMm + toDepthMm) / 2
  const half = Math.max(toDepthMm - fromDepthMm, leastMm) / 2
  return { top: Math.max(0, middle - half), bottom: Math.min(lengthMm, middle + half) }
}

interface Box {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

/** A box on the unrolled wall (rad across, mm down) with its corners rounded, and closed; rad for a mm of wall. */
function rounded({ left, right, top, bottom }: Box, perMm: number): (readonly [number, number])[] {
  const down = Math.max(
    0,
    Math.min((2 * cornerShare) / perMm, (bottom - top) / 2, (right - left) / 2 / perMm),
  )
  const across = down * perMm
  const alongStep = Math.max((bottom - top) / stepsAlong, 1e-6)
  const corner = (x: number, y: number, from: number): (readonly [number, number])[] =>
    Array.from({ length: stepsInCorner + 1 }, (_, step) => {
      const turn = from + ((step / stepsInCorner) * Math.PI) / 2
      return [x + across * Math.sin(turn), y - down * Math.cos(turn)] as const
    })
  const places = [
    ...between(left + across, right - across, stepAround).map((angle) => [angle, top] as const),
    ...corner(right - across, top + down, 0),
    ...between(top + down, bottom - down, alongStep).map((depth) => [right, depth] as const),
    ...corner(right - across, bottom - down, Math.PI / 2),
    ...between(right - across, left + across, stepAround).map((angle) => [angle, bottom] as const),
    ...corner(left + across, bottom - down, Math.PI),
    ...between(bottom - down, top + down, alongStep).map((depth) => [left, depth] as const),
    ...corner(left + across, top + down, (3 * Math.PI) / 2),
  ]
  return places.filter((place, index) => !same(place, places[index - 1]))
}

function same(a: readonly [number, number], b: readonly [number, number] | undefined): boolean {
  return b !== undefined && Math.abs(a[0] - b[0]) < 1e-9 && Math.abs(a[1] - b[1]) < 1e-9
}

/** Values from one to another, ends included, no further apart than a step. */
function between(from: number, to: number, step: number): number[] {
  const count = Math.max(1, Math.ceil(Math.abs(to - from) / step))
  return Array.from({ length: count + 1 }, (_, index) => from + ((to - from) * index) / count)
}
