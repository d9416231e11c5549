import { lazy, type ReactNode, Suspense, useEffect, useMemo, useState } from 'react'
import { useStore } from 'zustand'
import { jobStore } from '../job/job-store'
import { exaggerationOfJob, findingOf, gridOfBore, surveyOf, wallOfBore } from '../job/selectors'
import { useLayout } from '../pages/bench/phone/use-layout'
import { drawnFactor, type ScanWall, useDrawnScan } from '../pages/bench/use-drawn-scan'
import { useStationInHand } from '../pages/bench/use-entry'
import { useOnBench } from '../pages/bench/use-job'
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
import { useOtherWall } from './use-other-wall'

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
  const onTrouble = (trouble: Trouble) => {
    if (trouble === 'no-webgl') onImpossible()
    else setSaid(trouble)
  }
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

function Picture(props: PictureProps) {
  const bench = useOnBench()
  const drawn = useDrawnScan(bench)
  const allBores = useStore(session, (state) => state.allBores)
  if (!drawn || allBores) return <PictureOfReadings {...props} />
  return drawn.wall ? <PictureOfScan {...props} wall={drawn.wall} /> : null
}

/** The bore as a scan has it: without stations, limits and what comes next where the scan has no size. */
function PictureOfScan({ wall, theme, onTrouble }: PictureProps & { readonly wall: ScanWall }) {
  const { bore } = useOnBench()
  const layout = useLayout()
  const { pointed, view, fingerTurns, exaggeration = wall.exaggeration } = useStore(session)
  const { grid, finding } = wall
  const labels = useMemo(() => scanLabels(wall), [wall])
  return (
    <BorePictureLater
      ref={shownPicture}
      grid={grid}
      ports={bore.ports}
      belts={bore.belts}
      stations={finding.stations}
      surface={finding.surface}
      {...(wall.marks ? { scanMarks: wall.marks.marks } : {})}
      {...(finding.pair ? { pair: finding.pair } : {})}
      exaggeration={Math.min(exaggeration, wall.exaggerationEnd) * drawnFactor(wall)}
      theme={theme}
      {...(pointed ? { pointed } : {})}
      onPoint={(place) => pointAt(place && { ...place, from: 'picture' })}
      view={view}
      oneFingerTurns={layout === 'desk' || fingerTurns}
      onTurned={turnedByHand}
      labels={labels}
      onTrouble={onTrouble}
      onFirstFrame={() => {
        markFirstPicture()
        markScanPicture()
      }}
    />
  )
}

function PictureOfReadings({ theme, onTrouble }: PictureProps) {
  const job = useStore(jobStore, (state) => state.job)
  const bore = useChosenBore()
  const layout = useLayout()
  const {
    pointed,
    view,
    surveyId,
    allBores,
    fingerTurns,
    exaggeration = exaggerationOfJob(job),
  } = useStore(session)
  const grid = bore && gridOfBore(job, bore.id, surveyId)
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
  if (!grid || !finding || exaggeration === undefined) return null
  const { pair } = finding
  return (
    <>
      <BorePictureLater
        ref={shownPicture}
        grid={other?.grid ?? grid}
        {...(other?.way ? { way: other.way } : {})}
        ports={bore.ports}
        belts={bore.belts}
        stations={finding.stations}
        surface={finding.surface}
        {...(pair ? { pair } : {})}
        exaggeration={exaggeration}
        {...(row ? { row } : {})}
        onChoose={chooseBore}
        theme={theme}
        {...(pointed ? { pointed } : {})}
        {...(next ? { next } : {})}
        onPoint={(place) => pointAt(place && { ...place, from: 'picture' })}
        view={view}
        oneFingerTurns={layout === 'desk' || fingerTurns}
        onTurned={turnedByHand}
        labels={pictureLabels}
        onTrouble={onTrouble}
        onFirstFrame={markFirstPicture}
      />
      {other ? <DoubtNote other={other} /> : null}
    </>
  )
}
