import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type LaidPart, layOutSheets, type SheetPlan } from '../../../../src/pages/report/sheet-layout'

const across = (id: string, height: number): LaidPart => ({ id, height, across: 'sheet' })
const column = (id: string, height: number): LaidPart => ({ id, height, across: 'column' })
const heading = (id: string, height: number): LaidPart => ({ id, height, across: 'column', withNext: true })

const idsOf = (sheet: SheetPlan) =>
  sheet.flatMap((stretch) => (stretch.kind === 'sheet' ? [stretch.id] : stretch.columns.flat()))

describe('the lay-out of a report', () => {
  it('puts what finds room on one sheet, in columns that are about as long', () => {
    const parts = [
      across('head', 300),
      ...['a', 'b', 'c', 'd'].map((id) => column(id, 100)),
      across('sign', 50),
    ]
    expect(layOutSheets(parts, 600)).toEqual([
      [
        { kind: 'sheet', id: 'head' },
        {
          kind: 'columns',
          columns: [
            ['a', 'b'],
            ['c', 'd'],
          ],
        },
        { kind: 'sheet', id: 'sign' },
      ],
    ])
  })

  it('goes on on a second sheet, left column first, and begins both at the top', () => {
    const parts = [across('head', 400), ...['a', 'b', 'c', 'd', 'e', 'f'].map((id) => column(id, 100))]
    expect(layOutSheets(parts, 600)).toEqual([
      [
        { kind: 'sheet', id: 'head' },
        {
          kind: 'columns',
          columns: [
            ['a', 'b'],
            ['c', 'd'],
          ],
        },
      ],
      [{ kind: 'columns', columns: [['e'], ['f']] }],
    ])
  })

  it('never leaves a heading at the foot of a column', () => {
    const parts = [column('a', 100), heading('title', 20), column('b', 90), column('c', 90)]
    const [sheet] = layOutSheets(parts, 200)
    expect(sheet).toEqual([
      {
        kind: 'columns',
        columns: [['a'], ['title', 'b', 'c']],
      },
    ])
  })

  it('takes something along to the sheet that the signature stands on', () => {
    const parts = [...['a', 'b', 'c', 'd'].map((id) => column(id, 100)), across('sign', 50)]
    const sheets = layOutSheets(parts, 200)
    expect(sheets).toHaveLength(2)
    expect(idsOf(sheets[1] ?? []).length).toBeGreaterThan(1)
  })

  it('gives a part that is higher than a sheet one to itself, and loses nothing after it', () => {
    const parts = [across('head', 100), column('long', 900), column('b', 50), across('huge', 2000)]
    const sheets = layOutSheets(parts, 300)
    expect(sheets.flatMap(idsOf)).toEqual(['head', 'long', 'b', 'huge'])
    expect(sheets.findIndex((sheet) => idsOf(sheet).includes('long'))).toBe(1)
  })

  it('holds every part once and in order, and no sheet above its height (seed 20260314)', () => {
    const part = fc.record({
      height: fc.integer({ min: 0, max: 120 }),
      across: fc.constantFrom('sheet' as const, 'column' as const, 'column' as const),
      withNext: fc.boolean(),
    })
    fc.assert(
      fc.property(fc.array(part, { maxLength: 60 }), fc.integer({ min: 400, max: 900 }), (drawn, height) => {
        let headings = 0
        const parts = drawn.map((one, index): LaidPart => {
          // No more headings in a row than a sheet has room for.
          headings = one.across === 'column' && one.withNext && headings < 2 ? headings + 1 : 0
          return { id: `${index}`, height: one.height, across: one.across, withNext: headings > 0 }
        })
        const heightOf = new Map(parts.map(({ id, height: own }) => [id, own]))
        const sum = (ids: readonly string[]) => ids.reduce((all, id) => all + (heightOf.get(id) ?? 0), 0)
        const sheets = layOutSheets(parts, height)
        expect(sheets.flatMap(idsOf)).toEqual(parts.map(({ id }) => id))
        for (const sheet of sheets) {
          const used = sheet.reduce(
            (all, stretch) =>
              all + (stretch.kind === 'sheet' ? sum([stretch.id]) : Math.max(...stretch.columns.map(sum))),
            0,
          )
          expect(used).toBeLessThanOrEqual(height)
        }
      }),
      { seed: 20260314, numRuns: 500 },
    )
  })
})
