import { interpolateLab, piecewise } from 'd3-interpolate'
import type { LimitPair } from '../core/findings'
import { type RampSpan, rampSpan } from '../core/surface/ramp-span'

export type Theme = 'light' | 'dark'

/** Colours of the wall and of what is drawn round it, as written to the screen in sRGB. */
export interface WallPalette {
  /** The wall inside the pair, from tight to loose, in even steps. */
  readonly ramp: readonly string[]
  /** Proven below the min, proven above the max. */
  readonly tight: string
  readonly loose: string
  /** Rings, shell and keys of the two limits, seen against the page. */
  readonly minRing: string
  readonly maxRing: string
  readonly newMaxRing: string
  /** Lines on the wall, and the pale ground of wall that nobody measured. */
  readonly wallInk: string
  readonly wallPaper: string
  /** Lines of the glass wall, seen against the page and against the wall. */
  readonly glass: string
}

/**
 * Cool and amber differ in blue against yellow, which the common colour-vision deficiencies keep apart. Both
 * are about as light as each other, so in grey only the signs on lines and patches tell the two ends apart;
 * the strong colours are much darker than any colour of the ramp, so proof shows in grey too.
 */
const anchors: Record<Theme, readonly string[]> = {
  light: ['#7fa9ba', '#f0ece1', '#cf9a3f'],
  dark: ['#7fa3b3', '#d3cfc4', '#d0a04a'],
}

const rampLength = 9

function rampOf(theme: Theme): readonly string[] {
  const colour = piecewise(interpolateLab, [...anchors[theme]])
  return Array.from({ length: rampLength }, (_, index) => colour(index / (rampLength - 1)))
}

const palettes: Record<Theme, WallPalette> = {
  light: {
    ramp: rampOf('light'),
    tight: '#1f5f8b',
    loose: '#a3481c',
    minRing: '#1f5f8b',
    maxRing: '#a3481c',
    newMaxRing: '#5d6159',
    wallInk: '#20231f',
    wallPaper: '#faf8f3',
    glass: '#20231f',
  },
  dark: {
    ramp: rampOf('dark'),
    tight: '#1f5f8b',
    loose: '#a3481c',
    minRing: '#6fb0dc',
    maxRing: '#e8915f',
    newMaxRing: '#a7aaa2',
    wallInk: '#20231f',
    wallPaper: '#e6e2d8',
    glass: '#85888a',
  },
}

export function wallPalette(theme: Theme): WallPalette {
  return palettes[theme]
}

/** What colours one wall, in the picture and on the map alike. */
export interface WallPaint {
  readonly span: RampSpan
  /** Colour inside the pair at a deviation from the middle, µm. Past the span: the end's colour. */
  readonly colour: (deviationUm: number) => string
}

/** The paint of a wall whose deviations, µm, are counted from a middle, mm, between a pair of limits. */
export function wallPaint(
  { middleMm, deviationsUm }: { readonly middleMm: number; readonly deviationsUm: Float32Array },
  pair: LimitPair | undefined,
  theme: Theme,
): WallPaint {
  const span = rampSpan(middleMm, pair, deviationsUm)
  const ramp = piecewise(interpolateLab, [...palettes[theme].ramp])
  return {
    span,
    colour(deviationUm) {
      const share = (deviationUm - span.lowUm) / (span.highUm - span.lowUm)
      return ramp(Math.min(1, Math.max(0, share)))
    },
  }
}
