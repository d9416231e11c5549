import './flat-wall.css'
import { type ReactNode, useId, useMemo } from 'react'
import type { MapPaint } from '../../charts/MapWall'
import { UnrolledMap } from '../../charts/UnrolledMap'
import type { LimitPair } from '../../core/findings'
import type { SurfacePlace } from '../../core/measured'
import { rowAt } from '../../core/surface/drawn-position'
import type { WallGrid } from '../../core/surface/wall-grid'
import { pointAt, setMarking, showPart } from '../../session/session'
import { degrees, depth } from '../../words/numbers'
import { scanCutSentences } from '../../words/scan-read-out'
import { words } from '../../words/words'
import { ChartSide } from './ChartSide'
import { useLastPlace } from './FlatChart'
import { FlatTabs } from './FlatTabs'
import { flatBoxes } from './flat-boxes'
import { useFlatViews } from './flat-views'
import { PaperCharts, paperBoxes, paperLetter } from './PaperCharts'
import { useLayout, useOnPaper } from './phone/use-layout'
import { recordSurface } from './record-surface'
import { drawnAtAngle, drawnAtLevel, nearestPlace } from './scan-place'
import { drawnFactor, type ScanWall } from './use-drawn-scan'
import { type OnBench, useSession } from './use-job'
import type { Size } from './use-size'

interface ScanFlatProps {
  readonly bench: OnBench
  readonly wall: ScanWall
  readonly paintOf: (grid: WallGrid, pair: LimitPair | undefined) => MapPaint
  readonly box: Size
}

/** The wall of a scan flat: map, section or profile, with tabs to choose by. On paper all of them. */
export function ScanFlatWall({ bench, wall, paintOf, box }: ScanFlatProps) {
  const id = useId()
  const onPaper = useOnPaper()
  const marking = useSession((state) => state.marking)
  const chosen = useSession((state) => state.chart)
  const shown = onPaper || marking ? 'map' : chosen
  const views = useFlatViews(onPaper || shown !== 'map')
  const { grid, finding } = wall
  const paint = useMemo(() => paintOf(grid, finding.pair), [grid, finding.pair, paintOf])
  const boxes = flatBoxes(box, shown)
  const chart = { bench, wall, paint, box: boxes.chart, letter: boxes.letter }
  const onSheet = { ...chart, letter: paperLetter }
  const panel = (): ReactNode => {
    if (onPaper) {
      return (
        <PaperCharts
          map={<ScanMap {...onSheet} box={paperBoxes.map} />}
          section={views ? <ScanSection {...onSheet} views={views} box={paperBoxes.section} /> : null}
          profile={views ? <ScanProfile {...onSheet} views={views} box={paperBoxes.profile} /> : null}
        />
      )
    }
    if (shown === 'map') return <ScanMap {...chart} />
    if (!views) return null
    return (
      <div className={boxes.isSideBelow ? 'flat-chart is-side-below' : 'flat-chart'}>
        {shown === 'section' ? (
          <ScanSection {...chart} views={views} />
        ) : (
          <ScanProfile {...chart} views={views} />
        )}
      </div>
    )
  }
  return (
    <div className={boxes.isRow ? 'flat-wall is-row' : 'flat-wall'}>
      <div className="flat-head">
        <FlatTabs shown={shown} id={id} isRow={boxes.isRow} />
      </div>
      <div id={`${id}-panel`} role="tabpanel" aria-labelledby={`${id}-${shown}`} className="flat-panel">
        {panel()}
      </div>
    </div>
  )
}

interface ChartProps {
  readonly bench: OnBench
  readonly wall: ScanWall
  readonly paint: MapPaint
  readonly box: Size
  readonly letter: number
}

function ScanMap({ bench, wall, paint, box }: ChartProps) {
  const { bore } = bench
  const pointed = useSession((state) => state.pointed)
  const byTouch = useSession((state) => state.marking)
  const layout = useLayout()
  const onMarked = (place: SurfacePlace) => {
    setMarking(false)
    recordSurface(bench, place)
    if (layout !== 'desk') showPart('findings')
  }
  const levelsMm = useMemo(() => fewOf(wall.scan.depthsMm), [wall.scan])
  return (
    <UnrolledMap
      grid={wall.grid}
      paint={paint}
      lengthMm={wall.grid.lengthMm}
      levelsMm={levelsMm}
      ports={bore.ports}
      stations={wall.finding.stations}
      surface={wall.finding.surface}
      scanMarks={wall.marks?.marks}
      marking={{ byTouch, onMarked }}
      pair={wall.finding.pair}
      pointed={pointed}
      isScan
      onPoint={(place) => pointAt(place && { ...place, from: 'map' })}
      {...box}
    />
  )
}

