const letters = 'abcdefghijkmnpqrstuvwxyz23456789'

/** An id that no other part of any job is likely to have: 12 letters and digits, 60 random bits. */
export function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(12))
  return Array.from(bytes, (byte) => letters.charAt(byte % letters.length)).join('')
}
