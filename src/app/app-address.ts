/** What is wrong with an address as it was typed. */
export type AddressFlaw = 'no-address' | 'no-scheme' | 'other-scheme' | 'password' | 'fragment' | 'too-long'

/** An address at which a shop serves Borewall. */
export type AppAddress =
  | { readonly ok: true; readonly address: string }
  | { readonly ok: false; readonly why: AddressFlaw; readonly mended?: string }

/** Longer ones leave a code no room for a job. */
export const longestAddress = 200

/** The address as it is kept, or what is wrong with it and, where it can be told, how it would be right. */
export function readAppAddress(typed: string): AppAddress {
  const text = typed.trim()
  if (text.length > longestAddress) return { ok: false, why: 'too-long' }
  const url = /\s/.test(text) ? undefined : parsed(text)
  if (!/^[a-z][a-z0-9+.-]*:\/\//i.test(text)) {
    const mended = /\s/.test(text) ? undefined : parsed(`https://${text}`)
    if (!mended?.hostname.includes('.')) return { ok: false, why: 'no-address' }
    return { ok: false, why: 'no-scheme', mended: mended.href }
  }
  if (url === undefined) return { ok: false, why: 'no-address' }
  if (!/^https?:$/.test(url.protocol)) return { ok: false, why: 'other-scheme' }
  if (url.username !== '' || url.password !== '') return { ok: false, why: 'password' }
  if (text.includes('#')) return { ok: false, why: 'fragment', mended: text.slice(0, text.indexOf('#')) }
  return { ok: true, address: url.href }
}

function parsed(text: string): URL | undefined {
  return URL.canParse(text) ? new URL(text) : undefined
}

/** Who alone can open an address: this machine, or what is in the same network; undefined where nothing says so. */
export function reachOf(address: string): 'this-machine' | 'this-network' | undefined {
  const host = parsed(address)?.hostname
  if (host === undefined) return undefined
  if (/^(localhost|.*\.localhost|127\..*|\[::1\])$/.test(host)) return 'this-machine'
  const isNear = /^[\d.]+$/.test(host)
    ? /^(10|192\.168|172\.(1[6-9]|2\d|3[01])|169\.254)\./.test(host)
    : /^\[f[cde]/.test(host) || host.endsWith('.local') || !/[.:]/.test(host)
  return isNear ? 'this-network' : undefined
}
