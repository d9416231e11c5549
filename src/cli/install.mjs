import { spawn } from 'node:child_process'
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

const root = fileURLToPath(new URL('../..', import.meta.url))

/**
 * Installs the packages of the lock file unless they are all there, so that every command works as the first
 * one on a fresh clone. Speaks on standard error only: standard output belongs to the command.
 * Throws with what to do when the Node on this machine is too old or npm fails.
 */
export async function ensureInstalled() {
  checkNode(process.versions.node)
  if (isInstalled(root)) return
  process.stderr.write('Installing the packages Borewall is built with (npm ci), once.\n')
  const code = await npmCi()
  if (code !== 0) {
    throw new Error(`npm ci ended with ${code}. It needs the npm registry; see its own message above.`)
  }
}

/**
 * @param {string} version
 */
export function checkNode(version) {
  const [major = 0, minor = 0] = version.split('.').map(Number)
  if (major > 20 || (major === 20 && minor >= 19)) return
  throw new Error(
    `Borewall needs Node.js 20.19 or newer; this is ${version}. Install a newer one from nodejs.org.`,
  )
}

/**
 * Whether every package that the lock file asks for is installed in that very edition. Packages for other
 * machines are optional and may be missing.
 * @param {string} folder
 */
export function isInstalled(folder) {
  const wanted = packagesOf(join(folder, 'package-lock.json'))
  const present = packagesOf(join(folder, 'node_modules', '.package-lock.json'))
  return Object.entries(wanted).every(([path, { integrity, optional }]) => {
    if (path === '' || (optional && !present[path])) return true
    return present[path]?.integrity === integrity && existsSync(join(folder, path, 'package.json'))
  })
}

/**
 * @param {string} file
 * @returns {Record<string, { integrity?: string, optional?: boolean }>}
 */
function packagesOf(file) {
  return existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')).packages : {}
}

/**
 * The project's .npmrc silences npm, so its own account is asked for here.
 * @returns {Promise<number>}
 */
function npmCi() {
  const parameters = ['ci', '--ignore-scripts', '--loglevel=notice', '--no-fund', '--no-audit']
  const npm = process.env.npm_execpath
  return new Promise((resolve, reject) => {
    const child = npm
      ? spawn(process.execPath, [npm, ...parameters], { cwd: root, stdio: ['ignore', 2, 2] })
      : spawn('npm', parameters, { cwd: root, stdio: ['ignore', 2, 2], shell: process.platform === 'win32' })
    child.once('error', (error) => reject(new Error(`npm could not be started (${error.message}).`)))
    child.once('close', (code) => resolve(code ?? 1))
  })
}
