import { readTableFile } from '../formats/table-file'
import type { TableAsked, TableSaid } from './table-messages'

const say = (message: TableSaid) => self.postMessage(message)

self.addEventListener('message', ({ data }: MessageEvent<TableAsked>) => {
  const steps = readTableFile(data.bytes, data.choices)
  for (let step = steps.next(); ; step = steps.next()) {
    if (step.done) return say({ kind: 'done', read: step.value })
    say({ kind: 'progress', ...step.value })
  }
})
