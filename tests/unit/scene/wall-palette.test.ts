import { describe, expect, it } from 'vitest'
import { rampSpan } from '../../../src/core/surface/ramp-span'
import { type Theme, wallPaint, wallPalette } from '../../../src/scene/wall-palette'
import { report } from '../../proof/record'

type Rgb = readonly [number, number, number]
const themes: readonly Theme[] = ['light', 'dark']

function rgbOf(css: string): Rgb {
  const hex = /^#(..)(..)(..)$/.exec(css)
  const parts = hex
    ? hex.slice(1).map((part) => Number.parseInt(part, 16))
    : (css.match(/\d+/g) ?? []).map(Number)
  return [parts[0] ?? 0, parts[1] ?? 0, parts[2] ?? 0]
}

/** sRGB to linear light, IEC 61966-2-1:1999. */
function linear(value: number): number {
  const share = value / 255
  return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4
}

/** Relative luminance, Rec. ITU-R BT.709-6, item 3.2. */
function luminance(css: string): number {
  const [r, g, b] = rgbOf(css).map(linear)
  return 0.2126 * (r ?? 0) + 0.7152 * (g ?? 0) + 0.0722 * (b ?? 0)
}

/** Contrast of two colours, Web Content Accessibility Guidelines 2.2 (W3C 2023), "contrast ratio". */
function contrast(one: string, other: string): number {
  const [low = 0, high = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b)
  return (high + 0.05) / (low + 0.05)
}

/** Simulated colour vision, full severity: Machado, Oliveira, Fernandes 2009, table 1 (digits from memory). */
const visions: Readonly<Record<string, readonly Rgb[]>> = {
  protanopia: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deuteranopia: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritanopia: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
}

/** CIE L*a*b* of linear sRGB, D65: CIE 15:2004, 8.2.1; matrix of IEC 61966-2-1. */
function lab([r, g, b]: Rgb): Rgb {
  const f = (t: number) => (t > 216 / 24389 ? Math.cbrt(t) : (t * 24389) / 27 / 116 + 16 / 116)
  const x = f((0.4124 * r + 0.3576 * g + 0.1805 * b) / 0.9505)
  const y = f(0.2126 * r + 0.7152 * g + 0.0722 * b)
  const z = f((0.0193 * r + 0.1192 * g + 0.9505 * b) / 1.089)
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)]
}

/** Distance of two colours for an eye, CIE 1976 ΔE*ab. */
function distanceFor(rows: readonly Rgb[], one: string, other: string): number {
  const seen = (css: string): Rgb => {
    const [r = 0, g = 0, b = 0] = rgbOf(css).map(linear)
    const [x = 0, y = 0, z = 0] = rows.map((row) => Math.max(0, row[0] * r + row[1] * g + row[2] * b))
    return lab([x, y, z])
  }
  const [a, b] = [seen(one), seen(other)]
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2])
}

describe('the colours of the wall', () => {
  for (const theme of themes) {
    const { ramp, tight, loose, wallInk, wallPaper } = wallPalette(theme)
    const [low = '', high = ''] = [ramp[0], ramp[ramp.length - 1]]

    it(`are lightest in the middle and darker toward both ends (${theme})`, () => {
      const lights = ramp.map(luminance)
      const middle = (ramp.length - 1) / 2
      for (let step = 1; step <= middle; step++) {
        expect(lights[middle - step] ?? 0).toBeLessThan(lights[middle - step + 1] ?? 0)
        expect(lights[middle + step] ?? 0).toBeLessThan(lights[middle + step - 1] ?? 0)
      }
    })

    for (const [name, rows] of Object.entries(visions)) {
      it(`keep tight from loose, inside and proven, for an eye with ${name} (${theme})`, () => {
        expect(distanceFor(rows, low, high)).toBeGreaterThan(25)
        expect(distanceFor(rows, tight, loose)).toBeGreaterThan(25)
        expect(distanceFor(rows, low, tight)).toBeGreaterThan(25)
        expect(distanceFor(rows, high, loose)).toBeGreaterThan(25)
      })
    }

    it(`keep each step of the ramp from the next, on either side of the middle, for every eye (${theme})`, () => {
      const eyes: Readonly<Record<string, readonly Rgb[]>> = {
        'all cones': [
          [1, 0, 0],
          [0, 1, 0],
          [0, 0, 1],
        ],
        ...visions,
      }
      for (const [name, rows] of Object.entries(eyes)) {
        const steps = ramp.slice(1).map((step, i) => distanceFor(rows, ramp[i] ?? '', step))
        report(`Colours of the wall, ${theme}: neighbouring steps, ${name}`, {
          'steps of the ramp': ramp.length,
          'least ΔE*ab': Math.min(...steps).toFixed(1),
          'most ΔE*ab': Math.max(...steps).toFixed(1),
        })
        // 2.3 is a just noticeable difference (Mahy, Van Eycken, Oosterlinck 1994, from memory).
        expect(Math.min(...steps)).toBeGreaterThan(2.3)
      }
    })

    it(`show proof in grey: the strong colours stand off from every colour inside (${theme})`, () => {
      for (const inside of ramp) {
        expect(contrast(tight, inside)).toBeGreaterThan(1.9)
        expect(contrast(loose, inside)).toBeGreaterThan(1.9)
      }
    })

    it(`carry ink that can be read: 4.5 on the ramp and on unmeasured wall, for labels (${theme})`, () => {
      for (const ground of [...ramp, wallPaper]) expect(contrast(wallInk, ground)).toBeGreaterThan(4.5)
    })
  }
})

describe('where the ramp ends', () => {
  const none = new Float32Array(4)

  it('is at the limits drawn', () => {
    const span = rampSpan(54.025, { kind: 'wear', minMm: 54, maxMm: 54.05 }, none)
    expect(span.lowUm).toBeCloseTo(-25, 6)
    expect(span.highUm).toBeCloseTo(25, 6)
  })

  it('is as far the other way where one limit is missing', () => {
    const span = rampSpan(54, { kind: 'wear', maxMm: 54.05 }, none)
    expect(span.highUm).toBeCloseTo(50, 6)
    expect(span.lowUm).toBeCloseTo(-50, 6)
  })

  it('is at the furthest deviation without limits, and never without width', () => {
    expect(rampSpan(54, undefined, Float32Array.of(-3, 7))).toEqual({ lowUm: -7, highUm: 7 })
    expect(rampSpan(54, undefined, none)).toEqual({ lowUm: -1, highUm: 1 })
  })

  it('gives past either end the colour of that end', () => {
    const grid = { middleMm: 54.025, deviationsUm: none }
    const { colour } = wallPaint(grid, { kind: 'band', minMm: 54, maxMm: 54.05 }, 'light')
    expect(rgbOf(colour(400))).toEqual(rgbOf(colour(25)))
    expect(rgbOf(colour(25))).toEqual(rgbOf(wallPalette('light').ramp.at(-1) ?? ''))
    expect(rgbOf(colour(-400))).toEqual(rgbOf(wallPalette('light').ramp[0] ?? ''))
  })
})
