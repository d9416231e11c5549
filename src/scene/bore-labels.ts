import type { DrawnStation, LimitPair } from '../core/findings'
import type { SurfaceFinding } from '../core/measured'
import type { WallGrid } from '../core/surface/wall-grid'
import { middleOfSurface, surfaceWidthDegrees } from '../core/surface-findings/surface-place'
import { outerRadius } from './bore-extent'
import { drawnRadius, onCircle } from './bore-space'
import { deviationAt } from './grid-reading'
import { isoMarks } from './iso-marks'
import type { PictureLabels } from './picture-labels'
import type { PictureView } from './picture-view'
import { contactsOf, provenMarks } from './proven-marks'
import type { Label, LabelOffer } from './stand-labels'

export interface LabelledBore {
  readonly grid: WallGrid
  readonly pair: LimitPair | undefined
  readonly stations: readonly DrawnStation[]
  readonly surface: readonly SurfaceFinding[]
  readonly isoStepUm: number
  readonly labels: PictureLabels
}

interface Place {
  readonly depthMm: number
  readonly angle: number
}

const silhouetteSteps = 72
/** Above this elevation, rad, the levels lie inside one another and their labels would stand on the wall. */
const steepestForDepths = 1.05
/** Sides that face the eye more than this, cosine, would have their names on the wall. */
const nearSide = 0.3
/** Below this width, CSS pixels, only top, bottom and the level pointed at are labelled, and no lines. */
const narrowPx = 480
/** How squarely a wall place must face the eye to carry a label: cosine. */
const squareEnough = -0.4
/** A sign stands by its patch as long as that can be seen at all: cosine. */
const anyFarWall = -0.05
const radians = Math.PI / 180
/** Signs on lines keep this far from discs, CSS pixels. */
const clearOfDiscsPx = 18

/** All labels of a bore but that of the level pointed at, the most important first. */
export function boreLabels(bore: LabelledBore): readonly Label[] {
  return [
    ...signLabels(bore),
    ...surfaceLabels(bore),
    ...depthLabels(bore).slice(0, 2),
    ...sideLabels(bore),
    ...depthLabels(bore).slice(2),
    ...newMaxLabel(bore),
    ...isoLabels(bore),
  ]
}

function radiusAt({ grid }: LabelledBore, place: Place, { exaggeration }: PictureView): number {
  return drawnRadius(grid.middleMm, exaggeration, deviationAt(grid, place.depthMm, place.angle))
}

function outermost({ grid, pair }: LabelledBore, place: Place, { exaggeration }: PictureView): number {
  return outerRadius({ grid, pair, exaggeration }, place.depthMm, place.angle)
}

/** The place furthest to one side of the picture on a ring of the given radii. */
function extreme(
  bore: LabelledBore,
  view: PictureView,
  depthMm: number,
  side: -1 | 1,
  radius: (place: Place) => number,
) {
  let best: { x: number; y: number } | undefined
  for (let step = 0; step < silhouetteSteps; step++) {
    const angle = (step / silhouetteSteps) * 2 * Math.PI
    const at = view.project(onCircle(bore.grid.lengthMm, angle, depthMm, radius({ depthMm, angle })))
    if (at && (!best || side * at.x > side * best.x)) best = at
  }
  return best
}

function besideSilhouette(bore: LabelledBore, depthMm: number, view: PictureView): readonly LabelOffer[] {
  const at = extreme(bore, view, depthMm, -1, (place) => outermost(bore, place, view))
  return at && view.elevation < steepestForDepths ? [{ x: at.x - 8, y: at.y, alignX: 1, alignY: 0.5 }] : []
}

/** The label of the level pointed at, before all others. */
export function pointedLabel(bore: LabelledBore, depthMm: number): Label {
  return {
    text: bore.labels.depth(depthMm),
    kind: 'pointed',
    offers: (view) => besideSilhouette(bore, depthMm, view),
  }
}

function depthLabels(bore: LabelledBore): readonly Label[] {
  const depths = [...new Set(bore.stations.map((station) => station.depthMm))].sort(
    (one, other) => one - other,
  )
  const ends = [depths[0], depths[depths.length - 1]]
  const inOrder = [...depths].sort((one, other) => Number(ends.includes(other)) - Number(ends.includes(one)))
  return inOrder.map((depthMm) => ({
    text: bore.labels.depth(depthMm),
    kind: 'depth',
    offers: (view) =>
      view.width < narrowPx && !ends.includes(depthMm) ? [] : besideSilhouette(bore, depthMm, view),
  }))
}

function sideLabels(bore: LabelledBore): readonly Label[] {
  const { sides } = bore.labels
  return [sides.front, sides.right, sides.rear, sides.left].map((text, quarter) => ({
    text,
    kind: 'side',
    offers: (view) => besideMouth(bore, (quarter * Math.PI) / 2, view),
  }))
}

/** Outside the rim of the mouth; for the side nearest the eye, outside the bottom rim, clear of the wall. */
function besideMouth(bore: LabelledBore, angle: number, view: PictureView): readonly LabelOffer[] {
  const { lengthMm } = bore.grid
  const isNear = view.facing(angle, onCircle(lengthMm, angle, 0, 0)) > nearSide
  const depthMm = isNear && view.elevation < steepestForDepths ? lengthMm : 0
  const radius = outermost(bore, { depthMm, angle }, view)
  const rim = view.project(onCircle(lengthMm, angle, depthMm, radius))
  const middle = view.project(onCircle(lengthMm, angle, depthMm, 0))
  if (!rim || !middle) return []
  const [dx, dy] = [rim.x - middle.x, rim.y - middle.y]
  const length = Math.hypot(dx, dy) || 1
  const [x, y] = [dx / length, dy / length]
  return [
    { x: rim.x + x * 8, y: rim.y + y * (depthMm > 0 ? 9 : 6), alignX: 0.5 - x / 2, alignY: 0.5 - y / 2 },
  ]
}

