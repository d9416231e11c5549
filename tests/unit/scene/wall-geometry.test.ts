import { describe, expect, it } from 'vitest'
import { drawnPosition } from '../../../src/core/surface/drawn-position'
import type { WallGrid } from '../../../src/core/surface/wall-grid'
import { glassGeometry, provenGeometry, wallGeometry } from '../../../src/scene/wall-geometry'
import { evenGrid } from './drawn-cylinder'

const grid = evenGrid(() => 0)

/** For each triangle, how far it faces away from the axis, and its nodes. */
function triangles(geometry: ReturnType<typeof wallGeometry>, on: WallGrid) {
  const node = geometry.getAttribute('node')
  const index = [...(geometry.getIndex()?.array ?? [])]
  return Array.from({ length: index.length / 3 }, (_, triangle) => {
    const corners = index.slice(triangle * 3, triangle * 3 + 3)
    const nodes = corners.map((vertex) => [node.getX(vertex), node.getY(vertex)] as const)
    const [a, b, c] = nodes.map(([column, row]) => drawnPosition(on, 1, column, row))
    if (!a || !b || !c) throw new Error('expected three corners')
    const one = [b[0] - a[0], b[1] - a[1], b[2] - a[2]] as const
    const other = [c[0] - a[0], c[1] - a[1], c[2] - a[2]] as const
    const normalX = one[1] * other[2] - one[2] * other[1]
    const normalZ = one[0] * other[1] - one[1] * other[0]
    return { nodes, outward: normalX * (a[0] + b[0] + c[0]) + normalZ * (a[2] + b[2] + c[2]) }
  })
}

describe('the unit grid of the wall', () => {
  it('has a vertex for every node and closes the seam', () => {
    const node = wallGeometry(12, 9).getAttribute('node')
    const found = new Set(Array.from({ length: node.count }, (_, i) => `${node.getX(i)},${node.getY(i)}`))
    expect(found.size).toBe(13 * 9)
    expect(found.has('12,8')).toBe(true)
  })

  it('covers each cell with two triangles that face away from the axis', () => {
    const all = triangles(wallGeometry(12, 9), grid)
    expect(all).toHaveLength(12 * 8 * 2)
    for (const { outward } of all) expect(outward).toBeGreaterThan(0)
  })

  it('has fewer vertices for the glass, both ends and the seam kept', () => {
    const all = triangles(
      glassGeometry(13, 10),
      evenGrid(() => 0, 10, 13),
    )
    for (const { outward } of all) expect(outward).toBeGreaterThan(0)
    expect(all.length).toBeLessThan(13 * 9)
    const nodes = all.flatMap((triangle) => triangle.nodes)
    expect(Math.max(...nodes.map(([column]) => column))).toBe(13)
    expect(Math.max(...nodes.map(([, row]) => row))).toBe(9)
  })

  it('draws again only the cells round proven nodes', () => {
    const proven = new Uint8Array(grid.proven.length)
    proven[3 * 12] = 1
    const again = triangles(provenGeometry({ ...grid, proven }), grid)
    // Four cells meet at the node on the seam.
    expect(again).toHaveLength(4 * 2)
    expect(triangles(provenGeometry(grid), grid)).toEqual([])
  })
})
