import { expect, it } from 'vitest'
import { ShelfError, shelfErrorOf } from '../../../src/storage/shelf-error'

it('gives each failure of the browser a code, and keeps its cause', () => {
  for (const [name, code] of [
    ['QuotaExceededError', 'quota'],
    ['VersionError', 'newer-shelf'],
    ['SecurityError', 'unavailable'],
    ['InvalidStateError', 'unavailable'],
  ] as const) {
    const cause = new DOMException('as the browser says', name)
    expect(shelfErrorOf(cause)).toMatchObject({ name: 'ShelfError', code, cause })
  }
  expect(shelfErrorOf('anything')).toMatchObject({ code: 'unavailable', cause: 'anything' })
})

it('leaves a failure that has a code as it is', () => {
  const error = new ShelfError('mismatch')
  expect(shelfErrorOf(error)).toBe(error)
})
