import * as z from 'zod/mini'

/** The field of the object at the path that a misspelt key was probably meant for. */
export function nearestField(
  schema: z.ZodMiniType,
  path: readonly PropertyKey[],
  key: string,
): string | undefined {
  const at = path.reduce<z.core.$ZodType | undefined>(inside, schema)
  const fields = at instanceof z.ZodMiniObject ? Object.keys(at.shape) : []
  const written = key.slice(0, 60).toLowerCase()
  const [nearest] = fields
    .map((field) => ({ field, distance: editDistance(written, field.toLowerCase()) }))
    .filter(({ field, distance }) => distance <= Math.min(3, field.length / 3))
    .sort((a, b) => a.distance - b.distance)
  return nearest?.field
}

function inside(schema: z.core.$ZodType | undefined, key: PropertyKey): z.core.$ZodType | undefined {
  const plain = withoutOptional(schema)
  if (plain instanceof z.ZodMiniArray) return withoutOptional(plain.def.element)
  if (plain instanceof z.ZodMiniObject && typeof key === 'string') return withoutOptional(plain.shape[key])
  return undefined
}

function withoutOptional(schema: z.core.$ZodType | undefined): z.core.$ZodType | undefined {
  return schema instanceof z.ZodMiniExactOptional ? schema.def.innerType : schema
}

/** Insertions, deletions and replacements of one letter that lead from one word to the other. */
function editDistance(one: string, other: string): number {
  let row = Array.from({ length: other.length + 1 }, (_, index) => index)
  for (const [index, letter] of [...one].entries()) {
    const above = row
    row = [index + 1]
    for (const [column, letterThere] of [...other].entries()) {
      const replaced = (above[column] ?? 0) + (letter === letterThere ? 0 : 1)
      row.push(Math.min(replaced, (above[column + 1] ?? 0) + 1, (row[column] ?? 0) + 1))
    }
  }
  return row.at(-1) ?? 0
}
