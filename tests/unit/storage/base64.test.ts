import { describe, expect, it } from 'vitest'
import { base64Of, bytesOfBase64 } from '../../../src/storage/base64'
import { contentHash } from '../../../src/storage/content-hash'
import { sizeWithin } from '../../../src/storage/shrink-photo'

const letters = (text: string) => new TextEncoder().encode(text)

describe('bytes in base64', () => {
  // RFC 4648 (2006), section 10.
  it.each([
    ['', ''],
    ['f', 'Zg=='],
    ['fo', 'Zm8='],
    ['foo', 'Zm9v'],
    ['foob', 'Zm9vYg=='],
    ['fooba', 'Zm9vYmE='],
    ['foobar', 'Zm9vYmFy'],
  ])('are written and read as RFC 4648 prints them: %j', (text, written) => {
    expect(base64Of(letters(text))).toBe(written)
    expect(bytesOfBase64(written)).toEqual(letters(text))
  })

  it('come back as they were, however many they are', () => {
    const bytes = Uint8Array.from({ length: 200_000 }, (_, index) => (index * 131) % 256)
    expect(bytesOfBase64(base64Of(bytes))).toEqual(bytes)
  })

  it('are not made of a text that is no base64', () => {
    expect(bytesOfBase64('no base64!')).toBeUndefined()
  })
})

describe('the hash of a content', () => {
  // FIPS 180-2 (2002), appendix B.1, and the hash of nothing, from memory.
  it.each([
    ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
    ['', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
  ])('is SHA-256: %j', async (text, hash) => {
    expect(await contentHash(letters(text))).toBe(hash)
  })
})

describe('the size that a photograph is kept in', () => {
  it.each([
    [4000, 3000, 1600, 1200],
    [3000, 4000, 1200, 1600],
    [800, 600, 800, 600],
    [1600, 1, 1600, 1],
    [10_000, 2, 1600, 1],
  ])('%i × %i pixels become %i × %i', (width, height, smallWidth, smallHeight) => {
    expect(sizeWithin(width, height, 1600)).toEqual({ width: smallWidth, height: smallHeight })
  })
})
