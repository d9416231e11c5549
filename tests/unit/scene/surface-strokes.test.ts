import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import type { SurfaceFinding } from '../../../src/core/measured'
import { deviationAt } from '../../../src/scene/grid-reading'
import { strokeRoles } from '../../../src/scene/stroke-geometry'
import { outlinePaths, surfaceStrokes } from '../../../src/scene/surface-strokes'
import { evenGrid } from './drawn-cylinder'

const radians = Math.PI / 180
const grid = evenGrid((row, column) => row * 2 + column)
const patch: SurfaceFinding = {
  id: 'patch',
  kind: 'rust',
  shape: 'patch',
  fromDepthMm: 10,
  toDepthMm: 30,
  fromDegrees: 350,
  toDegrees: 10,
}

describe('the outline of a surface finding on the drawn wall', () => {
  it('is closed round its place across 0°, within it, and lies on the wall', () => {
    const [path = [], ...others] = outlinePaths(grid, patch)
    expect(others).toEqual([])
    expect(path[0]).toEqual(path.at(-1))
    const angles = path.map(({ angle }) => angle / radians - 360)
    const depths = path.map(({ depthMm }) => depthMm)
    expect(Math.min(...angles)).toBeCloseTo(-10, 9)
    expect(Math.max(...angles)).toBeCloseTo(10, 9)
    expect([Math.min(...depths), Math.max(...depths)]).toEqual([10, 30])
    for (const { angle, depthMm, deviationUm } of path) {
      expect(deviationUm).toBe(deviationAt(grid, depthMm, angle))
    }
  })

  it('follows the wall around in steps of 2° at most', () => {
    const [path = []] = outlinePaths(grid, { ...patch, fromDegrees: 90, toDegrees: 260 })
    path.slice(1).forEach(({ angle }, index) => {
      expect(Math.abs(angle - (path[index]?.angle ?? 0))).toBeLessThanOrEqual(2 * radians + 1e-9)
    })
  })

  it('is two rings where it goes all round', () => {
    const rings = outlinePaths(grid, { ...patch, fromDegrees: 0, toDegrees: 360 })
    expect(rings.map((places) => places[0]?.depthMm)).toEqual([10, 30])
    for (const places of rings) expect(places.at(-1)?.angle).toBeCloseTo(2 * Math.PI, 9)
  })

  it('of a line along the stroke, or of a dot at the deck, still encloses some wall', () => {
    const line = outlinePaths(grid, { ...patch, fromDegrees: 90, toDegrees: 90 })[0] ?? []
    const angles = line.map(({ angle }) => angle)
    expect((Math.max(...angles) - Math.min(...angles)) * (grid.middleMm / 2)).toBeCloseTo(0.6, 9)
    const dot = outlinePaths(grid, { ...patch, fromDepthMm: 0, toDepthMm: 0, fromDegrees: 90, toDegrees: 90 })
    const depths = (dot[0] ?? []).map(({ depthMm }) => depthMm)
    expect(Math.min(...depths)).toBe(0)
    expect(Math.max(...depths)).toBeGreaterThan(0)
  })
})

describe('the shader of lines', () => {
  it('has a colour for each role and counts outlines from that of surface findings on', () => {
    const path = new URL('../../../src/scene/shaders/stroke.vert.glsl', import.meta.url)
    const text = readFileSync(path, 'utf8')
    const number = (pattern: RegExp) => Number(pattern.exec(text)?.[1])
    expect(number(/strokeColours\[(\d+)\];/)).toBe(strokeRoles.length)
    expect(number(/firstOutline = (\d+)\.0;/)).toBe(strokeRoles.indexOf('surface'))
    expect(strokeRoles.slice(strokeRoles.indexOf('surface'))).toEqual([
      'surface',
      'surface-middle',
      'scan-mark-ground',
      'scan-mark',
    ])
  })
})

describe('surface findings as lines', () => {
  it('are each drawn in ink and once more paler along the middle, every ink line before every pale one', () => {
    const other = { ...patch, id: 'other', fromDepthMm: 50, toDepthMm: 60 }
    const strokes = surfaceStrokes(grid, [patch, other], [other])
    expect(strokes.map(({ role }) => role)).toEqual([
      'surface',
      'surface',
      'surface-middle',
      'surface-middle',
    ])
    const [plain, lit, plainMiddle, litMiddle] = strokes.map(({ widthPx }) => widthPx)
    expect(lit).toBeGreaterThan(plain ?? 0)
    expect(plainMiddle).toBeLessThan(plain ?? 0)
    expect(litMiddle).toBeLessThan(lit ?? 0)
  })

  it('are faint on the wall nearest the eye, through which one looks', () => {
    for (const { farOpacity, nearOpacity } of surfaceStrokes(grid, [patch], [])) {
      expect(farOpacity).toBe(1)
      expect(nearOpacity).toBeLessThan(0.5)
    }
  })
})
