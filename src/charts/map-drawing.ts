import type { LimitPair, StationFinding } from '../core/findings'
import type { Port, SurfaceFinding } from '../core/measured'
import { isoStep } from '../core/surface/exaggeration'
import type { WallGrid } from '../core/surface/wall-grid'
import { roundStepUm, unitText } from '../words/length-unit'
import { lengthFigure } from '../words/numbers'
import { angleLabel } from './angle-label'
import { depthLabels } from './depth-labels'
import { hatchedRects } from './hatched-rects'
import type { MapPaint } from './MapWall'
import { contactsOf } from './map-contacts'
import { type MapContours, mapContours } from './map-contours'
import { acrossOf, downOf, type MapScale, stretchesOf } from './map-scale'
import { drawSurface } from './surface-drawing'

export interface DrawnMap {
  readonly grid: WallGrid
  readonly paint: MapPaint
  readonly levelsMm: readonly number[]
  readonly ports: readonly Port[]
  readonly stations: readonly StationFinding[]
  readonly surface: readonly SurfaceFinding[]
  readonly pair: LimitPair | undefined
}

/** How the map is written on paper: the colours and the family of the page it stands on. */
export interface MapHand {
  readonly fontFamily: string
  readonly ink: string
  readonly softInk: string
  readonly paper: string
  readonly tight: string
  readonly loose: string
  /** Pale ground of wall that nobody measured. */
  readonly unmeasured: string
}

