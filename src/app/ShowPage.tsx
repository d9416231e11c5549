import { type ReactNode, useCallback, useMemo, useState } from 'react'
import { useStore } from 'zustand'
import type { LimitPair } from '../core/findings'
import type { WallGrid } from '../core/surface/wall-grid'
import { jobStore } from '../job/job-store'
import { exaggerationOfJob } from '../job/selectors'
import { useLayout } from '../pages/bench/phone/use-layout'
import { Show, type ShownWalls } from '../pages/show/Show'
import type { BoreRow } from '../scene/bore-row'
import { wallPaint } from '../scene/wall-palette'
import { pointAt } from '../session/session'
import { goToPage } from './desk'
import { BorePictureLater, PictureStand, type Trouble } from './PictureSlot'
import { pictureLabels } from './picture-labels'
import { openSecondWindow } from './second-window'
import { isSecondWindow } from './second-window-name'
import { type Theme, themeStore } from './theme'

const leave = () => (isSecondWindow() ? window.close() : goToPage('bench'))

/** The page for the owner, with its picture. */
export function ShowPage() {
  const theme = useStore(themeStore, (state) => state.theme)
  const [impossible, setImpossible] = useState(false)
  const picture = useCallback(
    (shown: ShownWalls, box: { width: number; height: number }): ReactNode => (
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
  return (
    <Show
      picture={impossible ? undefined : picture}
      paintOf={paintOf}
      otherWindow={isSecondWindow() ? undefined : openSecondWindow}
      onLeave={leave}
    />
  )
}

interface WallsPictureProps extends ShownWalls {
  readonly theme: Theme
  readonly onTrouble: (trouble: Trouble) => void
}

function WallsPicture({ walls, view, pointed, isTurned, onTurned, theme, onTrouble }: WallsPictureProps) {
  const exaggeration = useStore(jobStore, ({ job }) => exaggerationOfJob(job))
  const layout = useLayout()
  const row = useMemo<BoreRow | undefined>(
    () => (walls.length > 1 ? { bores: walls, chosen: 0 } : undefined),
    [walls],
  )
  const [wall] = walls
  if (!wall || exaggeration === undefined) return null
  const { grid, ports, stations, surface, pair } = wall
  return (
    <BorePictureLater
      grid={grid}
      ports={ports}
      belts={[]}
      stations={stations}
      surface={surface}
      {...(pair ? { pair } : {})}
      exaggeration={exaggeration}
      {...(row ? { row } : {})}
      theme={theme}
      {...(pointed ? { pointed } : {})}
      onPoint={(place) => pointAt(place && { ...place, from: 'picture' })}
      view={view}
      oneFingerTurns={layout === 'desk' || isTurned}
      onTurned={onTurned}
      labels={pictureLabels}
      onTrouble={onTrouble}
    />
  )
}
