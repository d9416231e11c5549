import { describe, expect, it } from 'vitest'
import { scans as english } from '../../../src/words/english/scans'
import { scans as french } from '../../../src/words/french/scans'
import { scans as german } from '../../../src/words/german/scans'
import { scans as spanish } from '../../../src/words/spanish/scans'

describe('the list of scans', () => {
  it('speaks of one empty place and of several, in every language', () => {
    const said = [english, german, spanish, french].map(({ scans }) => scans.list.missing)
    expect(said.map((missing) => missing('1'))).toEqual([
      '1 place empty',
      '1 Stelle leer',
      '1 lugar vacío',
      '1 endroit vide',
    ])
    expect(said.map((missing) => missing('609'))).toEqual([
      '609 places empty',
      '609 Stellen leer',
      '609 lugares vacíos',
      '609 endroits vides',
    ])
  })
})
