import type { SvgNode } from '../charts/svg-file'

/** What style sheets say of a drawing's elements; written down with each, since a file has no style sheet. */
const styles = [
  'fill',
  'fill-opacity',
  'stroke',
  'stroke-opacity',
  'stroke-width',
  'stroke-dasharray',
  'stroke-linecap',
  'stroke-linejoin',
  'paint-order',
  'font-size',
  'font-weight',
  'text-anchor',
] as const

/** Where things are; everything else (names, roles, keys) is for the page alone. */
const places: ReadonlySet<string> = new Set([
  'd',
  'x',
  'y',
  'x1',
  'x2',
  'y1',
  'y2',
  'cx',
  'cy',
  'r',
  'width',
  'height',
  'transform',
  'clip-path',
  'clip-rule',
])

/** What a style sheet leaves as it is anyway. */
const usual: Readonly<Record<string, string>> = {
  'fill-opacity': '1',
  'stroke-opacity': '1',
  'stroke-dasharray': 'none',
  'stroke-linecap': 'butt',
  'stroke-linejoin': 'miter',
  'paint-order': 'normal',
  'text-anchor': 'start',
}

/** A drawing of the page by itself: each element with its place and with the looks that the page gives it. */
export function drawnNode(element: Element): SvgNode {
  const names = new Map<string, string>()
  for (const [i, clip] of [...element.querySelectorAll('clipPath')].entries())
    names.set(clip.id, `clip-${i + 1}`)
  return nodeOf(element, names)
}

function nodeOf(element: Element, names: ReadonlyMap<string, string>): SvgNode {
  const tag = element.tagName
  const isText = tag === 'title' || tag === 'desc'
  const attributes: Record<string, string> = {}
  for (const { name, value } of element.attributes) {
    if (places.has(name)) attributes[name] = renamed(value, names)
    if (name === 'id' && tag === 'clipPath') attributes.id = names.get(value) ?? value
  }
  if (!isText && tag !== 'clipPath' && tag !== 'svg') Object.assign(attributes, looksOf(element))
  const children = [...element.childNodes].flatMap((child): (SvgNode | string)[] => {
    if (child instanceof Text) return [child.data]
    return child instanceof Element ? [nodeOf(child, names)] : []
  })
  return { tag, attributes, children }
}

function looksOf(element: Element): Record<string, string> {
  const computed = getComputedStyle(element)
  const isText = element.tagName === 'text'
  const looks: Record<string, string> = {}
  for (const style of styles) {
    const value = computed.getPropertyValue(style)
    const isOfText = style.startsWith('font') || style === 'text-anchor'
    if (value === '' || value === usual[style] || (isOfText && !isText) || element.tagName === 'g') continue
    looks[style] = value.replace(/(\d)px/g, '$1')
  }
  return looks
}

function renamed(value: string, names: ReadonlyMap<string, string>): string {
  return value.replace(/url\("?#([^")]+)"?\)/, (_, id: string) => `url(#${names.get(id) ?? id})`)
}
