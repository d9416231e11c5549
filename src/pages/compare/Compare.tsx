import './compare.css'
import { type ReactNode, useEffect } from 'react'
import { exaggerationEndOfJob, exaggerationOfJob } from '../../job/selectors'
import { letFingerTurn, pointAt } from '../../session/session'
import { words } from '../../words/words'
import { Exaggeration, TurnButtons, ViewButtons } from '../bench/PictureControls'
import { useLayout } from '../bench/phone/use-layout'
import { useSession } from '../bench/use-job'
import { type Size, useSize } from '../bench/use-size'
import { ChooseCompared } from './ChooseCompared'
import { ChooseDifference } from './ChooseDifference'
import type { ComparedWall } from './compared-walls'
import { DifferencePart } from './DifferencePart'
import { FlatWalls } from './FlatWalls'
import type { PaintOf } from './paint-of'
import { ThroughTime } from './ThroughTime'
import { type OnCompare, useOnCompare } from './use-compared'
import { WallList } from './WallList'

/** The walls that a picture shows, and which of them is in hand. */
export interface PicturedWalls {
  readonly walls: readonly ComparedWall[]
  readonly inHand: number
}

export interface CompareProps {
  /** The walls in three dimensions; undefined where that cannot be drawn. */
  readonly picture: ((shown: PicturedWalls, box: Size) => ReactNode) | undefined
  readonly paintOf: PaintOf
}

/** Two to eight bores or surveys side by side, drawn alike, with the difference of two and a wall through time. */
export function Compare({ picture, paintOf }: CompareProps) {
  const on = useOnCompare()
  const layout = useLayout()
  const said = words.compare
  useEffect(
    () => () => {
      pointAt(undefined)
      letFingerTurn(false)
    },
    [],
  )
  if (on.all.length < 2) {
    return (
      <main className="compare is-empty">
        <h2>{said.nothing}</h2>
        <p>{said.nothingSaid}</p>
      </main>
    )
  }
  return (
    <main className={`compare is-${layout}`}>
      <div className="compare-choice">
        <ChooseCompared on={on} />
        <ChooseDifference on={on} />
        <ThroughTime on={on} />
      </div>
      <Walls on={on} picture={picture} paintOf={paintOf} />
    </main>
  )
}

/** Where no table of a difference stands below, the picture has its room too. */
const pictureHeights = {
  beside: { desk: 420, two: 420, one: 372 },
  alone: { desk: 560, two: 480, one: 372 },
}

function Walls({ on, picture, paintOf }: CompareProps & { readonly on: OnCompare }) {
  const layout = useLayout()
  const [ref, size] = useSize()
  const { walls, inHand } = on
  const wall = walls[inHand]
  const box = size && {
    width: size.width,
    height: pictureHeights[on.difference ? 'beside' : 'alone'][layout],
  }
  return (
    <section className="compare-walls" aria-label={words.compare.walls} ref={ref}>
      {walls.length < 2 ? <p className="aside">{words.compare.tooFew}</p> : null}
      {picture && box && wall ? (
        <>
          <div className="picture-box">
            {picture(layout === 'one' ? { walls: [wall], inHand: 0 } : { walls, inHand }, box)}
          </div>
          <Controls on={on} />
        </>
      ) : null}
      <WallList on={on} />
      {!picture && size ? <FlatWalls on={on} paintOf={paintOf} width={size.width} /> : null}
      <DifferencePart on={on} paintOf={paintOf} />
    </section>
  )
}

function Controls({ on }: { readonly on: OnCompare }) {
  const layout = useLayout()
  const turns = useSession((state) => state.fingerTurns)
  const said = words.picture
  const exaggeration = <Exaggeration own={exaggerationOfJob(on.job)} end={exaggerationEndOfJob(on.job)} />
  if (layout === 'desk') {
    return (
      <div className="controls">
        <fieldset aria-label={said.views.label}>
          <ViewButtons />
          <TurnButtons />
        </fieldset>
        {exaggeration}
      </div>
    )
  }
  return (
    <>
      <div className="controls picture-row">
        <button
          type="button"
          aria-pressed={turns}
          title={said.turnHere}
          onClick={() => letFingerTurn(!turns)}
        >
          {turns ? said.turnDone : said.turn}
        </button>
        {turns ? <TurnButtons /> : <ViewButtons />}
      </div>
      <div className="controls">{exaggeration}</div>
    </>
  )
}
