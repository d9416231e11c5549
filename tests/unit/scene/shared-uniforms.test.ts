import { describe, expect, it } from 'vitest'
import { portsDrawn, setPorts, sharedUniforms } from '../../../src/scene/shared-uniforms'
import { WallTextures } from '../../../src/scene/wall-textures'
import { evenGrid } from './drawn-cylinder'

function port(fromDegrees: number, toDegrees: number) {
  return { id: 'p', name: 'port', fromDepthMm: 20, toDepthMm: 30, fromDegrees, toDegrees }
}

const degrees = Math.PI / 180

describe('what the shaders are given', () => {
  it('is a port by its middle and half its width, over 0° too', () => {
    const uniforms = sharedUniforms()
    setPorts(uniforms, [port(60, 100), port(315, 45), port(-45, 45)])
    expect(uniforms.portCount.value).toBe(3)
    const [one, over, negative] = uniforms.ports.value
    expect(one?.z).toBeCloseTo(80 * degrees, 12)
    expect(one?.w).toBeCloseTo(20 * degrees, 12)
    expect(over?.w).toBeCloseTo(45 * degrees, 12)
    expect(Math.cos(over?.z ?? 9)).toBeCloseTo(1, 12)
    expect(Math.cos(negative?.z ?? 9)).toBeCloseTo(1, 12)
    expect([one?.x, one?.y]).toEqual([20, 30])
  })

  it('is refused more ports than there is room for', () => {
    const many = Array.from({ length: portsDrawn + 1 }, () => port(0, 10))
    expect(() => setPorts(sharedUniforms(), many)).toThrow('Room for 32 ports in the picture, got 33')
  })

  it('is the same texture again for a grid of the same size, another for another size', () => {
    const uniforms = sharedUniforms()
    const textures = new WallTextures(uniforms)
    textures.write(evenGrid(() => 1))
    const first = uniforms.wallTexture.value
    textures.write(evenGrid(() => 2))
    expect(uniforms.wallTexture.value).toBe(first)
    expect(first?.image.data?.[0]).toBe(2)
    expect(first?.version).toBeGreaterThan(1)
    textures.write(evenGrid(() => 2, 10, 12))
    expect(uniforms.wallTexture.value).not.toBe(first)
    expect([uniforms.gridSize.value.x, uniforms.gridSize.value.y]).toEqual([12, 10])
  })

  it('holds no infinite figure, so that a mix of two stays finite', () => {
    const grid = evenGrid(() => 0)
    const uniforms = sharedUniforms()
    new WallTextures(uniforms).write({
      ...grid,
      doubtUm: grid.doubtUm.map((edge) => edge * Number.POSITIVE_INFINITY),
    })
    const data = uniforms.doubtTexture.value?.image.data
    expect(data instanceof Float32Array && data.every(Number.isFinite)).toBe(true)
  })
})
