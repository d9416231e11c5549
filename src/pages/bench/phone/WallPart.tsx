import './wall-part.css'
import { lazy, type ReactNode, Suspense, useEffect, useRef } from 'react'
import { mapGridOfBore, stationsPlanned } from '../../../job/selectors'
import { letFingerTurn, showPart, takeInHand } from '../../../session/session'
import { words } from '../../../words/words'
import { BoreStrip } from '../BoreStrip'
import { DoubtButton } from '../DoubtButton'
import { FlatWall } from '../FlatWall'
import { MarkButton } from '../MarkButton'
import { Exaggeration, TurnButtons, ViewButtons } from '../PictureControls'
import { PistonButton } from '../PistonButton'
import { ScanReadOut, ScanRow, ScanStatus } from '../ScanRow'
import { ScanFlatWall } from '../scan-parts'
import { type DrawnScan, isUnderWay, useDrawnScan } from '../use-drawn-scan'
import { useExaggerationRange } from '../use-exaggeration'
import { type OnBench, useSession } from '../use-job'
import { type Size, useSize } from '../use-size'
import { BoreMap, ReadOut, type WallColumnProps } from '../WallColumn'
import type { Layout } from './use-layout'
import { wallBoxes } from './wall-boxes'

const PistonRow = lazy(async () => ({ default: (await import('../PistonRow')).PistonRow }))

/** The picture, what is pointed at, the exaggeration, the map and the other bores. */
export function WallPart(props: WallColumnProps & { readonly layout: Layout; readonly isShown: boolean }) {
  const { bench, picture, paintOf, saveChart, layout, isShown } = props
  const { job, bore, survey, finding } = bench
  const [room, size] = useSize()
  useEffect(() => {
    if (!isShown) letFingerTurn(false)
  }, [isShown])
  const grid = mapGridOfBore(job, bore.id, survey.id)
  const range = useExaggerationRange(job, grid?.middleMm)
  const hasPiston = useSession((state) => state.piston !== undefined)
  const drawn = useDrawnScan(bench)
  const chart = useSession((state) => state.chart)
  const isDrawn = drawn
    ? drawn.wall !== undefined || (isUnderWay(drawn) && grid !== undefined)
    : grid !== undefined
  const hasPicture = picture !== undefined
  const several = job.bores.length > 1
  const boxes = size && wallBoxes(size, { hasPicture, hasStrip: several })
  const exaggeration = hasPicture ? (
    <Exaggeration
      own={drawn ? drawn.wall?.exaggeration : range.own}
      end={drawn ? drawn.wall?.exaggerationEnd : range.end}
    />
  ) : null
  return (
    <section className="wall-part" ref={room} aria-label={words.parts.wall}>
      {boxes ? (
        <div className={`wall-rows is-${boxes.form}`}>
          {picture && boxes.picture ? (
            <div>
              <PictureBox box={boxes.picture}>
                {isDrawn ? (
                  picture(boxes.picture)
                ) : drawn ? (
                  <ScanStatus figures={drawn.figures} />
                ) : (
                  <p className="picture-empty">{words.picture.empty}</p>
                )}
              </PictureBox>
              <PictureRow>{boxes.form === 'broad' ? exaggeration : null}</PictureRow>
            </div>
          ) : (
            <div>
              <p className="aside">{words.picture.trouble['no-webgl']}</p>
              {drawn && !isUnderWay(drawn) ? <ScanStatus figures={drawn.figures} /> : null}
            </div>
          )}
          <div>
            <Pointed
              bench={bench}
              drawn={drawn}
              hasPicture={hasPicture && grid !== undefined}
              canShowAll={hasPicture && several && layout === 'two'}
            />
            {boxes.form === 'broad' ? null : <div className="controls">{exaggeration}</div>}
            {hasPiston && hasPicture && !drawn ? (
              <Suspense fallback={null}>
                <PistonRow bench={bench} />
              </Suspense>
            ) : null}
            <ScanRow bench={bench} drawn={drawn} />
            {drawn && chart !== 'hours' ? (
              <Suspense fallback={null}>
                {drawn.wall ? (
                  <ScanFlatWall bench={bench} wall={drawn.wall} paintOf={paintOf} box={boxes.map} />
                ) : null}
              </Suspense>
            ) : (
              <FlatWall
                key={survey.id}
                bench={bench}
                grid={grid}
                paintOf={paintOf}
                save={saveChart}
                box={boxes.map}
                map={(box) => (
                  <BoreMap bench={bench} grid={grid} paintOf={paintOf} box={box} pair={finding.pair} />
                )}
              />
            )}
            {several ? (
              <BoreStrip bench={bench} paintOf={paintOf} width={stripWidth(boxes.map, job.bores.length)} />
            ) : null}
          </div>
        </div>
      ) : null}
    </section>
  )
}

/** With two fingers on it the picture turns and the page does not scroll. */
function PictureBox({ box, children }: { readonly box: Size; readonly children: ReactNode }) {
  const element = useRef<HTMLDivElement>(null)
  useEffect(() => {
    const hold = (event: TouchEvent) => {
      if (event.touches.length > 1 && event.cancelable) event.preventDefault()
    }
    const options = { passive: false }
    const held = element.current
    held?.addEventListener('touchmove', hold, options)
    return () => held?.removeEventListener('touchmove', hold)
  }, [])
  return (
    <div ref={element} className="picture-box" style={box}>
      {children}
    </div>
  )
}

/** Maps wide enough for a finger: what does not fit is swiped to. */
function stripWidth({ width }: Size, bores: number): number {
  return Math.max(width, bores * 120)
}

/** From where to look; while one finger turns the bore, how to turn and to come closer. */
function PictureRow({ children }: { readonly children: ReactNode }) {
  const turns = useSession((state) => state.fingerTurns)
  const said = words.picture
  return (
    <div className="controls picture-row">
      <button type="button" aria-pressed={turns} title={said.turnHere} onClick={() => letFingerTurn(!turns)}>
        {turns ? said.turnDone : said.turn}
      </button>
      {turns ? <TurnButtons /> : <ViewButtons />}
      {children}
    </div>
  )
}

/** The read-out, and the way from a station pointed at to its number. */
function Pointed(props: {
  readonly bench: OnBench
  readonly drawn: DrawnScan | undefined
  readonly hasPicture: boolean
  readonly canShowAll: boolean
}) {
  const { bench, drawn, hasPicture, canShowAll } = props
  const { job, bore, survey } = bench
  const pointed = useSession((state) => state.pointed)
  const station =
    pointed &&
    stationsPlanned(job, bore.id, survey.id)
      .flat()
      .find(
        ({ depthMm, axisDegrees }) =>
          depthMm === pointed.depthMm && axisDegrees === pointed.angleDegrees % 180,
      )
  const measure = () => {
    if (!station) return
    takeInHand({ boreId: bore.id, depthMm: station.depthMm, axisDegrees: station.axisDegrees })
    showPart('enter')
  }
  return (
    <div className="wall-pointed">
      {drawn ? (
        <ScanReadOut bench={bench} drawn={drawn} />
      ) : (
        <ReadOut bench={bench} canShowAll={canShowAll} />
      )}
      {station && !drawn ? (
        <button type="button" className="button" onClick={measure}>
          {words.phone.measureHere}
        </button>
      ) : null}
      {hasPicture && !drawn ? <PistonButton bench={props.bench} /> : null}
      {hasPicture && !drawn ? <DoubtButton /> : null}
      <MarkButton />
    </div>
  )
}
