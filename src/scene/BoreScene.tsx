import { extend } from '@react-three/fiber'
import { useMemo } from 'react'
import { Group, Mesh, Points } from 'three'
import type { DrawnStation } from '../core/findings'
import type { Port, SurfaceFinding } from '../core/measured'
import type { PlacedPiston } from '../core/piston/piston-in-bore'
import type { ScanMark } from '../core/scan/scan-marks'
import { drawnAt, plainFrom } from './bore-row'
import { DrawnBore } from './DrawnBore'
import { isoStepOf } from './iso-step-of'
import type { PointedPlace } from './pointed-place'
import { type BoreCameraProps, useBoreCamera } from './use-bore-camera'
import { WallGeometries } from './wall-geometries'
import type { Theme } from './wall-palette'
import type { WallWay } from './wall-way'

extend({ Group, Mesh, Points })

export interface BoreSceneProps extends BoreCameraProps {
  readonly ports: readonly Port[]
  readonly stations: readonly DrawnStation[]
  readonly surface: readonly SurfaceFinding[]
  /** What stands out in the scan that the bore in hand is drawn from. */
  readonly scanMarks?: readonly ScanMark[] | undefined
  /** A piston where it stands in the bore in hand. */
  readonly piston?: PlacedPiston | undefined
  /** The bore in hand is drawn on this way. */
  readonly way?: WallWay | undefined
  readonly theme: Theme
  /** Paper has neither shell nor near wall, and lines that print. */
  readonly onPaper?: boolean
  /** It is looked at while it is drawn: roughly at once is better than whole in a while. */
  readonly eager?: boolean
  readonly pointed: PointedPlace | undefined
  readonly next?: PointedPlace | undefined
}

/** From so many nodes on a picture is drawn roughly while it moves. */
const manyNodes = 45_000

/** The bore in hand, and those beside it, always in a row across the picture however it is turned. */
export function BoreScene(props: BoreSceneProps) {
  const {
    grid,
    ports,
    stations,
    surface,
    pair,
    exaggeration,
    theme,
    pointed,
    next,
    row,
    offsets,
    way,
    onPaper = false,
    eager = false,
  } = props
  const geometries = useMemo(() => new WallGeometries(), [])
  const seen = useBoreCamera(props)
  const own = row?.bores[row.chosen]
  const grids = row ? row.bores.map((bore) => bore.grid) : [grid]
  const nodes = grids.reduce((sum, { angles, depthsMm }) => sum + angles.length * depthsMm.length, 0)
  const isCoarseFirst = eager && nodes > manyNodes
  const isPlain = row !== undefined && row.bores.length >= plainFrom
  return (
    <>
      <DrawnBore
        key="chosen"
        seen={seen}
        offsetMm={offsets[row?.chosen ?? 0] ?? 0}
        geometries={geometries}
        isCoarseFirst={isCoarseFirst}
        grid={grid}
        ports={ports}
        stations={stations}
        surface={surface}
        scanMarks={props.scanMarks}
        piston={props.piston}
        pair={pair}
        exaggeration={drawnAt(own, exaggeration)}
        isDifference={own?.isDifference === true}
        way={way ?? own?.way}
        isoStepUm={isoStepOf(grid)}
        theme={theme}
        onPaper={onPaper}
        pointed={pointed}
        next={next}
        shell={!onPaper}
        levelRings
        discs
      />
      {row?.bores.map((bore, index) =>
        index === row.chosen ? null : (
          <DrawnBore
            key={bore.id}
            seen={seen}
            offsetMm={offsets[index] ?? 0}
            geometries={geometries}
            isCoarseFirst={isCoarseFirst}
            grid={bore.grid}
            ports={bore.ports}
            stations={bore.stations}
            surface={bore.surface}
            pair={bore.pair}
            exaggeration={drawnAt(bore, exaggeration)}
            isDifference={bore.isDifference === true}
            way={bore.way}
            isoStepUm={isPlain ? undefined : isoStepOf(bore.grid)}
            theme={theme}
            onPaper={onPaper}
            pointed={row.isLinked ? pointed : undefined}
            shell={!isPlain && !onPaper}
            levelRings={false}
            discs={!isPlain}
          />
        ),
      )}
    </>
  )
}
