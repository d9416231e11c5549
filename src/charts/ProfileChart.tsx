import { useId, useMemo } from 'react'
import type { BoreFinding } from '../core/findings'
import type { Bore } from '../core/measured'
import { contactAngles } from '../core/ports/contact-angles'
import type { ScanMark } from '../core/scan/scan-marks'
import { cutStretches } from '../core/surface/cut-stretches'
import { profileCut } from '../core/surface/grid-cuts'
import type { WallGrid } from '../core/surface/wall-grid'
import { degrees } from '../words/numbers'
import { profileText } from '../words/profile'
import { words } from '../words/words'
import { ChartFrame } from './ChartFrame'
import { ProfileScanMarks } from './CutScanMarks'
import { drawnLimits } from './drawn-limits'
import type { MapPaint } from './MapWall'
import { contactsOf } from './map-contacts'
import { downOf, type MapPlace } from './map-scale'
import { openingsAlong } from './openings'
import { ProfileAxes, ProfileLanes } from './ProfileAxes'
import { ProfileLimits } from './ProfileLimits'
import { type FaintAxis, ProfileFaint, ProfileReadings, ProfileSurface } from './ProfileMarks'
import { ProfileWall } from './ProfileWall'
import { profilePath } from './profile-paths'
import { type ProfileScale, profileScale } from './profile-scale'
import { nextOnProfile } from './profile-steps'
import { shownRange } from './shown-range'

export interface ProfileChartProps {
  readonly grid: WallGrid
  readonly paint: MapPaint
  readonly finding: BoreFinding
  readonly bore: Pick<Bore, 'ports' | 'belts' | 'ringTravelMm'>
  readonly levelsMm: readonly number[]
  readonly axesDegrees: readonly number[]
  /** The axis that is drawn strong, and the end of it that places are given at. */
  readonly axisDegrees: number
  readonly angleDegrees: number
  readonly pointed: MapPlace | undefined
  readonly onPoint: (place: MapPlace | undefined) => void
  readonly width: number
  readonly height: number
  /** About as wide as a letter is, pixels. */
  readonly letter: number
  /** The wall is that of a scan. */
  readonly scan?: ScanCut
}

/** How a scan is cut open: what it says in words, and whether it has a size or deviations of the radius alone. */
export interface ScanCut {
  readonly text: string
  readonly isSized: boolean
  /** What stands out in it. */
  readonly marks?: readonly ScanMark[] | undefined
}

/** A probe touches one place of the wall. */
const oneContact: readonly number[] = [0]

/** A pointer this near to a reading points at the reading, and pressed this near to a line at its axis; pixels. */
const snap = 7

