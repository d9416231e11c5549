import { lazy, type ReactNode, Suspense, useCallback, useEffect, useState } from 'react'
import { useStore } from 'zustand'
import type { MapPaint } from '../charts/MapWall'
import type { LimitPair } from '../core/findings'
import type { WallGrid } from '../core/surface/wall-grid'
import { jobStore } from '../job/job-store'
import { Bench } from '../pages/bench/Bench'
import type { ChartToSave } from '../pages/bench/chart-to-save'
import { KeptSpecsSlot } from '../pages/bench/kept-specs-slot'
import { PhotographsSlot } from '../pages/bench/photographs-slot'
import { WhatIfSlot } from '../pages/bench/what-if-slot'
import { wallPaint } from '../scene/wall-palette'
import { session } from '../session/session'
import { words } from '../words/words'
import { Bar } from './Bar'
import { CrashGuard } from './CrashGuard'
import { DropTarget } from './DropTarget'
import { type Desk, desk, goToPage, nameOr } from './desk'
import { FirstPage } from './FirstPage'
import { markFirstNumbers } from './first-marks'
import { InFront } from './InFront'
import { KeptSpecsLater } from './KeptSpecsLater'
import { NotKept } from './NotKept'
import { PenLine } from './PenLine'
import { PhotographsLater } from './PhotographsLater'
import { PictureSlot } from './PictureSlot'
import { SendButton } from './SendButton'
import { ShelfLater } from './ShelfLater'
import { SimulationCheck } from './SimulationCheck'
import { themeStore } from './theme'
import { useScanFigures } from './use-scan-figures'

/** Nobody waits for it before the first number. */
const ComparePage = lazy(async () => {
  const { ComparePage } = await import('./ComparePage')
  return { default: ComparePage }
})

/** Fetched when somebody opens it. */
const WhatIf = lazy(async () => ({ default: (await import('./WhatIf')).WhatIf }))

const ShowPage = lazy(async () => {
  const { ShowPage } = await import('./ShowPage')
  return { default: ShowPage }
})

const ReportPage = lazy(async () => {
  const { ReportPage } = await import('./ReportPage')
  return { default: ReportPage }
})

/** The whole page. */
export function App() {
  const shows = useStore(desk, (state) => state.shows)
  const name = useStore(jobStore, ({ job }) => job.name)
  useEffect(() => {
    document.title = titleOf(shows, name)
  }, [shows, name])
  if (shows === 'nothing') return <main className="opening">{words.app.loading}</main>
  return (
    <>
      <CrashGuard key={shows}>
        {shows === 'shelf' ? <ShelfLater /> : shows === 'first-page' ? <FirstPage /> : <JobPage />}
      </CrashGuard>
      {/* Questions and files that are dropped are answered where the page is not. */}
      <CrashGuard>
        <InFront />
      </CrashGuard>
      <DropTarget />
    </>
  )
}

function titleOf(shows: Desk['shows'], name: string): string {
  if (shows === 'bench') return words.app.title(nameOr(name))
  return shows === 'shelf' ? words.app.title(words.shelf.title) : words.app.name
}

function JobPage() {
  const page = useStore(session, (state) => state.page)
  // What was written in one unit is written anew in the other.
  const unit = useStore(jobStore, ({ job }) => job.shownIn ?? 'mm')
  const later = (children: ReactNode) => (
    <Suspense fallback={<main className="opening">{words.app.loading}</main>}>{children}</Suspense>
  )
  // The owner sees the job alone; what keeps it from being kept is said all the same.
  if (page === 'show') {
    return (
      <>
        <NotKept />
        {later(<ShowPage key={unit} />)}
      </>
    )
  }
  return (
    <>
      <Bar />
      <NotKept />
      <PenLine />
      {page === 'bench' ? (
        <BenchPage key={unit} />
      ) : (
        later(page === 'report' ? <ReportPage key={unit} /> : <ComparePage key={unit} />)
      )}
    </>
  )
}

/** A view is saved by a part of the page that is loaded for it. */
async function saveChart(chart: ChartToSave): Promise<string | undefined> {
  const part = await import('./save-chart').catch(() => undefined)
  return part?.saveChart(chart)
}

function BenchPage() {
  const theme = useStore(themeStore, (state) => state.theme)
  const [impossible, setImpossible] = useState(false)
  useEffect(markFirstNumbers, [])
  useScanFigures()
  const onImpossible = useCallback(() => setImpossible(true), [])
  const picture = useCallback(
    (box: { width: number; height: number }): ReactNode => (
      <PictureSlot box={box} theme={theme} onImpossible={onImpossible} />
    ),
    [theme, onImpossible],
  )
  const paintOf = useCallback(
    (grid: WallGrid, pair: LimitPair | undefined): MapPaint => wallPaint(grid, pair, theme),
    [theme],
  )
  return (
    <KeptSpecsSlot.Provider value={KeptSpecsLater}>
      <PhotographsSlot.Provider value={PhotographsLater}>
        <WhatIfSlot.Provider value={WhatIf}>
          <Bench
            picture={impossible ? undefined : picture}
            paintOf={paintOf}
            saveChart={saveChart}
            simulation={<SimulationCheck />}
            findingsActions={
              <>
                <button type="button" className="button" onClick={() => goToPage('show')}>
                  {words.pages.explain}
                </button>
                <SendButton className="button" />
              </>
            }
          />
        </WhatIfSlot.Provider>
      </PhotographsSlot.Provider>
    </KeptSpecsSlot.Provider>
  )
}
