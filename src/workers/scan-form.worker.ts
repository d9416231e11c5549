import { scanForm } from '../core/scan/scan-form'
import type { ScanFormAsked, ScanFormSaid } from './scan-fit-messages'

self.addEventListener('message', ({ data }: MessageEvent<ScanFormAsked>) => {
  const { scan, fit, form } = data
  const said: ScanFormSaid = { kind: 'form', form: scanForm(scan, fit, form) }
  self.postMessage(said)
})
