import { type RawShaderMaterial, Vector3 } from 'three'
import { colourVector } from './colour-uniform'
import { rawMaterial } from './raw-material'
import { stationSource } from './shader-sources'
import type { SharedUniforms } from './shared-uniforms'
import type { WallPalette } from './wall-palette'

/** Discs of a constant size on the screen. `nearOpacity` is that of discs on the near wall. */
export class StationMaterial {
  readonly material: RawShaderMaterial
  readonly #discColour = { value: new Vector3() }
  readonly #rimColour = { value: new Vector3() }

  constructor(shared: SharedUniforms, nearOpacity: number) {
    const own = {
      discColour: this.#discColour,
      rimColour: this.#rimColour,
      nearOpacity: { value: nearOpacity },
    }
    this.material = rawMaterial(stationSource, { ...shared, ...own })
  }

  setPalette(palette: WallPalette): void {
    colourVector(palette.wallInk, this.#discColour.value)
    colourVector(palette.wallPaper, this.#rimColour.value)
  }

  dispose(): void {
    this.material.dispose()
  }
}
