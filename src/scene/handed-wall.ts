import type { DrawnStation, LimitPair } from '../core/findings'
import type { Port, SurfaceFinding } from '../core/measured'
import type { WallGrid } from '../core/surface/wall-grid'
import type { HandedTexts } from './handed-texts'

/** A wall as a file takes it along to be drawn there: plain JSON, its texts written already. */
export interface HandedWall {
  readonly grid: HandedGrid
  readonly ports: readonly Port[]
  readonly stations: readonly DrawnStation[]
  readonly surface: readonly SurfaceFinding[]
  readonly pair?: LimitPair
  readonly exaggeration: number
  readonly texts: HandedTexts
}

/** The grid of a wall in numbers that are short to write, row by row. */
export interface HandedGrid {
  readonly middleMm: number
  readonly lengthMm: number
  readonly depthsMm: readonly number[]
  readonly angles: readonly number[]
  /** Hundredths of a µm. */
  readonly deviations: readonly number[]
  /** A digit for each cell, and for each point. */
  readonly hatched: string
  readonly proven: string
  /** The doubt edges that there are, µm, four together, and which of them each point has. */
  readonly doubtEdges: readonly (readonly number[])[]
  readonly doubtOf: readonly number[]
}

const perUm = 100
const edgesOfPoint = 4
/** Stands for "no such edge", µm: JSON has no infinity, and the picture writes it so too. */
const nowhereUm = 1e6

/** What is drawn of a bore, as a file takes it along: nothing that people wrote about its surface goes with it. */
export interface WallToHand extends Omit<HandedWall, 'grid' | 'pair'> {
  readonly grid: WallGrid
  readonly pair: LimitPair | undefined
}

/** Deviations are rounded to a hundredth of a µm. */
export function handedWall(wall: WallToHand): HandedWall {
  const { grid, ports, stations, surface, pair, exaggeration, texts } = wall
  return {
    grid: handedGrid(grid),
    ports,
    stations: stations.map(({ depthMm, axisDegrees, diameterMm, expandedMm, counted, ...station }) => ({
      depthMm,
      axisDegrees,
      diameterMm,
      expandedMm,
      counted,
      ...(station.contactDegrees ? { contactDegrees: station.contactDegrees } : {}),
      ...(station.conformity ? { conformity: { verdict: station.conformity.verdict } } : {}),
    })),
    surface: surface.map(({ id, kind, shape, fromDepthMm, toDepthMm, fromDegrees, toDegrees }) => ({
      id,
      kind,
      shape,
      fromDepthMm,
      toDepthMm,
      fromDegrees,
      toDegrees,
    })),
    ...(pair ? { pair } : {}),
    exaggeration,
    texts,
  }
}

export function handedGrid(grid: WallGrid): HandedGrid {
  const known = new Map<string, number>()
  const doubtEdges: (readonly number[])[] = []
  const doubtOf = Array.from(grid.deviationsUm, (_, point) => {
    const edges = grid.doubtUm.subarray(point * edgesOfPoint, (point + 1) * edgesOfPoint)
    const key = edges.join(' ')
    const index = known.get(key) ?? doubtEdges.length
    if (!known.has(key)) {
      known.set(key, index)
      doubtEdges.push(Array.from(edges, writtenEdge))
    }
    return index
  })
  return {
    middleMm: grid.middleMm,
    lengthMm: grid.lengthMm,
    depthsMm: [...grid.depthsMm],
    angles: [...grid.angles],
    deviations: Array.from(grid.deviationsUm, (um) => Math.round(um * perUm)),
    hatched: grid.hatched.join(''),
    proven: grid.proven.join(''),
    doubtEdges,
    doubtOf,
  }
}

/** The wall's grid again, to a hundredth of a µm; an edge that is not there lies a metre away. */
export function gridOfHanded(handed: HandedGrid): WallGrid {
  const { middleMm, lengthMm, depthsMm, angles, deviations, hatched, proven } = handed
  const doubt = handed.doubtOf.flatMap((index) => handed.doubtEdges[index] ?? [])
  return {
    middleMm,
    lengthMm,
    depthsMm: Float64Array.from(depthsMm),
    angles: Float64Array.from(angles),
    deviationsUm: Float32Array.from(deviations, (value) => value / perUm),
    hatched: Uint8Array.from(hatched, Number),
    proven: Uint8Array.from(proven, Number),
    doubtUm: Float32Array.from(doubt),
  }
}

function writtenEdge(um: number): number {
  return Math.round(Math.min(nowhereUm, Math.max(-nowhereUm, um)) * perUm) / perUm
}
