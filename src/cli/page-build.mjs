import { createHash } from 'node:crypto'
import { existsSync, readdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'

/** Everything that the built page is made from. */
const sources = [
  'index.html',
  'package.json',
  'package-lock.json',
  'tsconfig.json',
  'vite.config.ts',
  'public',
  'scenarios',
  'src',
]

const stampName = '.built-from'

/**
 * Builds the page into `outDir` unless it was built from these very sources before; resolves with whether it
 * had to. It is built aside and put in place at the end, so a build that fails or is stopped leaves the old
 * page whole.
 * @param {string} root
 * @param {string} outDir
 * @param {() => void} [onStale] called before a build starts
 * @returns {Promise<boolean>}
 */
export async function buildIfStale(root, outDir, onStale = () => {}) {
  const stamp = stampOf(root)
  const stampFile = join(outDir, stampName)
  if (existsSync(stampFile) && readFileSync(stampFile, 'utf8') === stamp) return false
  onStale()
  const { build } = await import('vite')
  const aside = `${outDir}.${process.pid}`
  try {
    await build({ root, logLevel: 'warn', build: { outDir: aside, emptyOutDir: true } })
    writeFileSync(join(aside, stampName), stamp)
    rmSync(outDir, { recursive: true, force: true })
    renameSync(aside, outDir)
  } finally {
    rmSync(aside, { recursive: true, force: true })
  }
  return true
}

/**
 * A digest of the sources' names and contents. Times of change would not do: unpacking, copying or deleting
 * a file need not move them.
 * @param {string} root
 */
export function stampOf(root) {
  const digest = createHash('sha256')
  for (const file of sources.flatMap((name) => filesUnder(root, name))) {
    digest
      .update(file)
      .update('\0')
      .update(readFileSync(join(root, file)))
      .update('\0')
  }
  return digest.digest('hex')
}

/**
 * @param {string} root
 * @param {string} name
 * @returns {string[]}
 */
function filesUnder(root, name) {
  const path = join(root, name)
  if (!existsSync(path)) return []
  if (!statSync(path).isDirectory()) return [name]
  return readdirSync(path)
    .sort()
    .flatMap((entry) => filesUnder(root, `${name}/${entry}`))
}
