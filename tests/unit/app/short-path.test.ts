import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { shortPath } from '../../../src/app/short-path'

const seed = 20261127

interface Line {
  readonly from: readonly [number, number]
  readonly to: readonly [number, number]
}

/** The lines of a path as SVG reads it (SVG 2, 9.3): absolute M and L, relative l, and back to the beginning by Z. */
function linesOf(path: string): Line[] {
  const lines: Line[] = []
  let at: readonly [number, number] = [0, 0]
  let begun = at
  for (const [, letter = '', rest = ''] of path.matchAll(/([MLlZz])([^MLlZz]*)/g)) {
    if (letter === 'Z' || letter === 'z') {
      lines.push({ from: at, to: begun })
      at = begun
      continue
    }
    const numbers = (rest.match(/-?\d*\.?\d+/g) ?? []).map(Number)
    for (let i = 0; i < numbers.length; i += 2) {
      const [x, y] = [numbers[i] ?? 0, numbers[i + 1] ?? 0]
      const to = letter === 'l' ? ([at[0] + x, at[1] + y] as const) : ([x, y] as const)
      if (letter === 'M' && i === 0) begun = to
      else lines.push({ from: at, to })
      at = to
    }
  }
  return lines
}

function distance({ from: [ax, ay], to: [bx, by] }: Line, [x, y]: readonly [number, number]): number {
  const square = (bx - ax) ** 2 + (by - ay) ** 2
  const along = square === 0 ? 0 : ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / square
  const share = Math.min(1, Math.max(0, along))
  return Math.hypot(x - ax - share * (bx - ax), y - ay - share * (by - ay))
}

describe('a path in few letters', () => {
  it('is written from point to point, without those on a straight run', () => {
    expect(shortPath('M710.0,226.5L710.0,221.7L710.0,217.0L700,217.1L690.5,217.1Z')).toBe(
      'M710,226.5l0-9.5-19.5 .1z',
    )
    expect(shortPath('M0,0L1,1ZM5,5L6,5')).toBe('M0,0l1 1zM5,5l1 0')
    expect(shortPath('M0,0L9,0L3,0')).toBe('M0,0l9 0-6 0')
  })

  it('stays as it is where it is more than straight lines between points', () => {
    for (const path of ['M50.4,38l-364,364', 'M1,1h5v5Z', 'M0,0C1,1 2,2 3,3', 'M0,0A1,1 0 0 1 2,2', ''])
      expect(shortPath(path)).toBe(path)
  })

  it(`has each corner within a fifth of a pixel, and no corner that the path has not (seed ${seed})`, () => {
    const small = fc.integer({ min: -60, max: 60 }).map((value) => value / 10)
    const far = fc.integer({ min: -9000, max: 9000 }).map((value) => value / 10)
    const run = fc.array(fc.oneof(fc.tuple(small, small), fc.tuple(far, far)), {
      minLength: 1,
      maxLength: 14,
    })
    fc.assert(
      fc.property(fc.array(fc.tuple(run, fc.boolean()), { minLength: 1, maxLength: 4 }), (runs) => {
        const path = runs
          .map(([points, closed]) => `M${points.map(([x, y]) => `${x},${y}`).join('L')}${closed ? 'Z' : ''}`)
          .join('')
        const drawn = linesOf(shortPath(path))
        const corners = runs.flatMap(([points]) => points)
        for (const [points] of runs.filter(([all]) => all.length > 1)) {
          for (const corner of points) {
            expect(Math.min(...drawn.map((line) => distance(line, corner)))).toBeLessThan(0.2)
          }
        }
        for (const { to } of drawn) {
          expect(corners.some(([x, y]) => Math.hypot(x - to[0], y - to[1]) < 1e-6)).toBe(true)
        }
      }),
      { seed },
    )
  })
})
