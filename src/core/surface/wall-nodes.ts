import type { StationFinding } from '../findings'
import { type MonotoneCubic, pchip, periodicPchip, valueAt } from './pchip'

/** A diameter that the wall must pass through: depth in mm, axis in rad within one period, diameter in mm. */
export interface WallReading {
  readonly depthMm: number
  readonly axis: number
  readonly diameterMm: number
}

/** What the wall is spanned between: every level × every axis. */
export interface WallNodes {
  /** Increasing, mm below the deck. */
  readonly levelsMm: Float64Array
  /** Increasing, rad clockwise seen from the deck, in [0, period). */
  readonly axes: Float64Array
  /** π for two contacts: the wall at θ + 180° is the wall at θ. */
  readonly period: number
  /** [level · axes + axis], mm. */
  readonly diametersMm: Float64Array
  /** 1 where the node is a reading, 0 where it was filled. [level · axes + axis]. */
  readonly read: Uint8Array
}

/** The two ways of a station round the bore are one, degrees in [0, 180) as rad in [0, π). */
export function axisRad(axisDegrees: number): number {
  return ((((axisDegrees % 180) + 180) % 180) * Math.PI) / 180
}

/** Counted stations as readings of the wall. */
export function wallReadings(stations: readonly StationFinding[]): WallReading[] {
  return stations
    .filter((s) => s.counted)
    .map((s) => ({ depthMm: s.depthMm, axis: axisRad(s.axisDegrees), diameterMm: s.diameterMm }))
}

/**
 * Nodes of the wall: all levels × all axes, readings where there are any, the rest filled. A node without a
 * reading takes its axis's own curve along the depth where that axis has readings above and below; else its
 * level's curve around, made of readings only, where the level has two readings or more; else the nearest
 * reading of its axis; else the level's one reading. Where neither its axis nor its level has a reading, it
 * is filled last, along its axis from the nodes already filled: between two of them their curve, else the
 * nearest. So every filled node stays within the readings it came from. Levels in mm, axes in rad; levels
 * and axes of the readings are added where the plan lacks them. Own derivation. Throws without a reading.
 */
export function wallNodes(
  levelsMm: readonly number[],
  axes: readonly number[],
  readings: readonly WallReading[],
  period: number,
): WallNodes {
  if (readings.length === 0) throw new RangeError('wallNodes: expected at least one reading, got none')
  const levels = increasing([...levelsMm, ...readings.map((r) => r.depthMm)])
  const ways = increasing([...axes, ...readings.map((r) => r.axis)])
  const table: (number | undefined)[] = new Array(levels.length * ways.length).fill(undefined)
  for (const reading of readings) {
    table[levels.indexOf(reading.depthMm) * ways.length + ways.indexOf(reading.axis)] = reading.diameterMm
  }
  const filled = filledFrom(levels, ways, table, period)
  return {
    levelsMm: levels,
    axes: ways,
    period,
    diametersMm: Float64Array.from(filledAlong(levels, ways, filled)),
    read: Uint8Array.from(table, (diameter) => (diameter === undefined ? 0 : 1)),
  }
}

type Table = readonly (number | undefined)[]

/** Fills from readings only; leaves open what has a reading neither on its axis nor at its level. */
function filledFrom(levels: Float64Array, axes: Float64Array, table: Table, period: number): Table {
  const ofAxis = [...axes].map((_, a) => curveOf(levels, (l) => table[l * axes.length + a], pchip))
  const around = (knots: number[], values: number[]) => periodicPchip(knots, values, period)
  const ofLevel = [...levels].map((_, l) => curveOf(axes, (a) => table[l * axes.length + a], around))
  return table.map((diameter, node) => {
    if (diameter !== undefined) return diameter
    const depth = levels[Math.floor(node / axes.length)] ?? 0
    const along = ofAxis[node % axes.length]
    const ring = ofLevel[Math.floor(node / axes.length)]
    if (along && isBetween(along, depth)) return valueAt(along, depth)
    if (ring && ring.knots.length >= 2) return valueAt(ring, axes[node % axes.length] ?? 0)
    if (along) return valueAt(along, depth)
    return ring?.values[0]
  })
}

/** Fills what is still open along each axis; held constant past the outermost filled nodes. */
function filledAlong(levels: Float64Array, axes: Float64Array, table: Table): number[] {
  const ofAxis = [...axes].map((_, a) => curveOf(levels, (l) => table[l * axes.length + a], pchip))
  return table.map((diameter, node) => {
    if (diameter !== undefined) return diameter
    const along = ofAxis[node % axes.length]
    const depth = levels[Math.floor(node / axes.length)]
    if (!along || depth === undefined) throw new Error(`wallNodes: nothing to fill node ${node} from`)
    return valueAt(along, depth)
  })
}

function curveOf(
  knots: Float64Array,
  valueAtKnot: (index: number) => number | undefined,
  make: (knots: number[], values: number[]) => MonotoneCubic,
): MonotoneCubic | undefined {
  const points = [...knots].flatMap((knot, index) => {
    const value = valueAtKnot(index)
    return value === undefined ? [] : [{ knot, value }]
  })
  if (points.length === 0) return undefined
  return make(
    points.map((p) => p.knot),
    points.map((p) => p.value),
  )
}

function isBetween({ knots }: MonotoneCubic, x: number): boolean {
  return x > (knots[0] ?? x) && x < (knots[knots.length - 1] ?? x)
}

function increasing(values: readonly number[]): Float64Array {
  return Float64Array.from(new Set(values)).sort()
}
