import * as z from 'zod/mini'
import { jobSchema } from './schema'

const beyondThis =
  'Says what each field may hold by itself. References, limits in the wrong order, readings off their levels and whatever else lies between fields are checked when Borewall reads the file.'

/**
 * The JSON Schema (draft 2020-12) of the job file, as the text of public/job.schema.json. It holds for each
 * field by itself; references and other things between fields are checked when a job is read.
 */
export function jobJsonSchema(): string {
  const schema = z.toJSONSchema(jobSchema, { io: 'input', target: 'draft-2020-12' })
  return `${JSON.stringify({ ...schema, title: 'Borewall job', $comment: beyondThis }, null, 2)}\n`
}
