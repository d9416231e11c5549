import { beforeEach, describe, expect, it } from 'vitest'
import { keepLetterhead, letterheadStore, shownLetterhead } from '../../../src/app/letterhead'
import { leaveLetterhead, letterheadDrafts, take, typeLetterhead } from '../../../src/app/letterhead-fields'
import { emptyLetterhead, mostOfLetterhead } from '../../../src/storage/letterhead'

beforeEach(() => {
  letterheadStore.setState({ kind: 'read', letterhead: emptyLetterhead }, true)
  letterheadDrafts.setState({}, true)
})

function taken() {
  const state = letterheadStore.getState()
  if (state.kind !== 'read') throw new Error(state.kind)
  return state.letterhead
}

describe('what is typed into the letterhead', () => {
  it('is taken letter by letter, but an address only once it is left', () => {
    typeLetterhead('shopName', 'Shop')
    typeLetterhead('address', '1 Lane\nTown')
    typeLetterhead('appAddress', 'https://shop.example')
    expect(taken()).toEqual({ shopName: 'Shop', address: '1 Lane\nTown' })
    expect(letterheadDrafts.getState()).toEqual({ appAddress: { typed: 'https://shop.example' } })
    leaveLetterhead('appAddress')
    expect(taken().appAddress).toBe('https://shop.example/')
    expect(letterheadDrafts.getState()).toEqual({})
    take('appAddress', ' ')
    expect(taken()).toEqual({ shopName: 'Shop', address: '1 Lane\nTown' })
  })

  it.each([
    ['shopName', 'n'.repeat(mostOfLetterhead.shopName + 1)],
    ['shopName', 'two\nlines'],
    ['shopName', 'bell \u0007'],
    ['address', 'a'.repeat(mostOfLetterhead.address + 1)],
    ['address', 'line\n'.repeat(mostOfLetterhead.addressLines)],
    ['address', 'tab\tstop'],
    ['appAddress', 'javascript:alert(1)'],
  ] as const)('stays in its field with the reason where it cannot be taken: %s %j', (field, typed) => {
    take(field, 'https://before.example/')
    take(field, typed)
    expect(letterheadDrafts.getState()[field]).toMatchObject({ typed, why: expect.stringMatching(/\.$/) })
    expect(taken()[field]).toBe('https://before.example/')
  })

  it('stays on the page where the browser keeps nothing, and that is said', async () => {
    // There is no database here, as in a window where storage is switched off.
    take('shopName', 'Shop')
    await keepLetterhead()
    expect(letterheadStore.getState()).toMatchObject({
      letterhead: { shopName: 'Shop' },
      kept: 'unavailable',
    })
  })

  it('comes to a report without empty lines and without blanks round it', () => {
    const shown = shownLetterhead({ shopName: ' Shop ', address: '\n 1 Lane \n\nTown\n' })
    expect(shown).toEqual({ shopName: 'Shop', addressLines: ['1 Lane', 'Town'] })
  })
})
