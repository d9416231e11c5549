import { describe, expect, it } from 'vitest'
import { readingsPart } from '../../../src/app/hand-over-readings'
import { htmlText } from '../../../src/formats/html-text'
import { writtenIn } from '../../../src/words/length-unit'
import { scenario } from '../scenarios/scenario'

const job = scenario('A-two-stroke-single.json')

/** The cells of a row of the first table. */
function cellsAt(page: string, head: string): string[] {
  const row = page.split('<tr>').find((one) => one.includes(`>${head}</th>`)) ?? ''
  return [...row.matchAll(/<td dir="auto">(.*?)<\/td>/g)].map(([, cell = '']) => cell)
}

describe('the readings on a page that is handed over', () => {
  it('stand as they were written down, each repeat with the decimals of the finest', () => {
    const page = htmlText(readingsPart(job))
    // As the file of the scenario has them: 54.020, 54.020, 54.019 at 8 mm, 90°.
    expect(cellsAt(page, '8 mm')[2]).toBe('54.020<br>54.020<br>54.019')
    expect(cellsAt(page, '48 mm')).toEqual(['–', '–', '–', '–'])
    expect(page).toContain('>Sizes in mm.<')
  })

  it('stay in the unit that their gauge is marked in, whatever the job is written in', () => {
    const inInches = writtenIn('inch', () => htmlText(readingsPart(job)))
    expect(cellsAt(inInches, '0.315 in')[2]).toBe('54.020<br>54.020<br>54.019')
    expect(inInches).toContain('>Sizes in mm.<')

    const marked = { ...job, gauges: job.gauges.map((gauge) => ({ ...gauge, markedIn: 'inch' as const })) }
    const ofInchGauge = htmlText(readingsPart(marked))
    expect(ofInchGauge).toContain('>Sizes in in.<')
    // 54.020 mm are 2.12677 in (1 in = 25.4 mm, exact).
    expect(cellsAt(ofInchGauge, '8 mm')[2]).toBe('2.12677<br>2.12677<br>2.12673')
  })
})
