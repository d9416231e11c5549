import { execFile } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { promisify } from 'node:util'
import { expect, test } from '@playwright/test'

test('reports are printed from the command line, each on its own sheets', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'borewall-printed-'))
  try {
    const command = ['src/cli/report.mjs', 'scenarios/D1-compressor.json', '-o', join(folder, 'one.pdf')]
    const { stdout, stderr } = await promisify(execFile)(process.execPath, command)
    expect(stdout).toBe('')
    expect(stderr).toContain(`Printed: ${join(folder, 'one.pdf')}`)
    const pdf = readFileSync(join(folder, 'one.pdf'), 'latin1')
    expect(pdf.startsWith('%PDF-')).toBe(true)
    // A4 in points, portrait.
    expect(pdf).toMatch(/\/MediaBox \[0 0 59[45](\.\d+)? 84[12](\.\d+)?\]/)
  } finally {
    rmSync(folder, { recursive: true })
  }
})