type FlatViews = NonNullable<ReturnType<typeof useFlatViews>>

function ScanSection({ bench, wall, paint, box, letter, views }: ChartProps & { readonly views: FlatViews }) {
  const place = usePlace(wall)
  const pointed = useSession((state) => state.pointed)
  const exaggeration = useSession((state) => state.exaggeration) ?? wall.exaggeration
  const { depthsMm } = wall.scan
  const said = words.section
  const sentences = scanCutSentences(place, drawnAtLevel(wall, place.level), middleOf(wall))
  const to = (level: number) => {
    const depthMm = depthsMm[level]
    return depthMm === undefined
      ? undefined
      : () => pointAt({ depthMm, angleDegrees: place.angleDegrees, from: 'section' })
  }
  return (
    <>
      <views.SectionChart
        grid={wall.grid}
        paint={paint}
        finding={wall.finding}
        ports={bench.bore.ports}
        depthMm={rowNear(wall.grid, place.depthMm)}
        exaggeration={Math.min(exaggeration, wall.exaggerationEnd) * drawnFactor(wall)}
        pointed={pointed}
        onPoint={(at) => pointAt(at && { ...at, from: 'section' })}
        letter={letter}
        scan={{ isSized: wall.isSized, text: sentences.join(' '), marks: wall.marks?.marks }}
        {...box}
      />
      <ChartSide
        title={said.at(depth(place.depthMm))}
        before={{ label: said.above, go: to(place.level - 1) }}
        after={{ label: said.below, go: to(place.level + 1) }}
        sentences={sentences}
      />
    </>
  )
}

function ScanProfile({ bench, wall, paint, box, letter, views }: ChartProps & { readonly views: FlatViews }) {
  const place = usePlace(wall)
  const pointed = useSession((state) => state.pointed)
  const { anglesDegrees } = wall.scan
  const said = words.profile
  const sentences = scanCutSentences(
    { angleDegrees: place.angleDegrees },
    drawnAtAngle(wall, place.angle),
    middleOf(wall),
  )
  const to = (angle: number) => {
    const angleDegrees = anglesDegrees[(angle + anglesDegrees.length) % anglesDegrees.length]
    return angleDegrees === undefined
      ? undefined
      : () => pointAt({ depthMm: place.depthMm, angleDegrees, from: 'profile' })
  }
  return (
    <>
      <views.ProfileChart
        grid={wall.grid}
        paint={paint}
        finding={wall.finding}
        bore={bench.bore}
        levelsMm={fewOf(wall.scan.depthsMm)}
        axesDegrees={[place.angleDegrees]}
        axisDegrees={place.angleDegrees}
        angleDegrees={place.angleDegrees}
        pointed={pointed}
        onPoint={(at) => pointAt(at && { ...at, from: 'profile' })}
        letter={letter}
        scan={{ isSized: wall.isSized, text: sentences.join(' '), marks: wall.marks?.marks }}
        {...box}
      />
      <ChartSide
        title={said.at(degrees(place.angleDegrees))}
        before={{ label: said.before, go: to(place.angle - 1) }}
        after={{ label: said.after, go: to(place.angle + 1) }}
        sentences={sentences}
      />
    </>
  )
}

/** The level and the angle of the scan where it is cut: those nearest to the place pointed at last. */
function usePlace({ scan, fit }: ScanWall) {
  const last = useLastPlace()
  return useMemo(() => {
    if (last) return nearestPlace(scan, last)
    // Where the wall stands out most.
    const { residualUm } = fit.smooth
    let most = 0
    residualUm.forEach((value, place) => {
      if (Math.abs(value) > Math.abs(residualUm[most] || 0)) most = place
    })
    const columns = scan.anglesDegrees.length
    return nearestPlace(scan, {
      depthMm: scan.depthsMm[Math.floor(most / columns)] ?? 0,
      angleDegrees: scan.anglesDegrees[most % columns] ?? 0,
    })
  }, [scan, fit, last])
}

/** What deviations count from, mm, where the wall has a size. */
function middleOf({ isSized, grid }: ScanWall): number | undefined {
  return isSized ? grid.middleMm : undefined
}

/** Of a scan with more levels than rows a row speaks for several. */
function rowNear(grid: WallGrid, depthMm: number): number {
  return grid.depthsMm[Math.round(rowAt(grid, depthMm))] ?? depthMm
}

/** So many levels have a tick. */
const mostTicks = 40

function fewOf(levelsMm: readonly number[]): readonly number[] {
  const step = Math.ceil(levelsMm.length / mostTicks)
  return levelsMm.filter((_, index) => index % step === 0)
}
