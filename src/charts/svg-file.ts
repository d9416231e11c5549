/** An element of a drawing that is kept as a file. */
export interface SvgNode {
  readonly tag: string
  readonly attributes: Readonly<Record<string, string | number>>
  readonly children: readonly (SvgNode | string)[]
}

/** All that a drawing of ours is made of; nothing that runs, loads or links. */
const tags: ReadonlySet<string> = new Set([
  'svg',
  'g',
  'path',
  'circle',
  'rect',
  'line',
  'text',
  'title',
  'desc',
  'clipPath',
])

const attributeName = /^[a-zA-Z][a-zA-Z0-9-]*$/

/**
 * A drawing as the text of an .svg file. Text comes from people: what XML cannot hold is left out of it, the rest
 * is escaped. Elements and attributes that no drawing needs are refused: throws for them.
 */
export function svgText(root: SvgNode): string {
  return `<?xml version="1.0" encoding="UTF-8"?>\n${written(root)}\n`
}

function written({ tag, attributes, children }: SvgNode): string {
  if (!tags.has(tag)) throw new RangeError(`svgText: expected an element of a drawing, got ${tag}`)
  const given = Object.entries(attributes).map(([name, value]) => {
    if (!attributeName.test(name) || /^on/i.test(name) || /href/i.test(name)) {
      throw new RangeError(`svgText: expected an attribute of a drawing, got ${name}`)
    }
    return ` ${name}="${escaped(String(value))}"`
  })
  const inner = children.map((child) => (typeof child === 'string' ? escaped(child) : written(child)))
  return inner.length === 0
    ? `<${tag}${given.join('')}/>`
    : `<${tag}${given.join('')}>${inner.join('')}</${tag}>`
}

/** XML 1.0 (Fifth Edition), 2.2: the characters that a document may hold; a lone half of a pair is none. */
function isAllowed(letter: string): boolean {
  const code = letter.codePointAt(0) ?? 0
  if (code < 0x20) return code === 0x9 || code === 0xa || code === 0xd
  return code < 0xd800 || (code > 0xdfff && code < 0xfffe) || code > 0xffff
}

function escaped(text: string): string {
  return [...text]
    .filter(isAllowed)
    .join('')
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .replace(/"/g, '&quot;')
    .replace(/[\t\n\r]/g, ' ')
}
