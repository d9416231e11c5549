import type { Port } from '../measured'
import { isWithinPort } from '../ports/port-at'
import { columnAt, deviationAt, rowAt } from './drawn-position'
import { drawnDiameter } from './exaggeration'
import { type CellFace, cellFaces } from './solid-faces'
import { portColumns, portRows, withoutCornerContacts } from './solid-lines'
import type { WallGrid } from './wall-grid'

/** What a face of the model shows. */
export const faceKinds = ['body', 'measured', 'unmeasured', 'unmeasured-line'] as const
export type FaceKind = (typeof faceKinds)[number]

/** A tube to print: the exaggerated wall inside, a plain cylinder outside. */
export interface WallSolid {
  readonly kind: 'solid'
  /** x, y, z of each vertex, mm as printed; y up, deck at the top, 0° toward +z and 90° toward −x. */
  readonly positionsMm: Float32Array
  /** Corners of triangles, three each, counter-clockwise seen from outside of the solid. */
  readonly triangles: Readonly<Record<FaceKind, Uint32Array>>
  /** Diameter less the grid's middle, µm, at each vertex of the wall; NaN at the others. */
  readonly deviationsUm: Float32Array
  readonly exaggeration: number
  /** Drawn mm for one printed mm: 1, 2, 5 × 10ⁿ. */
  readonly drawnPerPrinted: number
  readonly outerDiameterMm: number
  /** Where the floor of a port's pocket lies from the axis. */
  readonly pocketRadiusMm: number
  readonly heightMm: number
}

/** The drawn wall comes so near to the axis that no tube is left of it. */
export interface NoSolid {
  readonly kind: 'none'
  readonly why: 'wall-meets-axis'
}

/** The bed that a model fits on, each way, printed mm: common practice, no published source. */
export const printBedMm = 200

/** Least thickness, printed mm, of wall before a pocket's floor, behind it, and of the groove behind that. */
const thicknessMm = { pocket: 2, floor: 2, groove: 1.2 }
const aroundMm = thicknessMm.pocket + thicknessMm.floor + thicknessMm.groove

/** The groove that marks the front: half of its width in rad, and its share of the length, from the deck. */
const groove = { halfWidth: (3 * Math.PI) / 180, share: 0.15 }

/** A wall nearer to the axis is not printed, mm. */
const leastRadiusMm = 1

/** Of the cells nobody measured, every so many along a diagonal is a line of the hatch. */
const hatchPitch = 6

/**
 * The wall of a grid as a closed solid, at an exaggeration: `drawnPosition` at every row and column, inside a
 * plain cylinder that is at least 5.2 mm thick. Built of cells between rows, columns and four shells (wall,
 * floor of the pockets, bottom of the groove, outside); a face is drawn where a full cell meets an empty one, so
 * it is closed however the ports lie. Ports are blind pockets with square corners: holes right through would cut
 * the tube in two where a port goes all round. Their edges get rows and columns of their own, within 0.01 mm and
 * 0.0001 rad; where two ports meet in one corner alone, one cell more is opened. A groove of 6° outside, from the
 * deck down, marks the front. Scaled down by 1, 2, 5 × 10ⁿ until it fits a bed of 200 mm, never up.
 *
 * For the eye: it is drawn between readings like the picture. Single precision. Own derivation.
 */
export function wallSolid(grid: WallGrid, ports: readonly Port[], exaggeration: number): WallSolid | NoSolid {
  const angles = portColumns(grid, ports, groove.halfWidth)
  const depthsMm = portRows(grid, ports, groove.share * grid.lengthMm)
  const wall = wallAt(grid, angles, depthsMm)
  const radii = Float64Array.from(wall, (um) => radiusOf(grid, exaggeration, um))
  const widest = radii.reduce((a, b) => Math.max(a, b))
  const drawnPerPrinted = scaleFor(grid.lengthMm, 2 * widest)
  if (radii.some((radius) => !(radius / drawnPerPrinted >= leastRadiusMm)))
    return { kind: 'none', why: 'wall-meets-axis' }
  const pocket = widest / drawnPerPrinted + thicknessMm.pocket
  const shells = [pocket, pocket + thicknessMm.floor, pocket + thicknessMm.floor + thicknessMm.groove]
  const full = fullCells(grid, ports, angles, depthsMm)
  const faces = cellFaces(full, { columns: angles.length, rows: depthsMm.length, shells: 4 })
  const corner = (vertex: number) => {
    const node = Math.floor(vertex / 4)
    const row = Math.floor(node / angles.length)
    const shell = vertex % 4
    const radius = shell === 0 ? (radii[node] ?? 0) / drawnPerPrinted : (shells[shell - 1] ?? 0)
    const angle = angles[node % angles.length] ?? 0
    const height = (grid.lengthMm / 2 - (depthsMm[row] ?? 0)) / drawnPerPrinted
    return { place: [-radius * Math.sin(angle), height, radius * Math.cos(angle)], shell, node }
  }
  const kindOf = kindOfFace(grid, angles, depthsMm)
  return {
    kind: 'solid',
    ...gathered(faces, kindOf, (vertex) => {
      const { place, shell, node } = corner(vertex)
      return { place, deviationUm: shell === 0 ? (wall[node] ?? Number.NaN) : Number.NaN }
    }),
    exaggeration,
    drawnPerPrinted,
    outerDiameterMm: 2 * (shells[2] ?? 0),
    pocketRadiusMm: pocket,
    heightMm: grid.lengthMm / drawnPerPrinted,
  }
}

