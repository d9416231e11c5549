import { BackSide, type RawShaderMaterial, Vector4 } from 'three'
import { colourWithOpacity } from './colour-uniform'
import { rawMaterial } from './raw-material'
import { shellSource } from './shader-sources'
import type { SharedUniforms } from './shared-uniforms'

/** The far half of the outer limit's cylinder, barely tinted, cut at the ports. */
export class ShellMaterial {
  readonly material: RawShaderMaterial
  readonly #shellUm = { value: 0 }
  readonly #shellColour = { value: new Vector4() }

  constructor(shared: SharedUniforms) {
    const own = { shellUm: this.#shellUm, shellColour: this.#shellColour }
    this.material = rawMaterial(shellSource, { ...shared, ...own }, { side: BackSide })
  }

  /** The limit as a deviation in µm, and its colour. */
  set(deviationUm: number, css: string): void {
    this.#shellUm.value = deviationUm
    colourWithOpacity(css, 0.09, this.#shellColour.value)
  }

  dispose(): void {
    this.material.dispose()
  }
}
