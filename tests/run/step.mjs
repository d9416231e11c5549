import { spawn } from 'node:child_process'
import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

export const root = fileURLToPath(new URL('../..', import.meta.url))

/**
 * Runs one of the project's own tools and resolves with how it ended; nothing is printed unless `live`.
 * @param {string} title
 * @param {string[]} command a file below node_modules, or below the root, and its parameters
 * @param {{ environment?: Record<string, string>, live?: boolean }} [options]
 * @returns {Promise<Step>}
 *
 * @typedef {{ title: string, code: number, seconds: number, output: string }} Step
 */
export function runStep(title, [file = '', ...parameters], { environment = {}, live = false } = {}) {
  const started = performance.now()
  const installed = join(root, 'node_modules', file)
  const script = existsSync(installed) ? installed : join(root, file)
  return new Promise((resolve) => {
    const child = spawn(process.execPath, [script, ...parameters], {
      cwd: root,
      env: { ...process.env, NO_COLOR: '1', FORCE_COLOR: undefined, ...environment },
      stdio: ['ignore', 'pipe', 'pipe'],
    })
    let output = ''
    /** @param {Buffer} chunk */
    const take = (chunk) => {
      output += chunk
      if (live) process.stdout.write(chunk)
    }
    child.stdout.on('data', take)
    child.stderr.on('data', take)
    /** @param {number} code */
    const end = (code) => resolve({ title, code, seconds: (performance.now() - started) / 1000, output })
    child.once('error', (error) => {
      output += `${error.message}\n`
      end(1)
    })
    child.once('close', (code) => end(code ?? 1))
  })
}
