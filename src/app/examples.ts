import { newId } from '../job/new-id'
import { readJob } from '../job/read-job'
import type { Job } from '../job/schema'
import { codeInAddress } from './code-address'

/** The examples, by the name in their address, in the order in which they are offered. */
export const exampleNames = ['A', 'B', 'B-as-typed', 'C', 'D1', 'D2', 'E', 'E-72'] as const
export type ExampleName = (typeof exampleNames)[number]

/** Each is a file of its own, loaded when somebody wants to look at it. */
const texts: { readonly [Name in ExampleName]: () => Promise<{ readonly default: string }> } = {
  A: () => import('../../scenarios/A-two-stroke-single.json?raw'),
  B: () => import('../../scenarios/B-four-cylinder-iron.json?raw'),
  'B-as-typed': () => import('../../scenarios/B-four-cylinder-iron-as-typed.json?raw'),
  C: () => import('../../scenarios/C-wet-liner-diesel.json?raw'),
  D1: () => import('../../scenarios/D1-compressor.json?raw'),
  D2: () => import('../../scenarios/D2-hydraulic-tube.json?raw'),
  E: () => import('../../scenarios/E-scuff-scan-360.json?raw'),
  'E-72': () => import('../../scenarios/E-scuff-scan-72.json?raw'),
}

/** A copy of an example under an id of its own; undefined where its file could not be loaded. */
export async function loadExample(name: ExampleName): Promise<Job | undefined> {
  const text = await texts[name]().then(
    (file) => file.default,
    () => undefined,
  )
  if (text === undefined) return undefined
  const read = readJob(text)
  if (!read.ok) throw new Error(`The example ${name} is no job: ${JSON.stringify(read.problems)}`)
  return { ...read.job, id: newId() }
}

const field = 'example'

/** Where an example is found: the fragment of its address. */
export function exampleAddress(name: ExampleName): string {
  return `#${field}=${name}`
}

/** Where the list of all jobs is found. */
export const shelfAddress = '#shelf'

export type Asked =
  | { readonly kind: 'nothing' }
  | { readonly kind: 'shelf' }
  | { readonly kind: 'example'; readonly name: ExampleName }
  | { readonly kind: 'unknown'; readonly name: string }
  /** A job off the code of a report, or what stands in the place of one. */
  | { readonly kind: 'job'; readonly code: string }

/** What the fragment of an address asks for; capitals or not is all one. */
export function askedIn(fragment: string): Asked {
  if (fragment === shelfAddress) return { kind: 'shelf' }
  const code = codeInAddress(fragment)
  if (code !== undefined) return { kind: 'job', code }
  const asked = new URLSearchParams(fragment.replace(/^#/, '')).get(field)
  if (asked === null) return { kind: 'nothing' }
  const name = exampleNames.find((one) => one.toLowerCase() === asked.trim().toLowerCase())
  return name === undefined ? { kind: 'unknown', name: asked } : { kind: 'example', name }
}
