import { lazy, type ReactNode, Suspense, useDeferredValue, useMemo } from 'react'
import type { MapPaint } from '../../charts/MapWall'
import { UnrolledMap } from '../../charts/UnrolledMap'
import type { LimitPair } from '../../core/findings'
import type { SurfacePlace } from '../../core/measured'
import type { WallGrid } from '../../core/surface/wall-grid'
import { mapGridOfBore, wallOfBore } from '../../job/selectors'
import { pointAt, setMarking, showAllBores, showPart } from '../../session/session'
import { readOut } from '../../words/read-out'
import { surfaceHere } from '../../words/surface'
import { words } from '../../words/words'
import { BoreStrip, stripFrom } from './BoreStrip'
import type { SaveChart } from './chart-to-save'
import { DoubtButton } from './DoubtButton'
import { FlatWall } from './FlatWall'
import { MarkButton } from './MarkButton'
import { PictureControls } from './PictureControls'
import { PistonButton } from './PistonButton'
import { useLayout, useOnPaper } from './phone/use-layout'
import { recordSurface } from './record-surface'
import { ScanReadOut, ScanRow, ScanStatus } from './ScanRow'
import { ScanFlatWall } from './scan-parts'
import { isUnderWay, useDrawnScan } from './use-drawn-scan'
import { useStationInHand } from './use-entry'
import { useExaggerationRange } from './use-exaggeration'
import type { OnBench } from './use-job'
import { useSession } from './use-job'
import { useSize } from './use-size'

/** The column is as wide, or narrower where the window is. */
const fullWidth = 592
const pictureHeight = 492
const mapHeight = 224
/** Without a picture the map has its room too. */
const tallMapHeight = 740

const PistonRow = lazy(async () => ({ default: (await import('./PistonRow')).PistonRow }))

/** What the row of scans takes from the picture, or without one from the map. */
const scanRowHeight = 40

/** What the row of a piston in the bore takes from the picture. */
const pistonRowHeight = 92

/** What the strip of small maps takes from the map, with the room below it. */
const stripHeight = 80

export interface WallColumnProps {
  readonly bench: OnBench
  readonly picture: ((box: { width: number; height: number }) => ReactNode) | undefined
  readonly paintOf: (grid: WallGrid, pair: LimitPair | undefined) => MapPaint
  readonly saveChart?: SaveChart | undefined
}

/** Centre: the wall in three dimensions, what is pointed at in words, and the wall unrolled. */
export function WallColumn({ bench, picture, paintOf, saveChart }: WallColumnProps) {
  const chart = useSession((state) => state.chart)
  const onPaper = useOnPaper()
  const { job, bore, survey, finding } = bench
  const grid = mapGridOfBore(job, bore.id, survey.id)
  const range = useExaggerationRange(job, grid?.middleMm)
  const later = useDeferredValue(bench)
  // A section needs the height that the small maps would take.
  const hasStrip = job.bores.length >= stripFrom && (chart === 'map' || onPaper)
  const [column, size] = useSize()
  const width = Math.min(fullWidth, size?.width ?? fullWidth)
  const drawn = useDrawnScan(bench)
  const scanRow = bore.scans ? scanRowHeight : 0
  const hasPiston = useSession((state) => state.piston !== undefined) && !drawn && picture !== undefined
  const height = (picture ? mapHeight : tallMapHeight - scanRow) - (hasStrip ? stripHeight : 0)
  const box = { width, height }
  const isDrawn = drawn
    ? drawn.wall !== undefined || (isUnderWay(drawn) && grid !== undefined)
    : grid !== undefined
  return (
    <section className={picture ? 'wall' : 'wall is-flat'} aria-label={words.parts.wall} ref={column}>
      {picture ? (
        <>
          <div className="picture-box">
            {isDrawn ? (
              picture({ width, height: pictureHeight - scanRow - (hasPiston ? pistonRowHeight : 0) })
            ) : drawn ? (
              <ScanStatus figures={drawn.figures} />
            ) : (
              <p className="picture-empty">{words.picture.empty}</p>
            )}
            {hasPiston && isDrawn ? (
              <Suspense fallback={null}>
                <PistonRow bench={bench} />
              </Suspense>
            ) : null}
          </div>
          <PictureControls
            own={drawn ? drawn.wall?.exaggeration : range.own}
            end={drawn ? drawn.wall?.exaggerationEnd : range.end}
          />
        </>
      ) : (
        <div>
          <p className="aside">{words.picture.trouble['no-webgl']}</p>
          {drawn && !isUnderWay(drawn) ? <ScanStatus figures={drawn.figures} /> : null}
        </div>
      )}
      <div className="wall-said">
        {drawn ? (
          <ScanReadOut bench={bench} drawn={drawn} />
        ) : (
          <ReadOut bench={bench} canShowAll={picture !== undefined && job.bores.length > 1} />
        )}
        {picture && grid && !drawn ? <PistonButton bench={bench} /> : null}
        {picture && grid && !drawn ? <DoubtButton /> : null}
        <MarkButton />
      </div>
      <ScanRow bench={bench} drawn={drawn} />
      {hasStrip ? <BoreStrip bench={later} paintOf={paintOf} width={width} /> : null}
      {drawn && chart !== 'hours' ? (
        <Suspense fallback={null}>
          {drawn.wall ? <ScanFlatWall bench={bench} wall={drawn.wall} paintOf={paintOf} box={box} /> : null}
        </Suspense>
      ) : (
        <FlatWall
          key={survey.id}
          bench={bench}
          grid={grid}
          paintOf={paintOf}
          save={saveChart}
          box={box}
          map={(box) => <BoreMap bench={bench} grid={grid} paintOf={paintOf} box={box} pair={finding.pair} />}
        />
      )}
    </section>
  )
}

