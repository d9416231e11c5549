import { describe, expect, it } from 'vitest'
import { pictureLabels } from '../../../src/app/picture-labels'
import { findingOf, mapGridOfBore } from '../../../src/job/selectors'
import { packedWalls, unpackedWalls } from '../../../src/scene/handed-page'
import { handedTexts, labelsOfTexts } from '../../../src/scene/handed-texts'
import { gridOfHanded, handedGrid, handedWall } from '../../../src/scene/handed-wall'
import { isoMarks } from '../../../src/scene/iso-marks'
import { isoStepOf } from '../../../src/scene/iso-step-of'
import { handOver } from '../../../src/words/english/hand-over'
import { roundStepUm, writtenIn } from '../../../src/words/length-unit'
import { hostileJob } from '../../browser/hostile-job'
import { scenario, scenarioFiles } from '../scenarios/scenario'

const drawn = scenarioFiles.flatMap((file) => {
  const job = hostileJob(scenario(file))
  return job.bores.flatMap((bore) => {
    const grid = mapGridOfBore(job, bore.id)
    const finding = findingOf(job, bore.id)
    return grid && finding ? [{ name: `${file}, ${bore.id}`, bore, grid, finding }] : []
  })
})
const far = 1e6

describe('a wall that is handed over', () => {
  it('comes back to a hundredth of a µm, with every edge, hatch and patch', () => {
    expect(drawn.length).toBeGreaterThan(6)
    for (const { name, grid } of drawn) {
      const back = gridOfHanded(JSON.parse(JSON.stringify(handedGrid(grid))))
      expect(back.depthsMm, name).toEqual(grid.depthsMm)
      expect(back.angles, name).toEqual(grid.angles)
      expect(back.hatched, name).toEqual(grid.hatched)
      expect(back.proven, name).toEqual(grid.proven)
      const within = (a: Float32Array, b: Float32Array) =>
        a.reduce((most, value, index) => {
          const clamped = Math.min(far, Math.max(-far, b[index] ?? Number.NaN))
          return Math.max(most, Math.abs(value - clamped))
        }, 0)
      expect(back.deviationsUm).toHaveLength(grid.deviationsUm.length)
      expect(within(back.deviationsUm, grid.deviationsUm), name).toBeLessThanOrEqual(0.00502)
      expect(back.doubtUm).toHaveLength(grid.doubtUm.length)
      expect(within(back.doubtUm, grid.doubtUm), name).toBeLessThanOrEqual(0.00502)
    }
  })

  it('takes along every label that its picture shows, and nothing that people wrote about its surface', async () => {
    for (const { name, bore, grid, finding } of drawn) {
      const { pair, stations, surface } = finding
      const rounded = gridOfHanded(handedGrid(grid))
      const shown = { grid: rounded, stations, surface, pair, exaggeration: 500 }
      const texts = handedTexts('the picture', pictureLabels, shown, handOver.turning)
      const [wall] = await unpackedWalls(
        await packedWalls([handedWall({ ...shown, ports: bore.ports, texts })]),
      )
      if (!wall) throw new Error('no wall')
      expect(JSON.stringify(wall.surface), name).not.toContain('window.ran')
      const labels = labelsOfTexts(wall.texts)
      for (const { depthMm } of wall.stations)
        expect(labels.depth(depthMm)).toBe(pictureLabels.depth(depthMm))
      for (const { deviationUm } of isoMarks(gridOfHanded(wall.grid), isoStepOf(rounded))) {
        expect(labels.deviation(deviationUm), name).toBe(pictureLabels.deviation(deviationUm))
      }
      for (const um of [0.01, 0.2, 5, 100, 2000])
        expect(labels.onDiameter(um)).toBe(pictureLabels.onDiameter(um))
      surface.forEach((found, index) => {
        expect(labels.surface(index + 1, found)).toBe(pictureLabels.surface(index + 1, found))
      })
      expect(labels.formDrawn(500)).toBe(pictureLabels.formDrawn(500))
    }
  })

  it('has the scale and the lines of the unit that its job is written in', () => {
    const [first] = drawn
    if (!first) throw new Error('nothing is drawn')
    const { grid, finding } = first
    const shown = { grid, stations: finding.stations, surface: [], pair: finding.pair, exaggeration: 500 }
    writtenIn('inch', () => {
      const texts = handedTexts('the picture', pictureLabels, shown, handOver.turning)
      const labels = labelsOfTexts(texts)
      expect(texts.unit).toBe('inch')
      const bar = 5 * roundStepUm()
      expect(labels.onDiameter(bar)).toBe(pictureLabels.onDiameter(bar))
      expect(labels.onDiameter(bar)).not.toMatch(/µm/)
      for (const { deviationUm } of isoMarks(grid, isoStepOf(grid))) {
        expect(labels.deviation(deviationUm)).toBe(pictureLabels.deviation(deviationUm))
      }
    })
  })
})
