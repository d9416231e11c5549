import { canBeFitted, fitScan } from '../core/scan/fit-scan'
import { marksOf } from '../core/scan/marks'
import { sizeFromTies } from '../core/scan/size-from-ties'
import { drawnLengthOfScan } from '../core/surface/drawn-length'
import { scanGridOf } from '../core/surface/scan-grid'
import type { WallGrid } from '../core/surface/wall-grid'
import type { ScanFitAsked, ScanFitSaid } from './scan-fit-messages'

const say = (message: ScanFitSaid, transfer: Transferable[] = []) => self.postMessage(message, { transfer })

self.addEventListener('message', ({ data }: MessageEvent<ScanFitAsked>) => {
  const { scan, form, ties, ports, bore } = data
  if (!canBeFitted(scan)) return say({ kind: 'no-axis' })
  const fit = fitScan(scan, form)
  const grid = { ...data.grid, lengthMm: drawnLengthOfScan(bore, data.grid.lengthMm, scan.depthsMm) }
  const size = sizeFromTies(scan, fit, ties, form)
  const tied = size.known ? { tied: { byUm: size.addUm, stations: ties } } : {}
  const whole = scanGridOf(scan, fit, { ...grid, ...tied, isLocal: false })
  say({ kind: 'fitted', fit, size, whole }, buffersOf(whole))
  const local = scanGridOf(scan, fit, { ...grid, isLocal: true })
  say({ kind: 'local', local }, buffersOf(local))
  say({ kind: 'marks', marks: marksOf(scan, fit, { nearDiameterMm: form.nearDiameterMm, ports }) })
})

/** What is handed over instead of copied: nobody here needs a wall that has been drawn. */
function buffersOf({ deviationsUm, doubtUm, hatched, proven }: WallGrid): ArrayBuffer[] {
  const buffers = [deviationsUm, doubtUm, hatched, proven].map(({ buffer }) => buffer)
  return buffers.filter((buffer) => buffer instanceof ArrayBuffer)
}
