import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { inspectCommand } from '../../../src/cli/inspect-command'
import { scanForm } from '../../../src/words/english/scan-form'
import { scanTableWords } from '../../../src/words/scan-table-words'
import { words } from '../../../src/words/words'

let folder = ''
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'inspect-scan-'))
})
afterAll(() => rmSync(folder, { recursive: true }))

const radians = Math.PI / 180

/** An oval of 8 µm along 30° about an axis that stands 20 µm off, on six levels every 10°. */
function ovalScan(): string[] {
  const rows = ['depth_mm,angle_deg,radius_um']
  for (let depth = 10; depth <= 60; depth += 10) {
    for (let angle = 0; angle < 360; angle += 10) {
      const radius = 20 * Math.cos(angle * radians) + 2 * Math.cos(2 * (angle - 30) * radians)
      rows.push(`${depth},${angle},${radius.toFixed(3)}`)
    }
  }
  return rows
}

function run(rows: readonly string[], ...more: string[]) {
  writeFileSync(join(folder, 'scan.csv'), rows.join('\n'))
  return inspectCommand(['scan.csv', ...more], folder)
}

describe('a file of radii', () => {
  it('has its form told, with the figures that it was made with, and no size', () => {
    const { exitStatus, output, errors } = run(ovalScan())
    expect({ exitStatus, errors }).toEqual({ exitStatus: 0, errors: '' })
    expect(output).toMatch(/Oval, widest level +8 ± \d µm/)
    expect(output).toContain('largest across 30°')
    expect(output).toMatch(/Roundness, worst level +4 µm/)
    expect(output).toMatch(/Axis of the probe +20 µm off/)
    expect(output.replace(/\s+/g, ' ')).toContain(scanForm.noSize)
    expect(output.replace(/\s+/g, ' ')).toContain(scanForm.noDiameter)
  })

  it('is the same as JSON, with marks where the diameter is given', () => {
    const { exitStatus, output } = run(ovalScan(), '--diameter', '60,0', '--json')
    expect(exitStatus).toBe(0)
    const { form, axis, marks, values } = JSON.parse(output)
    expect(values).toBe(6 * 36)
    expect(axis.atDeckUm.x).toBeCloseTo(20, 2)
    // A circle off the axis differs from a cosine by e²/2R, 0.007 µm here.
    expect(form.levels[0].oval.ovalUm).toBeCloseTo(8, 1)
    // Four times the amplitude on the diameter is twice it on the radius, from the greatest to the least.
    expect(form.cylinder.minimumZone.cylindricity.valueUm).toBeCloseTo(4, 1)
    expect(marks.marks).toEqual([])
  })

  it('with one bad line is not read: the line is named, in words and as JSON', () => {
    const rows = ovalScan()
    rows[40] = `${rows[40]?.replace(/,[^,]*$/, '')},1O.5`
    const { exitStatus, output, errors } = run(rows)
    expect({ exitStatus, output }).toEqual({ exitStatus: 1, output: '' })
    expect(errors).toContain(scanTableWords.place('41', '3'))
    const { problems } = JSON.parse(run(rows, '--json').output)
    expect(problems).toMatchObject([{ code: 'letters', path: 'Line 41, column 3' }])
  })

  it('whose heads leave a unit open is asked to say it', () => {
    const { exitStatus, errors } = run(ovalScan().with(0, 'depth_mm,angle_deg,radius'))
    expect(exitStatus).toBe(1)
    expect(errors.replace(/\s+/g, ' ')).toContain(scanTableWords.open['value-unit'])
  })

  it('is told from a table of readings, which needs a job beside it', () => {
    const readings = ['depth_mm,axis_deg,size_mm', '8,0,54.01']
    expect(run(readings)).toMatchObject({ exitStatus: 2, output: '' })
    expect(run(readings).errors).toContain(words.inspect.specForTable)
    expect(run(ovalScan(), '--diameter', 'wide').errors).toContain(scanForm.diameterRange)
    expect(inspectCommand(['job.json', '--diameter', '60'], folder).errors).toContain(
      scanForm.diameterForScan,
    )
  })
})
