import { FrontSide, type RawShaderMaterial, Vector4 } from 'three'
import { colourWithOpacity } from './colour-uniform'
import { rawMaterial } from './raw-material'
import { pistonSource } from './shader-sources'
import type { SharedUniforms } from './shared-uniforms'

/** The side of a piston that is turned to the eye, as a thin shade. */
export class PistonMaterial {
  readonly material: RawShaderMaterial
  readonly #pistonColour = { value: new Vector4() }

  constructor(shared: SharedUniforms) {
    this.material = rawMaterial(
      pistonSource,
      { ...shared, pistonColour: this.#pistonColour },
      { side: FrontSide },
    )
  }

  setColour(css: string): void {
    colourWithOpacity(css, 0.2, this.#pistonColour.value)
  }

  dispose(): void {
    this.material.dispose()
  }
}
