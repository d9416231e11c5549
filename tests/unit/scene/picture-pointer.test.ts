import { PerspectiveCamera, Vector3 } from 'three'
import { describe, expect, it } from 'vitest'
import { inspect } from '../../../src/core/inspect'
import { gridOf } from '../../../src/core/surface/grid-of'
import { wallOf } from '../../../src/core/surface/wall'
import { drawnRadius, onCircle } from '../../../src/scene/bore-space'
import { cameraAxes } from '../../../src/scene/camera-fit'
import { placeUnder } from '../../../src/scene/picture-pointer'
import { PictureView } from '../../../src/scene/picture-view'
import { contactsOf } from '../../../src/scene/proven-marks'
import { scenario } from '../scenarios/scenario'

const job = scenario('A-two-stroke-single.json')
const [bore] = job.bores
const [finding] = inspect(job).bores
if (!bore || !finding) throw new Error('the scenario has no bore')
const wall = wallOf(bore, finding)
if (!wall) throw new Error('the scenario has no wall')
const grid = gridOf(wall, finding, { rows: 128, columns: 256 })
const stations = finding.stations.filter(({ counted }) => counted)
const exaggeration = 200
const size = { width: 592, height: 492 }

/** Ten eyes: round the bore, from above and from below its mouth, near and far; azimuth and polar in degrees. */
const eyes: readonly (readonly [azimuth: number, polar: number, distance: number])[] = [
  [180, 67, 260],
  [90, 67, 260],
  [0, 67, 260],
  [-90, 67, 260],
  [180, 1, 300],
  [45, 30, 220],
  [135, 90, 260],
  [-45, 110, 300],
  [200, 50, 600],
  [10, 75, 180],
]

/** How far from the middle of a row the bore stands, mm. */
const offsets = [0, 150, -40]

function seenFrom(azimuth: number, polar: number, distance: number, offset: number) {
  const camera = new PerspectiveCamera(28, size.width / size.height, 1, 2000)
  const { toEye } = cameraAxes({ azimuth: (azimuth * Math.PI) / 180, polar: (polar * Math.PI) / 180 })
  camera.position.set(toEye.x, toEye.y, toEye.z).multiplyScalar(distance)
  camera.lookAt(new Vector3(0, 0, 0))
  camera.updateMatrixWorld()
  const view = new PictureView()
  view.see(camera, size, distance)
  view.holdBore(exaggeration, offset)
  return { camera, view }
}

const seats = eyes.map((eye, index) => [...eye, offsets[index % offsets.length] ?? 0] as const)

describe.each(seats)(
  'seen from azimuth %s°, polar %s°, %s mm away, %s mm beside',
  (azimuth, polar, distance, offset) => {
    const { camera, view } = seenFrom(azimuth, polar, distance, offset)
    const far = stations.flatMap((station) =>
      contactsOf(station).flatMap((contact, index) => {
        const radius = drawnRadius(grid.middleMm, exaggeration, (station.diameterMm - grid.middleMm) * 1000)
        const place = onCircle(grid.lengthMm, contact.angle, contact.depthMm, radius)
        const at = view.project(place) ? { x: view.x, y: view.y } : undefined
        const facing = view.facing(onCircle(0, contact.angle, 0, 1), place)
        const x = at ? at.x - view.shiftPx : -1
        const isIn = at && x > 0 && x < size.width && at.y > 0 && at.y < size.height
        return isIn && facing < -0.1
          ? [{ at, facing, depthMm: station.depthMm, angleDegrees: station.axisDegrees + 180 * index }]
          : []
      }),
    )

    it('every station of the far wall is what is pointed at where it is drawn', () => {
      expect(far.length).toBeGreaterThan(7)
      for (const { at, depthMm, angleDegrees } of far) {
        expect(placeUnder({ grid, stations, exaggeration }, view, camera, at.x, at.y)).toEqual({
          depthMm,
          angleDegrees,
        })
      }
    })

    it('the wall itself is met at that place too, to what a pixel covers there', () => {
      let met = 0
      for (const { at, facing, depthMm, angleDegrees } of far) {
        const place = placeUnder({ grid, stations: [], exaggeration }, view, camera, at.x, at.y)
        if (!place) {
          // Only at the rim can a ray pass over the wall that is drawn.
          expect(Math.abs(facing)).toBeLessThan(0.2)
          continue
        }
        met++
        const pixelMm = 1 / (view.pixelsPerMm * Math.abs(facing))
        const round = Math.abs(((place.angleDegrees - angleDegrees + 540) % 360) - 180)
        expect(Math.abs(place.depthMm - depthMm)).toBeLessThan(0.1 + pixelMm)
        expect((round * Math.PI * grid.middleMm) / 360).toBeLessThan(0.1 + pixelMm)
      }
      expect(met).toBeGreaterThan(0.8 * far.length)
    })
  },
)

describe('a gauge of three contacts', () => {
  it('stood at three places, 120° apart, and not across from its first', () => {
    const station = {
      ...(stations[0] ?? {}),
      axisDegrees: 30,
      contactDegrees: [0, 120, 240],
    } as (typeof stations)[0]
    expect(contactsOf(station).map(({ angle }) => Math.round((angle * 180) / Math.PI))).toEqual([
      30, 150, 270,
    ])
  })
})
