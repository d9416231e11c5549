import './flat-wall.css'
import { type ReactNode, useId, useMemo, useState } from 'react'
import type { MapPaint } from '../../charts/MapWall'
import type { LimitPair, Place } from '../../core/findings'
import type { WallGrid } from '../../core/surface/wall-grid'
import { hoursCoursesOf } from '../../job/hours-courses-of'
import { words } from '../../words/words'
import { BoreHours } from './BoreHours'
import { chartPlace } from './chart-place'
import type { ChartToSave, SaveChart } from './chart-to-save'
import { BoreProfile, BoreSection, type FlatChartProps, useLastPlace } from './FlatChart'
import { FlatTabs } from './FlatTabs'
import { type FlatBoxes, flatBoxes } from './flat-boxes'
import { useFlatViews } from './flat-views'
import { PaperCharts, paperBoxes, paperLetter } from './PaperCharts'
import { useOnPaper } from './phone/use-layout'
import type { OnBench } from './use-job'
import { useSession } from './use-job'
import type { Size } from './use-size'

/** The wall flat: map, section, profile or its course over hours, with tabs to choose by. On paper all but the course, and that where it was chosen. */
export function FlatWall(props: {
  readonly bench: OnBench
  readonly grid: WallGrid | undefined
  readonly paintOf: (grid: WallGrid, pair: LimitPair | undefined) => MapPaint
  readonly save: SaveChart | undefined
  readonly box: Size
  readonly map: (box: Size) => ReactNode
}) {
  const { bench, grid, paintOf, save, box, map } = props
  const { survey, finding } = bench
  const id = useId()
  const onPaper = useOnPaper()
  const marking = useSession((state) => state.marking)
  const chosen = useSession((state) => state.chart)
  const shown = onPaper || marking ? 'map' : chosen
  const views = useFlatViews(onPaper || chosen !== 'map')
  const [station, setStation] = useState<Place>()
  const last = useLastPlace()
  const place = useMemo(() => chartPlace({ survey, finding }, grid, last), [survey, finding, grid, last])
  const paint = useMemo(() => (grid ? paintOf(grid, finding.pair) : undefined), [grid, finding.pair, paintOf])
  const boxes = flatBoxes(box, shown)
  const chart =
    views && grid && paint && place ? { bench, views, grid, paint, place, letter: boxes.letter } : undefined
  const canSave = shown !== 'hours' || typeof hoursCoursesOf(bench.job, bench.bore.id) !== 'string'
  const ofHours = (of: FlatBoxes) =>
    views ? (
      <ChartBox boxes={of}>
        <BoreHours
          bench={bench}
          views={views}
          box={of.chart}
          letter={of.letter}
          station={station}
          onStation={setStation}
        />
      </ChartBox>
    ) : null
  return (
    <div className={boxes.isRow ? 'flat-wall is-row' : 'flat-wall'}>
      <div className="flat-head">
        <FlatTabs shown={shown} id={id} isRow={boxes.isRow} />
        {save && grid && place && canSave ? (
          <SaveButton
            save={save}
            chart={{
              chart: shown,
              depthMm: place.depthMm,
              axis: place.axis,
              ...(station ? { station } : {}),
            }}
          />
        ) : null}
      </div>
      <div id={`${id}-panel`} role="tabpanel" aria-labelledby={`${id}-${shown}`} className="flat-panel">
        {onPaper ? (
          <PaperCharts
            map={map(paperBoxes.map)}
            section={chart ? <BoreSection {...chart} letter={paperLetter} box={paperBoxes.section} /> : null}
            profile={chart ? <BoreProfile {...chart} letter={paperLetter} box={paperBoxes.profile} /> : null}
          />
        ) : shown === 'map' ? (
          map(boxes.chart)
        ) : shown === 'hours' && grid ? (
          ofHours(boxes)
        ) : (
          <Chart
            shown={shown === 'section' ? 'section' : 'profile'}
            chart={chart}
            boxes={boxes}
            isEmpty={!grid}
          />
        )}
        {onPaper && chosen === 'hours' && grid ? ofHours(paperHours) : null}
      </div>
    </div>
  )
}

/** Beneath the others on paper, where it was chosen on the page. */
const paperHours: FlatBoxes = {
  isRow: false,
  chart: paperBoxes.hours,
  isSideBelow: true,
  letter: paperLetter,
}

function Chart(props: {
  readonly shown: 'section' | 'profile'
  readonly chart: Omit<FlatChartProps, 'box'> | undefined
  readonly boxes: FlatBoxes
  readonly isEmpty: boolean
}) {
  const { shown, chart, boxes, isEmpty } = props
  if (isEmpty) return <p className="aside">{words.charts.noReadings}</p>
  if (!chart) return null
  const View = shown === 'section' ? BoreSection : BoreProfile
  return (
    <ChartBox boxes={boxes}>
      <View {...chart} box={boxes.chart} />
    </ChartBox>
  )
}

function ChartBox({ boxes, children }: { readonly boxes: FlatBoxes; readonly children: ReactNode }) {
  return <div className={boxes.isSideBelow ? 'flat-chart is-side-below' : 'flat-chart'}>{children}</div>
}

/** Saves the view that is shown, and says under which name. */
function SaveButton({ save, chart }: { readonly save: SaveChart; readonly chart: ChartToSave }) {
  const [said, setSaid] = useState('')
  const onClick = async () => {
    const name = await save(chart)
    setSaid(name === undefined ? words.charts.notSaved : words.charts.saved(name))
  }
  return (
    <>
      <button type="button" className="quiet flat-save" title={words.charts.saveTitle} onClick={onClick}>
        {words.charts.save}
      </button>
      <span role="status" className="only-heard">
        {said}
      </span>
    </>
  )
}
