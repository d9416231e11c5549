/** The page may load from its own host only and run no inline script. */
const policy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "font-src 'self'",
  "img-src 'self' blob: data:",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
]

/** For the meta element, which serves any static host. Browsers ignore frame-ancestors there. */
export const contentSecurityPolicy = policy.join('; ')

/** Sent with every answer of the starter's server. */
export const responseHeaders = {
  'Content-Security-Policy': [...policy, "frame-ancestors 'none'"].join('; '),
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
}
