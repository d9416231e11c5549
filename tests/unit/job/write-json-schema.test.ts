import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { jobJsonSchema } from '../../../src/job/write-json-schema'

const regenerate = 'node src/cli/write-json-schema.mjs'

it('is what public/job.schema.json holds', () => {
  const published = readFileSync(new URL('../../../public/job.schema.json', import.meta.url), 'utf8')
  expect(published, `Write it anew: ${regenerate}`).toBe(jobJsonSchema())
})

it('says which draft it is, describes fields and forbids others', () => {
  const schema: unknown = JSON.parse(jobJsonSchema())
  expect(schema).toMatchObject({
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    additionalProperties: false,
    properties: {
      format: { const: 'borewall-job' },
      formatVersion: { const: 2 },
      setUps: { items: { properties: { settingSizeMm: { minimum: 1, maximum: 2000 } } } },
    },
  })
})
