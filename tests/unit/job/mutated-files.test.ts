import { describe, expect, it } from 'vitest'
import { inspectJson, jsonText } from '../../../src/cli/inspect-json'
import { inspect } from '../../../src/core/inspect'
import type { Problem } from '../../../src/core/problem'
import { readJob } from '../../../src/job/read-job'
import { writeJob } from '../../../src/job/write-job'
import { problemPlace, problemText } from '../../../src/words/problems'
import { report } from '../../proof/record'
import { runCount } from '../../proof/run-count'
import { seededRandom } from '../../proof/seeded-random'
import { scenario, scenarioFiles } from '../scenarios/scenario'
import { mutatedBytes, mutatedText } from './mutated-text'

const seed = 4100
const files = runCount({ quick: 2000, full: 100_000 })
const parts = 20
/** Of so many that open one is written down whole: what to do with a bore is weighed by drawing sizes again and again. */
const writtenWhole = runCount({ quick: 10, full: 100 })

/** What says of the whole file what it is: there is no line to look at. */
const ofTheWholeFile = new Set<Problem['code']>([
  'file-empty',
  'file-too-large',
  'other-kind-of-file',
  'saved-as-utf-16',
  'not-a-job',
  'newer-version',
  'more-problems',
])

const texts = scenarioFiles.map((file) => writeJob(scenario(file)))

/**
 * Counts what the reader does to a text, character by character, and stops it where that is more than its length
 * explains: a file that hangs it would not end by itself.
 */
function withinSteps<T>(length: number, read: () => T): { readonly result: T; readonly steps: number } {
  const ceiling = 60 * length + 50_000
  let steps = 0
  const count = () => {
    steps += 1
    if (steps > ceiling) throw new Error(`more than ${ceiling} steps for ${length} characters`)
  }
  // Put in place by hand: a spy keeps a record of each of a million calls.
  const counted = ['charAt', 'startsWith', 'slice'] as const
  const own = counted.map((name) => [name, String.prototype[name]] as const)
  const put = (name: (typeof counted)[number], value: unknown) =>
    Object.defineProperty(String.prototype, name, { value, writable: true, configurable: true })
  for (const [name, method] of own) {
    put(name, function (this: string, ...given: unknown[]) {
      count()
      return Reflect.apply(method, this, given)
    })
  }
  try {
    return { result: read(), steps }
  } finally {
    for (const [name, method] of own) put(name, method)
  }
}

function fileOf(index: number): string | Uint8Array {
  const random = seededRandom(seed + index)
  const text = texts[index % texts.length] ?? ''
  const mutated = mutatedText(text, random)
  return random.even() < 0.1 ? mutatedBytes(new TextEncoder().encode(mutated), random) : mutated
}

describe(`${files} job files with things wrong in them, seeds from ${seed}`, () => {
  const seen = { opened: 0, refused: 0, most: 0 }

  it.each(Array.from({ length: parts }, (_, part) => part))(
    'are opened whole or refused with a place, part %i of 20',
    (part) => {
      const from = (files / parts) * part
      for (let index = from; index < from + files / parts; index++) {
        const file = fileOf(index)
        const { result, steps } = withinSteps(file.length, () => readJob(file))
        seen.most = Math.max(seen.most, steps / (file.length + 1000))
        if (result.ok) {
          seen.opened++
          const { job } = result
          // Nothing of it is half: what was read is written and read back the same, and its figures are numbers.
          const again = readJob(writeJob(job))
          // As written, for -0 is a number that a file may hold and that is written 0.
          expect(again.ok && writeJob(again.job)).toBe(writeJob(job))
          const findings = inspect(job)
          if (seen.opened % writtenWhole === 0) jsonText(inspectJson(job, findings))
        } else {
          seen.refused++
          expect(result.problems.length).toBeGreaterThan(0)
          for (const problem of result.problems) {
            const hasPlace = problem.path !== '' || problem.line !== undefined
            expect(hasPlace || ofTheWholeFile.has(problem.code), `${index}: ${problem.code}`).toBe(true)
            expect(problemText(problem).length + problemPlace(problem).length).toBeGreaterThan(10)
          }
        }
      }
    },
    600_000,
  )

  it('are some opened, most refused', () => {
    report(
      'Files with things wrong in them',
      {
        files,
        opened: seen.opened,
        refused: seen.refused,
        'most steps per character (over 1000 more)': seen.most.toFixed(1),
      },
      seed,
    )
    expect(seen.opened).toBeGreaterThan(files / 50)
    expect(seen.refused).toBeGreaterThan(files / 4)
  })
})
