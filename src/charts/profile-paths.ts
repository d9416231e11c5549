import { area, line } from 'd3-shape'
import type { CutPoint } from '../core/surface/grid-cuts'
import { downOf } from './map-scale'
import { type ProfileScale, profileCutPx } from './profile-scale'

/** The wall's face along these points, down the page. */
export function profilePath(scale: ProfileScale, points: readonly CutPoint[]): string {
  return (
    line<CutPoint>()
      .x(({ deviationUm }) => scale.across(deviationUm))
      .y(({ at }) => downOf(scale, at))
      .digits(1)([...points]) ?? ''
  )
}

/** The wall cut open along these points: from its face to the right. */
export function profileCutPath(scale: ProfileScale, points: readonly CutPoint[]): string {
  return (
    area<CutPoint>()
      .x0(({ deviationUm }) => scale.across(deviationUm))
      .x1(({ deviationUm }) => scale.across(deviationUm) + profileCutPx)
      .y(({ at }) => downOf(scale, at))
      .digits(1)([...points]) ?? ''
  )
}

/** A band between two deviations at each point, µm. */
export function profileBandPath(
  scale: ProfileScale,
  points: readonly CutPoint[],
  between: (point: CutPoint) => readonly [fromUm: number, toUm: number],
): string {
  return (
    area<CutPoint>()
      .x0((point) => scale.across(between(point)[0]))
      .x1((point) => scale.across(between(point)[1]))
      .y(({ at }) => downOf(scale, at))
      .digits(1)([...points]) ?? ''
  )
}