function onFarWall(bore: LabelledBore, place: Place, view: PictureView, facingAtMost = squareEnough) {
  const at = onCircle(bore.grid.lengthMm, place.angle, place.depthMm, radiusAt(bore, place, view))
  const facing = view.facing(place.angle, at)
  const seen = view.project(at)
  return seen && facing < facingAtMost ? { facing, ...seen } : undefined
}

function signLabels(bore: LabelledBore): readonly Label[] {
  return provenMarks(bore.grid, bore.stations, bore.pair).map(({ sign, contacts }) => ({
    text: sign,
    kind: 'sign',
    offers: (view) =>
      contacts.flatMap((contact) => {
        const seen = onFarWall(bore, contact, view, anyFarWall)
        return seen ? [{ x: seen.x, y: seen.y, alignX: 0.5, alignY: 0.5 }] : []
      }),
  }))
}

/** Beside each surface finding on the far wall: to its sides, above or below. */
function surfaceLabels(bore: LabelledBore): readonly Label[] {
  return bore.surface.map((finding, index) => ({
    text: bore.labels.surface(index + 1, finding),
    kind: 'surface',
    offers: (view) => besideFinding(bore, finding, view),
  }))
}

const besidePx = 7

/** Places along a finding that are looked at for where it shows on the far wall. */
const placesAlong = 13

function besideFinding(
  bore: LabelledBore,
  finding: SurfaceFinding,
  view: PictureView,
): readonly LabelOffer[] {
  const { depthMm } = middleOfSurface(finding)
  const width = surfaceWidthDegrees(finding)
  const seen = Array.from({ length: placesAlong }, (_, index) => {
    const angle = (finding.fromDegrees + (width * index) / (placesAlong - 1)) * radians
    const at = onFarWall(bore, { depthMm, angle }, view, anyFarWall)
    return at ? [{ ...at, angle }] : []
  }).flat()
  if (seen.length === 0) return []
  const [left, right] = [
    seen.reduce((a, b) => (b.x < a.x ? b : a)),
    seen.reduce((a, b) => (b.x > a.x ? b : a)),
  ]
  const squarest = seen.reduce((a, b) => (b.facing < a.facing ? b : a))
  const at = (depth: number) => onFarWall(bore, { depthMm: depth, angle: squarest.angle }, view, anyFarWall)
  const [above, below] = [at(finding.fromDepthMm), at(finding.toDepthMm)]
  return [
    { x: right.x + besidePx, y: right.y, alignX: 0, alignY: 0.5 },
    { x: left.x - besidePx, y: left.y, alignX: 1, alignY: 0.5 },
    ...(above ? [{ x: above.x, y: above.y - besidePx, alignX: 0.5, alignY: 1 }] : []),
    ...(below ? [{ x: below.x, y: below.y + besidePx, alignX: 0.5, alignY: 0 }] : []),
    { x: squarest.x, y: squarest.y, alignX: 0.5, alignY: 0.5 },
  ]
}

function newMaxLabel(bore: LabelledBore): readonly Label[] {
  const { pair, grid } = bore
  const sizeMm = pair?.newMaxMm
  if (!pair || sizeMm === undefined) return []
  const deviationUm = (sizeMm - grid.middleMm) * 1000
  return [
    {
      text: bore.labels.limit('new-max', sizeMm, pair),
      kind: 'limit',
      offers: (view) => {
        if (view.elevation >= steepestForDepths) return []
        const radius = drawnRadius(grid.middleMm, view.exaggeration, deviationUm)
        const ring = extreme(bore, view, grid.lengthMm, 1, () => radius)
        const outer = extreme(bore, view, grid.lengthMm, 1, (place) => outermost(bore, place, view))
        if (!ring || !outer) return []
        const x = Math.max(ring.x, outer.x) + 12
        return [{ x, y: ring.y, alignX: 0, alignY: 0.5, leader: x - ring.x - 4 }]
      },
    },
  ]
}

/** The outermost lines first, then inward: where there is no room for all, those tell most. */
function isoLabels(bore: LabelledBore): readonly Label[] {
  const marks = [...isoMarks(bore.grid, bore.isoStepUm)].sort(
    (one, other) => Math.abs(other.deviationUm) - Math.abs(one.deviationUm),
  )
  const discs = discsOnce(bore)
  return marks.map(({ deviationUm, places }) => ({
    text: bore.labels.deviation(deviationUm),
    kind: 'iso',
    gapPx: 12,
    offers: (view) =>
      (view.width < narrowPx ? [] : places)
        .flatMap((place) => onFarWall(bore, place, view) ?? [])
        .filter(({ x, y }) =>
          discs(view).every((disc) => Math.hypot(disc.x - x, disc.y - y) > clearOfDiscsPx),
        )
        .sort((one, other) => one.facing - other.facing)
        .map(({ x, y }) => ({ x, y, alignX: 0.5, alignY: 0.5 })),
  }))
}

/** Places of the discs on the far wall, worked out once for each frame. */
function discsOnce(bore: LabelledBore) {
  const contacts = bore.stations.flatMap(contactsOf)
  let last: { readonly view: PictureView; readonly discs: readonly { x: number; y: number }[] } | undefined
  return (view: PictureView) => {
    if (last?.view !== view) {
      last = { view, discs: contacts.flatMap((contact) => onFarWall(bore, contact, view) ?? []) }
    }
    return last.discs
  }
}