interface Box {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

const margin = { left: 44, right: 10, top: 36, bottom: 8 }
const typePx = 14
const lineHeight = 15
const hatchPitch = 6
const dotPitch = 5
const discRadius = 3
const fullTurn = 2 * Math.PI

/** Draws the wall unrolled, as the page's own map shows it, into a box of a canvas. */
export function drawMap(pen: CanvasRenderingContext2D, box: Box, map: DrawnMap, hand: MapHand): void {
  const scale: MapScale = {
    left: box.x + margin.left,
    top: box.y + margin.top,
    width: box.width - margin.left - margin.right,
    height: box.height - margin.top - margin.bottom,
    lengthMm: map.grid.lengthMm,
  }
  pen.save()
  pen.beginPath()
  pen.rect(scale.left, scale.top, scale.width, scale.height)
  pen.clip()
  drawWall(pen, scale, map, hand)
  drawUnmeasured(pen, scale, map.grid, hand)
  drawPorts(pen, scale, map.ports, hand)
  drawSurface(pen, scale, map.surface, hand)
  pen.restore()
  pen.save()
  pen.strokeStyle = hand.softInk
  pen.strokeRect(scale.left, scale.top, scale.width, scale.height)
  drawStations(pen, scale, map.stations, hand)
  drawAxes(pen, scale, map.levelsMm, hand)
  pen.restore()
}

function drawWall(pen: CanvasRenderingContext2D, scale: MapScale, map: DrawnMap, hand: MapHand): void {
  const { grid, paint, pair } = map
  const drawn = mapContours(grid, scale, pair, paint.span, isoStep(spanOf(grid.deviationsUm), roundStepUm()))
  pen.fillStyle = paint.colour(paint.span.lowUm)
  pen.fillRect(scale.left, scale.top, scale.width, scale.height)
  for (const { fromUm, path } of drawn.bands) {
    pen.fillStyle = paint.colour(fromUm)
    pen.fill(new Path2D(path))
  }
  pen.strokeStyle = hand.ink
  pen.lineWidth = 0.75
  pen.globalAlpha = 0.22
  for (const { path } of drawn.isoLines) pen.stroke(new Path2D(path))
  pen.globalAlpha = 1
  pen.save()
  clipMeasured(pen, scale, grid)
  drawJudged(pen, scale, drawn, hand)
  pen.restore()
}

/** Keeps what is judged out of wall that nobody measured. */
function clipMeasured(pen: CanvasRenderingContext2D, scale: MapScale, grid: WallGrid): void {
  pen.beginPath()
  pen.rect(scale.left, scale.top, scale.width, scale.height)
  for (const { x, y, width, height } of hatchedRects(grid, scale)) pen.rect(x, y, width, height)
  pen.clip('evenodd')
}

function drawJudged(pen: CanvasRenderingContext2D, scale: MapScale, drawn: MapContours, hand: MapHand): void {
  for (const path of [drawn.doubtMax, drawn.doubtMin]) if (path) stipple(pen, scale, new Path2D(path), hand)
  pen.strokeStyle = hand.ink
  pen.lineWidth = 1.5
  pen.setLineDash([5, 4])
  for (const path of [drawn.crossingMax, drawn.crossingMin]) if (path) pen.stroke(new Path2D(path))
  pen.setLineDash([])
  pen.lineWidth = 1.75
  const patches = [
    [drawn.provenAbove, hand.loose],
    [drawn.provenBelow, hand.tight],
  ] as const
  for (const [path, colour] of patches) {
    if (!path) continue
    pen.fillStyle = colour
    pen.fill(new Path2D(path))
    pen.stroke(new Path2D(path))
  }
}

/** Dots on two interleaved lattices, in the part of the map that a path encloses. */
function stipple(pen: CanvasRenderingContext2D, area: MapScale, within: Path2D, { ink }: MapHand): void {
  pen.save()
  pen.clip(within)
  pen.fillStyle = ink
  pen.beginPath()
  for (let row = 0; row * (dotPitch / 2) < area.height; row++) {
    const y = area.top + (row + 0.5) * (dotPitch / 2)
    for (let x = area.left + (row % 2) * (dotPitch / 2); x < area.left + area.width; x += dotPitch) {
      pen.moveTo(x + 0.8, y)
      pen.arc(x, y, 0.8, 0, fullTurn)
    }
  }
  pen.fill()
  pen.restore()
}

function drawUnmeasured(
  pen: CanvasRenderingContext2D,
  scale: MapScale,
  grid: WallGrid,
  { ink, unmeasured }: MapHand,
): void {
  const rects = hatchedRects(grid, scale)
  if (rects.length === 0) return
  pen.save()
  pen.beginPath()
  for (const { x, y, width, height } of rects) pen.rect(x, y, width, height)
  pen.globalAlpha = 0.7
  pen.fillStyle = unmeasured
  pen.fill()
  pen.clip()
  pen.globalAlpha = 0.6
  pen.strokeStyle = ink
  pen.lineWidth = 1
  pen.beginPath()
  const { left, top, width, height } = scale
  for (let x = left; x < left + width + height; x += hatchPitch * Math.SQRT2) {
    pen.moveTo(x, top)
    pen.lineTo(x - height, top + height)
  }
  pen.stroke()
  pen.restore()
}

function drawPorts(
  pen: CanvasRenderingContext2D,
  scale: MapScale,
  ports: readonly Port[],
  { ink, paper }: MapHand,
): void {
  pen.fillStyle = paper
  pen.strokeStyle = ink
  pen.lineWidth = 1.25
  for (const port of ports) {
    const y = downOf(scale, port.fromDepthMm)
    for (const { x, width } of stretchesOf(scale, port.fromDegrees, port.toDegrees)) {
      pen.fillRect(x, y, width, downOf(scale, port.toDepthMm) - y)
      pen.strokeRect(x, y, width, downOf(scale, port.toDepthMm) - y)
    }
  }
}

function drawStations(
  pen: CanvasRenderingContext2D,
  scale: MapScale,
  stations: readonly StationFinding[],
  { ink, paper }: MapHand,
): void {
  for (const { angleDegrees, depthMm, station } of contactsOf(stations)) {
    const x = acrossOf(scale, angleDegrees)
    for (const at of x === scale.left ? [x, scale.left + scale.width] : [x]) {
      pen.beginPath()
      pen.arc(at, downOf(scale, depthMm), discRadius, 0, fullTurn)
      pen.fillStyle = station.counted ? ink : paper
      pen.strokeStyle = station.counted ? paper : ink
      pen.lineWidth = 1
      pen.fill()
      pen.stroke()
    }
  }
}

/** Angles with the names of the sides along the top, depths of the levels down the left side. */
function drawAxes(
  pen: CanvasRenderingContext2D,
  scale: MapScale,
  levelsMm: readonly number[],
  { fontFamily, softInk }: MapHand,
): void {
  pen.font = `400 ${typePx}px ${fontFamily}`
  pen.fillStyle = softInk
  pen.strokeStyle = softInk
  pen.lineWidth = 1
  const right = scale.left + scale.width
  const angles = [
    [270, acrossOf(scale, 270), 'center'],
    [0, acrossOf(scale, 0), 'center'],
    [90, acrossOf(scale, 90), 'center'],
    [180, scale.left, 'left'],
    [180, right, 'right'],
  ] as const
  pen.textBaseline = 'alphabetic'
  for (const [angle, x, align] of angles) {
    pen.fillRect(x - 0.5, scale.top - 5, 1, 5)
    pen.textAlign = align
    pen.fillText(angleLabel(angle), x, scale.top - 10)
  }
  pen.textAlign = 'right'
  pen.fillText(unitText(), scale.left - 7, scale.top - 10)
  pen.textBaseline = 'middle'
  for (const { depthMm, y, labelled } of depthLabels(scale, levelsMm, lineHeight)) {
    pen.fillRect(scale.left - 4, y - 0.5, 4, 1)
    if (labelled) pen.fillText(lengthFigure(depthMm, 1), scale.left - 7, y)
  }
}

function spanOf(values: Float32Array): number {
  const low = values.reduce((least, value) => Math.min(least, value), Number.POSITIVE_INFINITY)
  const high = values.reduce((most, value) => Math.max(most, value), Number.NEGATIVE_INFINITY)
  return Math.max(0, high - low)
}
