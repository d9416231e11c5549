import type { ReactNode } from 'react'
import { flushSync } from 'react-dom'
import { createRoot } from 'react-dom/client'
import { HoursChart } from '../charts/HoursChart'
import { ProfileChart } from '../charts/ProfileChart'
import { SectionChart } from '../charts/SectionChart'
import type { SvgNode } from '../charts/svg-file'
import { UnrolledMap } from '../charts/UnrolledMap'
import type { BoreFinding } from '../core/findings'
import type { Bore } from '../core/measured'
import type { HoursCourse, HoursCourses } from '../core/outlook/hours-course'
import type { WallGrid } from '../core/surface/wall-grid'
import type { Job } from '../job/schema'
import { surveyOf } from '../job/selectors'
import type { ChartToSave } from '../pages/bench/chart-to-save'
import { wallPaint } from '../scene/wall-palette'
import { drawnNode } from './drawn-node'

/** A view of a bore, ready to be drawn and told of. */
export interface DrawnView {
  readonly job: Job
  readonly bore: Bore
  readonly finding: BoreFinding
  readonly grid: WallGrid
  readonly exaggeration: number
  readonly chart: ChartToSave
  readonly hours: DrawnHours | undefined
}

/** Sizes over hours, and the station whose line is drawn. */
export interface DrawnHours {
  readonly courses: HoursCourses
  readonly course: HoursCourse
}

/** Of each view by itself, CSS pixels. */
export const sizes = {
  map: { width: 720, height: 320 },
  section: { width: 560, height: 460 },
  profile: { width: 640, height: 420 },
  hours: { width: 640, height: 400 },
}
/** Width of a letter in them. */
export const letter = 6.2

/** The view drawn where nobody sees it, in the colours of paper, whatever the page looks like. */
export function drawnApart(view: DrawnView): SvgNode | undefined {
  return lookedAtApart(<View {...view} />, drawnNode)
}

/** What is found in a drawing that stands where nobody sees it, for as long as it is looked at. */
export function lookedAtApart<Found>(
  drawing: ReactNode,
  look: (drawing: SVGSVGElement) => Found,
): Found | undefined {
  const place = document.createElement('div')
  place.className = 'drawn-apart'
  place.setAttribute('aria-hidden', 'true')
  document.body.append(place)
  const root = createRoot(place)
  flushSync(() => root.render(drawing))
  const svg = place.querySelector('svg')
  const found = svg ? look(svg) : undefined
  root.unmount()
  place.remove()
  return found
}

function View({ bore, finding, grid, exaggeration, chart, hours }: DrawnView) {
  const { pair } = finding
  const survey = surveyOf(bore, finding.surveyId)
  const size = sizes[chart.chart]
  const common = {
    grid,
    paint: wallPaint(grid, pair, 'light'),
    pointed: undefined,
    onPoint: () => undefined,
    ...size,
  }
  const levelsMm = survey?.levelsMm ?? []
  switch (chart.chart) {
    case 'map':
      return (
        <UnrolledMap
          {...common}
          lengthMm={finding.drawnLengthMm}
          levelsMm={levelsMm}
          ports={bore.ports}
          stations={finding.stations}
          surface={finding.surface}
          pair={pair}
        />
      )
    case 'section':
      return (
        <SectionChart
          {...common}
          finding={finding}
          ports={bore.ports}
          depthMm={chart.depthMm}
          exaggeration={exaggeration}
          letter={letter}
        />
      )
    case 'profile':
      return (
        <ProfileChart
          {...common}
          {...chart.axis}
          finding={finding}
          bore={bore}
          levelsMm={levelsMm}
          axesDegrees={survey?.axesDegrees ?? []}
          letter={letter}
        />
      )
    case 'hours':
      return hours ? (
        <HoursChart
          {...hours}
          bore={bore}
          pointed={undefined}
          onPoint={() => undefined}
          letter={letter}
          {...size}
        />
      ) : null
  }
}
