import { useMemo } from 'react'
import { UnrolledMap } from '../../charts/UnrolledMap'
import { pointAt } from '../../session/session'
import { ownerWords } from '../../words/owner-words'
import type { PointedPlace } from '../../words/read-out'
import type { Size } from '../bench/use-size'
import type { ComparedWall } from '../compare/compared-walls'
import type { PaintOf } from '../compare/paint-of'

const captionHeight = 26
const noteHeight = 40
const gap = 12
const leastHeight = 120

interface FlatWallProps {
  readonly walls: readonly ComparedWall[]
  readonly paintOf: PaintOf
  readonly pointed: PointedPlace | undefined
  readonly box: Size
}

/** The same walls unrolled, one above the other: where there is no picture. */
export function FlatWall({ walls, paintOf, pointed, box }: FlatWallProps) {
  const free = box.height - noteHeight - (walls.length - 1) * gap
  const height = Math.max(leastHeight, Math.floor(free / Math.max(1, walls.length)) - captionHeight)
  return (
    <div className="show-flat">
      <p className="aside">{ownerWords.show.flat}</p>
      {walls.map((wall) => (
        <WallMap key={wall.id} {...{ wall, paintOf, pointed }} box={{ width: box.width, height }} />
      ))}
    </div>
  )
}

function WallMap({
  wall,
  paintOf,
  pointed,
  box,
}: Omit<FlatWallProps, 'walls'> & { readonly wall: ComparedWall }) {
  const { mapGrid, pair } = wall
  const paint = useMemo(() => paintOf(mapGrid, pair), [mapGrid, pair, paintOf])
  return (
    <figure>
      <figcaption>{wall.title}</figcaption>
      <UnrolledMap
        grid={mapGrid}
        paint={paint}
        lengthMm={mapGrid.lengthMm}
        levelsMm={wall.levelsMm}
        ports={wall.ports}
        stations={wall.stations}
        surface={wall.surface}
        pair={pair}
        pointed={pointed}
        next={undefined}
        onPoint={(place) => pointAt(place && { ...place, from: 'map' })}
        {...box}
      />
    </figure>
  )
}
