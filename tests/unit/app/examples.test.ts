import { describe, expect, it } from 'vitest'
import { askedIn, exampleAddress, exampleNames, loadExample } from '../../../src/app/examples'
import { words } from '../../../src/words/words'
import { scenario, scenarioFiles } from '../scenarios/scenario'

describe('the address of an example', () => {
  it('is read back as the example it names, whatever the capitals', () => {
    for (const name of exampleNames) {
      expect(askedIn(exampleAddress(name))).toEqual({ kind: 'example', name })
      expect(askedIn(exampleAddress(name).toLowerCase())).toEqual({ kind: 'example', name })
    }
  })

  it('asks for nothing where there is no fragment, or one about something else', () => {
    for (const fragment of ['', '#', '#readings', '#a=b']) {
      expect(askedIn(fragment)).toEqual({ kind: 'nothing' })
    }
  })

  it('that names no example is told from one that asks for nothing', () => {
    for (const name of ['Z', '', 'A2', '__proto__']) {
      expect(askedIn(`#example=${encodeURIComponent(name)}`)).toEqual({ kind: 'unknown', name })
    }
  })
})

describe('an example', () => {
  it('is a copy of its scenario under an id of its own, and marked invented', async () => {
    const kept = new Set(scenarioFiles.map((file) => scenario(file).id))
    const names = await Promise.all(
      exampleNames.map(async (name) => {
        const job = await loadExample(name)
        expect(job?.invented).toBe(true)
        expect(kept.has(job?.id ?? '')).toBe(false)
        return job?.name
      }),
    )
    expect([...names].sort()).toEqual(scenarioFiles.map((file) => scenario(file).name).sort())
  })

  it('has words of its own for each name', () => {
    expect(Object.keys(words.examples.list)).toEqual([...exampleNames])
  })
})
