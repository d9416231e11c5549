import { createServer } from 'node:net'
import { addressAt, host, identityPath } from './address.mjs'

/**
 * Who listens on the port: nobody, Borewall (with its version), or something else.
 * @param {number} port
 * @returns {Promise<{ kind: 'nobody' } | { kind: 'borewall', version: string } | { kind: 'other' }>}
 */
export async function portHolder(port) {
  if (await isFree(port)) return { kind: 'nobody' }
  const version = await borewallVersionAt(port)
  return version === undefined ? { kind: 'other' } : { kind: 'borewall', version }
}

/**
 * @param {number} port
 * @returns {Promise<boolean>}
 */
function isFree(port) {
  return new Promise((resolve, reject) => {
    const trial = createServer()
    trial.once('error', (/** @type {NodeJS.ErrnoException} */ error) => {
      if (error.code === 'EADDRINUSE') resolve(false)
      else reject(error)
    })
    trial.listen({ port, host, exclusive: true }, () => trial.close(() => resolve(true)))
  })
}

/**
 * @param {number} port
 * @returns {Promise<string | undefined>}
 */
async function borewallVersionAt(port) {
  try {
    const answer = await fetch(new URL(identityPath, addressAt(port)), {
      redirect: 'error',
      signal: AbortSignal.timeout(2000),
    })
    if (!answer.ok) return undefined
    const identity = await answer.json()
    return identity?.app === 'borewall' && typeof identity.version === 'string' ? identity.version : undefined
  } catch {
    // No answer, or one that is not JSON, is the finding itself: another program holds the port.
    return undefined
  }
}
