import { useMemo } from 'react'
import type { BoreFinding } from '../core/findings'
import { ovalCurve } from '../core/form/oval-curve'
import type { Port } from '../core/measured'
import { cutStretches } from '../core/surface/cut-stretches'
import { sectionCut } from '../core/surface/grid-cuts'
import { scaleBar } from '../core/surface/scale-bar'
import type { WallGrid } from '../core/surface/wall-grid'
import { roundStepUm } from '../words/length-unit'
import { depth, inRoundMicrons, plain } from '../words/numbers'
import { ovalAt, sectionText } from '../words/section'
import { words } from '../words/words'
import { angleLabel } from './angle-label'
import { ChartFrame } from './ChartFrame'
import { SectionScanMarks } from './CutScanMarks'
import { drawnLimits } from './drawn-limits'
import type { MapPaint } from './MapWall'
import { contactsOf } from './map-contacts'
import type { MapPlace } from './map-scale'
import { openingsAround } from './openings'
import type { ScanCut } from './ProfileChart'
import { SectionLimitLabels, SectionLimits } from './SectionLimits'
import { SectionReadings, SectionSurface } from './SectionMarks'
import { SectionOval } from './SectionOval'
import { SectionWall } from './SectionWall'
import { angleUnder, type SectionScale, sectionPlace, sectionScale } from './section-scale'
import { shownRange } from './shown-range'

export interface SectionChartProps {
  readonly grid: WallGrid
  readonly paint: MapPaint
  readonly finding: BoreFinding
  readonly ports: readonly Port[]
  /** The level drawn: a row of the grid. */
  readonly depthMm: number
  readonly exaggeration: number
  readonly pointed: MapPlace | undefined
  readonly onPoint: (place: MapPlace | undefined) => void
  readonly width: number
  readonly height: number
  /** About as wide as a letter is, pixels. */
  readonly letter: number
  /** The wall is that of a scan. */
  readonly scan?: ScanCut
  /** Where there is little room, what is drawn how large is said beside the chart, and its bar has a length alone. */
  readonly isSmall?: boolean
}

/** A pointer this near to a reading points at the reading, degrees around. */
const snapDegrees = 5

/** The bore cut across at a level, exaggerated, as seen from the deck: front at the top. */
export function SectionChart(props: SectionChartProps) {
  const { grid, paint, finding, ports, depthMm, exaggeration, pointed, width, height, letter } = props
  const { pair, stations } = finding
  const range = useMemo(() => shownRange(grid, pair, stations), [grid, pair, stations])
  const scale = sectionScale(placeOf(width, height, letter), grid.middleMm, exaggeration, range.highUm)
  const cut = useMemo(() => {
    const points = sectionCut(grid, depthMm)
    return { points, stretches: cutStretches(points, openingsAround(ports, depthMm)) }
  }, [grid, ports, depthMm])
  const contacts = useMemo(() => contactsOf(stations), [stations, finding.gaugeKind])
  const readings = contacts.filter((one) => one.depthMm === depthMm)
  const counted = readings.map(({ station }) => station).filter((s) => s.counted)
  const oval = ovalAt(finding, depthMm)
  const curve = oval && ovalCurve([...new Set(counted)])
  const limits = drawnLimits(pair, grid.middleMm)
  const wallPx = (angleRad: number) => scale.radius(deviationAt(cut.points, angleRad))
  const placeAt = (x: number, y: number): MapPlace | undefined => {
    const angleDegrees = angleUnder(scale, x, y)
    if (angleDegrees === undefined) return undefined
    const near = readings.find((one) => apart(one.angleDegrees, angleDegrees) <= snapDegrees)
    return { depthMm, angleDegrees: near?.angleDegrees ?? angleDegrees }
  }
  return (
    <ChartFrame
      text={props.scan?.text ?? sectionText(finding, depthMm)}
      listLabel={words.section.list(depth(depthMm))}
      readings={readings}
      reachable={contacts}
      pointed={pointed}
      onPoint={props.onPoint}
      placeAt={placeAt}
      width={width}
      height={height}
    >
      <g transform={`translate(${scale.x},${scale.y})`}>
        <SectionLimits scale={scale} limits={limits} points={cut.points} range={range} />
        {oval && curve ? (
          <SectionOval scale={scale} middleMm={grid.middleMm} oval={oval} curve={curve} />
        ) : null}
        <SectionWall scale={scale} stretches={cut.stretches} limits={limits} paint={paint} />
        <SectionSurface scale={scale} surface={finding.surface} depthMm={depthMm} wallPx={wallPx} />
        {props.scan?.marks ? (
          <SectionScanMarks
            scale={scale}
            marks={props.scan.marks}
            pointed={pointed}
            depthMm={depthMm}
            lengthMm={grid.lengthMm}
            wallPx={wallPx}
          />
        ) : null}
        <SectionReadings scale={scale} middleMm={grid.middleMm} readings={readings} />
        {pointed ? (
          <SectionPointer scale={scale} pointed={pointed} depthMm={depthMm} wallPx={wallPx} />
        ) : null}
        <SectionLimitLabels scale={scale} limits={limits} right={width} letter={letter} />
        <Sides scale={scale} />
      </g>
      <ScaleOf
        scale={scale}
        exaggeration={exaggeration}
        height={height}
        onRadius={props.scan?.isSized === false}
        isSmall={props.isSmall === true}
      />
    </ChartFrame>
  )
}

