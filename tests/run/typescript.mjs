import { mkdirSync, mkdtempSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { build } from 'vite'
import { root } from './step.mjs'

/**
 * Bundles a TypeScript module of the tests for Node and imports it: Node 20 reads no TypeScript, and a bundle
 * runs the core the way the page does.
 * @param {string} file from the root
 * @returns {Promise<any>} the module
 */
export async function importTypeScript(file) {
  // Inside the project, so that packages left out of the bundle are found.
  mkdirSync(join(root, '.cache'), { recursive: true })
  const folder = mkdtempSync(join(root, '.cache', 'run-'))
  try {
    await build({
      root,
      configFile: false,
      logLevel: 'warn',
      build: {
        ssr: join(root, file),
        outDir: folder,
        target: 'node20',
        rolldownOptions: { output: { entryFileNames: 'entry.mjs' } },
      },
      ssr: { external: ['@playwright/test', 'vite'] },
    })
    return await import(pathToFileURL(join(folder, 'entry.mjs')).href)
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}
