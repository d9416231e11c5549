import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { addressAt, host, identityPath } from './address.mjs'
import { responseHeaders } from './response-headers.mjs'

/**
 * Serves the built page on the fixed host: Vite's preview server, with the headers, the refusals and the
 * caching it does not bring itself.
 * @param {{ outDir: string, port: number, version: string }} options
 * @returns {Promise<{ address: string, close(): Promise<void> }>}
 */
export async function servePage({ outDir, port, version }) {
  const { preview } = await import('vite')
  const server = await preview({
    configFile: false,
    // A missing script must not come back as the page.
    appType: 'mpa',
    logLevel: 'warn',
    build: { outDir },
    preview: { host, port, strictPort: true, cors: false, open: false },
    plugins: [
      {
        name: 'borewall-answers',
        configurePreviewServer: ({ middlewares }) => {
          middlewares.use(answerer({ outDir, port, version }))
        },
      },
    ],
  })
  return { address: addressAt(port), close: () => server.close() }
}

/**
 * @param {{ outDir: string, port: number, version: string }} options
 * @returns {import('vite').Connect.NextHandleFunction}
 */
function answerer({ outDir, port, version }) {
  return (request, response, next) => {
    for (const [name, value] of Object.entries(responseHeaders)) response.setHeader(name, value)
    if (request.method !== 'GET' && request.method !== 'HEAD') {
      response.writeHead(405, { Allow: 'GET, HEAD' }).end()
      return
    }
    const path = (request.url ?? '/').split('?', 1)[0] ?? '/'
    // Jobs are kept under the exact address; the machine's other name would show an empty shelf.
    if (request.headers.host === `localhost:${port}`) {
      response.writeHead(308, { Location: `${addressAt(port)}${path.slice(1)}` }).end()
      return
    }
    if (path === identityPath) {
      response.writeHead(200, { 'Content-Type': 'application/json', 'Cache-Control': 'no-store' })
      response.end(JSON.stringify({ app: 'borewall', version }))
      return
    }
    // There is one page; its scripts are named relative to it, so it cannot be answered under another path.
    if (path !== '/' && !path.slice(path.lastIndexOf('/')).includes('.')) {
      response.writeHead(302, { Location: addressAt(port) }).end()
      return
    }
    if (isHashedAsset(outDir, path))
      response.setHeader('Cache-Control', 'public, max-age=31536000, immutable')
    next()
  }
}

/**
 * Files whose name holds a digest of their content may be kept for ever.
 * @param {string} outDir
 * @param {string} path
 */
function isHashedAsset(outDir, path) {
  return /^\/assets\/[\w.-]+-[\w-]{8}\.\w+$/.test(path) && existsSync(join(outDir, path))
}
