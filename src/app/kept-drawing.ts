import type { HtmlNode } from '../formats/html-text'
import { shortPath } from './short-path'

/** A drawing in few letters, whose clips have names of their own on a page with others. */
export function keptDrawing(node: HtmlNode, name: string): HtmlNode {
  const { id, d, 'clip-path': clip } = node.attributes
  return {
    ...node,
    attributes: {
      ...node.attributes,
      ...(d === undefined ? {} : { d: shortPath(String(d)) }),
      ...(id === undefined ? {} : { id: `${name}-${id}` }),
      ...(clip === undefined ? {} : { 'clip-path': String(clip).replace('url(#', `url(#${name}-`) }),
    },
    children: node.children.map((child) => (typeof child === 'string' ? child : keptDrawing(child, name))),
  }
}
