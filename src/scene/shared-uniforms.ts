import { type DataTexture, type IUniform, Vector2, Vector4 } from 'three'
import type { Port } from '../core/measured'
import { portWidthDegrees } from '../core/ports/port-at'

/** Ports that the shaders have room for. */
export const portsDrawn = 32

const radians = Math.PI / 180

/**
 * The uniforms of the shader chunks, one object for all materials of a picture: setting a value once sets it
 * for wall, shell, lines and discs alike.
 */
export interface SharedUniforms {
  readonly middleMm: IUniform<number>
  readonly lengthMm: IUniform<number>
  readonly exaggeration: IUniform<number>
  readonly rowShift: IUniform<number>
  readonly wallTexture: IUniform<DataTexture | null>
  readonly towardTexture: IUniform<DataTexture | null>
  readonly wallShare: IUniform<number>
  readonly fadesBetween: IUniform<boolean>
  readonly doubtTexture: IUniform<DataTexture | null>
  readonly gridTexture: IUniform<DataTexture | null>
  readonly gridSize: IUniform<Vector2>
  readonly ports: IUniform<readonly Vector4[]>
  readonly portCount: IUniform<number>
  readonly pixelRatio: IUniform<number>
  readonly viewport: IUniform<Vector2>
}

export function sharedUniforms(): SharedUniforms {
  return {
    middleMm: { value: 1 },
    lengthMm: { value: 1 },
    exaggeration: { value: 1 },
    rowShift: { value: 0 },
    wallTexture: { value: null },
    towardTexture: { value: null },
    wallShare: { value: 0 },
    fadesBetween: { value: true },
    doubtTexture: { value: null },
    gridTexture: { value: null },
    gridSize: { value: new Vector2(1, 2) },
    ports: { value: Array.from({ length: portsDrawn }, () => new Vector4()) },
    portCount: { value: 0 },
    pixelRatio: { value: 1 },
    viewport: { value: new Vector2(1, 1) },
  }
}

/** Writes ports as the shader takes them: depths in mm, middle and half of the angular width in rad. */
export function setPorts(uniforms: SharedUniforms, ports: readonly Port[]): void {
  if (ports.length > portsDrawn) {
    throw new Error(`Room for ${portsDrawn} ports in the picture, got ${ports.length}`)
  }
  uniforms.portCount.value = ports.length
  ports.forEach((port, index) => {
    const width = portWidthDegrees(port)
    const middle = (port.fromDegrees + width / 2) * radians
    uniforms.ports.value[index]?.set(port.fromDepthMm, port.toDepthMm, middle, (width / 2) * radians)
  })
}
