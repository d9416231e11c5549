import { createServer } from 'node:net'

/**
 * A port of this machine that nobody listens on.
 * @returns {Promise<number>}
 */
export function freePort() {
  return new Promise((resolve, reject) => {
    const trial = createServer()
    trial.once('error', reject)
    trial.listen(0, '127.0.0.1', () => {
      const address = trial.address()
      if (address === null || typeof address === 'string') reject(new Error('expected a port'))
      else trial.close(() => resolve(address.port))
    })
  })
}
