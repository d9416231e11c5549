import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { renderToStaticMarkup } from 'react-dom/server'
import { beforeAll, describe, expect, it } from 'vitest'
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader'
import { codeInAddress } from '../../../src/app/code-address'
import { largestVersion, reportCode } from '../../../src/app/report-code'
import { QrCode, qrSideMm } from '../../../src/charts/QrCode'
import { carriedJob } from '../../../src/job/carried-job'
import { codeOfJob, jobOfCode } from '../../../src/job/code-of-job'
import type { Job } from '../../../src/job/schema'
import { sampleJob } from '../job/sample-job'
import { scenario, scenarioFiles } from '../scenarios/scenario'
import { drawnSvg } from './drawn-svg'

const appAddress = 'https://shop.example/borewall/'
const reader = createRequire(import.meta.url).resolve('zxing-wasm/reader/zxing_reader.wasm')

beforeAll(async () => {
  const wasmBinary = readFileSync(reader)
  await prepareZXingModule({ overrides: { wasmBinary: wasmBinary.buffer }, fireImmediately: true })
})

function codeOf(job: Job, address = appAddress) {
  const code = reportCode(job, address)
  if (code.kind === 'none') throw new Error(code.why)
  return code
}

const versionOf = ({ modules }: { readonly modules: number }) => (modules - 17) / 4

describe('the code of a report', () => {
  it.each(scenarioFiles)(
    'is read off paper at 300 dots to the inch, with the job of %s in it',
    async (file) => {
      const job = scenario(file)
      const { drawing, address, leftOut } = codeOf(job)
      expect(versionOf(drawing)).toBeLessThanOrEqual(20)
      expect(leftOut.notes).toBe(0)
      const picture = drawnSvg(renderToStaticMarkup(<QrCode drawing={drawing} label="code" />), 300)
      // Half a millimetre to a module, four light ones on each side.
      expect(picture.sideMm).toBe((drawing.modules + 8) * 0.5)
      expect(picture.sideMm).toBe(qrSideMm(drawing))
      const read = await readBarcodes(picture.image, { formats: ['QRCode'], tryHarder: true })
      expect(read.map(({ text }) => text)).toEqual([address])
      const digits = codeInAddress(new URL(read[0]?.text ?? '').hash) ?? ''
      expect(jobOfCode(digits)).toMatchObject({ ok: true, job: { name: job.name } })
      expect(digits).toBe(codeOfJob(carriedJob(job, true).job))
    },
  )

  it('is none without an address, and says so', () => {
    expect(reportCode(sampleJob, undefined)).toEqual({ kind: 'none', why: 'no-address' })
  })

  it('holds what version 20 at level L holds and not one letter more: 861 codewords (ISO/IEC 18004:2015, table 7)', () => {
    const { job } = carriedJob(scenario('D1-compressor.json'), false)
    const digits = codeOfJob(job)?.length ?? 0
    // Table 3 has 16 bits for the length of bytes and 12 for that of digits in versions 10 to 26, table 2 four for each mode.
    const bits = 861 * 8 - (4 + 16) - (4 + 12) - Math.ceil((digits * 10) / 3)
    const longest = Math.floor(bits / 8) - '#job='.length
    const address = (length: number) => `https://shop.example/${'a'.repeat(length)}`.slice(0, length)
    const full = codeOf(job, address(longest))
    expect(versionOf(full.drawing)).toBe(20)
    expect(largestVersion).toBe(20)
    expect(reportCode(job, address(longest + 1))).toEqual({ kind: 'none', why: 'too-large' })
  })

  it('goes without notes where they do not fit, and says how many it left out', () => {
    const note = Array.from({ length: 400 }, (_, index) => (index * 7919).toString(36)).join(' ')
    const { leftOut, address } = codeOf({ ...sampleJob, note })
    expect(leftOut).toEqual({ photographs: 1, scans: 1, notes: 2 })
    const read = jobOfCode(codeInAddress(new URL(address).hash) ?? '')
    expect(read).toMatchObject({ ok: true, job: { name: 'Sample', machine: 'Pump' } })
  })

  it('is none where the job is too large even so', () => {
    const [bore] = sampleJob.bores
    if (!bore) throw new Error('The sample has a bore')
    const ports = Array.from({ length: 60 }, (_, at) => ({
      id: `port-${at}`,
      name: (at * 104_729_417_353).toString(36).repeat(2),
      fromDepthMm: at / 7,
      toDepthMm: at / 3 + 1,
      fromDegrees: (at * 37) % 180,
      toDegrees: 181 + at,
    }))
    const job = { ...sampleJob, bores: [{ ...bore, ports }] }
    expect(reportCode(job, appAddress)).toEqual({ kind: 'none', why: 'too-large' })
  })
})
