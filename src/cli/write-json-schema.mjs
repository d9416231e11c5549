/** Writes public/job.schema.json from the schema that the app itself reads jobs with. */
import { mkdirSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { runnerImport } from 'vite'

const root = join(dirname(fileURLToPath(import.meta.url)), '../..')
const { module } = await runnerImport(join(root, 'src/job/write-json-schema.ts'), {
  configFile: false,
  logLevel: 'error',
})
const file = join(root, 'public/job.schema.json')
mkdirSync(dirname(file), { recursive: true })
writeFileSync(file, module.jobJsonSchema())
