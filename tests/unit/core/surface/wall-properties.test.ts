import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Wall, wallOf } from '../../../../src/core/surface/wall'
import { angleAmongAxes } from '../../../../src/core/surface/wall-span'
import { runCount } from '../../../proof/run-count'
import { made } from './invented-cylinder'
import { type RaggedSurvey, raggedSurveys, wallPlaces } from './ragged-survey'

const seed = 20240613
const numRuns = runCount({ quick: 200, full: 20_000 })
const rad = Math.PI / 180

function wall(survey: RaggedSurvey): Wall {
  const { bore, finding } = made(survey)
  const found = wallOf(bore, finding)
  if (!found) throw new Error('expected a wall')
  return found
}

function everyWall(check: (survey: RaggedSurvey, wall: Wall, places: [number, number][]) => void) {
  fc.assert(
    fc.property(raggedSurveys, wallPlaces, (survey, places) => check(survey, wall(survey), places)),
    { seed, numRuns },
  )
}

/** The survey with every station moved; axes are kept in [0, 180). */
function moved(survey: RaggedSurvey, axis: (degrees: number) => number, diameter = (mm: number) => mm) {
  const onTurn = (degrees: number) => ((axis(degrees) % 180) + 180) % 180
  return {
    ...survey,
    axesDegrees: survey.axesDegrees.map(onTurn),
    spots: survey.spots.map((s) => ({
      ...s,
      axisDegrees: onTurn(s.axisDegrees),
      diameterMm: diameter(s.diameterMm),
    })),
  }
}

describe(`the wall of any ragged survey (seed ${seed})`, () => {
  it('returns every reading exactly, at both contacts', () => {
    everyWall((survey, drawn) => {
      for (const { depthMm, axisDegrees, diameterMm } of survey.spots) {
        expect(drawn.at(depthMm, axisDegrees * rad)).toBe(diameterMm)
        expect(drawn.at(depthMm, (axisDegrees + 180) * rad)).toBe(diameterMm)
      }
    })
  })

  it('stays within the four nodes of its cell', () => {
    everyWall((_, drawn, places) => {
      for (const [depth, angle] of places) {
        const corners = nodesAround(drawn, depth, angle)
        expect(drawn.at(depth, angle)).toBeGreaterThanOrEqual(Math.min(...corners))
        expect(drawn.at(depth, angle)).toBeLessThanOrEqual(Math.max(...corners))
      }
    })
  })

  it('fills nodes within the readings of their axis and level, or of all where these have none', () => {
    everyWall((survey, drawn) => {
      const { levelsMm, axes, diametersMm } = drawn.span.nodes
      diametersMm.forEach((diameter, node) => {
        const depth = levelsMm[Math.floor(node / axes.length)]
        const degrees = Math.round((axes[node % axes.length] ?? 0) / rad)
        const own = survey.spots.filter((s) => s.depthMm === depth || s.axisDegrees === degrees)
        const sources = (own.length > 0 ? own : survey.spots).map((s) => s.diameterMm)
        expect(diameter).toBeGreaterThanOrEqual(Math.min(...sources))
        expect(diameter).toBeLessThanOrEqual(Math.max(...sources))
      })
    })
  })

  it('is the same at θ and at θ + 180°, hatching and all', () => {
    everyWall((_, drawn, places) => {
      for (const [depth, angle] of places) {
        expect(drawn.at(depth, angle + Math.PI)).toBeCloseTo(drawn.at(depth, angle), 10)
        expect(drawn.state(depth, angle + Math.PI).hatched).toBe(drawn.state(depth, angle).hatched)
      }
    })
  })

  it('turns with its axes', () => {
    everyWall((survey, drawn, places) => {
      const turned = wall(moved(survey, (degrees) => degrees + 65))
      for (const [depth, angle] of places) {
        expect(turned.at(depth, angle + 65 * rad)).toBeCloseTo(drawn.at(depth, angle), 10)
        expect(turned.state(depth, angle + 65 * rad).hatched).toBe(drawn.state(depth, angle).hatched)
      }
    })
  })

  it('is mirrored with its axes', () => {
    everyWall((survey, drawn, places) => {
      const mirrored = wall(moved(survey, (degrees) => -degrees))
      for (const [depth, angle] of places) {
        expect(mirrored.at(depth, -angle)).toBeCloseTo(drawn.at(depth, angle), 10)
        expect(mirrored.state(depth, -angle).hatched).toBe(drawn.state(depth, angle).hatched)
      }
    })
  })

  it('grows with its diameters, and scales with their deviations', () => {
    everyWall((survey, drawn, places) => {
      const keep = (degrees: number) => degrees
      const larger = wall(moved(survey, keep, (mm) => mm + 40))
      const scaled = wall(moved(survey, keep, (mm) => 54 - 3 * (mm - 54)))
      for (const [depth, angle] of places) {
        expect(larger.at(depth, angle)).toBeCloseTo(drawn.at(depth, angle) + 40, 10)
        expect(scaled.at(depth, angle) - 54).toBeCloseTo(-3 * (drawn.at(depth, angle) - 54), 10)
      }
    })
  })

  it('does not depend on the order of levels, axes and readings', () => {
    everyWall((survey, drawn, places) => {
      const reversed = wall({
        ...survey,
        levelsMm: survey.levelsMm.toReversed(),
        axesDegrees: survey.axesDegrees.toReversed(),
        spots: survey.spots.toReversed(),
      })
      for (const [depth, angle] of places) expect(reversed.at(depth, angle)).toBe(drawn.at(depth, angle))
    })
  })

  it('holds no NaN, and is not hatched only in reach of a reading', () => {
    everyWall((survey, drawn, places) => {
      for (const [depth, angle] of places) {
        const state = drawn.state(depth, angle)
        expect(Number.isFinite(state.diameterMm)).toBe(true)
        expect(Number.isFinite(state.nearestDistanceMm)).toBe(true)
        const alongDepth = Math.min(...survey.spots.map((s) => Math.abs(s.depthMm - depth)))
        if (!state.hatched) expect(alongDepth).toBeLessThanOrEqual(8)
      }
    })
  })
})

/** The four nodes of the cell that holds a place; past the outermost levels those of the level. */
function nodesAround({ span: { nodes } }: Wall, depth: number, angle: number): number[] {
  const { levelsMm, axes, diametersMm } = nodes
  const below = levelsMm.findIndex((level) => level >= depth)
  const lower = below < 0 ? levelsMm.length - 1 : below
  const upper = below < 0 ? lower : Math.max(0, below - 1)
  const place = angleAmongAxes(nodes, angle)
  const left = axes.findLastIndex((axis) => axis <= place)
  return [upper, lower].flatMap((level) =>
    [left, (left + 1) % axes.length].map((axis) => diametersMm[level * axes.length + axis] ?? Number.NaN),
  )
}
