import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { inspectText } from '../../../src/cli/inspect-text'
import type { BoreFinding } from '../../../src/core/findings'
import { inspect } from '../../../src/core/inspect'
import type { Job } from '../../../src/job/schema'
import { exaggerationOfJob } from '../../../src/job/selectors'
import { size } from '../../../src/words/numbers'
import { type OwnerDrawing, ownerTalk } from '../../../src/words/owner'
import type { OwnerStep } from '../../../src/words/owner-step'
import { ownerWords } from '../../../src/words/owner-words'
import { scenario, scenarioFiles } from '../scenarios/scenario'
import { fleschReadingEase } from './flesch'

function talksOf(job: Job, drawing: OwnerDrawing = drawingOf(job)) {
  const findings = inspect(job)
  return findings.bores
    .filter(({ role }) => role === 'of-this-engine')
    .map((finding) => ({ finding, steps: ownerTalk(job, findings, finding, drawing) }))
}

function drawingOf(job: Job): OwnerDrawing {
  const exaggeration = exaggerationOfJob(job)
  return exaggeration === undefined ? 'flat' : { exaggeration }
}

const textsOf = (steps: readonly OwnerStep[]) => steps.flatMap((step) => [step.sentence, ...step.beside])

/** The talk about the first bore of a scenario, after a change. */
function talkOf(file: string, change: (job: Job) => Job = (job) => job): readonly OwnerStep[] {
  const [first] = talksOf(change(scenario(file)))
  if (!first) throw new Error('no bore')
  return first.steps
}

function step(steps: readonly OwnerStep[], topic: OwnerStep['topic']): OwnerStep {
  const found = steps.find((one) => one.topic === topic)
  if (!found) throw new Error(`nothing is told of ${topic}`)
  return found
}

const saw = 'A-two-stroke-single.json'
const diesel = 'C-wet-liner-diesel.json'
const figuresIn = (text: string) => text.match(/\d+(?:\.\d+)?/g) ?? []

/** Figures of the talk that no finding holds: limits as they were entered, a hair, how sure ± is, the exaggeration, what a share leaves, hairs. */
function isOwn(figure: string, text: string, finding: BoreFinding, known: ReadonlySet<string>): boolean {
  const { hair, drawn } = ownerWords.seen
  const { minMm, maxMm, newMaxMm } = finding.pair ?? {}
  if ([minMm, maxMm, newMaxMm].some((limit) => limit !== undefined && size(limit) === figure)) return true
  if (text === hair.mm) return figure === '70'
  if (text === drawn(figure)) return true
  if (/^That is more than \d+ hairs?\.$/.test(text)) return true
  if (/^In 19 of 20 cases/.test(text)) return figure === '19' || figure === '20'
  if (/^So .* is left\.$/.test(text)) return known.has(`${100 - Number(figure)}`)
  return finding.surface.some(({ fromDepthMm, toDepthMm }) =>
    [fromDepthMm, toDepthMm].includes(Number(figure)),
  )
}

/** A scan of radii alone gives no size. */
const measuredFiles = scenarioFiles.filter((file) =>
  scenario(file).bores.some(({ surveys }) => surveys.some(({ readings }) => readings.length > 0)),
)

describe('what the owner is told of each scenario', () => {
  const all = measuredFiles.flatMap((file) => {
    const job = scenario(file)
    return talksOf(job).map(({ finding, steps }) => ({ file, job, finding, steps, bore: finding.boreName }))
  })

  it.each(all)(
    'has the figures that inspect prints and no others: $file, bore $bore',
    ({ job, finding, steps }) => {
      const known = new Set(figuresIn(inspectText(job, inspect(job))))
      const strange = textsOf(steps).flatMap((text) =>
        figuresIn(text)
          .filter((figure) => !known.has(figure) && !isOwn(figure, text, finding, known))
          .map((figure) => `${figure}: ${text}`),
      )
      expect(strange).toEqual([])
      expect(textsOf(steps).flatMap(figuresIn).length).toBeGreaterThan(20)
    },
  )

  it.each(all)('is seven things, each trade term once: $file, bore $bore', ({ steps }) => {
    expect(steps.map(({ topic }) => topic)).toEqual([
      'seen',
      'now',
      'shape',
      'used',
      'sure',
      'advice',
      'causes',
    ])
    const terms = textsOf(steps).flatMap((text) => text.match(/ \([a-z -]+\)/g) ?? [])
    expect(terms).toContain(' (diameter)')
    expect(new Set(terms).size).toBe(terms.length)
    expect(textsOf(steps).join('')).not.toMatch(/[[\]{}]|undefined|NaN|Infinity/)
  })

  it.each(all)(
    'is plain English, 70 and more by Flesch, each large sentence 60 and more: $file, bore $bore',
    ({ steps }) => {
      expect(fleschReadingEase(textsOf(steps))).toBeGreaterThanOrEqual(70)
      for (const { sentence } of steps) expect(fleschReadingEase([sentence])).toBeGreaterThanOrEqual(60)
    },
  )
})

