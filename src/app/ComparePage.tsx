import { type ReactNode, useCallback, useMemo, useState } from 'react'
import { useStore } from 'zustand'
import type { LimitPair } from '../core/findings'
import type { WallGrid } from '../core/surface/wall-grid'
import { jobStore } from '../job/job-store'
import { exaggerationEndOfJob, exaggerationOfJob } from '../job/selectors'
import { useLayout } from '../pages/bench/phone/use-layout'
import { Compare, type PicturedWalls } from '../pages/compare/Compare'
import type { BoreRow } from '../scene/bore-row'
import { wallPaint } from '../scene/wall-palette'
import { compare } from '../session/comparing'
import { pointAt, session, turnedByHand } from '../session/session'
import { words } from '../words/words'
import { BorePictureLater, PictureStand, type Trouble } from './PictureSlot'
import { pictureLabels } from './picture-labels'
import { type Theme, themeStore } from './theme'

/** The page for comparing, with its picture. */
export function ComparePage() {
  const theme = useStore(themeStore, (state) => state.theme)
  const [impossible, setImpossible] = useState(false)
  const picture = useCallback(
    (shown: PicturedWalls, box: { width: number; height: number }): ReactNode => (
      <PictureStand box={box} onImpossible={() => setImpossible(true)}>
        {(onTrouble) => <WallsPicture {...shown} theme={theme} onTrouble={onTrouble} />}
      </PictureStand>
    ),
    [theme],
  )
  const paintOf = useCallback(
    (grid: WallGrid, pair: LimitPair | undefined) => wallPaint(grid, pair, theme),
    [theme],
  )
  return <Compare picture={impossible ? undefined : picture} paintOf={paintOf} />
}

const said = words.compare.less

/** On the wall of a difference its middle is no difference, and its marks are about that. */
const differenceLabels = {
  ...pictureLabels,
  limit: () => said.none0,
  middle: () => '0',
  notMeasured: said.notBoth,
  tooClose: said.withinDoubt,
}

interface WallsPictureProps extends PicturedWalls {
  readonly theme: Theme
  readonly onTrouble: (trouble: Trouble) => void
}

function WallsPicture({ walls, inHand, theme, onTrouble }: WallsPictureProps) {
  const job = useStore(jobStore, (state) => state.job)
  const layout = useLayout()
  const { pointed, view, fingerTurns, exaggeration: chosen } = useStore(session)
  const row = useMemo<BoreRow>(() => ({ bores: walls, chosen: inHand, isLinked: true }), [walls, inHand])
  const own = exaggerationOfJob(job)
  const end = exaggerationEndOfJob(job)
  const wall = walls[inHand]
  if (!wall || own === undefined || end === undefined) return null
  const { grid, ports, stations, surface, pair } = wall
  return (
    <BorePictureLater
      grid={grid}
      ports={ports}
      belts={[]}
      stations={stations}
      surface={surface}
      {...(pair ? { pair } : {})}
      exaggeration={Math.min(chosen ?? own, end)}
      row={row}
      onChoose={(id) => compare(job.id, { inHand: id })}
      theme={theme}
      {...(pointed ? { pointed } : {})}
      onPoint={(place) => pointAt(place && { ...place, from: 'picture' })}
      view={view}
      oneFingerTurns={layout === 'desk' || fingerTurns}
      onTurned={turnedByHand}
      labels={wall.isDifference ? differenceLabels : pictureLabels}
      onTrouble={onTrouble}
    />
  )
}
