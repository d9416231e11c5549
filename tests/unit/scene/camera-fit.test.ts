import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Point } from '../../../src/scene/bore-space'
import {
  type Aim,
  cameraAxes,
  type Extent,
  type Fit,
  type Frame,
  fitCamera,
} from '../../../src/scene/camera-fit'
import { runCount } from '../../proof/run-count'

const seed = 20240702
const numRuns = runCount({ quick: 300, full: 10_000 })
const trifle = 1e-6
const frame: Frame = {
  width: 592,
  height: 492,
  fieldOfView: 0.3,
  margins: { top: 26, right: 16, bottom: 28, left: 48 },
  corners: [],
}

const coordinate = fc.double({ min: -60, max: 60, noNaN: true })
/** Never smaller than 10 mm each way. */
const core: readonly Point[] = [-5, 5].flatMap((at) => [
  { x: at, y: 0, z: 0 },
  { x: 0, y: at, z: 0 },
  { x: 0, y: 0, z: at },
])
const clouds = fc
  .array(fc.record({ x: coordinate, y: coordinate, z: coordinate }), { maxLength: 30 })
  .map((points) => [...core, ...points])
const aims = fc.record({
  azimuth: fc.double({ min: -4, max: 4, noNaN: true }),
  polar: fc.double({ min: 0, max: 2, noNaN: true }),
})

const alone = (points: readonly Point[]): readonly Extent[] => [{ points, offsetMm: 0 }]

/** Where a fitted camera sees a point, CSS pixels: a pinhole, written down apart from the fit. */
function seen(point: Point, aim: Aim, fit: Fit, { width, height, fieldOfView }: Frame, offsetMm = 0) {
  const { right, up, toEye } = cameraAxes(aim)
  const dot = (axis: Point) => axis.x * point.x + axis.y * point.y + axis.z * point.z
  const ahead = fit.distance - dot(toEye)
  const focal = height / 2 / Math.tan(fieldOfView / 2)
  return {
    ahead,
    x: width / 2 + (dot(right) / ahead + offsetMm / fit.distance) * focal,
    y: height / 2 - ((dot(up) - fit.shiftUp) / ahead) * focal,
  }
}

describe('fitting the camera', () => {
  it(`leaves every point at least 10 mm in front of the eye and inside the margins, seed ${seed}`, () => {
    fc.assert(
      fc.property(clouds, aims, (points, aim) => {
        const fit = fitCamera(alone(points), aim, frame)
        for (const point of points) {
          const at = seen(point, aim, fit, frame)
          expect(at.ahead).toBeGreaterThan(10 - trifle)
          expect(at.x).toBeGreaterThan(48 - trifle)
          expect(at.x).toBeLessThan(592 - 48 + trifle)
          expect(at.y).toBeGreaterThan(26 - trifle)
          expect(at.y).toBeLessThan(492 - 28 + trifle)
        }
      }),
      { seed, numRuns },
    )
  })

  it(`leaves every point of a row of bores inside the margins, the outermost at one of them, seed ${seed}`, () => {
    fc.assert(
      fc.property(fc.array(clouds, { minLength: 2, maxLength: 8 }), aims, (row, aim) => {
        const bores = row.map((points, index) => ({
          points,
          offsetMm: (index - (row.length - 1) / 2) * 150,
        }))
        const fit = fitCamera(bores, aim, frame)
        const places = bores.flatMap(({ points, offsetMm }) =>
          points.map((point) => seen(point, aim, fit, frame, offsetMm)),
        )
        const across = places.map(({ x }) => Math.abs(x - frame.width / 2))
        expect(Math.max(...across)).toBeCloseTo(frame.width / 2 - 48, 6)
        for (const { y } of places) expect(y > 26 - trifle && y < 492 - 28 + trifle).toBe(true)
      }),
      { seed, numRuns },
    )
  })

  it('goes no further away than it must: a tall thing touches both margins', () => {
    const tall = [
      { x: 0, y: 45, z: 0 },
      { x: 0, y: -45, z: 0 },
    ]
    const aim = { azimuth: 0, polar: Math.PI / 2 }
    const fit = fitCamera(alone(tall), aim, frame)
    const [top, bottom] = tall.map((point) => seen(point, aim, fit, frame).y)
    expect(top).toBeCloseTo(26, 6)
    expect(bottom).toBeCloseTo(464, 6)
  })

  it('steps back until nothing lies under a corner', () => {
    const corner = { x: 400, y: 0, width: 192, height: 120 }
    const square = [-40, 40].flatMap((x) => [-40, 40].map((y) => ({ x, y, z: 0 })))
    const aim = { azimuth: 0, polar: Math.PI / 2 }
    const without = fitCamera(alone(square), aim, frame)
    const fit = fitCamera(alone(square), aim, { ...frame, corners: [corner] })
    expect(fit.distance).toBeGreaterThan(without.distance)
    for (const point of square) {
      const at = seen(point, aim, fit, frame)
      expect(at.x > corner.x && at.y < corner.y + corner.height).toBe(false)
    }
  })

  it('counts directions as seen from the deck: looking down, the front is up and the right is right', () => {
    const { right, up, toEye } = cameraAxes({ azimuth: Math.PI, polar: 0 })
    expect(toEye.y).toBeCloseTo(1, 12)
    expect(up.z).toBeCloseTo(1, 12)
    expect(right.x).toBeCloseTo(-1, 12)
  })
})
