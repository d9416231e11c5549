import { lazy, type ReactNode, Suspense, useCallback, useEffect, useMemo, useState } from 'react'
import { useStore } from 'zustand'
import type { WallGrid } from '../core/surface/wall-grid'
import { jobStore } from '../job/job-store'
import { findingOf, gridOfBore, surveyOf, wallOfBore } from '../job/selectors'
import { useLayout } from '../pages/bench/phone/use-layout'
import { drawnFactor, type ScanWall, useDrawnScan } from '../pages/bench/use-drawn-scan'
import { useStationInHand } from '../pages/bench/use-entry'
import { useExaggerationRange } from '../pages/bench/use-exaggeration'
import { useOnBench } from '../pages/bench/use-job'
import type { BorePictureProps } from '../scene/BorePicture'
import type { PointedPlace } from '../scene/pointed-place'
import { chooseBore, pointAt, session, turnedByHand } from '../session/session'
import { words } from '../words/words'
import { useChosenBore } from './BoreTabs'
import { DoubtNote } from './DoubtNote'
import { firstNumbersPainted, markFirstPicture, markScanPicture } from './first-marks'
import { PictureGuard } from './PictureGuard'
import { pictureLabels, scanLabels } from './picture-labels'
import { rowOf } from './picture-row'
import { shownPicture } from './shown-picture'
import type { Theme } from './theme'
import { type OtherWall, useOtherWall } from './use-other-wall'

/** Only once the figures stand on the page: they are what a mechanic waits for. */
export const BorePictureLater = lazy(async () => {
  await firstNumbersPainted
  const { BorePicture } = await import('../scene/BorePicture')
  return { default: BorePicture }
})

export type Trouble = 'no-webgl' | 'context-lost' | 'restored'

const restoredShownFor = 6000

/** The bore on the bench in three dimensions, as soon as there is time to draw it. */
export function PictureSlot(props: {
  readonly box: { readonly width: number; readonly height: number }
  readonly theme: Theme
  readonly onImpossible: () => void
}) {
  const { box, theme, onImpossible } = props
  return (
    <PictureStand box={box} onImpossible={onImpossible}>
      {(onTrouble) => <Picture theme={theme} onTrouble={onTrouble} />}
    </PictureStand>
  )
}

/** The place of a picture, which says when the graphics stop and when they are back. */
export function PictureStand(props: {
  readonly box: { readonly width: number; readonly height: number }
  readonly onImpossible: () => void
  readonly children: (onTrouble: (trouble: Trouble) => void) => ReactNode
}) {
  const { box, onImpossible, children } = props
  const [said, setSaid] = useState<'context-lost' | 'restored'>()
  useEffect(() => {
    if (said !== 'restored') return
    const gone = setTimeout(() => setSaid(undefined), restoredShownFor)
    return () => clearTimeout(gone)
  }, [said])
  const onTrouble = useCallback(
    (trouble: Trouble) => {
      if (trouble === 'no-webgl') onImpossible()
      else setSaid(trouble)
    },
    [onImpossible],
  )
  return (
    <div className="picture-slot" style={box}>
      <PictureGuard onImpossible={onImpossible}>
        <Suspense fallback={null}>{children(onTrouble)}</Suspense>
      </PictureGuard>
      <p className="picture-said" role="status">
        {said ? words.picture.trouble[said] : null}
      </p>
    </div>
  )
}

interface PictureProps {
  readonly theme: Theme
  readonly onTrouble: (trouble: Trouble) => void
}

/**
 * One picture for readings and scans alike: its graphics are not begun anew. Until a scan can be drawn the wall of the
 * readings stays.
 */
