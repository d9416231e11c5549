import { describe, expect, it } from 'vitest'
import { moveOfKey } from '../../../src/scene/picture-keys'

const held = { shiftKey: false, ctrlKey: false, altKey: false, metaKey: false }

describe('keys of the picture', () => {
  it('turn, zoom, move and reset', () => {
    for (const key of ['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown', '+', '=', '-', 'Home']) {
      expect(moveOfKey({ ...held, key })).toBeTypeOf('function')
    }
  })

  it('move with shift where they turn without', () => {
    const turn = moveOfKey({ ...held, key: 'ArrowLeft' })
    expect(moveOfKey({ ...held, key: 'ArrowLeft', shiftKey: true })).not.toBe(turn)
    // A plus needs shift on many keyboards.
    expect(moveOfKey({ ...held, key: '+', shiftKey: true })).toBe(moveOfKey({ ...held, key: '+' }))
  })

  it('leave the browser its own: tabs, letters, and anything with control, alt or command', () => {
    expect(moveOfKey({ ...held, key: 'Tab' })).toBeUndefined()
    expect(moveOfKey({ ...held, key: 'a' })).toBeUndefined()
    expect(moveOfKey({ ...held, key: '+', ctrlKey: true })).toBeUndefined()
    expect(moveOfKey({ ...held, key: 'ArrowLeft', altKey: true })).toBeUndefined()
    expect(moveOfKey({ ...held, key: 'ArrowLeft', metaKey: true })).toBeUndefined()
  })
})
