import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Port } from '../../../../src/core/measured'
import { drawnPosition } from '../../../../src/core/surface/drawn-position'
import { exaggerationEnd } from '../../../../src/core/surface/exaggeration'
import { gridOf } from '../../../../src/core/surface/grid-of'
import { wallOf } from '../../../../src/core/surface/wall'
import type { WallGrid } from '../../../../src/core/surface/wall-grid'
import { type WallSolid, wallSolid } from '../../../../src/core/surface/wall-solid'
import { runCount } from '../../../proof/run-count'
import { inventedCylinder, inventedPorts, made, type Plan } from './invented-cylinder'
import { allTriangles, checkedByManifold } from './manifold-of'
import { raggedSurveys } from './ragged-survey'

const seed = 20260411
const numRuns = runCount({ quick: 30, full: 1_000 })

function gridFor(plan: Plan, size: { rows?: number; columns?: number } = {}): WallGrid {
  const { bore, finding } = made(plan)
  const wall = wallOf(bore, finding)
  if (!wall) throw new Error('expected a wall')
  return gridOf(wall, finding, size)
}

function solidOf(grid: WallGrid, ports: readonly Port[], exaggeration: number): WallSolid {
  const solid = wallSolid(grid, ports, exaggeration)
  if (solid.kind !== 'solid') throw new Error(`expected a solid, got ${solid.why}`)
  return solid
}

function checked(solid: WallSolid) {
  return checkedByManifold(solid.positionsMm, allTriangles(solid))
}

const few = { rows: 12, columns: 36 }

/** A wall of one diameter all over. */
const roundWall = gridFor({ spots: [{ depthMm: 30, axisDegrees: 0, diameterMm: 54 }], lengthMm: 90 }, few)

const rad = Math.PI / 180

/** Of the triangles between the middle of a circle of radius 1 and corners at these angles, one after another. */
function sectorArea(angles: readonly number[]): number {
  return angles.slice(1).reduce((sum, angle, i) => sum + Math.sin(angle - (angles[i] ?? 0)) / 2, 0)
}

/** Of the round wall of 54 mm in a tube 5.2 mm thick and 90 mm high, less the groove of 6° outside, mm³. */
function tubeVolume(angles: readonly number[]): number {
  const [inner, outer, bottom] = [27, 27 + 5.2, 27 + 4]
  const around = sectorArea([...angles, (angles[0] ?? 0) + 2 * Math.PI])
  const groove = sectorArea([-3 * rad, 0, 3 * rad]) * (outer ** 2 - bottom ** 2) * 90 * 0.15
  return around * (outer ** 2 - inner ** 2) * 90 - groove
}

