import { readFileSync } from 'node:fs'
import type { RadialScan } from '../../../../src/core/scan/radial-scan'

/**
 * The scanned two-stroke of the scenarios, invented: 60 mm, four smears with scores in them, a bridge that stands
 * proud, ports. The spindle stood 18 µm towards 0° and −11 µm towards 90° off the axis at the deck and leaned by 0.15
 * and −0.05 µm for each mm.
 */
export function fourCornerScuff(angles: 72 | 360): RadialScan {
  const text = readFileSync(new URL(`./four-corner-scuff-${angles}.csv`, import.meta.url), 'utf8')
  const rows = text
    .trim()
    .split(/\r?\n/)
    .slice(1)
    .map((line) => line.split(','))
  const depthsMm = [...new Set(rows.map(([depth]) => Number(depth)))]
  const anglesDegrees = [...new Set(rows.map(([, angle]) => Number(angle)))]
  const radiiUm = Float64Array.from(rows, ([, , radius = '']) =>
    radius.trim() === '' ? Number.NaN : Number(radius),
  )
  return { depthsMm, anglesDegrees, radiiUm }
}

export const scuffOptions = { nearDiameterMm: 60, repeatabilityUm: 0.8, repeatabilityDegreesOfFreedom: 50 }