/** The least of 1, 2, 5 × 10ⁿ by which a tube around this wall, drawn mm, fits the bed. */
function scaleFor(lengthMm: number, diameterMm: number): number {
  for (let power = 1; ; power *= 10) {
    for (const digit of [1, 2, 5]) {
      const scale = digit * power
      if (lengthMm / scale <= printBedMm && diameterMm / scale + 2 * aroundMm <= printBedMm) return scale
    }
  }
}

function radiusOf({ middleMm }: WallGrid, exaggeration: number, deviationUm: number): number {
  return drawnDiameter(middleMm, exaggeration, middleMm + deviationUm / 1000) / 2
}

/** Deviations in µm at every row and column of the model. */
function wallAt(grid: WallGrid, angles: Float64Array, depthsMm: Float64Array): Float64Array {
  const columns = Array.from(angles, (angle) => columnAt(grid, angle))
  const rows = Array.from(depthsMm, (depth) => rowAt(grid, depth))
  return Float64Array.from(rows.flatMap((row) => columns.map((column) => deviationAt(grid, column, row))))
}

/** Which cells are material, [(row · columns + column) · 3 + layer], layers from the wall outward. */
function fullCells(
  { lengthMm }: WallGrid,
  ports: readonly Port[],
  angles: Float64Array,
  depthsMm: Float64Array,
): Uint8Array {
  const columns = angles.length
  const rows = depthsMm.length - 1
  const open = new Uint8Array(rows * columns)
  const full = new Uint8Array(rows * columns * 3).fill(1)
  for (let cell = 0; cell < open.length; cell++) {
    const { angle, depthMm } = middleOfCell(angles, depthsMm, cell)
    const degrees = (angle * 180) / Math.PI
    open[cell] = ports.some((port) => isWithinPort(port, depthMm, degrees)) ? 1 : 0
    const fromFront = Math.min(angle, 2 * Math.PI - angle)
    if (fromFront < groove.halfWidth && depthMm < groove.share * lengthMm) full[cell * 3 + 2] = 0
  }
  withoutCornerContacts(open, columns).forEach((isOpen, cell) => {
    if (isOpen) full[cell * 3] = 0
  })
  return full
}

function middleOfCell(angles: Float64Array, depthsMm: Float64Array, cell: number) {
  const row = Math.floor(cell / angles.length)
  const column = cell % angles.length
  const from = angles[column] ?? 0
  const to = angles[column + 1] ?? 2 * Math.PI
  return { angle: (from + to) / 2, depthMm: ((depthsMm[row] ?? 0) + (depthsMm[row + 1] ?? 0)) / 2 }
}

function kindOfFace(grid: WallGrid, angles: Float64Array, depthsMm: Float64Array) {
  return ({ cell, isWall }: CellFace): FaceKind => {
    if (!isWall) return 'body'
    const { angle, depthMm } = middleOfCell(angles, depthsMm, cell)
    const row = Math.floor(rowAt(grid, depthMm))
    const column = Math.floor(columnAt(grid, angle))
    if (grid.hatched[row * grid.angles.length + column] !== 1) return 'measured'
    const diagonal = Math.floor(cell / angles.length) + (cell % angles.length)
    return diagonal % hatchPitch === 0 ? 'unmeasured-line' : 'unmeasured'
  }
}

interface Corner {
  readonly place: readonly number[]
  readonly deviationUm: number
}

/** Numbers the vertices that faces use, and cuts each face into two triangles. */
function gathered(
  faces: readonly CellFace[],
  kindOf: (face: CellFace) => FaceKind,
  cornerOf: (vertex: number) => Corner,
) {
  const numbers = new Map<number, number>()
  const positions: number[] = []
  const deviations: number[] = []
  const numberOf = (vertex: number) => {
    const known = numbers.get(vertex)
    if (known !== undefined) return known
    const { place, deviationUm } = cornerOf(vertex)
    positions.push(...place)
    deviations.push(deviationUm)
    numbers.set(vertex, deviations.length - 1)
    return deviations.length - 1
  }
  const lists: Record<FaceKind, number[]> = { body: [], measured: [], unmeasured: [], 'unmeasured-line': [] }
  for (const face of faces) {
    const [a, b, c, d] = face.corners.map(numberOf)
    if (a === undefined || b === undefined || c === undefined || d === undefined) continue
    lists[kindOf(face)].push(a, b, c, a, c, d)
  }
  const listed = (kind: FaceKind) => Uint32Array.from(lists[kind])
  return {
    positionsMm: Float32Array.from(positions),
    deviationsUm: Float32Array.from(deviations),
    triangles: {
      body: listed('body'),
      measured: listed('measured'),
      unmeasured: listed('unmeasured'),
      'unmeasured-line': listed('unmeasured-line'),
    },
  }
}
