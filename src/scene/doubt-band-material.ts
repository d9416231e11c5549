import { DoubleSide, type RawShaderMaterial, Vector3 } from 'three'
import { colourVector } from './colour-uniform'
import { rawMaterial } from './raw-material'
import { doubtBandSource } from './shader-sources'
import type { SharedUniforms } from './shared-uniforms'
import type { WallPalette } from './wall-palette'

/** The doubt of each judged limit as a stippled flat ring in the plane of each mouth. */
export class DoubtBandMaterial {
  readonly material: RawShaderMaterial
  readonly #bandColours = { value: [new Vector3(), new Vector3()] as const }

  constructor(shared: SharedUniforms) {
    this.material = rawMaterial(
      doubtBandSource,
      { ...shared, bandColours: this.#bandColours },
      { side: DoubleSide },
    )
  }

  setPalette(palette: WallPalette): void {
    colourVector(palette.minRing, this.#bandColours.value[0])
    colourVector(palette.maxRing, this.#bandColours.value[1])
  }

  dispose(): void {
    this.material.dispose()
  }
}
