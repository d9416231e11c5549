import { describe, expect, it } from 'vitest'
import { emptyLetterhead, keptLetterhead } from '../../../src/storage/letterhead'

const kept = {
  version: 1,
  shopName: 'Shop',
  address: '1 Lane\nTown',
  appAddress: 'https://shop.example/',
  picture: { type: 'image/png', base64: 'iVBORw==', widthPx: 600, heightPx: 200 },
}

describe('a kept letterhead', () => {
  it('comes back as it was kept, and is empty where nothing was', () => {
    const { version: _, ...letterhead } = kept
    expect(keptLetterhead(structuredClone(kept))).toEqual({ kind: 'kept', letterhead })
    expect(keptLetterhead(undefined)).toEqual({ kind: 'kept', letterhead: emptyLetterhead })
    expect(keptLetterhead({ version: 1, shopName: '', address: '' })).toEqual({
      kind: 'kept',
      letterhead: emptyLetterhead,
    })
  })

  it.each([
    ['no record', 'Shop'],
    ['null', null],
    ['no version', { shopName: '', address: '' }],
    ['a version that never was', { ...kept, version: 0 }],
    ['a name that is none', { ...kept, shopName: 7 }],
    ['an address that runs something', { ...kept, appAddress: 'javascript:alert(1)' }],
    ['a picture that is no base64', { ...kept, picture: { ...kept.picture, base64: '"><script>' } }],
    [
      'a picture of a kind that can run something',
      { ...kept, picture: { ...kept.picture, type: 'image/svg+xml' } },
    ],
    ['a picture without end', { ...kept, picture: { ...kept.picture, base64: 'A'.repeat(700_000) } }],
  ])('that is %s is set aside', (_, stored) => {
    expect(keptLetterhead(stored)).toEqual({ kind: 'set-aside' })
  })

  it('of a newer Borewall is left as it is', () => {
    expect(keptLetterhead({ version: 2, name: 'Shop' })).toEqual({ kind: 'newer' })
  })
})
