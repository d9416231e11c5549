/**
 * `npm run inspect -- FILE [--json]`: installs what is missing, bundles the command from its sources and
 * runs it in the language asked for. Plain JavaScript, because it runs before anything is installed.
 */
import { startFolder, withBundledCommand } from './bundled-command.mjs'
import { ensureInstalled } from './install.mjs'

async function run() {
  await ensureInstalled()
  await withBundledCommand(
    'inspect-in-language',
    async (/** @type {typeof import('./inspect-in-language.ts')} */ { inspectInLanguage }) => {
      const { exitStatus, output, errors } = await inspectInLanguage(
        process.argv.slice(2),
        startFolder('inspect'),
      )
      process.exitCode = exitStatus
      process.stderr.write(errors)
      process.stdout.write(output)
    },
  )
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
