import { DataTexture, FloatType, RGBAFormat } from 'three'
import type { WallGrid } from '../core/surface/wall-grid'
import { onCircle } from './bore-space'
import type { SharedUniforms } from './shared-uniforms'

/** Stands for "no such edge" in µm: finite, so that mixing two of them stays finite. */
const nowhereUm = 1e6

/** The float textures of a wall, and of the one it is on its way to. A new grid of the same size is written in place. */
export class WallTextures {
  readonly #uniforms: SharedUniforms
  #wall: DataTexture | undefined
  #toward: DataTexture | undefined
  #doubt: DataTexture | undefined
  #grid: DataTexture | undefined

  constructor(uniforms: SharedUniforms) {
    this.#uniforms = uniforms
  }

  /** The wall that is drawn; on its way, where it comes from and where it goes, all on the same lines. */
  write(grid: WallGrid, way?: { readonly from: WallGrid; readonly to: WallGrid }): void {
    const columns = grid.angles.length
    const rows = grid.depthsMm.length
    const nodes = this.#textureFor(this.#wall, columns, rows)
    const doubt = this.#textureFor(this.#doubt, columns, rows)
    const spacing = this.#spacingFor(columns, rows)
    writeNodes(nodes.data, way?.from ?? grid)
    writeDoubt(doubt.data, grid)
    writeSpacing(spacing.data, spacing.width, grid)
    this.#wall = nodes.texture
    this.#writeToward(way?.to, columns, rows)
    this.#doubt = doubt.texture
    this.#grid = spacing.texture
    for (const texture of [nodes.texture, doubt.texture, spacing.texture]) texture.needsUpdate = true
    this.#uniforms.wallTexture.value = nodes.texture
    this.#uniforms.doubtTexture.value = doubt.texture
    this.#uniforms.gridTexture.value = spacing.texture
    this.#uniforms.gridSize.value.set(columns, rows)
    this.#uniforms.middleMm.value = grid.middleMm
    this.#uniforms.lengthMm.value = grid.lengthMm
  }

  dispose(): void {
    for (const texture of [this.#wall, this.#toward, this.#doubt, this.#grid]) texture?.dispose()
  }

  /** A wall on no way has its own texture there: what a shader may read is always bound. */
  #writeToward(to: WallGrid | undefined, columns: number, rows: number): void {
    if (!to) {
      this.#toward?.dispose()
      this.#toward = undefined
      this.#uniforms.towardTexture.value = this.#wall ?? null
      return
    }
    const there = this.#textureFor(this.#toward, columns, rows)
    writeNodes(there.data, to)
    there.texture.needsUpdate = true
    this.#toward = there.texture
    this.#uniforms.towardTexture.value = there.texture
  }

  #textureFor(present: DataTexture | undefined, columns: number, rows: number) {
    const data = dataOf(present, columns, rows)
    if (present && data) return { texture: present, data }
    present?.dispose()
    const fresh = new Float32Array(columns * rows * 4)
    return { texture: new DataTexture(fresh, columns, rows, RGBAFormat, FloatType), data: fresh }
  }

  #spacingFor(columns: number, rows: number) {
    const width = Math.max(columns + 1, rows)
    const data = dataOf(this.#grid, width, 2)
    if (this.#grid && data) return { texture: this.#grid, data, width }
    this.#grid?.dispose()
    const fresh = new Float32Array(width * 8)
    return { texture: new DataTexture(fresh, width, 2, RGBAFormat, FloatType), data: fresh, width }
  }
}

function dataOf(texture: DataTexture | undefined, width: number, height: number): Float32Array | undefined {
  if (!texture || texture.image.width !== width || texture.image.height !== height) return undefined
  return texture.image.data instanceof Float32Array ? texture.image.data : undefined
}

function writeNodes(data: Float32Array, grid: WallGrid): void {
  grid.deviationsUm.forEach((deviation, node) => {
    data[node * 4] = deviation
    data[node * 4 + 1] = grid.hatched[node] ?? 0
    data[node * 4 + 2] = grid.proven[node] ?? 0
  })
}

function writeDoubt(data: Float32Array, grid: WallGrid): void {
  grid.doubtUm.forEach((edge, index) => {
    data[index] = Math.min(nowhereUm, Math.max(-nowhereUm, edge))
  })
}

/** Sines are made here in double precision: those of a shader may be a hundredth of a millimetre off. */
function writeSpacing(data: Float32Array, width: number, grid: WallGrid): void {
  for (const [column, angle] of [...grid.angles, 2 * Math.PI].entries()) {
    const { x, z } = onCircle(0, angle, 0, 1)
    data.set([angle, x, z], column * 4)
  }
  for (const [row, depth] of grid.depthsMm.entries()) data[(width + row) * 4] = depth
}
