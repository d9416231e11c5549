import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { type IncomingHttpHeaders, request } from 'node:http'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { gunzipSync } from 'node:zlib'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { freePort } from '../../../src/cli/free-port.mjs'
import { servePage } from '../../../src/cli/page-server.mjs'

const folder = mkdtempSync(join(tmpdir(), 'borewall-page-'))
const outDir = join(folder, 'dist')
const script = 'export const filler = "borewall"\n'.repeat(200)
let port = 0
let server: { close(): Promise<void> }

beforeAll(async () => {
  mkdirSync(join(outDir, 'assets'), { recursive: true })
  writeFileSync(join(folder, 'secret.txt'), 'secret')
  writeFileSync(join(outDir, 'index.html'), '<!doctype html><title>Page</title>')
  writeFileSync(join(outDir, 'icon.svg'), '<svg xmlns="http://www.w3.org/2000/svg"/>')
  writeFileSync(join(outDir, 'assets', 'index-Ab3_d-9Z.js'), script)
  port = await freePort()
  server = await servePage({ outDir, port, version: '1.2.3' })
})

afterAll(async () => {
  await server.close()
  rmSync(folder, { recursive: true, force: true })
})

interface Answer {
  readonly status: number | undefined
  readonly headers: IncomingHttpHeaders
  readonly body: Buffer
}

/** A request whose path is sent as it is written, which fetch would tidy up. */
function ask(path: string, method = 'GET', headers: Record<string, string> = {}): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const asking = request({ host: '127.0.0.1', port, path, method, headers }, (response) => {
      const chunks: Buffer[] = []
      response.on('data', (chunk: Buffer) => chunks.push(chunk))
      response.on('end', () =>
        resolve({ status: response.statusCode, headers: response.headers, body: Buffer.concat(chunks) }),
      )
    })
    asking.on('error', reject)
    asking.end()
  })
}

describe("the starter's server", () => {
  it.each([
    ['/', 200, 'text/html'],
    ['/icon.svg', 200, 'image/svg+xml'],
    ['/assets/index-Ab3_d-9Z.js', 200, 'text/javascript'],
    ['/assets/gone-Ab3_d-9Z.js', 404, undefined],
  ])('answers %s with %i and the right kind', async (path, status, kind) => {
    const answer = await ask(path)
    expect(answer.status).toBe(status)
    expect(answer.headers['content-type']).toBe(kind)
  })

  it.each(['/', '/icon.svg', '/gone.js', '/borewall.json'])('guards %s by its headers', async (path) => {
    const { headers } = await ask(path)
    expect(headers['content-security-policy']).toContain("default-src 'none'; script-src 'self'")
    expect(headers['content-security-policy']).toContain("frame-ancestors 'none'")
    expect(headers['x-content-type-options']).toBe('nosniff')
    expect(headers['referrer-policy']).toBe('no-referrer')
    expect(headers['cross-origin-opener-policy']).toBe('same-origin')
    expect(headers['access-control-allow-origin']).toBeUndefined()
  })

  it('says who it is, for a second start to read', async () => {
    const { body } = await ask('/borewall.json')
    expect(JSON.parse(body.toString())).toEqual({ app: 'borewall', version: '1.2.3' })
  })

  it.each(['POST', 'PUT', 'DELETE', 'OPTIONS'])('refuses %s', async (method) => {
    const { status, headers } = await ask('/', method)
    expect(status).toBe(405)
    expect(headers.allow).toBe('GET, HEAD')
  })

  it('answers HEAD without a body', async () => {
    const { status, body } = await ask('/', 'HEAD')
    expect({ status, length: body.length }).toEqual({ status: 200, length: 0 })
  })

  it.each(['/../secret.txt', '/..%2fsecret.txt', '/%2e%2e/secret.txt', '/assets/../../secret.txt'])(
    'gives out nothing beside the page for %s',
    async (path) => {
      const { status, body } = await ask(path)
      expect(status).toBe(404)
      expect(body.toString()).not.toContain('secret')
    },
  )

  it('lets files named by their content be kept for ever, the page not', async () => {
    expect((await ask('/assets/index-Ab3_d-9Z.js')).headers['cache-control']).toContain('immutable')
    expect((await ask('/')).headers['cache-control']).toBe('no-cache')
    expect((await ask('/assets/gone-Ab3_d-9Z.js')).headers['cache-control']).toBeUndefined()
  })

  it('sends text packed to a browser that can unpack it', async () => {
    const { headers, body } = await ask('/assets/index-Ab3_d-9Z.js', 'GET', { 'Accept-Encoding': 'gzip' })
    expect(headers['content-encoding']).toBe('gzip')
    expect(body.length).toBeLessThan(script.length / 10)
    expect(gunzipSync(body).toString()).toBe(script)
  })

  it.each(['/some/page', '//elsewhere.example/a'])('sends %s to the page on this machine', async (path) => {
    const { status, headers } = await ask(path)
    expect(status).toBe(302)
    expect(headers.location).toBe(`http://127.0.0.1:${port}/`)
  })

  it("sends the machine's other name to the one address that jobs are kept under", async () => {
    const { status, headers } = await ask('/', 'GET', { Host: `localhost:${port}` })
    expect(status).toBe(308)
    expect(headers.location).toBe(`http://127.0.0.1:${port}/`)
  })

  it('refuses a foreign name that points at this machine', async () => {
    const { status } = await ask('/', 'GET', { Host: 'elsewhere.example' })
    expect(status).toBe(403)
  })
})
