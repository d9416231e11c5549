import type { DrawnStation, LimitPair } from '../core/findings'
import type { WallGrid } from '../core/surface/wall-grid'
import { nearestNode } from './grid-reading'

export interface Contact {
  readonly depthMm: number
  readonly angle: number
}

/** A patch of wall proven past a limit, with the contacts that prove it, the furthest past first. */
export interface ProvenMark {
  readonly sign: '+' | '−'
  readonly contacts: readonly Contact[]
}

const radians = Math.PI / 180

const bothEnds: readonly number[] = [0, 180]

/** Where the contacts of a station stood, degrees. */
export function contactDegreesOf({
  axisDegrees,
  contactDegrees = bothEnds,
}: DrawnStation): readonly number[] {
  return contactDegrees.map((turn) => (axisDegrees + turn) % 360)
}

/** The same as places, angles in rad in [0, 2π). */
export function contactsOf(station: DrawnStation): readonly Contact[] {
  return contactDegreesOf(station).map((degrees) => ({ depthMm: station.depthMm, angle: degrees * radians }))
}

/** A mark for each connected patch of proven nodes that holds a counted station proven past that limit. */
export function provenMarks(
  grid: WallGrid,
  stations: readonly DrawnStation[],
  pair: LimitPair | undefined,
): readonly ProvenMark[] {
  const patches = patchNumbers(grid)
  const marks = new Map<number, { sign: '+' | '−'; contacts: (Contact & { pastMm: number })[] }>()
  for (const station of stations) {
    const verdict = station.conformity?.verdict
    if (!station.counted || (verdict !== 'above' && verdict !== 'below')) continue
    const limit = verdict === 'above' ? pair?.maxMm : pair?.minMm
    const pastMm = Math.abs(station.diameterMm - (limit ?? grid.middleMm))
    for (const contact of contactsOf(station)) {
      const patch = patches[nearestNode(grid, contact.depthMm, contact.angle)] ?? 0
      if (patch === 0) continue
      const mark = marks.get(patch) ?? { sign: verdict === 'above' ? '+' : '−', contacts: [] }
      mark.contacts.push({ ...contact, pastMm })
      marks.set(patch, mark)
    }
  }
  return [...marks.values()].map(({ sign, contacts }) => ({
    sign,
    contacts: contacts
      .sort((one, other) => other.pastMm - one.pastMm)
      .map(({ depthMm, angle }) => ({ depthMm, angle })),
  }))
}

/** The number of the connected patch that each node belongs to, 0 for none. The last column joins the first. */
function patchNumbers(grid: WallGrid): Uint32Array {
  const columns = grid.angles.length
  const numbers = new Uint32Array(grid.proven.length)
  let patches = 0
  for (let start = 0; start < numbers.length; start++) {
    if (!grid.proven[start] || numbers[start]) continue
    patches++
    const open = [start]
    numbers[start] = patches
    for (let node = open.pop(); node !== undefined; node = open.pop()) {
      for (const near of neighbours(node, columns, numbers.length)) {
        if (numbers[near] || grid.proven[near] !== grid.proven[start]) continue
        numbers[near] = patches
        open.push(near)
      }
    }
  }
  return numbers
}

function neighbours(node: number, columns: number, count: number): readonly number[] {
  const row = node - (node % columns)
  const column = node % columns
  const round = [row + ((column + 1) % columns), row + ((column + columns - 1) % columns)]
  return [...round, node - columns, node + columns].filter((near) => near >= 0 && near < count)
}