/** Diameter over depth along an axis: depth down, as on the map, so that an arrow key means the same in both. */
export function ProfileChart(props: ProfileChartProps) {
  const { grid, paint, finding, bore, axesDegrees, axisDegrees, angleDegrees, width, height, letter } = props
  const { pair, stations, gaugeKind } = finding
  const id = useId()
  const range = useMemo(() => shownRange(grid, pair, stations), [grid, pair, stations])
  const box = { left: 44, top: 38, width: width - 68, height: height - 56, lengthMm: grid.lengthMm }
  const scale = profileScale(box, range)
  const offsets = props.scan ? oneContact : contactAngles(gaugeKind)
  const contacts = useMemo(() => contactsOf(stations), [stations])
  const readings = contacts.filter((one) => one.angleDegrees === angleDegrees)
  const counted = readings.map(({ station }) => station).filter((s) => s.counted)
  const opened = openingsAlong(bore.ports, axisDegrees, offsets)
  const points = useMemo(() => profileCut(grid, (axisDegrees * Math.PI) / 180), [grid, axisDegrees])
  const limits = drawnLimits(pair, grid.middleMm)
  const faint = (axis: number): FaintAxis => {
    const cut = profileCut(grid, (axis * Math.PI) / 180)
    const measured = cutStretches(cut, openingsAlong(bore.ports, axis, offsets)).filter((one) => !one.hatched)
    const last = measured.at(-1)?.points.at(-1)
    return {
      axisDegrees: axis,
      path: measured.map((one) => profilePath(scale, one.points)).join(''),
      end: last && { x: scale.across(last.deviationUm), y: downOf(scale, last.at) },
    }
  }
  const others = axesDegrees.filter((axis) => axis !== axisDegrees)
  const placeAt = (x: number, y: number, isPressed: boolean): MapPlace | undefined => {
    const depthMm = ((y - scale.top) / scale.height) * scale.lengthMm
    if (depthMm < 0 || depthMm > scale.lengthMm || x < scale.left) return undefined
    const atDepth = (axis: number) => {
      const cut = axis === axisDegrees ? points : profileCut(grid, (axis * Math.PI) / 180)
      return Math.abs(scale.across(deviationAt(cut, depthMm)) - x)
    }
    const nearest = others.reduce((best, axis) => (atDepth(axis) < atDepth(best) ? axis : best), axisDegrees)
    const isOther = isPressed && nearest !== axisDegrees && atDepth(nearest) <= snap
    const angle = isOther ? nearest : angleDegrees
    const near = contacts.find(
      (one) => one.angleDegrees === angle && Math.abs(downOf(scale, one.depthMm) - y) <= snap,
    )
    return { depthMm: near?.depthMm ?? depthMm, angleDegrees: angle }
  }
  return (
    <ChartFrame
      text={props.scan?.text ?? profileText(finding, bore, axisDegrees)}
      listLabel={words.profile.list(degrees(axisDegrees))}
      readings={readings}
      reachable={contacts}
      pointed={props.pointed}
      onPoint={props.onPoint}
      placeAt={placeAt}
      next={nextOnProfile(axisDegrees, angleDegrees)}
      width={width}
      height={height}
    >
      <ProfileAxes
        scale={scale}
        levelsMm={props.levelsMm}
        middleMm={grid.middleMm}
        letter={letter}
        inMicrons={props.scan?.isSized === false}
      />
      <ProfileLimits
        scale={scale}
        limits={limits}
        points={points}
        range={range}
        right={width}
        letter={letter}
      />
      <ProfileLanes
        scale={scale}
        opened={opened}
        belts={bore.belts}
        ringTravelMm={bore.ringTravelMm}
        id={id}
      />
      <ProfileFaint scale={scale} axes={others.map(faint)} chosen={faint(axisDegrees)} letter={letter} />
      <ProfileWall
        scale={scale}
        stretches={cutStretches(points, opened)}
        limits={limits}
        paint={paint}
        stations={counted}
      />
      <ProfileSurface
        scale={scale}
        surface={finding.surface}
        angles={offsets.map((offset) => axisDegrees + offset)}
      />
      {props.scan?.marks ? (
        <ProfileScanMarks
          scale={scale}
          marks={props.scan.marks}
          pointed={props.pointed}
          angleDegrees={angleDegrees}
        />
      ) : null}
      <ProfileReadings scale={scale} middleMm={grid.middleMm} readings={readings} />
      {props.pointed ? (
        <ProfilePointer
          scale={scale}
          depthMm={props.pointed.depthMm}
          x={
            isOnAxis(props.pointed.angleDegrees, axisDegrees, offsets)
              ? scale.across(deviationAt(points, props.pointed.depthMm))
              : undefined
          }
        />
      ) : null}
    </ChartFrame>
  )
}

/** How deep the place pointed at lies, and on the wall where it is on this axis. */
function ProfilePointer(props: {
  readonly scale: ProfileScale
  readonly depthMm: number
  readonly x: number | undefined
}) {
  const { scale, depthMm, x } = props
  const y = downOf(scale, depthMm)
  return (
    <g className="map-pointer">
      <line x1={scale.left} x2={scale.left + scale.width} y1={y} y2={y} />
      {x === undefined ? null : <circle cx={x} cy={y} r="6" />}
    </g>
  )
}

function isOnAxis(angleDegrees: number, axisDegrees: number, offsets: readonly number[]): boolean {
  return offsets.some((offset) => Math.abs(((angleDegrees - axisDegrees - offset) % 360) % 360) < 1e-9)
}

function deviationAt(points: ReturnType<typeof profileCut>, depthMm: number): number {
  const found = points.findIndex(({ at }) => at >= depthMm)
  const after = found < 0 ? points.length - 1 : Math.max(1, found)
  const [from, to] = [points[after - 1], points[after]]
  if (!from || !to) return points[0]?.deviationUm ?? 0
  const share = (depthMm - from.at) / (to.at - from.at)
  return from.deviationUm + share * (to.deviationUm - from.deviationUm)
}
