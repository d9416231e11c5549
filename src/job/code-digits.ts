/**
 * Bytes as decimal digits with a check sum. Digits are what a QR code packs closest among what may stand in the
 * fragment of an address: three to ten bits (ISO/IEC 18004, numeric mode), so a bit of the code holds 0.9966 bits of
 * the bytes. Base64 in byte mode holds 0.75 of a bit, the 43 signs of alphanumeric mode that need no escape 0.986.
 */
export function digitsOfBytes(bytes: Uint8Array): string {
  // The leading one keeps zero bytes in front.
  return number([1, ...sumOf(bytes), ...bytes]).toString()
}

/** More digits than any code holds (version 40 of QR, 7089) are not read. */
export const mostDigits = 7089

/** The bytes; undefined where the text is no digits, or not those that were written. */
export function bytesOfDigits(text: string): Uint8Array | undefined {
  if (!/^[1-9][0-9]*$/.test(text) || text.length > mostDigits) return undefined
  const hex = BigInt(text).toString(16)
  if (hex.length % 2 === 0 || !hex.startsWith('1')) return undefined
  const all = Uint8Array.from(hex.slice(1).match(/../g) ?? [], (pair) => Number.parseInt(pair, 16))
  const bytes = all.subarray(4)
  const isWhole = all.length >= 4 && sumOf(bytes).every((byte, index) => byte === all[index])
  return isWhole ? bytes : undefined
}

function number(bytes: readonly number[]): bigint {
  return BigInt(`0x${bytes.map((byte) => byte.toString(16).padStart(2, '0')).join('')}`)
}

function sumOf(bytes: Uint8Array): number[] {
  const sum = crc32(bytes)
  return [sum >>> 24, (sum >>> 16) & 255, (sum >>> 8) & 255, sum & 255]
}

/** The cyclic redundancy check of ITU-T V.42, 8.1.1.6.2 (that of gzip and PNG), of 32 bits. */
export function crc32(bytes: Uint8Array): number {
  let sum = 0xffffffff
  for (const byte of bytes) {
    sum ^= byte
    for (let bit = 0; bit < 8; bit += 1) sum = (sum >>> 1) ^ (sum & 1 ? 0xedb88320 : 0)
  }
  return (sum ^ 0xffffffff) >>> 0
}
