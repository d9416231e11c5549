/**
 * `npm run inspect -- FILE [--json]`: installs what is missing, bundles the command from its sources and
 * runs it in the language asked for. Plain JavaScript, because it runs before anything is installed.
 */
import { rmSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { ensureInstalled } from './install.mjs'

const root = fileURLToPath(new URL('../..', import.meta.url))

async function run() {
  await ensureInstalled()
  const { rolldown } = await import('rolldown')
  const input = join(root, 'src/cli/inspect-in-language.ts')
  // Each run has a bundle of its own, so that two runs at once do not read what the other is writing.
  const dir = join(root, 'node_modules/.cache/borewall', `inspect-${process.pid}`)
  const bundle = await rolldown({ input, platform: 'node', logLevel: 'silent', tsconfig: false })
  try {
    await bundle.write({ dir, format: 'esm', entryFileNames: 'inspect.mjs', chunkFileNames: '[name].mjs' })
    /** @type {typeof import('./inspect-in-language.ts')} */
    const { inspectInLanguage } = await import(pathToFileURL(join(dir, 'inspect.mjs')).href)
    const { exitStatus, output, errors } = await inspectInLanguage(process.argv.slice(2), startFolder())
    process.exitCode = exitStatus
    process.stderr.write(errors)
    process.stdout.write(output)
  } finally {
    await bundle.close()
    rmSync(dir, { recursive: true, force: true })
  }
}

/** npm runs scripts in the project's folder; a file is named from the folder the user is in. */
function startFolder() {
  const { npm_lifecycle_event: script, INIT_CWD: folder } = process.env
  return script === 'inspect' && folder ? folder : process.cwd()
}

// Whoever reads the output may stop early, as `head` does; there is nothing to mend then.
for (const stream of [process.stdout, process.stderr]) {
  stream.on('error', (/** @type {NodeJS.ErrnoException} */ error) => {
    if (error.code !== 'EPIPE') throw error
  })
}

run().catch((error) => {
  process.stderr.write(`The findings could not be made: ${error instanceof Error ? error.message : error}\n`)
  process.exitCode = 1
})
