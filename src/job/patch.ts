import { sameValue } from './same-value'

type OptionalKey<T> = { [Key in keyof T]-?: object extends Pick<T, Key> ? Key : never }[keyof T]

/** Changed fields of an object; `undefined` for a field that may be left out means: not recorded. */
export type Patch<T> = { readonly [Key in Exclude<keyof T, OptionalKey<T>>]?: T[Key] } & {
  readonly [Key in OptionalKey<T>]?: T[Key] | undefined
}

/** The object with the patch applied: the same object when nothing changes, a copy without undefined fields else. */
export function patched<T extends object>(
  object: T,
  patch: { readonly [Key in keyof T]?: T[Key] | undefined },
): T {
  const changed = Object.entries(patch).some(([key, value]) => !sameValue(Reflect.get(object, key), value))
  if (!changed) return object
  const copy = { ...object, ...patch } as T
  for (const key of Object.keys(copy)) {
    if (Reflect.get(copy, key) === undefined) Reflect.deleteProperty(copy, key)
  }
  return copy
}

/** The list with one entry changed, found by its id: the same list when nothing changes. Throws for an unknown id. */
export function withEntry<Item extends { readonly id: string }>(
  items: readonly Item[],
  id: string,
  change: (item: Item) => Item,
): readonly Item[] {
  const index = items.findIndex((item) => item.id === id)
  const item = items[index]
  if (item === undefined)
    throw new Error(`No entry with the id "${id}"; there are ${items.map((each) => each.id).join(', ')}`)
  const next = change(item)
  return next === item ? items : items.with(index, next)
}
