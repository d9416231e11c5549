import fc from 'fast-check'
import { PerspectiveCamera, Vector3 } from 'three'
import { describe, expect, it } from 'vitest'
import { DrawnPlaces } from '../../../src/scene/drawn-places'
import { PictureView } from '../../../src/scene/picture-view'
import { runCount } from '../../proof/run-count'

const seed = 20261125
const numRuns = runCount({ quick: 200, full: 10_000 })
const size = { width: 592, height: 492 }

function cameraAt(x: number, y: number, z: number): PerspectiveCamera {
  const camera = new PerspectiveCamera(16, size.width / size.height, 1, 2000)
  camera.position.set(x, y, z)
  camera.lookAt(0, 0, 0)
  camera.updateMatrixWorld()
  return camera
}

const inBore = fc.double({ min: -80, max: 80, noNaN: true })
const away = fc.double({ min: 250, max: 900, noNaN: true })

describe('what is seen', () => {
  it(`puts a place where the camera of three does, moved by where its bore stands, seed ${seed}`, () => {
    fc.assert(
      fc.property(inBore, inBore, inBore, away, inBore, away, (x, y, z, eyeX, eyeY, eyeZ) => {
        const camera = cameraAt(eyeX, eyeY, eyeZ)
        const view = new PictureView()
        view.see(camera, size, camera.position.length())
        view.holdBore(200, 35)
        expect(view.project({ x, y, z })).toBe(true)
        const clip = new Vector3(x, y, z).project(camera)
        expect(view.x - 35 * view.pixelsPerMm).toBeCloseTo(((clip.x + 1) / 2) * size.width, 6)
        expect(view.y).toBeCloseTo(((1 - clip.y) / 2) * size.height, 6)
      }),
      { seed, numRuns },
    )
  })

  it('draws a mm at the middle of the bore so many pixels long, and nothing behind the eye', () => {
    const camera = cameraAt(0, 0, 400)
    const view = new PictureView()
    view.see(camera, size, 400)
    view.project({ x: 10, y: 0, z: 0 })
    // By hand: half of the height over the tangent of 8° and 400 mm is 4.376 pixels for a mm.
    expect(view.x - size.width / 2).toBeCloseTo(43.76, 2)
    expect(view.pixelsPerMm).toBeCloseTo(4.376, 3)
    expect(view.elevation).toBeCloseTo(0, 9)
    expect(view.project({ x: 0, y: 0, z: 401 })).toBe(false)
  })

  it('counts the angle of the line of sight from the deck, π/2 straight down', () => {
    const view = new PictureView()
    view.see(cameraAt(0, 300, 300), size, 424)
    expect(view.elevation).toBeCloseTo(Math.PI / 4, 9)
    view.see(cameraAt(0, 400, 0.0001), size, 400)
    expect(view.elevation).toBeCloseTo(Math.PI / 2, 4)
  })
})

describe('places that labels keep to', () => {
  const bore = { middleMm: 54, lengthMm: 80 }
  const view = new PictureView()
  view.see(cameraAt(0, 0, 400), size, 400)
  view.holdBore(500, 0)
  const places = [
    { angle: 0, depthMm: 40, deviationUm: 8 },
    { angle: Math.PI, depthMm: 40, deviationUm: 8 },
    { angle: Math.PI / 2, depthMm: 0, deviationUm: 8 },
    { angle: 0, depthMm: 40, deviationUm: 'axis' as const },
  ]

  it('are where the exaggerated wall is drawn, and face the eye on the near side alone', () => {
    const drawn = new DrawnPlaces(bore, places)
    expect(drawn.look(view, 0)).toBe(true)
    expect(drawn.facing).toBeCloseTo(1, 9)
    expect(drawn.look(view, 1)).toBe(true)
    expect(drawn.facing).toBeCloseTo(-1, 9)
    // By hand: a radius of 27 mm and 500 times 4 µm is 29 mm, at 90°, to the left of an eye at the front.
    drawn.look(view, 2)
    expect(drawn.x).toBeCloseTo(size.width / 2 - 29 * view.pixelsPerMm, 6)
    expect(drawn.y).toBeCloseTo(size.height / 2 - 40 * view.pixelsPerMm, 6)
    drawn.look(view, 3)
    expect([drawn.x, drawn.y]).toEqual([size.width / 2, size.height / 2])
  })

  it('are found by the direction of the picture that they lie furthest in', () => {
    const drawn = new DrawnPlaces(bore, places)
    expect(drawn.lookFurthest(view, -1, 0)).toBe(true)
    expect(drawn.y).toBeCloseTo(size.height / 2 - 40 * view.pixelsPerMm, 6)
    expect(new DrawnPlaces(bore, []).lookFurthest(view, -1, 0)).toBe(false)
  })

  it('of a bore beside the one in hand lie beside it, at that bore’s own exaggeration', () => {
    const beside = { exaggeration: 1000, offsetMm: 120 }
    const drawn = new DrawnPlaces({ ...bore, beside }, places)
    drawn.look(view, 2)
    expect(drawn.x).toBeCloseTo(size.width / 2 + (120 - 31) * view.pixelsPerMm, 6)
  })
})
