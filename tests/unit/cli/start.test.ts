import { spawn } from 'node:child_process'
import { createServer, type RequestListener } from 'node:http'
import { fileURLToPath } from 'node:url'
import { afterEach, describe, expect, it } from 'vitest'
import { chosenPort } from '../../../src/cli/address.mjs'
import { openingCommand } from '../../../src/cli/open-in-browser.mjs'

const starter = fileURLToPath(new URL('../../../src/cli/start.mjs', import.meta.url))
const closers: (() => Promise<void>)[] = []

afterEach(async () => {
  for (const close of closers.splice(0)) await close()
})

/** A server on a free port of this machine, closed after the test. */
async function listening(answer: RequestListener): Promise<number> {
  const server = createServer(answer)
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  closers.push(() => new Promise((resolve) => server.close(() => resolve())))
  const address = server.address()
  if (address === null || typeof address === 'string') throw new Error('expected a port')
  return address.port
}

function startAt(port: number | string): Promise<{ code: number | null; out: string; err: string }> {
  const child = spawn(process.execPath, [starter], {
    env: { ...process.env, BOREWALL_PORT: `${port}`, BROWSER: 'none' },
  })
  let out = ''
  let err = ''
  child.stdout.on('data', (chunk) => {
    out += chunk
  })
  child.stderr.on('data', (chunk) => {
    err += chunk
  })
  return new Promise((resolve) => child.once('close', (code) => resolve({ code, out, err })))
}

describe('npm start on a busy port', () => {
  it('says that Borewall already runs there, with the address, and ends well', async () => {
    const port = await listening((_, response) => response.end('{"app":"borewall","version":"0.1.0"}'))
    const { code, out, err } = await startAt(port)
    expect({ code, err }).toEqual({ code: 0, err: '' })
    expect(out).toBe(`Borewall already runs at http://127.0.0.1:${port}/: open it in a browser.\n`)
  })

  it('says so when the Borewall that runs there is another version', async () => {
    const port = await listening((_, response) => response.end('{"app":"borewall","version":"99.0.0"}'))
    const { out } = await startAt(port)
    expect(out).toContain('It is version 99.0.0; this folder holds 0.1.0.')
  })

  it.each([
    ['answers with a page', (_, response) => response.end('<h1>Mine</h1>')],
    ['answers with other data', (_, response) => response.end('null')],
    ['sends elsewhere', (_, response) => response.writeHead(302, { Location: '/a' }).end()],
    ['hangs up', (request) => request.socket.destroy()],
  ] satisfies [string, RequestListener][])(
    'stops with what to do when a program there %s',
    async (_, answer) => {
      const port = await listening(answer)
      const { code, out, err } = await startAt(port)
      expect({ code, out }).toEqual({ code: 1, out: '' })
      expect(err).toContain(`another program already uses port ${port}`)
      expect(err).toContain('Stop that program and start again.')
    },
  )
})

describe('the address', () => {
  it('is the same every time, since the browser keeps jobs under it', () => {
    expect(chosenPort({})).toBe(4780)
  })

  it.each(['0', '65536', '80.5', 'abc', '-1'])('refuses BOREWALL_PORT %s and names it', (text) => {
    expect(() => chosenPort({ BOREWALL_PORT: text })).toThrow(`BOREWALL_PORT is "${text}"`)
  })
})

describe('opening the browser', () => {
  const address = 'http://127.0.0.1:4780/'

  it('is left alone without a desktop, on a build machine and where BROWSER is none', () => {
    expect(openingCommand(address, 'linux', {})).toBeUndefined()
    expect(openingCommand(address, 'darwin', { CI: '1' })).toBeUndefined()
    expect(openingCommand(address, 'linux', { DISPLAY: ':0', BROWSER: 'none' })).toBeUndefined()
  })

  it("uses the desktop's own command", () => {
    expect(openingCommand(address, 'linux', { WAYLAND_DISPLAY: 'wayland-0' })?.command).toBe('xdg-open')
    expect(openingCommand(address, 'darwin', {})?.command).toBe('open')
    expect(openingCommand(address, 'win32', {})).toEqual({
      command: 'cmd',
      parameters: ['/c', 'start', '', address],
    })
  })
})
