import { useMemo } from 'react'
import { UnrolledMap } from '../../charts/UnrolledMap'
import { pointAt } from '../../session/session'
import { differenceWithDoubt } from '../../words/numbers'
import { words } from '../../words/words'
import { useSession } from '../bench/use-job'
import type { ComparedWall } from './compared-walls'
import type { PaintOf } from './paint-of'
import type { OnCompare } from './use-compared'

const gap = 16
const leastWidth = 300
const mapHeight = 240

/** The walls unrolled, side by side, with one place pointed at: where there is no picture. */
export function FlatWalls(props: {
  readonly on: OnCompare
  readonly paintOf: PaintOf
  readonly width: number
}) {
  const { on, paintOf, width } = props
  const fits = Math.max(1, Math.floor((width + gap) / (leastWidth + gap)))
  const across = Math.min(fits, on.walls.length)
  const each = Math.floor((width - gap * (across - 1)) / across)
  return (
    <>
      <p className="aside">{words.compare.flat}</p>
      <div className="flat-walls">
        {on.walls.map((wall) => (
          <FlatWall key={wall.id} wall={wall} paintOf={paintOf} width={each} />
        ))}
      </div>
    </>
  )
}

function FlatWall(props: { readonly wall: ComparedWall; readonly paintOf: PaintOf; readonly width: number }) {
  const { wall, paintOf, width } = props
  const pointed = useSession((state) => state.pointed)
  const { mapGrid, pair } = wall
  const paint = useMemo(() => paintOf(mapGrid, pair), [mapGrid, pair, paintOf])
  return (
    <figure className={wall.isBetween ? 'is-between' : undefined}>
      <figcaption>{wall.title}</figcaption>
      <UnrolledMap
        grid={mapGrid}
        paint={paint}
        lengthMm={mapGrid.lengthMm}
        levelsMm={wall.levelsMm}
        ports={wall.ports}
        stations={wall.stations}
        surface={wall.surface}
        pair={wall.isDifference ? undefined : pair}
        pointed={pointed}
        next={undefined}
        onPoint={(place) => pointAt(place && { ...place, from: 'map' })}
        width={width}
        height={mapHeight}
        isDifference={wall.isDifference === true}
        {...(wall.isDifference
          ? {
              figureOf: ({ diameterMm, expandedMm }) =>
                differenceWithDoubt(diameterMm - mapGrid.middleMm, expandedMm),
            }
          : {})}
      />
    </figure>
  )
}
