import type { Job } from './schema'

/** The job as the text of a file: JSON that a person can read, one reading or port to a line. */
export function writeJob(job: Job): string {
  return `${written(job, '')}\n`
}

/** Wide enough for a port. */
const widest = 160

function written(value: unknown, indent: string): string {
  const flat = JSON.stringify(value)
  if (typeof value !== 'object' || value === null) return flat
  if (isFlat(value)) {
    const line = oneLine(value)
    if (line.length + indent.length <= widest) return line
  }
  const inner = `${indent}  `
  const list = Array.isArray(value)
  const parts = list
    ? value.map((item) => `${inner}${written(item, inner)}`)
    : members(value).map(([key, item]) => `${inner}${JSON.stringify(key)}: ${written(item, inner)}`)
  if (parts.length === 0) return flat
  return `${list ? '[' : '{'}\n${parts.join(',\n')}\n${indent}${list ? ']' : '}'}`
}

function members(value: object): [string, unknown][] {
  return Object.entries(value).filter(([, item]) => item !== undefined)
}

/** No objects inside and no lists in lists: short enough to be taken in at a glance. */
function isFlat(value: object): boolean {
  const isPlain = (item: unknown) => typeof item !== 'object' || item === null
  if (Array.isArray(value)) return value.every(isPlain)
  return Object.values(value).every((item) => isPlain(item) || (Array.isArray(item) && item.every(isPlain)))
}

function oneLine(value: unknown): string {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value)
  if (Array.isArray(value)) return `[${value.map(oneLine).join(', ')}]`
  const parts = members(value).map(([key, item]) => `${JSON.stringify(key)}: ${oneLine(item)}`)
  return parts.length === 0 ? '{}' : `{ ${parts.join(', ')} }`
}
