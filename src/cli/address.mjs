/**
 * Where the page is served. A browser keeps saved jobs under the exact address, so the port is fixed and the
 * starter never moves to a free one by itself: that would show an empty shelf.
 */

export const host = '127.0.0.1'

/** Answers with the program's name and version, so that a second start can tell who holds the port. */
export const identityPath = '/borewall.json'

const usualPort = 4780

/** The port to serve on: 4780, or BOREWALL_PORT where tests run beside a page in use. */
export function chosenPort(environment = process.env) {
  const text = environment.BOREWALL_PORT
  if (text === undefined || text === '') return usualPort
  const port = Number(text)
  if (!Number.isInteger(port) || port < 1 || port > 65535) {
    throw new Error(`BOREWALL_PORT is "${text}"; it must be a whole number from 1 to 65535`)
  }
  return port
}

/** @param {number} port */
export function addressAt(port) {
  return `http://${host}:${port}/`
}
