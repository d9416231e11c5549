import { rmSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'

const root = fileURLToPath(new URL('../..', import.meta.url))

/**
 * Bundles a command from its sources and hands what it exports to `use`. To be called once what it needs is
 * installed.
 * @template Command
 * @template Result
 * @param {string} name its file in this folder, without the ending
 * @param {(command: Command) => Promise<Result>} use
 * @returns {Promise<Result>}
 */
export async function withBundledCommand(name, use) {
  const { rolldown } = await import('rolldown')
  const input = join(root, 'src/cli', `${name}.ts`)
  // Each run has a bundle of its own, so that two runs at once do not read what the other is writing.
  const dir = join(root, 'node_modules/.cache/borewall', `${name}-${process.pid}`)
  const bundle = await rolldown({ input, platform: 'node', logLevel: 'silent', tsconfig: false })
  try {
    await bundle.write({ dir, format: 'esm', entryFileNames: 'command.mjs', chunkFileNames: '[name].mjs' })
    return await use(await import(pathToFileURL(join(dir, 'command.mjs')).href))
  } finally {
    await bundle.close()
    rmSync(dir, { recursive: true, force: true })
  }
}

/**
 * npm runs scripts in the project's folder; a file is named from the folder the user is in.
 * @param {string} script
 */
export function startFolder(script) {
  const { npm_lifecycle_event: running, INIT_CWD: folder } = process.env
  return running === script && folder ? folder : process.cwd()
}
