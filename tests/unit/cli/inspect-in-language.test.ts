import { resolve } from 'node:path'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { languages } from '../../../src/words/languages'

beforeEach(() => vi.resetModules())
afterEach(() => vi.resetModules())

async function inspected(...parameters: readonly string[]) {
  vi.resetModules()
  const { inspectInLanguage } = await import('../../../src/cli/inspect-in-language')
  return inspectInLanguage(parameters, resolve('scenarios'))
}

const job = 'A-two-stroke-single.json'

describe('inspect in a language', () => {
  it('speaks English unless asked, and refuses a language that there is not, with status 2', async () => {
    const plain = await inspected(job)
    expect(plain).toMatchObject({ exitStatus: 0, errors: '' })
    expect(plain.output).toMatch(/^What the readings prove: /)
    expect(await inspected('--language', 'en', job)).toEqual(plain)
    for (const wrong of [
      ['--language', 'xx', job],
      [job, '--language'],
    ]) {
      const { exitStatus, output, errors } = await inspected(...wrong)
      expect({ exitStatus, output }).toEqual({ exitStatus: 2, output: '' })
      expect(errors).toMatch(/^Name a language there is behind --language: en/)
    }
  })

  it.each(languages.filter(({ load }) => load))(
    'prints the same figures as in English, with its own decimal mark, and the same JSON: $name',
    async ({ code }) => {
      for (const scenario of [job, 'C-wet-liner-diesel.json']) {
        const english = await inspected(scenario)
        const other = await inspected(scenario, '--language', code)
        expect(other).toMatchObject({ exitStatus: 0, errors: '' })
        expect(figuresIn(other.output.replace(/(\d),(?=\d)/g, '$1.'))).toEqual(figuresIn(english.output))
        expect(await inspected(scenario, '--language', code, '--json')).toEqual(
          await inspected(scenario, '--json'),
        )
      }
    },
  )
})

/** Every figure with decimals or a sign or a unit, in any order: sentences may turn their parts over. */
function figuresIn(text: string): string[] {
  return (text.replace(/\s+/g, ' ').match(/[+−]?\d+\.\d+|± ?\d+|[+−]\d+|\d+ ?(?=µm|mm|°|%)/g) ?? [])
    .map((one) => one.replace(' ', ''))
    .sort()
}