function Picture({ theme, onTrouble }: PictureProps) {
  const drawn = useDrawnScan(useOnBench())
  const layout = useLayout()
  const { pointed, view, allBores, fingerTurns } = useStore(session)
  const wall = allBores ? undefined : drawn?.wall
  const ofScan = useOfScan(wall)
  const ofReadings = useOfReadings()
  const shown = ofScan ?? ofReadings?.drawn
  const scanGrid = wall?.grid
  const onDrawn = useCallback(
    (grid: WallGrid) => {
      markFirstPicture()
      if (grid === scanGrid) markScanPicture()
    },
    [scanGrid],
  )
  if (!shown) return null
  return (
    <>
      <BorePictureLater
        ref={shownPicture}
        {...shown}
        onChoose={chooseBore}
        theme={theme}
        {...(pointed ? { pointed } : {})}
        onPoint={pointInPicture}
        view={view}
        oneFingerTurns={layout === 'desk' || fingerTurns}
        onTurned={turnedByHand}
        onTrouble={onTrouble}
        onDrawn={onDrawn}
      />
      {ofReadings?.other && !ofScan ? <DoubtNote other={ofReadings.other} /> : null}
    </>
  )
}

function pointInPicture(place: PointedPlace | undefined): void {
  pointAt(place && { ...place, from: 'picture' })
}

type DrawnBore = Omit<
  BorePictureProps,
  'theme' | 'pointed' | 'onPoint' | 'view' | 'onTurned' | 'onTrouble' | 'ref'
>

/** The bore as a scan has it: without stations, limits and what comes next where the scan has no size. */
function useOfScan(wall: ScanWall | undefined): DrawnBore | undefined {
  const { bore } = useOnBench()
  const chosen = useStore(session, (state) => state.exaggeration)
  const { isSized = false, isLocal = false } = wall ?? {}
  // What else is found of the scan by and by changes none of them.
  const labels = useMemo(() => scanLabels({ isSized, isLocal }), [isSized, isLocal])
  if (!wall) return undefined
  const { grid, finding, marks } = wall
  const exaggeration = Math.min(chosen ?? wall.exaggeration, wall.exaggerationEnd) * drawnFactor(wall)
  return {
    grid,
    ports: bore.ports,
    belts: bore.belts,
    stations: finding.stations,
    surface: finding.surface,
    ...(marks ? { scanMarks: marks.marks } : {}),
    ...(finding.pair ? { pair: finding.pair } : {}),
    exaggeration,
    labels,
  }
}

/** The bore through its readings, alone or in a row, or another wall that fits them. */
function useOfReadings(): { readonly drawn: DrawnBore; readonly other?: OtherWall } | undefined {
  const job = useStore(jobStore, (state) => state.job)
  const bore = useChosenBore()
  const layout = useLayout()
  const { surveyId, allBores, exaggeration: asked, piston } = useStore(session)
  const grid = bore && gridOfBore(job, bore.id, surveyId)
  const range = useExaggerationRange(job, grid?.middleMm)
  const placed = allBores ? undefined : piston?.placed
  // The slider ends where the piston would have no room.
  const exaggeration =
    placed && range.end !== undefined && asked !== undefined
      ? Math.min(asked, range.end)
      : (asked ?? range.own)
  const finding = bore && findingOf(job, bore.id, surveyOf(bore, surveyId)?.id)
  const row = useMemo(
    () => (allBores && layout !== 'one' && bore ? rowOf(job, bore.id, surveyId) : undefined),
    [job, allBores, layout, bore, surveyId],
  )
  const { depthMm, axisDegrees } = useStationInHand(useOnBench()) ?? {}
  const next = useMemo(
    () =>
      depthMm === undefined || axisDegrees === undefined ? undefined : { depthMm, angleDegrees: axisDegrees },
    [depthMm, axisDegrees],
  )
  const wall = bore && wallOfBore(job, bore.id, surveyId)
  const other = useOtherWall(wall, grid, exaggeration)
  if (!grid || !finding || exaggeration === undefined) return undefined
  const { pair, stations, surface } = finding
  return {
    drawn: {
      grid: other?.grid ?? grid,
      ...(other?.way ? { way: other.way } : {}),
      ports: bore.ports,
      belts: bore.belts,
      stations,
      surface,
      ...(placed ? { piston: placed } : {}),
      ...(pair ? { pair } : {}),
      exaggeration,
      ...(row ? { row } : {}),
      ...(next ? { next } : {}),
      labels: pictureLabels,
    },
    ...(other ? { other } : {}),
  }
}
