import { describe, expect, it } from 'vitest'
import { addressOf, pageIn } from '../../../src/app/page-address'
import { pageNames } from '../../../src/session/session'

describe('the address of a page', () => {
  it.each(pageNames)('leads back to it, with an example and without: %s', (page) => {
    expect(pageIn(addressOf('A', page))).toBe(page)
    expect(pageIn(addressOf(undefined, page))).toBe(page)
  })

  it('says nothing of the bench, and a page that there is not is the bench', () => {
    expect(addressOf(undefined, 'bench')).toBe('')
    expect(addressOf('A', 'show')).toBe('#example=A&page=show')
    expect(pageIn('#page=elsewhere')).toBe('bench')
    expect(pageIn('')).toBe('bench')
  })
})
