import { useMemo } from 'react'
import { useStore } from 'zustand'
import { jobStore } from '../job/job-store'
import { exaggerationOfJob } from '../job/selectors'
import { useLayout } from '../pages/bench/phone/use-layout'
import { Show, type ShownWalls } from '../pages/show/Show'
import type { BoreRow } from '../scene/bore-row'
import { pointAt } from '../session/session'
import { goToPage } from './desk'
import { BorePictureLater } from './PictureSlot'
import { pictureLabels } from './picture-labels'
import { openSecondWindow } from './second-window'
import { isSecondWindow } from './second-window-name'
import { type PicturePlace, usePagePicture } from './use-page-picture'

const leave = () => (isSecondWindow() ? window.close() : goToPage('bench'))

/** The page for the owner, with its picture. */
export function ShowPage() {
  const { picture, paintOf } = usePagePicture<ShownWalls>(WallsPicture)
  return (
    <Show
      picture={picture}
      paintOf={paintOf}
      otherWindow={isSecondWindow() ? undefined : openSecondWindow}
      onLeave={leave}
    />
  )
}

function WallsPicture({
  walls,
  view,
  pointed,
  isTurned,
  onTurned,
  theme,
  onTrouble,
}: ShownWalls & PicturePlace) {
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
