import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest'
import { languages } from '../../../src/words/languages'

const scenarios = ['A-two-stroke-single.json', 'C-wet-liner-diesel.json'] as const
let folder = ''
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'inspect-'))
  // What a person wrote is in that person's language.
  for (const name of scenarios) {
    const { note: _, ...job } = JSON.parse(readFileSync(resolve('scenarios', name), 'utf8'))
    writeFileSync(join(folder, name), JSON.stringify(job))
  }
})
afterAll(() => rmSync(folder, { recursive: true }))
beforeEach(() => vi.resetModules())
afterEach(() => vi.resetModules())

async function inspected(...parameters: readonly string[]) {
  vi.resetModules()
  const { inspectInLanguage } = await import('../../../src/cli/inspect-in-language')
  return inspectInLanguage(parameters, folder)
}

const [job] = scenarios

describe('inspect in a language', () => {
  it('speaks English unless asked, and refuses a language that there is not, with status 2', async () => {
    const plain = await inspected(job)
    expect(plain).toMatchObject({ exitStatus: 0, errors: '' })
    expect(plain.output).toMatch(/^What the readings prove: /)
    for (const wrong of [
      ['--language', 'xx', job],
      [job, '--language'],
    ]) {
      const { exitStatus, output, errors } = await inspected(...wrong)
      expect({ exitStatus, output }).toEqual({ exitStatus: 2, output: '' })
      expect(errors).toMatch(/^Name a language there is behind --language: en/)
    }
  }, 60_000)

  it.each(languages.filter(({ load }) => load))(
    'prints the same figures as in English, with its own decimal mark, and the same JSON: $name',
    async ({ code }) => {
      for (const scenario of scenarios) {
        const english = await inspected(scenario)
        const other = await inspected(scenario, '--language', code)
        expect(other).toMatchObject({ exitStatus: 0, errors: '' })
        expect(figuresIn(inEnglish(other.output))).toEqual(
          figuresIn(english.output.replace(/(\d),(?=\d)/g, '$1')),
        )
        expect(await inspected(scenario, '--language', code, '--json')).toEqual(
          await inspected(scenario, '--json'),
        )
      }
    },
    60_000,
  )
})

/** Thousands together, and a point before decimals. */
function inEnglish(text: string): string {
  return text.replace(/(\d)[.\u00a0\u202f](?=\d)/g, '$1').replace(/(\d),(?=\d)/g, '$1.')
}

/** Every figure with decimals or a sign or a unit, in any order: sentences may turn their parts over. */
function figuresIn(text: string): string[] {
  return (text.replace(/\s+/g, ' ').match(/[+−]?\d+\.\d+|± ?\d+|[+−]\d+|\d+ ?(?=µm|mm|°|%)/g) ?? [])
    .map((one) => one.replace(' ', ''))
    .sort()
}
