import { area, line } from 'd3-shape'
import type { CourseLine } from '../core/outlook/hours-course'
import type { HoursScale } from './hours-scale'

const steps = 48

function hoursBetween(from: number, to: number): number[] {
  return Array.from({ length: steps + 1 }, (_, i) => from + ((to - from) * i) / steps)
}

/** A line over hours; its edges are where it may lie, so it may leave the chart. */
export function coursePath({ x, y }: HoursScale, { at }: CourseLine, from: number, to: number): string {
  return (
    line<number>()
      .x((hours) => x(hours))
      .y((hours) => y(at(hours).sizeMm))
      .digits(1)([from, to]) ?? ''
  )
}

/** Between its lower and its upper bound. */
export function courseBandPath({ x, y }: HoursScale, { at }: CourseLine, from: number, to: number): string {
  return (
    area<number>()
      .x((hours) => x(hours))
      .y0((hours) => y(at(hours).sizeMm - at(hours).boundMm))
      .y1((hours) => y(at(hours).sizeMm + at(hours).boundMm))
      .digits(1)(hoursBetween(from, to)) ?? ''
  )
}
