import { readScanTable } from '../formats/scan-table'
import type { ScanTableAsked, ScanTableSaid } from './scan-table-messages'

const say = (message: ScanTableSaid) => self.postMessage(message)

self.addEventListener('message', ({ data }: MessageEvent<ScanTableAsked>) => {
  const steps = readScanTable(data.bytes, data.choices)
  for (let step = steps.next(); ; step = steps.next()) {
    if (step.done) return say({ kind: 'done', read: step.value })
    say({ kind: 'progress', ...step.value })
  }
})
