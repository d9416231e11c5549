import { useMemo } from 'react'
import { useStore } from 'zustand'
import { jobStore } from '../job/job-store'
import { exaggerationEndOfJob, exaggerationOfJob } from '../job/selectors'
import { useLayout } from '../pages/bench/phone/use-layout'
import { Compare, type PicturedWalls } from '../pages/compare/Compare'
import type { BoreRow } from '../scene/bore-row'
import { compare } from '../session/comparing'
import { pointAt, session, turnedByHand } from '../session/session'
import { words } from '../words/words'
import { BorePictureLater } from './PictureSlot'
import { pictureLabels } from './picture-labels'
import { type PicturePlace, usePagePicture } from './use-page-picture'

/** The page for comparing, with its picture. */
export function ComparePage() {
  const { picture, paintOf } = usePagePicture<PicturedWalls>(WallsPicture)
  return <Compare picture={picture} paintOf={paintOf} />
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

function WallsPicture({ walls, inHand, theme, onTrouble }: PicturedWalls & PicturePlace) {
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
