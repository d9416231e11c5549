export type TableEncoding = 'utf-8' | 'utf-16' | 'windows-1252'

export type TableBytes =
  | { readonly ok: true; readonly text: string; readonly encoding: TableEncoding }
  | { readonly ok: false; readonly why: 'no-text' }

/**
 * The text of a file that a spreadsheet wrote: UTF-8; UTF-16 where it begins with a byte order mark; else Windows-1252,
 * which older spreadsheets write and in which no bytes are an error. A file with zero bytes in it is none of them.
 */
export function tableText(bytes: Uint8Array): TableBytes {
  const [first, second] = bytes
  const utf16 =
    first === 0xff && second === 0xfe ? 'utf-16le' : first === 0xfe && second === 0xff ? 'utf-16be' : ''
  if (utf16 !== '') return { ok: true, text: new TextDecoder(utf16).decode(bytes), encoding: 'utf-16' }
  if (bytes.includes(0)) return { ok: false, why: 'no-text' }
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes)
    return { ok: true, text, encoding: 'utf-8' }
  } catch (error) {
    // The only thing that a fatal decoder throws for bytes that are not UTF-8 (WHATWG Encoding).
    if (!(error instanceof TypeError)) throw error
    return { ok: true, text: new TextDecoder('windows-1252').decode(bytes), encoding: 'windows-1252' }
  }
}
