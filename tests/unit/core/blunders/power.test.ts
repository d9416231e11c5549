import { describe, expect, it } from 'vitest'
import { blundersOf } from '../../../../src/core/blunders/blunders'
import type { ReadStation, ReadSurvey } from '../../../../src/core/blunders/read-survey'
import type { Blunder } from '../../../../src/core/findings'
import { report } from '../../../proof/record'
import { runCount } from '../../../proof/run-count'
import { seededRandom } from '../../../proof/seeded-random'
import { ironBore, type Made, platedBore, readSurvey, reread } from './read-survey'

const surveys = runCount({ quick: 100, full: 2000 })
const seed = 7101
const stepMm = 0.002

/** One kind of slip, spoilt by ever more µm, and what it should be asked about as. */
interface Slip {
  readonly name: string
  readonly sizesUm: readonly number[]
  readonly spoilt: (sizeMm: number, index: number) => ReadSurvey
  /** Any of these is an answer to it. */
  readonly codes: readonly Blunder['code'][]
}

const middle = ironBore.levelsMm[2] ?? 0

/** A bore that is `ovalMm` wider at 0° than at 90°, worn evenly along. */
function oval(ovalMm: number): Made {
  return {
    ...ironBore,
    trueMm: (depth, axis) =>
      depth === 4 ? 86.008 : 86.03 + (ovalMm / 2) * Math.cos((2 * axis * Math.PI) / 180),
  }
}

function changedOver(survey: ReadSurvey): ReadSurvey {
  const sizesOn = (axis: number) =>
    survey.stations.find((s) => s.depthMm === middle && s.axisDegrees === axis)?.sizesMm ?? []
  return reread(survey, (size, s, repeat) =>
    s.depthMm === middle && s.axisDegrees % 90 === 0 ? (sizesOn(90 - s.axisDegrees)[repeat] ?? size) : size,
  )
}

function upsideDown(made: Made, survey: ReadSurvey): ReadSurvey {
  const { levelsMm } = made
  const turned = (s: ReadStation) => levelsMm[levelsMm.length - 1 - levelsMm.indexOf(s.depthMm)] ?? 0
  const last = levelsMm[levelsMm.length - 1]
  return {
    ...survey,
    stations: survey.stations.map((s) => ({ ...s, depthMm: turned(s), land: s.depthMm === last })),
  }
}

/** Stations without lands, in an order that rows and columns do not explain. */
function inAnyOrder(survey: ReadSurvey, index: number): ReadStation[] {
  const random = seededRandom(seed + index)
  return survey.stations
    .filter(({ land }) => !land)
    .map((station) => ({ station, key: random.normal(1) }))
    .sort((a, b) => a.key - b.key)
    .map(({ station }) => station)
}

const slips: readonly Slip[] = [
  {
    name: 'one of three repeats off, one-micron dial',
    sizesUm: [2, 5, 8, 11, 15, 20],
    spoilt: (sizeMm, index) => {
      const survey = readSurvey(platedBore, seed + index)
      const at = survey.stations[index % survey.stations.length]
      return reread(survey, (size, s, repeat) => (s === at && repeat === 0 ? size + sizeMm : size))
    },
    // Far enough off it can also be two digits changed over.
    codes: ['repeats-spread', 'digits'],
  },
  {
    name: 'axes changed over at a level, by how oval the bore is, ten-micron dial',
    sizesUm: [5, 10, 15, 20, 30, 50],
    spoilt: (sizeMm, index) => changedOver(readSurvey(oval(sizeMm), seed + index)),
    codes: ['axes-swapped'],
  },
  {
    name: 'levels from the wrong end, by how far past new the bottom is worn, ten-micron dial',
    sizesUm: [0, 10, 20, 30, 40, 60],
    spoilt: (sizeMm, index) => {
      const made: Made = {
        ...ironBore,
        trueMm: (depth, axis) =>
          depth === 4 ? 86.008 : Math.max(ironBore.trueMm(depth, axis), 86.02 + sizeMm),
      }
      return upsideDown(made, readSurvey(made, seed + index))
    },
    codes: ['levels-upside-down'],
  },
  {
    name: 'a wrong sign, by how far the new size lies from the zero, ten-micron dial',
    sizesUm: [5, 10, 15, 20, 30, 50],
    spoilt: (sizeMm, index) => {
      const made: Made = {
        ...ironBore,
        trueMm: (depth, axis) => ironBore.trueMm(depth, axis) - 0.008 + sizeMm,
        survey: { ...ironBore.survey, newMinMm: 86 + sizeMm - 0.005, newMaxMm: 86 + sizeMm + 0.005 },
      }
      return reread(readSurvey(made, seed + index), (size) => 2 * 86 - size)
    },
    codes: ['sign'],
  },
  {
    name: 'a part that cools, by how much it shrinks meanwhile, read in any order, ten-micron dial',
    sizesUm: [10, 20, 30, 45, 60, 100],
    spoilt: (sizeMm, index) => {
      const survey = readSurvey(ironBore, seed + index)
      const stations = inAnyOrder(survey, index)
      const cooled = stations.map((s, i) => ({
        ...s,
        diameterMm: s.diameterMm - (sizeMm * i) / (stations.length - 1),
      }))
      return { ...survey, stations: cooled }
    },
    codes: ['drift-with-order'],
  },
]

describe.each(slips)(`$name: the share found grows with the slip, seeds from ${seed}`, (slip) => {
  const { name, sizesUm, spoilt, codes } = slip
  it('from few of the smallest to nearly all of the largest', () => {
    const shares = sizesUm.map((um) => {
      let found = 0
      for (let i = 0; i < surveys; i++) {
        if (blundersOf(spoilt(um / 1000, i), stepMm).some((blunder) => codes.includes(blunder.code))) found++
      }
      return found / surveys
    })
    const figures = sizesUm.map((um, i) => [`found at ${um} µm`, `${(100 * (shares[i] ?? 0)).toFixed(1)} %`])
    report(`Blunders by size: ${name}`, { surveys, ...Object.fromEntries(figures) }, seed)
    expect(shares[0]).toBeLessThan(0.1)
    expect(shares.at(-1)).toBeGreaterThanOrEqual(0.99)
    const slack = 3 * Math.sqrt(0.25 / surveys)
    shares.slice(1).forEach((share, i) => {
      expect(share).toBeGreaterThanOrEqual((shares[i] ?? 0) - slack)
    })
  })
})
