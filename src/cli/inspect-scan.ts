import { presetOf } from '../core/gauge/presets'
import { canBeFitted, fitScan } from '../core/scan/fit-scan'
import { marksOf } from '../core/scan/marks'
import type { RadialScan } from '../core/scan/radial-scan'
import { type ScanForm, scanForm } from '../core/scan/scan-form'
import { layOut } from '../formats/plain-text'
import { type ReadScanTable, readWholeScanTable } from '../formats/scan-table'
import { inTenthsOfMicrons } from '../words/numbers'
import { scanFormNotes, scanFormRows } from '../words/scan-form'
import { scanFormWords as formWords } from '../words/scan-form-words'
import { scanMarkLines } from '../words/scan-marks'
import { heldRows, scanProblemPlace, scanProblemText, scanRefusalText } from '../words/scan-table'
import { scanTableWords } from '../words/scan-table-words'
import { words } from '../words/words'
import type { Reported } from './inspect-table'

/** What a file of radii proves, as text and for other programs; or every problem in it. */
export type InspectedScanFile =
  | { readonly ok: true; readonly text: string; readonly json: object }
  | { readonly ok: false; readonly problems: readonly Reported[] }

/** Terms of the second order and nothing else go by it where nobody said how large the bore is, mm. */
const assumedDiameterMm = 80
/** A median radius beyond this counts from the axis and not from a zero of the probe, µm. */
const fromAxisUm = 5000

/** Reads a file of radii by what its heads say alone: nobody can be asked. Every place must be good. */
export function inspectScanFile(
  name: string,
  content: Uint8Array,
  diameterMm: number | undefined,
): InspectedScanFile {
  const table = readWholeScanTable(content)
  if (!table.ok) {
    const whole: Reported = { code: table.why, path: '', text: scanRefusalText(table) }
    return { ok: false, problems: [whole, ...(table.problems ?? []).map(reported)] }
  }
  if (table.open.length > 0) {
    const problems = table.open.map((code) => ({ code, path: '', text: scanTableWords.open[code] }))
    return { ok: false, problems }
  }
  if (table.problemCount > 0) {
    const left = table.problemCount - table.problems.length
    const more = { code: 'more', path: '', text: scanTableWords.moreProblems(String(left)) }
    return { ok: false, problems: [...table.problems.map(reported), ...(left > 0 ? [more] : [])] }
  }
  if (!canBeFitted(table.scan)) {
    return { ok: false, problems: [{ code: 'no-axis', path: '', text: words.scans.status['no-axis'] }] }
  }
  return proven(name, table, diameterMm ?? diameterFrom(table.scan))
}

function reported(problem: ReadScanTable['problems'][number]): Reported {
  return { code: problem.code, path: scanProblemPlace(problem), text: scanProblemText(problem) }
}

/** Twice the radius where the radii count from the axis; undefined else. */
function diameterFrom({ radiiUm }: RadialScan): number | undefined {
  const known = radiiUm.filter((radius) => !Number.isNaN(radius)).sort()
  const median = known[known.length >> 1] ?? 0
  return median > fromAxisUm ? (2 * median) / 1000 : undefined
}

function proven(name: string, table: ReadScanTable, diameterMm: number | undefined): InspectedScanFile {
  const { scan } = table
  const { repeatabilityUm, repeatabilityDegreesOfFreedom, scaleUm } = presetOf('radial-probe')
  const nearDiameterMm = diameterMm ?? assumedDiameterMm
  const options = { nearDiameterMm, repeatabilityUm, repeatabilityDegreesOfFreedom, scaleUm }
  const fit = fitScan(scan, options)
  const form = scanForm(scan, fit, options)
  const marks = diameterMm === undefined ? undefined : marksOf(scan, fit, { nearDiameterMm, ports: [] })
  const radii = [...scan.radiiUm].filter((radius) => !Number.isNaN(radius))
  const leastUm = radii.reduce((a, b) => Math.min(a, b))
  const mostUm = radii.reduce((a, b) => Math.max(a, b))
  const text = layOut([
    { kind: 'title', text: formWords.aboutFile(name) },
    { kind: 'list', items: heldRows({ ...scan, ...table, leastUm, mostUm }).map((row) => row.join(': ')) },
    ...(table.closing.count > 0 ? [{ kind: 'paragraph' as const, text: closingText(table.closing) }] : []),
    { kind: 'heading', text: formWords.title },
    {
      kind: 'entries',
      entries: scanFormRows(form, fit).map(({ name, figure, detail }) => ({
        left: name,
        right: figure,
        under: [detail],
      })),
    },
    { kind: 'list', items: [formWords.noSize, ...scanFormNotes(form)] },
    ...(marks
      ? [{ kind: 'list' as const, items: scanMarkLines(marks, false) }]
      : [{ kind: 'paragraph' as const, text: formWords.noDiameter }]),
  ])
  const { map: _, ...found } = marks ?? {}
  const { closing, values, repeated } = table
  return {
    ok: true,
    text,
    json: {
      levels: scan.depthsMm.length,
      angles: scan.anglesDegrees.length,
      values,
      repeated,
      closing,
      axis: fit.axis,
      form: formEntry(form),
      marks: marks ? found : null,
    },
  }
}

function closingText({ count, farthestUm }: ReadScanTable['closing']): string {
  return scanTableWords.closing(String(count), inTenthsOfMicrons(farthestUm / 1000))
}

/** Without the single radii after the filter. */
function formEntry({ levels, cylinder, doubt }: ScanForm) {
  return {
    levels: levels.map(({ twoContact, harmonics, ...level }) => ({
      ...level,
      harmonics: harmonics?.harmonics.map(({ waves, amplitudeUm, peakDegrees }) => ({
        waves,
        amplitudeUm,
        peakDegrees,
      })),
      twoContactOutOfRound: twoContact?.outOfRound,
    })),
    cylinder,
    doubt,
  }
}
