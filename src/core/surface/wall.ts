import type { BoreFinding, StationFinding } from '../findings'
import { typicalContactHalfWidthMm } from '../gauge/presets'
import type { Bore, Port, Survey } from '../measured'
import { contactAngles } from '../ports/contact-angles'
import { portAt } from '../ports/port-at'
import { nearestStation } from './nearest-station'
import { type MonotoneCubic, pchip, periodicPchip, valueAt } from './pchip'
import { axisRad, type WallNodes, wallNodes, wallReadings } from './wall-nodes'
import { angleAmongAxes, type Footprint, isHatched, type WallSpan } from './wall-span'

/** A place this near to a station is the station, mm along the depth and rad around. */
const atStationMm = 0.01
const atStation = (0.01 * Math.PI) / 180

/** The wall of a bore between its readings: drawn for the eye, never judged. */
export interface Wall {
  readonly lengthMm: number
  /** Diameter at 20 °C, mm, at a depth in mm and an angle in rad clockwise seen from the deck. */
  at(depthMm: number, angleRad: number): number
  state(depthMm: number, angleRad: number): WallState
  readonly span: WallSpan
  /** Diameter along the depth, mm over mm, one curve for each axis of the nodes. */
  readonly alongDepth: readonly MonotoneCubic[]
  /** The counted stations, at least one. */
  readonly stations: readonly StationFinding[]
  /** Where a reading touches the wall, degrees from its axis. */
  readonly contacts: readonly number[]
  /** Mean of the counted stations, mm: at this diameter the wall is unrolled. */
  readonly meanDiameterMm: number
}

/** What is known of one place on the wall. */
export interface WallState {
  /** Diameter drawn there, mm. */
  readonly diameterMm: number
  /** Nobody measured there. */
  readonly hatched: boolean
  /** Name of the port that the place lies in, edges included. */
  readonly port?: string
  /** The counted station nearest on the unrolled wall, either contact. */
  readonly nearest: StationFinding
  /** How far that is, mm: along the depth on the same axis, else straight on the unrolled wall. */
  readonly nearestDistanceMm: number
  /** The place is a station, within 0.01 mm and 0.01°. */
  readonly isReading: boolean
}

/**
 * The wall through the counted stations of a finding's survey: a monotone cubic along the depth on each
 * axis, then a periodic one around at each depth. It returns every reading exactly, stays within the four
 * nodes of its cell, and is held constant past the outermost levels. Two contacts see one diameter, so the
 * wall at θ + 180° is the wall at θ. A three-contact micrometer reads the mean of a level: it is drawn as a
 * round ring (the mean of a level's readings), measured only under its contacts, whose half-width in mm may
 * be given. Undefined where no station counts. Throws where the bore has no survey of that id, or a place
 * asked for is not finite.
 *
 * Along before around, because a level with one axis only, taken around first, would be drawn as a circle
 * where its neighbours are oval. Own derivation; accuracy: rounding only.
 */
export function wallOf(
  bore: Bore,
  finding: BoreFinding,
  contactHalfWidthMm = typicalContactHalfWidthMm,
): Wall | undefined {
  const survey = bore.surveys.find((s) => s.id === finding.surveyId)
  if (!survey) throw new Error(`wallOf: no survey ${finding.surveyId} in bore ${bore.id}`)
  const stations = finding.stations.filter((s) => s.counted)
  if (stations.length === 0) return undefined
  const contacts = contactAngles(finding.gaugeKind)
  const meanDiameterMm = stations.reduce((sum, s) => sum + s.diameterMm, 0) / stations.length
  const round = finding.gaugeKind === 'three-contact-micrometer'
  const nodes = round ? roundNodes(survey, stations) : symmetricNodes(survey, stations)
  const halfWidth = contactHalfWidthMm / (meanDiameterMm / 2)
  const span: WallSpan = {
    nodes,
    belts: bore.belts,
    ...(round ? { footprints: footprintsOf(stations, contacts, halfWidth) } : {}),
  }
  const alongDepth = curvesAlong(nodes)
  const at = (depthMm: number, angleRad: number) => {
    requirePlace(depthMm, angleRad)
    const values = alongDepth.map((curve) => valueAt(curve, depthMm))
    return valueAt(periodicPchip(nodes.axes, values, nodes.period), angleAmongAxes(nodes, angleRad))
  }
  const wall: Wall = {
    lengthMm: finding.drawnLengthMm,
    at,
    state: (depthMm, angleRad) => stateOf(wall, bore.ports, depthMm, angleRad),
    span,
    alongDepth,
    stations,
    contacts,
    meanDiameterMm,
  }
  return wall
}

function stateOf(wall: Wall, ports: readonly Port[], depthMm: number, angleRad: number): WallState {
  const diameterMm = wall.at(depthMm, angleRad)
  const nearest = nearestStation(wall.stations, wall.contacts, wall.meanDiameterMm, depthMm, angleRad)
  if (!nearest) throw new Error('wallOf: expected a station, found none')
  const port = portAt(ports, depthMm, (angleRad * 180) / Math.PI)
  return {
    diameterMm,
    hatched: isHatched(wall.span, depthMm, angleRad),
    ...(port ? { port: port.name } : {}),
    nearest: nearest.station,
    nearestDistanceMm: nearest.distanceMm,
    isReading: nearest.alongMm <= atStationMm && nearest.around <= atStation,
  }
}

function symmetricNodes(survey: Survey, stations: readonly StationFinding[]): WallNodes {
  return wallNodes(survey.levelsMm, survey.axesDegrees.map(axisRad), wallReadings(stations), Math.PI)
}

/** One ring for each level: the mean of its readings, whatever the axis they are written under. */
function roundNodes(survey: Survey, stations: readonly StationFinding[]): WallNodes {
  const depths = [...new Set(stations.map((s) => s.depthMm))]
  const rings = depths.map((depthMm) => {
    const level = stations.filter((s) => s.depthMm === depthMm)
    const mean = level.reduce((sum, s) => sum + s.diameterMm, 0) / level.length
    return { depthMm, axis: 0, diameterMm: mean }
  })
  return wallNodes(survey.levelsMm, [0], rings, 2 * Math.PI)
}

function footprintsOf(
  stations: readonly StationFinding[],
  contacts: readonly number[],
  halfWidth: number,
): Footprint[] {
  return stations.flatMap(({ depthMm, axisDegrees }) =>
    contacts.map((contact) => ({ depthMm, angle: ((axisDegrees + contact) * Math.PI) / 180, halfWidth })),
  )
}

function curvesAlong({ levelsMm, axes, diametersMm }: WallNodes): MonotoneCubic[] {
  return Array.from(axes, (_, axis) =>
    pchip(
      levelsMm,
      diametersMm.filter((_, node) => node % axes.length === axis),
    ),
  )
}

function requirePlace(depthMm: number, angleRad: number): void {
  if (!Number.isFinite(depthMm) || !Number.isFinite(angleRad)) {
    throw new RangeError(`wall: expected a depth in mm and an angle in rad, got ${depthMm}, ${angleRad}`)
  }
}
