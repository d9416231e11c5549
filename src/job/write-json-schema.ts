import * as z from 'zod/mini'
import { jobSchema } from './schema'

/**
 * The JSON Schema (draft 2020-12) of the job file, as the text of public/job.schema.json. It holds for each
 * field by itself; references and other things between fields are checked when a job is read.
 */
export function jobJsonSchema(): string {
  const schema = z.toJSONSchema(jobSchema, { io: 'input', target: 'draft-2020-12' })
  return `${JSON.stringify({ ...schema, title: 'Borewall job' }, null, 2)}\n`
}
