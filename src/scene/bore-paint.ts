import { DoubtBandMaterial } from './doubt-band-material'
import { PistonMaterial } from './piston-material'
import { type SharedUniforms, sharedUniforms } from './shared-uniforms'
import { ShellMaterial } from './shell-material'
import { StationMaterial } from './station-material'
import { StrokeMaterial } from './stroke-material'
import { type WallLook, WallMaterials } from './wall-material'
import { WallTextures } from './wall-textures'

/** All materials and textures of one picture, on one set of shared uniforms. */
export class BorePaint {
  readonly shared: SharedUniforms = sharedUniforms()
  readonly textures = new WallTextures(this.shared)
  readonly wall = new WallMaterials(this.shared)
  readonly shell = new ShellMaterial(this.shared)
  readonly doubtBand = new DoubtBandMaterial(this.shared)
  readonly piston = new PistonMaterial(this.shared)
  readonly stroke = new StrokeMaterial(this.shared, 'in-space')
  readonly surface = new StrokeMaterial(this.shared, 'on-wall')
  readonly stations = new StationMaterial(this.shared, 0.2)
  readonly pointer = new StationMaterial(this.shared, 0.8)

  setLook(look: WallLook): void {
    this.wall.setLook(look)
    if (look.pair?.maxMm !== undefined) {
      this.shell.set((look.pair.maxMm - look.middleMm) * 1000, look.palette.maxRing)
    }
    this.doubtBand.setPalette(look.palette)
    this.piston.setColour(look.palette.glass)
    this.stroke.setPalette(look.palette)
    this.surface.setPalette(look.palette)
    this.stations.setPalette(look.palette)
    this.pointer.setPalette(look.palette)
  }

  dispose(): void {
    this.textures.dispose()
    this.wall.dispose()
    const { shell, doubtBand, piston, stroke, surface, stations, pointer } = this
    for (const part of [shell, doubtBand, piston, stroke, surface, stations, pointer]) part.dispose()
  }
}
