import { DoubleSide, type RawShaderMaterial, Vector4 } from 'three'
import { colourWithOpacity } from './colour-uniform'
import { rawMaterial } from './raw-material'
import { strokeSource } from './shader-sources'
import type { SharedUniforms } from './shared-uniforms'
import { strokeRoles } from './stroke-geometry'
import type { WallPalette } from './wall-palette'

/**
 * Lines of constant width: limit rings, the line between the contacts pointed at, surface findings and marks of a
 * scan. The last two lie on the wall itself, which would cut their width in two: they are drawn over it.
 */
export class StrokeMaterial {
  readonly material: RawShaderMaterial
  readonly #strokeColours = { value: strokeRoles.map(() => new Vector4()) }

  constructor(shared: SharedUniforms, lies: 'in-space' | 'on-wall') {
    this.material = rawMaterial(
      strokeSource,
      { ...shared, strokeColours: this.#strokeColours },
      { side: DoubleSide, depthTest: lies === 'in-space' },
    )
  }

  setPalette(palette: WallPalette): void {
    const colours = {
      min: palette.minRing,
      max: palette.maxRing,
      'new-max': palette.newMaxRing,
      pointer: palette.wallInk,
      'pointer-edge': palette.wallPaper,
      piston: palette.glass,
      surface: palette.wallInk,
      'surface-middle': palette.wallPaper,
      'scan-mark-ground': palette.wallPaper,
      'scan-mark': palette.wallInk,
    }
    strokeRoles.forEach((role, index) => {
      const colour = this.#strokeColours.value[index]
      if (colour) colourWithOpacity(colours[role], 1, colour)
    })
  }

  dispose(): void {
    this.material.dispose()
  }
}