export function ReadOut(props: { readonly bench: OnBench; readonly canShowAll: boolean }) {
  const { job, bore, survey, finding } = props.bench
  const allBores = useSession((state) => state.allBores)
  const pointed = useSession((state) => state.pointed)
  const wall = wallOfBore(job, bore.id, survey.id)
  const said =
    pointed && wall
      ? readOut(wall.state(pointed.depthMm, (pointed.angleDegrees * Math.PI) / 180), pointed)
      : words.readOut.nothing
  const marking = useSession((state) => state.marking)
  const here = pointed && surfaceHere(finding, pointed)
  return (
    <div className="read-out">
      <p aria-live="polite">
        {marking ? words.surface.marking : here === undefined ? said : `${said} · ${here}`}
      </p>
      {props.canShowAll ? (
        <button
          type="button"
          className="quiet"
          aria-pressed={allBores}
          onClick={() => showAllBores(!allBores)}
        >
          {allBores ? words.picture.thisBore : words.picture.allBores}
        </button>
      ) : null}
    </div>
  )
}

export function BoreMap(props: {
  readonly bench: OnBench
  readonly grid: WallGrid | undefined
  readonly pair: LimitPair | undefined
  readonly paintOf: WallColumnProps['paintOf']
  readonly box: { readonly width: number; readonly height: number }
}) {
  const { bench, grid, pair, paintOf, box } = props
  const { bore, survey, finding } = bench
  const pointed = useSession((state) => state.pointed)
  const byTouch = useSession((state) => state.marking)
  const layout = useLayout()
  const onMarked = (place: SurfacePlace) => {
    setMarking(false)
    recordSurface(bench, place)
    if (layout !== 'desk') showPart('findings')
  }
  const next = useStationInHand(bench)
  const paint = useMemo(() => (grid ? paintOf(grid, pair) : undefined), [grid, pair, paintOf])
  return (
    <UnrolledMap
      grid={grid}
      paint={paint}
      lengthMm={finding.drawnLengthMm}
      levelsMm={survey.levelsMm}
      ports={bore.ports}
      stations={finding.stations}
      surface={finding.surface}
      marking={{ byTouch, onMarked }}
      pair={pair}
      pointed={pointed}
      next={next && { depthMm: next.depthMm, angleDegrees: next.axisDegrees }}
      onPoint={(place) => pointAt(place && { ...place, from: 'map' })}
      {...box}
    />
  )
}
