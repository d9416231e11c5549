import { escapedHtml, type HtmlNode, htmlText } from '../formats/html-text'

/** A page that needs nothing but itself. */
export interface StandalonePage {
  readonly language: string
  readonly title: string
  /** What made it, for programs. */
  readonly generator: string
  readonly style: string
  /** All that can be read, without scripts too. */
  readonly body: readonly HtmlNode[]
  /** Texts for programs, kept in templates, which are neither shown nor run. */
  readonly kept: Readonly<Record<string, string>>
  readonly script: string
}

/**
 * The text of the page. Its policy lets run the one script and hold the one style sheet, by the SHA-256 of their
 * text (CSP Level 3, 2.3.1), and nothing else: no address is loaded, and nothing that a text brings along can run.
 */
export async function standalonePage(page: StandalonePage): Promise<string> {
  const style = wholeText(page.style, 'style')
  const script = wholeText(page.script, 'script')
  const policy = [
    "default-src 'none'",
    `script-src '${await textHash(script)}'`,
    `style-src '${await textHash(style)}'`,
    'font-src data:',
    'img-src data:',
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ')
  const kept = Object.entries(page.kept).map(
    ([id, text]) => `<template id="${escapedHtml(id)}">${escapedHtml(text)}</template>`,
  )
  return [
    '<!doctype html>',
    `<html lang="${escapedHtml(page.language)}">`,
    '<head>',
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="${escapedHtml(policy)}">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    '<meta name="color-scheme" content="light dark">',
    '<meta name="referrer" content="no-referrer">',
    `<meta name="generator" content="${escapedHtml(page.generator)}">`,
    `<title>${htmlText(page.title)}</title>`,
    // Without one a browser looks for a picture beside the file.
    '<link rel="icon" href="data:,">',
    `<style>${style}</style>`,
    '</head>',
    '<body>',
    ...page.body.map(htmlText),
    ...kept,
    `<script>${script}</script>`,
    '</body>',
    '</html>',
    '',
  ].join('\n')
}

/** As a policy names a text (CSP Level 3, 2.3.1): the digest of its UTF-8 bytes in base64. */
async function textHash(text: string): Promise<string> {
  const digest = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text))
  return `sha256-${btoa(String.fromCharCode(...new Uint8Array(digest)))}`
}

/**
 * The text, which the parser of HTML must take whole and as it is (HTML standard, 13.2.5.4 and 13.1.2.6). Throws
 * where it would end earlier, or be another text by then.
 */
function wholeText(text: string, tag: 'style' | 'script'): string {
  if (/<!--|<\/(?:script|style)|\r|\0/i.test(text)) {
    throw new RangeError(`standalonePage: the ${tag} holds what would end it or change it`)
  }
  return text
}
