import * as z from 'zod/mini'
import { sameValue } from './same-value'

const path = z.string().check(z.maxLength(1000))

/** The operations used here of a JSON Patch (RFC 6902); paths are JSON Pointers (RFC 6901). */
export const operationSchema = z.discriminatedUnion('op', [
  z.strictObject({ op: z.literal('add'), path, value: z.unknown() }),
  z.strictObject({ op: z.literal('replace'), path, value: z.unknown() }),
  z.strictObject({ op: z.literal('remove'), path }),
])
export type Operation = z.output<typeof operationSchema>

/** What turns one value of JSON into another, as the steps of a JSON Patch. A field that is undefined counts as absent. */
export function differenceOf(from: unknown, to: unknown): readonly Operation[] {
  const operations: Operation[] = []
  compare(from, to, '', operations)
  return operations
}

function compare(from: unknown, to: unknown, at: string, operations: Operation[]): void {
  if (Object.is(from, to)) return
  if (Array.isArray(from) && Array.isArray(to)) compareLists(from, to, at, operations)
  else if (isObject(from) && isObject(to)) compareFields(from, to, at, operations)
  else operations.push({ op: 'replace', path: at, value: to })
}

function compareFields(from: Fields, to: Fields, at: string, operations: Operation[]): void {
  for (const key of new Set([...Object.keys(from), ...Object.keys(to)])) {
    const path = `${at}/${escaped(key)}`
    if (to[key] === undefined) {
      if (from[key] !== undefined) operations.push({ op: 'remove', path })
    } else if (from[key] === undefined) operations.push({ op: 'add', path, value: to[key] })
    else compare(from[key], to[key], path, operations)
  }
}

/** What both lists begin and end with stays; what lies between is compared in pairs, then put in or taken out. */
function compareLists(from: readonly unknown[], to: readonly unknown[], at: string, operations: Operation[]) {
  const most = Math.min(from.length, to.length)
  let before = 0
  while (before < most && sameValue(from[before], to[before])) before += 1
  let after = 0
  while (after < most - before && sameValue(from.at(-1 - after), to.at(-1 - after))) after += 1
  const pairs = most - before - after
  for (let index = before; index < before + pairs; index += 1) {
    compare(from[index], to[index], `${at}/${index}`, operations)
  }
  const next = before + pairs
  for (let count = from.length - after - next; count > 0; count -= 1) {
    operations.push({ op: 'remove', path: `${at}/${next}` })
  }
  for (let index = next; index < to.length - after; index += 1) {
    operations.push({ op: 'add', path: `${at}/${index}`, value: to[index] })
  }
}

export type Differing = { readonly ok: true; readonly value: unknown } | { readonly ok: false }

/** The value with the operations done, the given one untouched; not ok where one of them fits nothing in it. */
export function withDifference(value: unknown, operations: readonly Operation[]): Differing {
  let done: Differing = { ok: true, value }
  for (const operation of operations) {
    if (!done.ok) return done
    done = operated(done.value, operation.path.split('/').slice(1).map(unescaped), operation)
  }
  return done
}

const failed: Differing = { ok: false }

function operated(value: unknown, keys: readonly string[], operation: Operation): Differing {
  const [key, ...rest] = keys
  if (key === undefined) {
    return operation.op === 'replace' && operation.path === '' ? { ok: true, value: operation.value } : failed
  }
  if (Array.isArray(value)) return inList(value, key, rest, operation)
  return isObject(value) ? inFields(value, key, rest, operation) : failed
}

function inFields(fields: Fields, key: string, rest: readonly string[], operation: Operation): Differing {
  const has = Object.hasOwn(fields, key)
  if (rest.length > 0) {
    const inner = has ? operated(fields[key], rest, operation) : failed
    return inner.ok ? { ok: true, value: { ...fields, [key]: inner.value } } : failed
  }
  if (operation.op === 'add') return { ok: true, value: { ...fields, [key]: operation.value } }
  if (!has) return failed
  if (operation.op === 'replace') return { ok: true, value: { ...fields, [key]: operation.value } }
  const { [key]: _, ...others } = fields
  return { ok: true, value: others }
}

function inList(
  list: readonly unknown[],
  key: string,
  rest: readonly string[],
  operation: Operation,
): Differing {
  const index = /^(0|[1-9]\d{0,8})$/.test(key) ? Number(key) : list.length + 1
  if (rest.length > 0) {
    const inner = index < list.length ? operated(list[index], rest, operation) : failed
    return inner.ok ? { ok: true, value: list.with(index, inner.value) } : failed
  }
  if (operation.op === 'add') {
    return index <= list.length ? { ok: true, value: list.toSpliced(index, 0, operation.value) } : failed
  }
  if (index >= list.length) return failed
  return {
    ok: true,
    value: operation.op === 'remove' ? list.toSpliced(index, 1) : list.with(index, operation.value),
  }
}

type Fields = { readonly [key: string]: unknown }

function isObject(value: unknown): value is Fields {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

function escaped(key: string): string {
  return key.replaceAll('~', '~0').replaceAll('/', '~1')
}

function unescaped(key: string): string {
  return key.replaceAll('~1', '/').replaceAll('~0', '~')
}
