/** What an element is called that holds a job in a page that is handed over. */
export const jobInPageId = 'borewall-job'

const start = `<template id="${jobInPageId}">`
const photograph =
  /<img\b[^>]*\bsrc="data:(image\/(?:png|jpeg|webp));base64,([A-Za-z0-9+/=]+)"[^>]*\bdata-hash="([0-9a-f]{64})"/g

/**
 * The text of the job in a page that was handed over, with the photographs that the page shows; undefined where the page
 * holds none. It is taken out as text: nothing of the page is built or run.
 */
export function jobInPage(page: string): string | undefined {
  const from = page.indexOf(start)
  const to = from < 0 ? -1 : page.indexOf('</template>', from)
  if (to < 0) return undefined
  const text = unescaped(page.slice(from + start.length, to))
  const photographs = [...page.matchAll(photograph)].map(([, type, base64, hash]) => ({ hash, type, base64 }))
  return photographs.length === 0 ? text : withMember(text, 'photographs', photographs)
}

/** What stands for signs that would be markup, and nothing else: the page was written so. */
function unescaped(text: string): string {
  const signs: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"' }
  return text.replace(/&(amp|lt|gt|quot);/g, (whole, name: string) => signs[name] ?? whole)
}

/** The text of an object with one more member at its end; as it is where it is no such text. */
function withMember(text: string, name: string, value: readonly object[]): string {
  const end = text.lastIndexOf('}')
  return end < 0 ? text : `${text.slice(0, end).trimEnd()},\n  "${name}": ${JSON.stringify(value)}\n}\n`
}
