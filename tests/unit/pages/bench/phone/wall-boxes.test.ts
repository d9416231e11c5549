import { describe, expect, it } from 'vitest'
import { wallBoxes } from '../../../../../src/pages/bench/phone/wall-boxes'

const withPicture = { hasPicture: true, hasStrip: false }

describe('boxes of picture and map', () => {
  it('are at least as high as a phone needs them, in its full width', () => {
    for (const height of [504, 684]) {
      const { form, picture, map } = wallBoxes({ width: 390, height }, withPicture)
      expect(form).toBe('narrow')
      expect(picture).toEqual({ width: 390, height: 360 })
      expect(map).toEqual({ width: 390, height: 240 })
    }
  })

  it('fill the half of a tablet without a scroll, with a strip of bores and without', () => {
    for (const hasStrip of [false, true]) {
      const { form, picture, map } = wallBoxes({ width: 615, height: 608 }, { hasPicture: true, hasStrip })
      expect(form).toBe('broad')
      // Two rows of 48, the strip of 84, and 8 to spare.
      const taken = (picture?.height ?? 0) + map.height + 96 + (hasStrip ? 84 : 0) + 8
      expect(taken).toBeLessThanOrEqual(608)
    }
  })

  it('stand beside each other on a phone on its side', () => {
    const { form, picture, map } = wallBoxes({ width: 768, height: 294 }, withPicture)
    expect(form).toBe('beside')
    expect((picture?.width ?? 0) + map.width).toBe(760)
  })

  it('give the map the room of a picture that cannot be drawn', () => {
    const { picture, map } = wallBoxes({ width: 390, height: 684 }, { hasPicture: false, hasStrip: false })
    expect(picture).toBeUndefined()
    expect(map.height).toBe(620)
  })
})
