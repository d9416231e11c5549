import { element, type HtmlNode } from './html-text'
import type { Block } from './plain-text'

/**
 * Headed sections, paragraphs, lists and tables as elements, each of their texts isolated from those around it.
 * `level`: of the headings; subheadings are one below. A title is left out: its page has one.
 */
export function htmlBlocks(blocks: readonly Block[], level: 2 | 3): HtmlNode[] {
  return blocks.flatMap((block) => nodesOf(block, level))
}

function nodesOf(block: Block, level: 2 | 3): HtmlNode[] {
  switch (block.kind) {
    case 'title':
      return []
    case 'heading':
      return [text(`h${level}`, block.text)]
    case 'subheading':
      return [text(`h${level + 1}`, block.text)]
    case 'paragraph':
      return [text('p', block.text)]
    case 'list':
      return block.items.length === 0 ? [] : [listOf(block.items)]
    case 'table':
      return [tableOf(block.head, block.rows)]
    case 'entries':
      return [element('dl', { class: 'entries' }, ...block.entries.map(entryOf))]
  }
}

/** A text by itself: what runs from right to left in it turns nothing else. */
export function text(tag: string, words: string, className?: string): HtmlNode {
  return element(
    tag,
    { dir: 'auto', ...(className === undefined ? {} : { class: className }) },
    ...lines(words),
  )
}

export function listOf(items: readonly string[]): HtmlNode {
  return element('ul', {}, ...items.map((item) => text('li', item)))
}

/** A table that scrolls by itself where it is wider than the page; its first column names the rows. */
export function tableOf(head: readonly string[], rows: readonly (readonly string[])[]): HtmlNode {
  const heads = head.map((cell) => element('th', { scope: 'col', dir: 'auto' }, ...lines(cell)))
  const body = rows.map((row) =>
    element(
      'tr',
      {},
      ...head.map((_, column) =>
        column === 0
          ? element('th', { scope: 'row', dir: 'auto' }, ...lines(row[column] ?? ''))
          : element('td', { dir: 'auto' }, ...lines(row[column] ?? '')),
      ),
    ),
  )
  return element(
    'div',
    { class: 'wide', tabindex: 0 },
    element('table', {}, element('thead', {}, element('tr', {}, ...heads)), element('tbody', {}, ...body)),
  )
}

function entryOf({ left, right, under, indent }: Extract<Block, { kind: 'entries' }>['entries'][number]) {
  return element(
    'div',
    { class: indent === undefined ? 'entry' : 'entry minor' },
    text('dt', left),
    text('dd', right.trim().replace(/ {2,}/g, ' · ')),
    ...under.map((line) => text('dd', line, 'under')),
  )
}

function lines(words: string): (HtmlNode | string)[] {
  return words.split('\n').flatMap((line, index) => (index === 0 ? [line] : [element('br', {}), line]))
}
