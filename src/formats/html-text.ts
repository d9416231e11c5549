/** An element of a page that is kept as a file; texts are its children. */
export interface HtmlNode {
  readonly tag: string
  readonly attributes: Readonly<Record<string, string | number>>
  readonly children: readonly (HtmlNode | string)[]
}

/** All that such a page is made of, drawings included; nothing that runs, loads, links or asks. */
const tags: ReadonlySet<string> = new Set([
  ...['main', 'header', 'footer', 'section', 'article', 'div', 'h1', 'h2', 'h3', 'h4', 'p', 'span', 'bdi'],
  ...['strong', 'small', 'br', 'ul', 'ol', 'li', 'dl', 'dt', 'dd', 'figure', 'figcaption', 'img'],
  ...['table', 'caption', 'thead', 'tbody', 'tr', 'th', 'td', 'details', 'summary'],
  ...['svg', 'g', 'path', 'circle', 'rect', 'line', 'text', 'title', 'desc', 'clipPath', 'image'],
])

const attributeNames: ReadonlySet<string> = new Set([
  ...['class', 'id', 'lang', 'dir', 'role', 'tabindex', 'aria-label', 'aria-hidden', 'scope', 'colspan'],
  ...['alt', 'src', 'width', 'height', 'viewBox', 'd', 'x', 'y', 'x1', 'x2', 'y1', 'y2', 'cx', 'cy', 'r'],
  ...['transform', 'clip-path', 'clip-rule', 'fill', 'fill-opacity', 'stroke', 'stroke-opacity'],
  ...['stroke-width', 'stroke-dasharray', 'stroke-linecap', 'stroke-linejoin', 'paint-order'],
  ...['font-size', 'font-weight', 'text-anchor', 'href', 'preserveAspectRatio'],
])

/** Elements without an end (HTML standard, 13.1.2). */
const voidTags: ReadonlySet<string> = new Set(['br', 'img'])

const picture = /^data:image\/(?:png|jpeg|webp);base64,[A-Za-z0-9+/]+={0,2}$/

/** An element with what stands in it. */
export function element(
  tag: string,
  attributes: HtmlNode['attributes'],
  ...children: readonly (HtmlNode | string)[]
): HtmlNode {
  return { tag, attributes, children }
}

/**
 * The text of an element of HTML. Whatever people wrote stays text: it is escaped, and cannot be an element or an
 * attribute. Elements, attributes and addresses that such a page does not need are refused: throws for them.
 */
export function htmlText(node: HtmlNode | string): string {
  if (typeof node === 'string') return escapedHtml(readable(node))
  const { tag, attributes, children } = node
  if (!tags.has(tag)) throw new RangeError(`htmlText: expected an element of a page to read, got ${tag}`)
  const given = Object.entries(attributes).map(([name, value]) => attributeText(name, String(value)))
  const start = `<${tag}${given.join('')}>`
  return voidTags.has(tag) ? start : `${start}${children.map(htmlText).join('')}</${tag}>`
}

function attributeText(name: string, value: string): string {
  if (!attributeNames.has(name) && !/^data-[a-z]+$/.test(name)) {
    throw new RangeError(`htmlText: expected an attribute of a page to read, got ${name}`)
  }
  if ((name === 'src' || name === 'href') && !picture.test(value)) {
    throw new RangeError('htmlText: expected a picture in the page itself')
  }
  return ` ${name}="${escapedHtml(readable(value))}"`
}

/**
 * Characters that a page may not hold, or that would turn round the text after them, as what stands for unknown ones.
 * Scripts that run from right to left do so by themselves.
 */
function readable(text: string): string {
  return text.replace(/\r\n?/g, '\n').replace(/[^\P{Cc}\n\t]|[\u202a-\u202e\u2066-\u2069]|\p{Cs}/gu, '\ufffd')
}

/** A text that the parser of HTML gives back as it was, in an element or in an attribute in double quotes. */
export function escapedHtml(text: string): string {
  return text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;')
}
