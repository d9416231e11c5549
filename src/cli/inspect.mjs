/**
 * `npm run inspect -- FILE [--json]`: installs what is missing, bundles the command from its sources and
 * runs it. Plain JavaScript, because it runs before anything is installed.
 */
import { rmSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { ensureInstalled } from './install.mjs'

const root = fileURLToPath(new URL('../..', import.meta.url))

async function run() {
  await ensureInstalled()
  const { inspectCommand } = await bundled(join(root, 'src/cli/inspect-command.ts'))
  const { exitStatus, output, errors } = inspectCommand(process.argv.slice(2), startFolder())
  process.exitCode = exitStatus
  process.stderr.write(errors)
  process.stdout.write(output)
}

/**
 * The module made from a source file and all it imports. Each run has a bundle of its own, so that two runs
 * at once do not read what the other is writing.
 * @param {string} source
 * @returns {Promise<typeof import('./inspect-command.ts')>}
 */
async function bundled(source) {
  const { rolldown } = await import('rolldown')
  const file = join(root, 'node_modules/.cache/borewall', `inspect-${process.pid}.mjs`)
  const bundle = await rolldown({ input: source, platform: 'node', logLevel: 'silent', tsconfig: false })
  try {
    await bundle.write({ file, format: 'esm' })
    return await import(pathToFileURL(file).href)
  } finally {
    await bundle.close()
    rmSync(file, { force: true })
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
