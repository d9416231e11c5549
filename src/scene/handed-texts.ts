import type { LimitPair } from '../core/findings'
import type { Marking, SurfaceFinding } from '../core/measured'
import type { WallGrid } from '../core/surface/wall-grid'
import { lengthUnit, roundStepUm } from '../words/length-unit'
import { isoMarks } from './iso-marks'
import { isoStepOf } from './iso-step-of'
import type { PictureLabels } from './picture-labels'

/** The texts of what turns a bore. */
export interface TurningTexts {
  readonly turnLeft: string
  readonly turnRight: string
  readonly closer: string
  readonly further: string
  readonly above: string
  readonly whole: string
  readonly byFinger: string
  readonly fingerDone: string
  readonly keys: string
}

/** Every text that the picture of one bore can show, written beforehand: by what it says, in the language of its file. */
export interface HandedTexts {
  /** The unit that they are written in. */
  readonly unit: Marking
  readonly picture: string
  readonly sides: PictureLabels['sides']
  readonly formDrawn: string
  readonly onDiameter: Readonly<Record<string, string>>
  readonly newMax?: string
  readonly depths: Readonly<Record<string, string>>
  readonly deviations: Readonly<Record<string, string>>
  readonly surface: readonly string[]
  readonly turning: TurningTexts
}

interface TextedBore {
  readonly grid: WallGrid
  readonly stations: readonly { readonly depthMm: number }[]
  readonly surface: readonly SurfaceFinding[]
  readonly pair: LimitPair | undefined
  readonly exaggeration: number
}

/** The lengths that a scale bar can have, in steps: from a hundredth to ten thousands. */
const barLengths = Array.from({ length: 7 }, (_, index) => 10 ** (index - 2)).flatMap((decade) => [
  decade,
  2 * decade,
  5 * decade,
])

export function handedTexts(
  picture: string,
  labels: PictureLabels,
  { grid, stations, surface, pair, exaggeration }: TextedBore,
  turning: TurningTexts,
): HandedTexts {
  const newMaxMm = pair?.newMaxMm
  return {
    unit: lengthUnit(),
    picture,
    sides: labels.sides,
    formDrawn: labels.formDrawn(exaggeration),
    onDiameter: texted(
      barLengths.map((step) => step * roundStepUm()),
      (um) => labels.onDiameter(um),
    ),
    ...(pair && newMaxMm !== undefined ? { newMax: labels.limit('new-max', newMaxMm, pair) } : {}),
    depths: texted(
      stations.map(({ depthMm }) => depthMm),
      (depthMm) => labels.depth(depthMm),
    ),
    deviations: texted(
      isoMarks(grid, isoStepOf(grid)).map(({ deviationUm }) => deviationUm),
      (um) => labels.deviation(um),
    ),
    surface: surface.map((finding, index) => labels.surface(index + 1, finding)),
    turning,
  }
}

function texted(values: readonly number[], text: (value: number) => string): Record<string, string> {
  return Object.fromEntries(values.map((value) => [keyOf(value), text(value)]))
}

/** A number made twice in two ways is the same one here. */
function keyOf(value: number): string {
  return String(Number(value.toPrecision(9)))
}

/** The labels of a picture, looked up. A text that is not there is left out of the picture. */
export function labelsOfTexts(texts: HandedTexts): PictureLabels {
  return {
    picture: texts.picture,
    keys: texts.turning.keys,
    sides: texts.sides,
    formDrawn: () => texts.formDrawn,
    onDiameter: (micrometres) => texts.onDiameter[keyOf(micrometres)] ?? '',
    limit: (which) => (which === 'new-max' ? (texts.newMax ?? '') : ''),
    middle: () => '',
    depth: (depthMm) => texts.depths[keyOf(depthMm)] ?? '',
    deviation: (micrometres) => texts.deviations[keyOf(micrometres)] ?? '',
    notMeasured: '',
    tooClose: '',
    surfaceFinding: '',
    scanMark: '',
    surface: (number) => texts.surface[number - 1] ?? '',
    next: '',
  }
}