describe('the reading ease', () => {
  it('is that of its formula, by hand: two sentences of three words, eight syllables', () => {
    // 206.835 − 1.015 · 6/2 − 84.6 · 8/6.
    expect(fleschReadingEase(['The bore is. Cylinder has worn.'])).toBeCloseTo(90.99, 2)
  })
})

describe('what the owner is told', () => {
  it('sets the wear against a hair of 70 µm, saying no more than both ends of its interval allow', () => {
    // By hand: 24 + 10 < 35; 142 to 162 holds 2 · 70; 83 and 96 lie above 70.
    expect(step(talkOf(saw), 'now').beside).toContain(ownerWords.now.hairs.half)
    expect(step(talkOf(diesel), 'now').beside).toContain(ownerWords.now.hairs.more(2))
    const [, , third] = talksOf(scenario('B-four-cylinder-iron.json'))
    expect(third && step(third.steps, 'now').beside).toContain(ownerWords.now.hairs.more(1))
  })

  it('says plainly that something is too close to call, before anything that is sure', () => {
    const sure = step(talkOf(saw), 'sure')
    expect(sure.sentence).toBe(
      'Whether it is too oval is too close to call: 14 µm (9 to 19), and its limit is 15 µm.',
    )
    expect(sure.beside[0]).toMatch(/^For its size: more than 99 chances in 100/)
    expect(step(talkOf(saw), 'advice').beside.join(' ')).toMatch(
      /If it turns out inside, .* If it turns out over, /,
    )
  })

  it('names the hours that a choice buys, and why nobody can where they are not known', () => {
    expect(step(talkOf(diesel), 'advice')).toMatchObject({
      sentence: 'We suggest running it as it is, and measuring it again by 14375 h of running.',
      beside: expect.arrayContaining([
        'Running on buys the hours from 13600 to 15150 h, and most likely more.',
      ]),
    })
    expect(step(talkOf('D1-compressor.json'), 'advice').beside).toContain(ownerWords.advice.hours['no-hours'])
  })

  it('says of an engine how all of its bores stand and what that asks for', () => {
    const { sentence, beside } = step(talkOf('B-four-cylinder-iron.json'), 'advice')
    expect(sentence).toBe(
      'Another bore has to be bored out, and all go to one size: we suggest this one too, by +0.25 mm (oversize).',
    )
    expect(beside[0]).toMatch(/^By itself: We suggest running it as it is/)
    expect(beside.slice(-2)).toEqual([
      'Bore 3 is out of its limits. Bore 4 is too close to call. Bores 1 and 2 are inside.',
      expect.stringMatching(/\+0\.25 mm/),
    ])
  })

  it('begins with a mark that can end the bore, and looks at it', () => {
    const used = step(talkOf('D2-hydraulic-tube.json'), 'used')
    expect(used.sentence).toMatch(/^A scratch at 300 to 420 mm, 200° catches a fingernail/)
    expect(used.look).toMatchObject({ depthMm: 360, angleDegrees: 200 })
    expect(step(talkOf('D2-hydraulic-tube.json'), 'advice').beside).toContain(
      ownerWords.advice.choices['run-on-marked'],
    )
  })

  it('gives causes as things to check, and three at most', () => {
    for (const file of measuredFiles) {
      const causes = step(talkOf(file), 'causes')
      expect(causes.sentence).toBe(ownerWords.causes.lead)
      expect(causes.beside.length).toBeLessThanOrEqual(4)
    }
    expect(step(talkOf('D1-compressor.json'), 'causes').beside[0]).toBe(ownerWords.causes.rust)
  })

  it('speaks of a flat map where there is no picture, and of an exaggeration nowhere then', () => {
    const [talk] = talksOf(scenario(saw), 'flat')
    expect(talk && step(talk.steps, 'seen').sentence).toBe(ownerWords.seen.flat)
  })

  it('is one sentence without a reading, and no advice for a bore to compare with', () => {
    const without = talkOf(saw, (job) => ({
      ...job,
      bores: job.bores.map((bore) => ({
        ...bore,
        surveys: bore.surveys.map((survey) => ({ ...survey, readings: [] })),
      })),
    }))
    expect(textsOf(without)).toEqual([ownerWords.nothing])
    const job = scenario(saw)
    const findings = inspect(job)
    const compared = findings.bores.find(({ role }) => role === 'for-comparison')
    const steps = compared && ownerTalk(job, findings, compared, { exaggeration: 500 })
    expect(steps && step(steps, 'advice').sentence).toBe(ownerWords.advice.undecided['for-comparison'])
  })

  it('tells of a scan alone that it gives no size, and of a mark all the same', () => {
    const scanned = (surfaceFindings: Job['bores'][number]['surveys'][number]['surfaceFindings']) =>
      talkOf('E-scuff-scan-72.json', (job) => ({
        ...job,
        bores: job.bores.map((bore) => ({
          ...bore,
          surveys: bore.surveys.map((survey) => ({
            ...survey,
            readings: [],
            ...(surfaceFindings ? { surfaceFindings } : {}),
          })),
        })),
      }))
    expect(textsOf(scanned([]))[0]).toBe(ownerWords.scanned)
    expect(scanned([]).length).toBeLessThan(3)
    const place = { fromDepthMm: 20, toDepthMm: 30, fromDegrees: 10, toDegrees: 30 }
    const marked = scanned([{ id: 'flake', kind: 'flaking', shape: 'patch', ...place }])
    expect(marked.map(({ topic }) => topic)).toEqual(['seen', 'used', 'advice'])
    expect(step(marked, 'used').sentence).toMatch(/^The hard coat flakes at 20 to 30 mm, 10° to 30°/)
  })

  it('judges nothing without limits', () => {
    const steps = talkOf(saw, (job) => ({ ...job, spec: {} }))
    expect(step(steps, 'now').beside).toContain(ownerWords.now.notEntered)
    expect(step(steps, 'used').sentence).toBe(ownerWords.used.none['no-limits'])
    expect(step(steps, 'sure').sentence).toBe(ownerWords.sure.notJudged)
    expect(step(steps, 'advice').sentence).toBe(ownerWords.advice.undecided['no-limits'])
  })

  it('names no direction of a round level and no depth where no taper stands out', () => {
    const round = talkOf(saw, (job) => ({
      ...job,
      bores: job.bores.map((bore) => ({
        ...bore,
        surveys: bore.surveys.map((survey) => ({
          ...survey,
          readings: survey.readings.map((reading) => ({ ...reading, sizesMm: [54.02, 54.021, 54.019] })),
        })),
      })),
    }))
    expect(step(round, 'shape')).toMatchObject({
      sentence: ownerWords.shape.even,
      beside: [ownerWords.shape.ovalOpen, ownerWords.shape.taperOpen],
    })
  })

  it('asks first after a reading that looks like a slip', () => {
    const [, second] = talksOf(scenario('B-four-cylinder-iron-as-typed.json'))
    expect(second && step(second.steps, 'sure').sentence).toBe(ownerWords.sure.openQuestions)
    expect(second && step(second.steps, 'now').beside[0]).toBe(ownerWords.now.slip)
  })

  it('holds for jobs with parts left out and sizes moved: whole sentences, no figure but those of inspect (seed 20261125)', () => {
    const jobs = fc.record({
      file: fc.constantFrom(...measuredFiles),
      shiftMm: fc.double({ min: -0.08, max: 0.08, noNaN: true }),
      withLimits: fc.boolean(),
      withHours: fc.boolean(),
      withWall: fc.boolean(),
      axes: fc.constantFrom(1, 2, 4),
    })
    fc.assert(
      fc.property(jobs, ({ file, ...change }) => {
        const job = changed(scenario(file), change)
        const known = new Set(figuresIn(inspectText(job, inspect(job))))
        for (const { finding, steps } of talksOf(job)) {
          expect(steps.length).toBe(7)
          for (const text of textsOf(steps)) {
            expect(text).toMatch(/^[“\p{L}].*[.]$/u)
            expect(text).not.toMatch(/[[\]{}]|undefined|NaN|Infinity/)
            expect(figuresIn(text).filter((f) => !known.has(f) && !isOwn(f, text, finding, known))).toEqual(
              [],
            )
          }
        }
      }),
      { seed: 20261125, numRuns: 20 },
    )
  })
})

interface Changed {
  readonly shiftMm: number
  readonly withLimits: boolean
  readonly withHours: boolean
  readonly withWall: boolean
  readonly axes: number
}

function changed(job: Job, { shiftMm, withLimits, withHours, withWall, axes }: Changed): Job {
  return {
    ...job,
    spec: withLimits ? job.spec : {},
    bores: job.bores.map(({ wall, ...bore }) => ({
      ...bore,
      ...(withWall && wall ? { wall } : {}),
      surveys: bore.surveys.map(({ hoursRun, ...survey }) => ({
        ...survey,
        ...(withHours && hoursRun !== undefined ? { hoursRun } : {}),
        readings: survey.readings
          .filter(({ axisDegrees }) => survey.axesDegrees.indexOf(axisDegrees) < axes)
          .map((reading) => ({
            ...reading,
            ...(reading.sizesMm ? { sizesMm: reading.sizesMm.map((size) => size + shiftMm) } : {}),
          })),
      })),
    })),
  }
}
