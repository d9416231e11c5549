const chunk = 0x8000

/** Bytes in base64 (RFC 4648, section 4). */
export function base64Of(bytes: Uint8Array): string {
  let letters = ''
  // A call takes only so many arguments.
  for (let at = 0; at < bytes.length; at += chunk) {
    letters += String.fromCharCode(...bytes.subarray(at, at + chunk))
  }
  return btoa(letters)
}

/** The bytes written in base64; undefined where the text is none. */
export function bytesOfBase64(text: string): Uint8Array<ArrayBuffer> | undefined {
  try {
    return Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0))
  } catch (error) {
    // What atob throws for a text that is not base64 (HTML standard, 8.3).
    if (error instanceof DOMException && error.name === 'InvalidCharacterError') return undefined
    throw error
  }
}