/** Round, with room for the names of the sides, and right of it for the limits. */
function placeOf(width: number, height: number, letter: number) {
  const side = 8 * letter + 8
  const limit = 7 * letter
  const outer = Math.floor(Math.min((height - 42) / 2, width / 2 - side, (width - side - 8 - limit) / 1.87))
  return { x: side + outer, y: height / 2, outer }
}

function Sides({ scale }: { readonly scale: SectionScale }) {
  const away = scale.outer + 8
  return (
    <g className="chart-sides">
      <text y={-away} textAnchor="middle">
        {angleLabel(0)}
      </text>
      <text x={away} y="4">
        {angleLabel(90)}
      </text>
      <text y={away + 8} textAnchor="middle">
        {angleLabel(180)}
      </text>
      <text x={-away} y="4" textAnchor="end">
        {angleLabel(270)}
      </text>
    </g>
  )
}

function ScaleOf(props: {
  readonly scale: SectionScale
  readonly exaggeration: number
  readonly height: number
  /** Deviations are of the radius, drawn twice as far as those of a diameter. */
  readonly onRadius: boolean
  readonly isSmall: boolean
}) {
  const { scale, exaggeration, height, onRadius, isSmall } = props
  const factor = onRadius ? exaggeration / 2 : exaggeration
  const label = onRadius ? words.scans.onRadius : words.picture.scaleBar
  const bar = scaleBar(exaggeration, (scale.pixelsPerUm * 1000) / exaggeration, 60, roundStepUm())
  const length = inRoundMicrons(bar.micrometres / 1000)
  return (
    <g className="chart-scale">
      {isSmall ? null : (
        <text y="11">{words.picture.exaggerationIs(plain(factor, factor < 10 ? 1 : 0))}</text>
      )}
      <path d={`M0.5,${height - 24}v5h${bar.lengthPx}v-5`} />
      <text y={height - 5}>{isSmall ? length : label(length)}</text>
    </g>
  )
}

/** The place pointed at; where it lies at another depth, only the way to it. */
function SectionPointer(props: {
  readonly scale: SectionScale
  readonly pointed: MapPlace
  readonly depthMm: number
  readonly wallPx: (angleRad: number) => number
}) {
  const { scale, pointed, depthMm, wallPx } = props
  const angle = (pointed.angleDegrees * Math.PI) / 180
  const end = sectionPlace({ ...scale, x: 0, y: 0 }, angle, scale.outer)
  const at = sectionPlace({ ...scale, x: 0, y: 0 }, angle, wallPx(angle))
  return (
    <g className="map-pointer">
      <line x1="0" y1="0" x2={end.x} y2={end.y} />
      {pointed.depthMm === depthMm ? <circle cx={at.x} cy={at.y} r="6" /> : null}
    </g>
  )
}

function apart(a: number, b: number): number {
  const between = Math.abs(a - b) % 360
  return Math.min(between, 360 - between)
}

function deviationAt(points: ReturnType<typeof sectionCut>, angleRad: number): number {
  const turn = 2 * Math.PI
  const angle = ((angleRad % turn) + turn) % turn
  const after = Math.max(
    1,
    points.findIndex(({ at }) => at >= angle),
  )
  const [from, to] = [points[after - 1], points[after]]
  if (!from || !to) return points[0]?.deviationUm ?? 0
  return from.deviationUm + ((angle - from.at) / (to.at - from.at)) * (to.deviationUm - from.deviationUm)
}
