import { areaRadial, curveLinearClosed, lineRadial } from 'd3-shape'
import type { CutPoint } from '../core/surface/grid-cuts'
import { cutPx, type SectionScale } from './section-scale'

/** The wall's inner face along these points, about the middle of the section. */
export function facePath({ radius }: SectionScale, points: readonly CutPoint[]): string {
  return (
    lineRadial<CutPoint>()
      .angle(({ at }) => at)
      .radius(({ deviationUm }) => radius(deviationUm))
      .digits(1)([...points]) ?? ''
  )
}

/** The wall cut open along these points: from its face outwards. */
export function cutPath({ radius }: SectionScale, points: readonly CutPoint[]): string {
  return (
    areaRadial<CutPoint>()
      .angle(({ at }) => at)
      .innerRadius(({ deviationUm }) => radius(deviationUm))
      .outerRadius(({ deviationUm }) => radius(deviationUm) + cutPx)
      .digits(1)([...points]) ?? ''
  )
}

/** A ring between two deviations at each point, µm. */
export function ringPath(
  { radius }: SectionScale,
  points: readonly CutPoint[],
  between: (point: CutPoint) => readonly [fromUm: number, toUm: number],
): string {
  return (
    areaRadial<CutPoint>()
      .angle(({ at }) => at)
      .innerRadius((point) => radius(between(point)[0]))
      .outerRadius((point) => radius(between(point)[1]))
      .digits(1)([...points]) ?? ''
  )
}

const ovalSteps = Array.from({ length: 72 }, (_, i) => (i * Math.PI) / 36)

/** A closed curve from a deviation, µm, at each angle, rad. */
export function closedPath({ radius }: SectionScale, deviationUm: (angleRad: number) => number): string {
  return (
    lineRadial<number>()
      .angle((angle) => angle)
      .radius((angle) => radius(deviationUm(angle)))
      .curve(curveLinearClosed)
      .digits(1)(ovalSteps) ?? ''
  )
}

/** An arc at one radius, clockwise from one angle to another, rad. */
export function arcPath(radiusPx: number, from: number, to: number): string {
  const steps = Math.max(2, Math.ceil(((to - from) * 180) / Math.PI / 3) + 1)
  const angles = Array.from({ length: steps }, (_, i) => from + ((to - from) * i) / (steps - 1))
  return (
    lineRadial<number>()
      .angle((angle) => angle)
      .radius(radiusPx)
      .digits(1)(angles) ?? ''
  )
}

/** A piece of pie from the middle, between two angles, rad. */
export function wedgePath(radiusPx: number, from: number, to: number): string {
  return `M0,0L${arcPath(radiusPx, from, to).slice(1)}Z`
}
