import { ShelfError } from './shelf-error'

/** SHA-256 (FIPS 180-4) of bytes as 64 hexadecimal digits. */
export async function contentHash(bytes: BufferSource): Promise<string> {
  // Browsers have it on pages of this machine and behind https only.
  if (globalThis.crypto?.subtle === undefined) throw new ShelfError('unavailable')
  const digest = await crypto.subtle.digest('SHA-256', bytes)
  return Array.from(new Uint8Array(digest), (byte) => byte.toString(16).padStart(2, '0')).join('')
}
