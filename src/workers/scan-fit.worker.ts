import { canBeFitted, fitScan } from '../core/scan/fit-scan'
import { marksOf } from '../core/scan/marks'
import { scanForm } from '../core/scan/scan-form'
import { sizeFromTies } from '../core/scan/size-from-ties'
import { scanGridOf } from '../core/surface/scan-grid'
import type { ScanFitAsked, ScanFitSaid } from './scan-fit-messages'

const say = (message: ScanFitSaid) => self.postMessage(message)

self.addEventListener('message', ({ data }: MessageEvent<ScanFitAsked>) => {
  const { scan, form, ties, ports, grid } = data
  if (!canBeFitted(scan)) return say({ kind: 'no-axis' })
  const fit = fitScan(scan, form)
  const size = sizeFromTies(scan, fit, ties, form)
  const tied = size.known ? { tied: { byUm: size.addUm, stations: ties } } : {}
  const whole = scanGridOf(scan, fit, { ...grid, ...tied, isLocal: false })
  const local = scanGridOf(scan, fit, { ...grid, isLocal: true })
  say({ kind: 'fitted', fit, size, whole, local })
  say({ kind: 'marks', marks: marksOf(scan, fit, { nearDiameterMm: form.nearDiameterMm, ports }) })
  say({ kind: 'form', form: scanForm(scan, fit, form) })
})
