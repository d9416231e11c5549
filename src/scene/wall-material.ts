import { BackSide, FrontSide, type IUniform, type RawShaderMaterial, Vector2, Vector3 } from 'three'
import type { LimitPair } from '../core/findings'
import type { RampSpan } from '../core/surface/ramp-span'
import { colourVector } from './colour-uniform'
import { rawMaterial } from './raw-material'
import { wallSource } from './shader-sources'
import type { SharedUniforms } from './shared-uniforms'
import type { WallPalette } from './wall-palette'

/** Width of iso-lines and between lines of the hatch, CSS pixels, and how strong iso-lines are, 0 to 1. */
const lines = {
  screen: { isoPx: 0.8, isoCover: 0.3, hatchPx: 6.5 },
  // A quarter of a millimetre, and 1.2 mm.
  paper: { isoPx: 0.95, isoCover: 0.6, hatchPx: 4.54 },
}

/** Stands for a limit that does not exist, µm. */
const nowhereUm = 1e6

/** What the wall is coloured by. */
export interface WallLook {
  readonly middleMm: number
  readonly pair: LimitPair | undefined
  readonly span: RampSpan
  readonly isoStepUm: number
  /** The wall is the difference of two: marked where it may be none. */
  readonly isDifference: boolean
  readonly palette: WallPalette
}

/** The wall's own uniforms; those of its chunks are shared. */
interface WallUniforms {
  readonly rampUm: IUniform<Vector2>
  readonly ramp: IUniform<readonly Vector3[]>
  readonly limitsUm: IUniform<Vector2>
  readonly minJudged: IUniform<boolean>
  readonly isDifference: IUniform<boolean>
  readonly isoStepUm: IUniform<number>
  readonly isoLine: IUniform<Vector2>
  readonly hatchPx: IUniform<number>
  readonly pointedMm: IUniform<number>
  readonly tightColour: IUniform<Vector3>
  readonly looseColour: IUniform<Vector3>
  readonly paperColour: IUniform<Vector3>
  readonly inkColour: IUniform<Vector3>
  readonly glassColour: IUniform<Vector3>
}

/**
 * The three materials that draw one displaced grid: the far wall, the near wall as glass, and the proven
 * patches of the far wall once more on top of the near wall's outlines. They share every uniform but which
 * of the three they are.
 */
export class WallMaterials {
  readonly far: RawShaderMaterial
  readonly near: RawShaderMaterial
  readonly patches: RawShaderMaterial
  readonly #own: WallUniforms

  constructor(shared: SharedUniforms) {
    this.#own = wallUniforms()
    const material = (wallPass: number, settings: Parameters<typeof rawMaterial>[2]) =>
      rawMaterial(wallSource, { ...shared, ...this.#own, wallPass: { value: wallPass } }, settings)
    this.far = material(0, { side: BackSide, depthWrite: true })
    this.near = material(1, { side: FrontSide })
    this.patches = material(2, { side: BackSide })
    this.setOnPaper(false)
  }

  setLook(look: WallLook): void {
    const { pair, palette } = look
    const deviation = (sizeMm: number | undefined, none: number) =>
      sizeMm === undefined ? none : (sizeMm - look.middleMm) * 1000
    this.#own.rampUm.value.set(look.span.lowUm, look.span.highUm)
    this.#own.limitsUm.value.set(deviation(pair?.minMm, -nowhereUm), deviation(pair?.maxMm, nowhereUm))
    this.#own.minJudged.value = pair?.kind !== 'wear' && pair?.minMm !== undefined
    this.#own.isDifference.value = look.isDifference
    this.#own.isoStepUm.value = look.isoStepUm
    palette.ramp.forEach((css, index) => {
      const colour = this.#own.ramp.value[index]
      if (colour) colourVector(css, colour)
    })
    colourVector(palette.tight, this.#own.tightColour.value)
    colourVector(palette.loose, this.#own.looseColour.value)
    colourVector(palette.wallPaper, this.#own.paperColour.value)
    colourVector(palette.wallInk, this.#own.inkColour.value)
    colourVector(palette.glass, this.#own.glassColour.value)
  }

  /** Lines as paper needs them, or as a screen does. */
  setOnPaper(onPaper: boolean): void {
    const { isoPx, isoCover, hatchPx } = onPaper ? lines.paper : lines.screen
    this.#own.isoLine.value.set(isoPx, isoCover)
    this.#own.hatchPx.value = hatchPx
  }

  /** Depth to mark all round, mm; undefined for none. */
  setPointed(depthMm: number | undefined): void {
    this.#own.pointedMm.value = depthMm ?? -1
  }

  dispose(): void {
    for (const material of [this.far, this.near, this.patches]) material.dispose()
  }
}

function wallUniforms(): WallUniforms {
  return {
    rampUm: { value: new Vector2(-1, 1) },
    ramp: { value: Array.from({ length: 9 }, () => new Vector3()) },
    limitsUm: { value: new Vector2(-nowhereUm, nowhereUm) },
    minJudged: { value: false },
    isDifference: { value: false },
    isoStepUm: { value: 1 },
    isoLine: { value: new Vector2() },
    hatchPx: { value: 1 },
    pointedMm: { value: -1 },
    tightColour: { value: new Vector3() },
    looseColour: { value: new Vector3() },
    paperColour: { value: new Vector3() },
    inkColour: { value: new Vector3() },
    glassColour: { value: new Vector3() },
  }
}
