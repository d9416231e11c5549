import { describe, expect, it } from 'vitest'
import type { SurfaceFound } from '../../../src/core/findings'
import {
  surfaceHere,
  surfaceLead,
  surfaceLines,
  surfacePlaceText,
  surfaceSentence,
  surfaceTitle,
} from '../../../src/words/surface'
import { bore } from './finding-builder'

const scratch: SurfaceFound = {
  id: 'one',
  kind: 'scratch',
  shape: 'streak',
  fromDepthMm: 12,
  toDepthMm: 40,
  fromDegrees: 359,
  toDegrees: 1,
  catchesNail: true,
  across: { mm: 0.942, from: 'place' },
  along: { mm: 27, from: 'measured' },
  stop: 'catches-nail',
  nailWouldTell: false,
}
const rust: SurfaceFound = {
  id: 'two',
  kind: 'rust',
  shape: 'patch',
  fromDepthMm: 60,
  toDepthMm: 60,
  fromDegrees: 0,
  toDegrees: 360,
  note: 'Comes off\nwith a rag',
  nailWouldTell: false,
}
const untried: SurfaceFound = { ...scratch, id: 'three' }
const { stop: _, catchesNail: __, ...withoutNail } = untried
const open: SurfaceFound = { ...withoutNail, nailWouldTell: true }

describe('a surface finding in words', () => {
  it('says where it lies: across 0°, all round, on a line, at one depth', () => {
    expect(surfacePlaceText(scratch)).toBe('12 to 40 mm, 359° to 1°')
    expect(surfacePlaceText({ ...scratch, fromDegrees: -1 })).toBe('12 to 40 mm, 359° to 1°')
    expect(surfacePlaceText(rust)).toBe('60 mm, all round')
    expect(surfacePlaceText({ ...scratch, toDegrees: 359 })).toBe('12 to 40 mm, 359°')
  })

  it('says how large it is and whether that was measured, what the fingernail felt, and the note', () => {
    expect(surfaceLines(bore({ surface: [scratch, rust, open] }))).toEqual([
      '1 scratch: 12 to 40 mm, 359° to 1°; 0.9 mm wide by its place; 27 mm long as measured; catches a fingernail',
      '2 rust: 60 mm, all round; Comes off with a rag',
      '3 scratch: 12 to 40 mm, 359° to 1°; 0.9 mm wide by its place; 27 mm long as measured; fingernail not tried',
    ])
    expect(surfaceTitle(2, rust)).toBe('2 rust')
  })

  it('is named at its place and nowhere else', () => {
    const all = { surface: [scratch, rust], drawnLengthMm: 88 }
    expect(surfaceHere(all, { depthMm: 20, angleDegrees: 0 })).toBe('here: 1 scratch')
    expect(surfaceHere(all, { depthMm: 60, angleDegrees: 123 })).toBe('here: 2 rust')
    expect(surfaceHere(all, { depthMm: 50, angleDegrees: 0 })).toBeUndefined()
    expect(surfaceHere(all, { depthMm: 20, angleDegrees: 3 })).toBe('here: 1 scratch')
    expect(surfaceHere(all, { depthMm: 20, angleDegrees: 4 })).toBeUndefined()
  })
})

describe('the caution beside the verdict', () => {
  it('names what can end a bore in size, and leaves the decision to the manual and a machinist', () => {
    expect(surfaceSentence(bore({ surface: [rust, scratch] }))).toBe(
      'Surface: figures alone do not decide. A fingernail catches on the scratch at 12 to 40 mm, 359° to 1°: that can end a bore that is in size. What becomes of it is for the service manual and a qualified machinist to say.',
    )
  })

  it('asks for a fingernail where that would tell', () => {
    expect(surfaceSentence(bore({ surface: [open] }))).toBe(
      'Surface: figures alone do not decide. Draw a fingernail across the mark at 12 to 40 mm, 359° to 1°: whether it catches decides more than its looks.',
    )
  })

  it('is told in a few words where there is little room', () => {
    expect(surfaceLead(bore({ surface: [scratch] }))).toBe('Surface: figures alone do not decide.')
    expect(surfaceLead(bore({ surface: [open, rust] }))).toBeUndefined()
    expect(surfaceLead(bore({ surface: [scratch], role: 'for-comparison' }))).toBeUndefined()
  })

  it('is silent where nothing recorded can end a bore, and on a bore that is not judged', () => {
    expect(surfaceSentence(bore())).toBeUndefined()
    expect(surfaceSentence(bore({ surface: [rust] }))).toBeUndefined()
    expect(surfaceSentence(bore({ surface: [scratch], role: 'for-comparison' }))).toBeUndefined()
  })
})
