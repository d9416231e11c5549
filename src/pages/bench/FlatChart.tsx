import { useState } from 'react'
import type { MapPaint } from '../../charts/MapWall'
import type { MapPlace } from '../../charts/map-scale'
import type { WallGrid } from '../../core/surface/wall-grid'
import { exaggerationOfJob } from '../../job/selectors'
import { type Pointed, pointAt } from '../../session/session'
import { degrees, depth } from '../../words/numbers'
import { profileSentences } from '../../words/profile'
import { sectionSentences } from '../../words/section'
import { words } from '../../words/words'
import { ChartSide } from './ChartSide'
import type { ChartPlace } from './chart-place'
import type { FlatViews } from './flat-views'
import type { OnBench } from './use-job'
import { useSession } from './use-job'
import type { Size } from './use-size'

export interface FlatChartProps {
  readonly bench: OnBench
  readonly views: FlatViews
  readonly grid: WallGrid
  readonly paint: MapPaint
  readonly place: ChartPlace
  readonly box: Size
  readonly letter: number
}

/** The place pointed at last: what is shown stays where the pointer left it. */
export function useLastPlace(): MapPlace | undefined {
  const pointed = useSession((state) => state.pointed)
  const [last, setLast] = useState<Pointed>()
  if (pointed && pointed !== last) setLast(pointed)
  return pointed ?? last
}

/** The bore cut across, with what its readings say of the level. */
export function BoreSection(props: FlatChartProps) {
  const { bench, views, grid, paint, place, box, letter } = props
  const { job, bore, finding } = bench
  const pointed = useSession((state) => state.pointed)
  const exaggeration = useSession((state) => state.exaggeration) ?? exaggerationOfJob(job)
  if (exaggeration === undefined) return null
  const { levelsMm, depthMm, axis } = place
  const at = levelsMm.indexOf(depthMm)
  const toLevel = (level: number | undefined) =>
    level === undefined
      ? undefined
      : () => pointAt({ depthMm: level, angleDegrees: axis.angleDegrees, from: 'section' })
  const said = words.section
  return (
    <>
      <views.SectionChart
        grid={grid}
        paint={paint}
        finding={finding}
        ports={bore.ports}
        depthMm={depthMm}
        exaggeration={exaggeration}
        pointed={pointed}
        onPoint={(to) => pointAt(to && { ...to, from: 'section' })}
        letter={letter}
        {...box}
      />
      <ChartSide
        title={said.at(depth(depthMm))}
        before={{ label: said.above, go: toLevel(levelsMm[at - 1]) }}
        after={{ label: said.below, go: toLevel(levelsMm[at + 1]) }}
        sentences={sectionSentences(finding, depthMm)}
      />
    </>
  )
}

/** The bore along an axis, with what its readings say. */
export function BoreProfile(props: FlatChartProps) {
  const { bench, views, grid, paint, place, box, letter } = props
  const { bore, survey, finding } = bench
  const pointed = useSession((state) => state.pointed)
  const { axesDegrees, depthMm, axis } = place
  const at = axesDegrees.indexOf(axis.axisDegrees)
  const toAxis = (axisDegrees: number | undefined) =>
    axisDegrees === undefined
      ? undefined
      : () => pointAt({ depthMm: pointed?.depthMm ?? depthMm, angleDegrees: axisDegrees, from: 'profile' })
  const said = words.profile
  return (
    <>
      <views.ProfileChart
        grid={grid}
        paint={paint}
        finding={finding}
        bore={bore}
        levelsMm={survey.levelsMm}
        axesDegrees={axesDegrees}
        {...axis}
        pointed={pointed}
        onPoint={(to) => pointAt(to && { ...to, from: 'profile' })}
        letter={letter}
        {...box}
      />
      <ChartSide
        title={said.at(degrees(axis.axisDegrees))}
        before={{ label: said.before, go: toAxis(axesDegrees[at - 1]) }}
        after={{ label: said.after, go: toAxis(axesDegrees[at + 1]) }}
        sentences={profileSentences(finding, bore, axis.axisDegrees)}
      />
    </>
  )
}
