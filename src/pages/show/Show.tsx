import './show.css'
import { type ReactNode, useEffect, useMemo, useState } from 'react'
import { pointAt, turnedByHand, type View } from '../../session/session'
import { ownerWords } from '../../words/owner-words'
import { useSession } from '../bench/use-job'
import { type Size, useSize } from '../bench/use-size'
import type { ComparedWall } from '../compare/compared-walls'
import type { PaintOf } from '../compare/paint-of'
import { FlatWall } from './FlatWall'
import { ShowBar, type ShowBarProps } from './ShowBar'
import { ShowSteps } from './ShowSteps'
import { ShowText } from './ShowText'
import { TurnByHand } from './TurnByHand'
import { useFullScreen } from './use-full-screen'
import { useShowKeys } from './use-show-keys'
import { useSwipe } from './use-swipe'
import { type Talk, useTalk } from './use-talk'

/** A view of the picture; with a place it goes there. */
export interface ShowView extends View {
  readonly at?: {
    readonly from: 'above' | 'side'
    readonly angleDegrees?: number
    readonly depthMm?: number
    readonly lengthMm: number
  }
}

/** What the picture shows while something is told. */
export interface ShownWalls {
  readonly walls: readonly ComparedWall[]
  readonly view: ShowView
  /** The place that is spoken of, or pointed at. */
  readonly pointed: { readonly depthMm: number; readonly angleDegrees: number } | undefined
  /** A hand turns the bore. */
  readonly isTurned: boolean
  readonly onTurned: () => void
}

export interface ShowProps extends Pick<ShowBarProps, 'otherWindow' | 'onLeave'> {
  /** The walls in three dimensions; undefined where that cannot be drawn. */
  readonly picture: ((shown: ShownWalls, box: Size) => ReactNode) | undefined
  readonly paintOf: PaintOf
}

/** A bore for its owner: one plain sentence after the other in large type, and the picture looking at what it speaks of. */
export function Show({ picture, paintOf, otherWindow, onLeave }: ShowProps) {
  const talk = useTalk(picture === undefined)
  const full = useFullScreen()
  const [isByHand, setIsByHand] = useState(false)
  const { at, steps, goTo } = talk
  const step = (to: number) => {
    setIsByHand(false)
    goTo(to)
  }
  const turn = () => {
    if (isByHand) return
    turnedByHand()
    setIsByHand(true)
  }
  useShowKeys({
    next: () => step(at + 1),
    back: () => step(at - 1),
    first: () => step(0),
    last: () => step(steps.length - 1),
    escape: () => (isByHand ? setIsByHand(false) : onLeave()),
  })
  const swipe = useSwipe((to) => {
    if (!isByHand) step(to === 'next' ? at + 1 : at - 1)
  })
  useEffect(() => () => pointAt(undefined), [])
  return (
    <main className={isByHand ? 'show is-by-hand' : 'show'} {...swipe}>
      <ShowBar talk={talk} full={full} otherWindow={otherWindow} onLeave={onLeave} />
      <div className="show-stage">
        <Wall talk={talk} picture={picture} paintOf={paintOf} isByHand={isByHand} onTurned={turn} />
        {picture && talk.wall ? (
          <TurnByHand wall={talk.wall} isOn={isByHand} onTurn={turn} onBack={() => setIsByHand(false)} />
        ) : null}
      </div>
      <ShowText talk={talk} />
      <ShowSteps talk={talk} onGoTo={step} />
    </main>
  )
}

interface WallProps extends Pick<ShowProps, 'picture' | 'paintOf'> {
  readonly talk: Talk
  readonly isByHand: boolean
  readonly onTurned: () => void
}

/** The wall of the bore, beside the new one where that is spoken of. */
function Wall({ talk, picture, paintOf, isByHand, onTurned }: WallProps) {
  const [ref, size] = useSize()
  const pointed = useSession((state) => state.pointed)
  const byHand = useSession((state) => state.view)
  const { wall, besideIt, step } = talk
  const { look } = step
  const lengthMm = wall?.grid.lengthMm ?? 0
  const isBeside = besideIt !== undefined && look.beside
  const told = useMemo<ShowView>(() => {
    const { depthMm, ...whole } = look
    // Two beside each other are seen whole.
    const at = isBeside || depthMm === undefined ? whole : { ...whole, depthMm }
    return { name: 'free', turn: 0, zoom: 0, at: { ...at, lengthMm } }
  }, [look, lengthMm, isBeside])
  const place = useMemo(() => placeOf(look), [look])
  const walls = useMemo(
    () => (wall ? [wall, ...(isBeside ? [besideIt] : [])] : []),
    [wall, besideIt, isBeside],
  )
  return (
    <section className="show-wall" ref={ref} aria-label={ownerWords.show.wall}>
      {size && wall ? (
        picture ? (
          picture(
            {
              walls,
              view: isByHand ? byHand : told,
              pointed: pointed ?? (isByHand ? undefined : place),
              isTurned: isByHand,
              onTurned,
            },
            size,
          )
        ) : (
          <FlatWall walls={walls} paintOf={paintOf} pointed={pointed ?? place} box={size} />
        )
      ) : null}
    </section>
  )
}

function placeOf({ depthMm, angleDegrees }: Talk['step']['look']) {
  return depthMm === undefined || angleDegrees === undefined ? undefined : { depthMm, angleDegrees }
}
