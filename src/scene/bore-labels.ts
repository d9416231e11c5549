import type { DrawnStation } from '../core/findings'
import type { SurfaceFinding } from '../core/measured'
import { outerDeviation } from './bore-extent'
import { DrawnPlaces } from './drawn-places'
import { isoLabels } from './iso-labels'
import {
  anyFarWall,
  narrowPx,
  outlineAt,
  type PlacedBore,
  ringPlaces,
  steepestForDepths,
  wallPlaces,
} from './label-places'
import type { PictureLabels } from './picture-labels'
import type { PictureView } from './picture-view'
import { type LabelRoom, parts } from './place-labels'
import { provenMarks } from './proven-marks'
import type { Label } from './stand-labels'
import { surfaceLabels } from './surface-labels'

export interface LabelledBore extends PlacedBore {
  readonly stations: readonly DrawnStation[]
  readonly surface: readonly SurfaceFinding[]
  readonly isoStepUm: number
  readonly labels: PictureLabels
}

/** Sides that face the eye more than this, cosine, would have their names on the wall. */
const nearSide = 0.3

/** All labels of a bore but that of the level pointed at, the most important first. */
export function boreLabels(bore: LabelledBore): readonly Label[] {
  const depths = depthLabels(bore)
  return [
    ...signLabels(bore),
    ...surfaceLabels(bore),
    ...depths.slice(0, 2),
    ...sideLabels(bore),
    ...depths.slice(2),
    ...newMaxLabel(bore),
    ...isoLabels(bore),
  ]
}

/** The label of the level pointed at, before all others. */
export function pointedLabel(bore: LabelledBore, depthMm: number): Label {
  const outline = outlineAt(bore, depthMm)
  return {
    text: bore.labels.depth(depthMm),
    kind: 'pointed',
    offer: (view, room) => offerBeside(outline, view, room),
  }
}

function depthLabels(bore: LabelledBore): readonly Label[] {
  const depths = [...new Set(bore.stations.map((station) => station.depthMm))].sort(
    (one, other) => one - other,
  )
  const ends = [depths[0], depths[depths.length - 1]]
  const inOrder = [...depths].sort((one, other) => Number(ends.includes(other)) - Number(ends.includes(one)))
  return inOrder.map((depthMm) => {
    const outline = outlineAt(bore, depthMm)
    const isEnd = ends.includes(depthMm)
    return {
      text: bore.labels.depth(depthMm),
      kind: 'depth',
      offer(view, room) {
        if (isEnd || view.width >= narrowPx) offerBeside(outline, view, room)
      },
    }
  })
}

/** To the left of an outline. */
function offerBeside(outline: DrawnPlaces, view: PictureView, room: LabelRoom): void {
  if (view.elevation >= steepestForDepths || !outline.lookFurthest(view, -1, 0)) return
  outline.moveBy(-8, 0)
  room.offer(outline, parts.right)
}

function sideLabels(bore: LabelledBore): readonly Label[] {
  const { sides } = bore.labels
  return [sides.front, sides.right, sides.rear, sides.left].map((text, quarter) => {
    const places = mouthPlaces(bore, (quarter * Math.PI) / 2)
    return { text, kind: 'side', offer: (view, room) => offerBesideMouth(places, view, room) }
  })
}

const deckAxis = 0
const deckRim = 1
const footAxis = 2
const footRim = 3

/** Of one side: the axis and the rim at the deck, and the same at the foot. */
function mouthPlaces(bore: LabelledBore, angle: number): DrawnPlaces {
  const places = [0, bore.grid.lengthMm].flatMap((depthMm) => [
    { angle, depthMm, deviationUm: 'axis' as const },
    { angle, depthMm, deviationUm: outerDeviation(bore, depthMm, angle) },
  ])
  return new DrawnPlaces(bore.grid, places)
}

const partInward = { x: 0.5, y: 0.5 }

/** Outside the rim of the mouth; for the side nearest the eye, outside the bottom rim, clear of the wall. */
function offerBesideMouth(places: DrawnPlaces, view: PictureView, room: LabelRoom): void {
  const isNear = places.look(view, deckAxis) && places.facing > nearSide
  const isAtFoot = isNear && view.elevation < steepestForDepths
  if (!places.look(view, isAtFoot ? footAxis : deckAxis)) return
  const middleX = places.x
  const middleY = places.y
  if (!places.look(view, isAtFoot ? footRim : deckRim)) return
  const dx = places.x - middleX
  const dy = places.y - middleY
  const length = Math.max(1e-9, Math.sqrt(dx * dx + dy * dy))
  const x = dx / length
  const y = dy / length
  places.x += x * 8
  places.y += y * (isAtFoot ? 9 : 6)
  partInward.x = 0.5 - x / 2
  partInward.y = 0.5 - y / 2
  room.offer(places, partInward)
}

function signLabels(bore: LabelledBore): readonly Label[] {
  return provenMarks(bore.grid, bore.stations, bore.pair).map(({ sign, contacts }) => {
    const places = wallPlaces(bore, contacts)
    return {
      text: sign,
      kind: 'sign',
      offer(view, room) {
        for (let index = 0; index < places.count; index++) {
          if (!places.look(view, index) || places.facing >= anyFarWall) continue
          if (room.offer(places, parts.middle)) return
        }
      },
    }
  })
}

function newMaxLabel(bore: LabelledBore): readonly Label[] {
  const { pair, grid } = bore
  const sizeMm = pair?.newMaxMm
  if (!pair || sizeMm === undefined) return []
  const deviationUm = (sizeMm - grid.middleMm) * 1000
  const ring = ringPlaces(bore, grid.lengthMm, () => deviationUm)
  const outline = outlineAt(bore, grid.lengthMm)
  return [
    {
      text: bore.labels.limit('new-max', sizeMm, pair),
      kind: 'limit',
      offer(view, room) {
        if (view.elevation >= steepestForDepths) return
        if (!ring.lookFurthest(view, 1, 0) || !outline.lookFurthest(view, 1, 0)) return
        const gap = Math.max(0, outline.x - ring.x) + 12
        ring.moveBy(gap, 0)
        room.offer(ring, parts.left, gap - 4)
      },
    },
  ]
}
