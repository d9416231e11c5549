import { type RefObject, useEffect, useLayoutEffect, useMemo, useState } from 'react'
import { type ChapterPlan, chaptersOf } from './ReportSheets'
import type { Report } from './report-content'
import { type Density, densities, type PaperName, type ReportLook, roomOn, sheetSizes } from './report-look'
import type { ReportPart } from './report-part'
import { type LaidPart, layOutSheets } from './sheet-layout'

export interface SheetsPlanned {
  /** At which the parts are measured. */
  readonly density: Density
  /** Absent while they are. */
  readonly plan?: readonly ChapterPlan[]
}

/** Tried one after the other; what has room at none of them takes as many sheets as it needs at a plain density. */
const tries: readonly Density[] = [...densities, 'plain']

/** So many bores stand on a sheet with their maps. */
const boresOnSheet = 4

interface Tried {
  readonly of: readonly unknown[]
  readonly at: number
  /** By chapter, as far as one has found room. */
  readonly found: readonly (ChapterPlan | undefined)[]
}

/**
 * Which parts of a report stand on which sheet: each part is measured as it is drawn, at the loosest density at which
 * every chapter has room on one sheet. All of it happens before anything is seen.
 */
export function useSheetPlan(
  container: RefObject<HTMLElement | null>,
  report: Report,
  look: ReportLook,
): SheetsPlanned {
  const [letters, setLetters] = useState(0)
  const isFlat = [...look.pictures.values()].some(({ kind }) => kind === 'none')
  const of = [report, look.paper, look.letterhead, look.code, isFlat, letters]
  const [tried, setTried] = useState<Tried>({ of, at: 0, found: [] })
  const isCurrent = of.every((one, index) => one === tried.of[index])
  const { at, found }: Omit<Tried, 'of'> = isCurrent ? tried : { at: 0, found: [] }
  const density = tries[at] ?? 'plain'
  const plan = useMemo(() => planOf(found), [found])
  useLayoutEffect(() => {
    if (plan || !container.current) return
    const heights = heightsIn(container.current, look.paper)
    const isLast = at === tries.length - 1
    const now = chaptersOf(report, look).map((chapter, index) => {
      const sheets = layOutSheets(measured(chapter(density), heights[index]), roomOn(look.paper))
      const hasRoom = isLast || sheets.length <= sheetsWanted(report, index)
      return found[index] ?? (hasRoom ? { density, sheets } : undefined)
    })
    setTried({ of, at: planOf(now) ? at : at + 1, found: now })
  })
  useEffect(() => {
    if (!container.current) return
    // What was measured in the type that stood in for the page's own is measured again.
    const type = `400 10px ${getComputedStyle(container.current).fontFamily}`
    if (document.fonts.check(type)) return
    let isGone = false
    const measureAgain = () => {
      if (!isGone) setLetters((count) => count + 1)
    }
    document.fonts.load(type).then(measureAgain, measureAgain)
    return () => {
      isGone = true
    }
  }, [container])
  return plan ? { density, plan } : { density }
}

/** The plan of a report, once there is one of each of its chapters. */
function planOf(found: Tried['found']): readonly ChapterPlan[] | undefined {
  const plans = found.filter((one) => one !== undefined)
  return found.length > 0 && plans.length === found.length ? plans : undefined
}

/** One for a bore or for what is said of an engine, and one for every four of its bores. */
function sheetsWanted({ bores, engine }: Report, chapter: number): number {
  return engine && chapter > 0 ? Math.ceil(bores.length / boresOnSheet) : 1
}

/** The heights of the parts on each sheet that is drawn, by their names. */
function heightsIn(container: HTMLElement, paper: PaperName): readonly ReadonlyMap<string, number>[] {
  return [...container.querySelectorAll<HTMLElement>('.report-sheet')].map((sheet) => {
    const body = sheet.querySelector('.sheet-body')
    // Where the page shows sheets enlarged, what is measured on them is enlarged as well.
    const enlarged = body ? body.getBoundingClientRect().width / sheetSizes[paper].width : 1
    return new Map(
      [...sheet.querySelectorAll<HTMLElement>('[data-part]')].map((part) => [
        part.dataset.part ?? '',
        part.getBoundingClientRect().height / enlarged,
      ]),
    )
  })
}

function measured(
  parts: readonly ReportPart[],
  heights: ReadonlyMap<string, number> | undefined,
): readonly LaidPart[] {
  return parts.map(({ id, across, withNext }) => ({
    id,
    across,
    height: heights?.get(id) ?? 0,
    ...(withNext ? { withNext } : {}),
  }))
}
