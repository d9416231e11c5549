/** Fits of scans, off the main thread; one may be begun before it is asked for, while the scan is still looked at. */
import type { Bore, Scan, Survey } from '../core/measured'
import type { RadialScan } from '../core/scan/radial-scan'
import type { Job } from '../job/schema'
import { findingOf } from '../job/selectors'
import { nearDiameterOf, scanFormOptions, tieStations } from '../job/shown-scan'
import type { FittedScan } from '../session/scan-view'
import type { ScanFitAsked, ScanFitSaid, ScanFormAsked, ScanFormSaid } from '../workers/scan-fit-messages'

export type FitHeard = ScanFitSaid | ScanFormSaid | { readonly kind: 'failed' }

export interface FitUnderWay {
  /** What has been said by now, and what resolves when the first is. */
  readonly said: readonly FitHeard[]
  readonly heard: Promise<void>
  /** Hears what has been said by now, then what is said from now on; one listener only. */
  hear(say: (heard: FitHeard) => void): void
  stop(): void
}

/** What is asked of a scan beside its radii: with the probe, the ties and the openings that the job has for it. */
export function fitAsked(job: Job, bore: Bore, survey: Survey, scan: Scan): Omit<ScanFitAsked, 'scan'> {
  const finding = findingOf(job, bore.id, survey.id)
  if (!finding) throw new Error(`No finding for the survey "${survey.id}"`)
  const nearDiameterMm = nearDiameterOf(job, bore, survey)
  return {
    form: scanFormOptions(job, scan, nearDiameterMm),
    ties: tieStations(job, bore, scan),
    ports: bore.ports,
    bore: bore.lengthMm === undefined ? {} : { lengthMm: bore.lengthMm },
    grid: { middleMm: nearDiameterMm, lengthMm: finding.drawnLengthMm, belts: bore.belts },
  }
}

let ahead: { readonly asked: ScanFitAsked; readonly fit: FitUnderWay } | undefined

/** At most so long a scan is not taken yet because it is being fitted, ms. */
const longestWait = 1000

/** What the fit of a scan that was begun ahead has to draw, waited for a little: the page then changes once and not twice. */
export async function drawnAhead(scan: RadialScan): Promise<FittedScan | undefined> {
  if (ahead?.asked.scan !== scan) return undefined
  const { fit } = ahead
  await Promise.race([fit.heard, new Promise((resolve) => setTimeout(resolve, longestWait))])
  const [first] = fit.said
  return first?.kind === 'fitted' ? { ...first, scan } : undefined
}

/** Begins what will be asked if the scan is taken. */
export function beginAhead(asked: ScanFitAsked): void {
  dropAhead()
  ahead = { asked, fit: begun(asked) }
}

/** Lets go of what was begun ahead and nobody has asked for. */
export function dropAhead(): void {
  ahead?.fit.stop()
  ahead = undefined
}

/** The fit that was begun ahead, where it was asked the same; else one that begins now. */
export function fitOf(asked: ScanFitAsked): FitUnderWay {
  if (ahead?.asked.scan !== asked.scan) return begun(asked)
  if (textOf(ahead.asked) !== textOf(asked)) dropAhead()
  const fit = ahead?.fit ?? begun(asked)
  ahead = undefined
  return fit
}

function textOf({ scan: _, ...asked }: ScanFitAsked): string {
  return JSON.stringify(asked)
}

interface Workers {
  readonly fit: Worker
  readonly form: Worker
}

function open(): Workers {
  return {
    fit: new Worker(new URL('../workers/scan-fit.worker.ts', import.meta.url), { type: 'module' }),
    form: new Worker(new URL('../workers/scan-form.worker.ts', import.meta.url), { type: 'module' }),
  }
}

let spare: Workers | undefined

/**
 * Has workers stand by: those that are opened when they are needed hear nothing until the page next has time. Gives what
 * sends them away if nobody needed them.
 */
export function standBy(): () => void {
  spare ??= open()
  return () => {
    spare?.fit.terminate()
    spare?.form.terminate()
    spare = undefined
  }
}

/** The form is worked out beside the marks: both need the fit and neither the other. */
function begun(asked: ScanFitAsked): FitUnderWay {
  const workers = spare ?? open()
  spare = undefined
  const stop = () => {
    workers.fit.terminate()
    workers.form.terminate()
  }
  const said: FitHeard[] = []
  let tell = (_: FitHeard) => {}
  let say = tell
  const heard = new Promise<void>((resolve) => {
    say = (one) => {
      said.push(one)
      resolve()
      tell(one)
    }
  })
  workers.fit.addEventListener('message', ({ data }: MessageEvent<ScanFitSaid>) => {
    if (data.kind === 'fitted') {
      const { scan, form } = asked
      const next: ScanFormAsked = { scan, fit: { aboutAxisUm: data.fit.aboutAxisUm }, form }
      workers.form.postMessage(next)
    }
    if (data.kind === 'marks') workers.fit.terminate()
    if (data.kind === 'no-axis') stop()
    say(data)
  })
  workers.form.addEventListener('message', ({ data }: MessageEvent<ScanFormSaid>) => {
    workers.form.terminate()
    say(data)
  })
  const failed = () => {
    stop()
    say({ kind: 'failed' })
  }
  workers.fit.addEventListener('error', failed)
  workers.form.addEventListener('error', failed)
  workers.fit.postMessage(asked)
  return {
    said,
    heard,
    hear(to) {
      tell = to
      for (const one of said) to(one)
    },
    stop() {
      tell = () => {}
      stop()
    },
  }
}
