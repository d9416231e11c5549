import { correction, generate } from 'lean-qr'
import { toSvgPath } from 'lean-qr/extras/svg'
import type { QrDrawing } from '../charts/QrCode'
import { carriedJob, type LeftOut } from '../job/carried-job'
import { codeOfJob } from '../job/code-of-job'
import type { Job } from '../job/schema'
import { addressOfCode } from './code-address'

/** A code for a report, or why there is none. */
export type ReportCode =
  | {
      readonly kind: 'code'
      readonly drawing: QrDrawing
      /** What the code says. */
      readonly address: string
      readonly leftOut: LeftOut
    }
  | { readonly kind: 'none'; readonly why: 'no-address' | 'too-large' }

/** The largest code that a telephone reads off paper without trouble at half a millimetre to a module. */
export const largestVersion = 20

/** Whole before sturdy, and sturdy before small: paper in a workshop gets marks. */
const tries = [
  { withNotes: true, least: correction.M },
  { withNotes: true, least: correction.L },
  { withNotes: false, least: correction.M },
  { withNotes: false, least: correction.L },
] as const

/** The job in a code that opens it at the address of the app: with its notes where it fits, else without. */
export function reportCode(job: Job, appAddress: string | undefined): ReportCode {
  if (appAddress === undefined) return { kind: 'none', why: 'no-address' }
  for (const { withNotes, least } of tries) {
    const carried = carriedJob(job, withNotes)
    const digits = codeOfJob(carried.job)
    const address = digits && addressOfCode(appAddress, digits)
    const drawing = address && qrDrawing(address, least)
    if (drawing) return { kind: 'code', drawing, address, leftOut: carried.leftOut }
  }
  return { kind: 'none', why: 'too-large' }
}

type Correction = (typeof correction)['L']

/** Undefined where the text does not fit into the largest version. */
function qrDrawing(text: string, minCorrectionLevel: Correction): QrDrawing | undefined {
  try {
    const code = generate(text, { maxVersion: largestVersion, minCorrectionLevel })
    return { modules: code.size, path: toSvgPath(code) }
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === tooMuchData) return undefined
    throw error
  }
}

/** As the library counts its errors. */
const tooMuchData = 4