describe('the model of a wall', () => {
  it('is one closed tube by an independent mesh library, for the invented cylinder with its ports', () => {
    const { bore, finding } = inventedCylinder()
    const wall = wallOf(bore, finding)
    if (!wall) throw new Error('expected a wall')
    const solid = solidOf(gridOf(wall, finding, { rows: 64, columns: 96 }), inventedPorts, 500)
    expect(checked(solid)).toMatchObject({ genus: 1, bodies: 1 })
    expect(solid).toMatchObject({ drawnPerPrinted: 1, heightMm: 90, exaggeration: 500 })
    expect(solid.outerDiameterMm).toBeLessThanOrEqual(200)
    const kinds = Object.entries(solid.triangles).filter(([, triangles]) => triangles.length > 0)
    expect(kinds.map(([kind]) => kind)).toEqual(['body', 'measured', 'unmeasured', 'unmeasured-line'])
  })

  it('has the volume of a round tube less its groove, by geometry: prisms of polygons', () => {
    const angles = [...roundWall.angles, 3 * rad, 357 * rad].sort((a, b) => a - b)
    expect(checked(solidOf(roundWall, [], 1)).volumeMm3).toBeCloseTo(tubeVolume(angles), 1)
  })

  it('lacks the volume of a pocket 2 mm deep where a port crosses the seam at 0°, by the same geometry', () => {
    const port: Port = { ...portOf('seam'), fromDepthMm: 30, toDepthMm: 55, fromDegrees: -35, toDegrees: 25 }
    const edges = [3, 357, 25, 325].map((edge) => edge * rad)
    const angles = [...roundWall.angles, ...edges].sort((a, b) => a - b)
    const within = angles.map((angle) => (angle > Math.PI ? angle - 2 * Math.PI : angle))
    const across = within.filter((angle) => angle > -35.01 * rad && angle < 25.01 * rad).sort((a, b) => a - b)
    const pocket = sectorArea(across) * (29 ** 2 - 27 ** 2) * 25
    expect(checked(solidOf(roundWall, [port], 1)).volumeMm3).toBeCloseTo(tubeVolume(angles) - pocket, 1)
  })

  it('has its wall where the picture draws it, at every node of the grid', () => {
    const grid = gridFor({ ...inventedCylinder(), ...ragged }, { rows: 20, columns: 40 })
    const solid = solidOf(grid, [], 300)
    const drawn = new Set<string>()
    solid.deviationsUm.forEach((deviation, vertex) => {
      if (!Number.isNaN(deviation)) drawn.add(keyOf([...solid.positionsMm.slice(vertex * 3, vertex * 3 + 3)]))
    })
    for (let row = 0; row < grid.depthsMm.length; row++) {
      for (let column = 0; column < grid.angles.length; column++) {
        expect(drawn).toContain(keyOf(drawnPosition(grid, 300, column, row)))
      }
    }
  })

  it('is refused by that library with a triangle missing', () => {
    const solid = solidOf(roundWall, [], 1)
    expect(() => checkedByManifold(solid.positionsMm, allTriangles(solid).slice(3))).toThrow()
  })

  it('stays one tube where a port goes all round, reaches both ends, or meets another at one corner alone', () => {
    const awkward: Port[][] = [
      [{ ...portOf('round'), fromDepthMm: 40, toDepthMm: 50, fromDegrees: 0, toDegrees: 360 }],
      [{ ...portOf('through'), fromDepthMm: -5, toDepthMm: 95, fromDegrees: 350, toDegrees: 20 }],
      [
        { ...portOf('one'), fromDepthMm: 20, toDepthMm: 40, fromDegrees: 30, toDegrees: 60 },
        { ...portOf('two'), fromDepthMm: 40, toDepthMm: 60, fromDegrees: 60, toDegrees: 90 },
      ],
    ]
    for (const ports of awkward) {
      expect(checked(solidOf(roundWall, ports, 1))).toMatchObject({ genus: 1, bodies: 1 })
    }
  })

  it('is scaled down in round steps until it fits the bed', () => {
    const long = gridFor({ spots: [{ depthMm: 30, axisDegrees: 0, diameterMm: 90 }], lengthMm: 350 }, few)
    expect(solidOf(long, [], 1)).toMatchObject({ drawnPerPrinted: 2, heightMm: 175 })
  })

  it('is none where the wall would be drawn through the axis', () => {
    const spots = [
      { depthMm: 10, axisDegrees: 0, diameterMm: 54 },
      { depthMm: 60, axisDegrees: 0, diameterMm: 54.1 },
    ]
    expect(wallSolid(gridFor({ spots }, few), [], 2000)).toEqual({ kind: 'none', why: 'wall-meets-axis' })
  })

  it(`is one closed tube for any ragged survey and any ports (seed ${seed})`, () => {
    const degrees = fc.integer({ min: -360, max: 720 })
    const depths = fc.tuple(fc.integer({ min: -10, max: 110 }), fc.integer({ min: 0, max: 60 }))
    const port = fc.tuple(depths, degrees, degrees).map(([[from, high], start, end]) => ({
      ...portOf('any'),
      fromDepthMm: from,
      toDepthMm: from + high,
      fromDegrees: start,
      toDegrees: end,
    }))
    fc.assert(
      fc.property(raggedSurveys, fc.array(port, { maxLength: 6 }), (survey, ports) => {
        const grid = gridFor(survey, { rows: 16, columns: 24 })
        const diameters = survey.spots.map((spot) => spot.diameterMm)
        const end = exaggerationEnd(grid.middleMm, diameters)
        const { volumeMm3, genus, bodies } = checked(solidOf(grid, ports, Math.max(1, 0.7 * end)))
        expect({ genus, bodies }).toEqual({ genus: 1, bodies: 1 })
        expect(volumeMm3).toBeGreaterThan(0)
      }),
      { seed, numRuns },
    )
  })
})

const ragged = {
  spots: [
    { depthMm: 8, axisDegrees: 0, diameterMm: 54.02 },
    { depthMm: 41, axisDegrees: 65, diameterMm: 54.0 },
    { depthMm: 77, axisDegrees: 120, diameterMm: 54.035 },
  ],
}

function portOf(name: string): Port {
  return { id: name, name, fromDepthMm: 0, toDepthMm: 0, fromDegrees: 0, toDegrees: 0 }
}

/** Places are the same to 0.01 µm of what single precision keeps. */
function keyOf(place: readonly number[]): string {
  return place.map((mm) => (Math.round(Math.fround(mm) * 2000) / 2000 + 0).toFixed(4)).join(' ')
}
