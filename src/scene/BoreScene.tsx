import { extend, useThree } from '@react-three/fiber'
import { useEffect, useMemo, useState } from 'react'
import { type BufferGeometry, Mesh, Points } from 'three'
import type { LimitPair, StationFinding } from '../core/findings'
import type { Port } from '../core/measured'
import type { WallGrid } from '../core/surface/wall-grid'
import { BorePaint } from './bore-paint'
import { limitStrokes, pointerStrokes } from './bore-strokes'
import { type BandLimit, doubtBandGeometry } from './doubt-band-geometry'
import { deviationAt } from './grid-reading'
import type { PointedPlace } from './pointed-place'
import { contactsOf } from './proven-marks'
import { setPorts } from './shared-uniforms'
import { shellGeometry } from './shell-geometry'
import { type Disc, stationGeometry } from './station-geometry'
import { type BorePlace, strokeGeometry } from './stroke-geometry'
import { type BoreCameraProps, useBoreCamera } from './use-bore-camera'
import { glassGeometry, provenGeometry, wallGeometry } from './wall-geometry'
import { rampSpan, type Theme, wallPalette } from './wall-palette'

extend({ Mesh, Points })

export interface BoreSceneProps extends BoreCameraProps {
  readonly ports: readonly Port[]
  readonly stations: readonly StationFinding[]
  readonly isoStepUm: number
  readonly theme: Theme
  readonly pointed: PointedPlace | undefined
}

const radians = Math.PI / 180

/** Everything drawn of one bore. */
export function BoreScene(props: BoreSceneProps) {
  const { grid, stations, pair, pointed } = props
  const paint = usePaint(props)
  useBoreCamera(props, paint)
  const columns = grid.angles.length
  const rows = grid.depthsMm.length
  const contacts = useMemo(() => (pointed ? contactsPointedAt(grid, pointed) : []), [grid, pointed])
  const wall = useFreed(useMemo(() => wallGeometry(columns, rows), [columns, rows]))
  const glass = useFreed(useMemo(() => glassGeometry(columns, rows), [columns, rows]))
  const proven = useFreed(useMemo(() => provenGeometry(grid), [grid]))
  const shell = useFreed(useMemo(() => shellGeometry(), []))
  const bands = useFreed(useMemo(() => doubtBandGeometry(columns, judgedLimits(pair)), [columns, pair]))
  const rings = useFreed(useMemo(() => ringsOf(grid, pair, stations), [grid, pair, stations]))
  const discs = useFreed(useMemo(() => stationGeometry(discsOf(grid, stations)), [grid, stations]))
  const line = useFreed(useMemo(() => strokeGeometry(pointerStrokes(contacts)), [contacts]))
  const marks = useFreed(useMemo(() => stationGeometry(ringsRound(contacts)), [contacts]))
  const mesh = { frustumCulled: false, dispose: null }
  return (
    <>
      <mesh {...mesh} geometry={wall} material={paint.wall.far} renderOrder={0} />
      <mesh
        {...mesh}
        geometry={shell}
        material={paint.shell.material}
        renderOrder={1}
        visible={pair?.maxMm !== undefined}
      />
      <mesh {...mesh} geometry={bands} material={paint.doubtBand.material} renderOrder={2} />
      <mesh {...mesh} geometry={glass} material={paint.wall.near} renderOrder={3} />
      <mesh {...mesh} geometry={proven} material={paint.wall.patches} renderOrder={4} />
      <mesh {...mesh} geometry={rings} material={paint.stroke.material} renderOrder={5} />
      <points {...mesh} geometry={discs} material={paint.stations.material} renderOrder={6} />
      <mesh {...mesh} geometry={line} material={paint.stroke.material} renderOrder={7} />
      <points {...mesh} geometry={marks} material={paint.pointer.material} renderOrder={8} />
    </>
  )
}

/** Materials, textures and uniforms, kept up with the props. A new exaggeration sets one uniform. */
function usePaint({ grid, ports, pair, exaggeration, isoStepUm, theme, pointed }: BoreSceneProps): BorePaint {
  const invalidate = useThree((state) => state.invalidate)
  const [paint] = useState(() => new BorePaint())
  useFreedWhenLost(paint)
  useEffect(() => () => paint.dispose(), [paint])
  useEffect(() => paint.textures.write(grid), [paint, grid])
  useEffect(() => setPorts(paint.shared, ports), [paint, ports])
  useEffect(() => {
    paint.setLook({
      middleMm: grid.middleMm,
      pair,
      span: rampSpan(grid.middleMm, pair, grid.deviationsUm),
      isoStepUm,
      palette: wallPalette(theme),
    })
  }, [paint, grid, pair, isoStepUm, theme])
  useEffect(() => {
    paint.shared.exaggeration.value = exaggeration
  }, [paint, exaggeration])
  useEffect(() => paint.wall.setPointed(pointed?.depthMm), [paint, pointed])
  useEffect(() => invalidate())
  return paint
}

/** The geometry, freed when another takes its place. */
function useFreed(geometry: BufferGeometry): BufferGeometry {
  useFreedWhenLost(geometry)
  useEffect(() => () => geometry.dispose(), [geometry])
  return geometry
}

/**
 * Lets go of what a lost context held, while it is lost: freed later it would belong to another context. It is
 * made again at the first frame after the context is back.
 */
function useFreedWhenLost(part: { dispose(): void }): void {
  const canvas = useThree((state) => state.gl.domElement)
  useEffect(() => {
    const free = () => part.dispose()
    canvas.addEventListener('webglcontextlost', free)
    return () => canvas.removeEventListener('webglcontextlost', free)
  }, [canvas, part])
}

function judgedLimits(pair: LimitPair | undefined): readonly BandLimit[] {
  const min = pair?.minMm !== undefined && pair.kind !== 'wear' ? [0 as const] : []
  const max = pair?.maxMm !== undefined ? [1 as const] : []
  return [...min, ...max]
}

function ringsOf(grid: WallGrid, pair: LimitPair | undefined, stations: readonly StationFinding[]) {
  const levelsMm = [...new Set(stations.map((station) => station.depthMm))]
  return strokeGeometry(limitStrokes({ middleMm: grid.middleMm, lengthMm: grid.lengthMm, pair, levelsMm }))
}

function ringsRound(contacts: readonly BorePlace[]): readonly Disc[] {
  return contacts.map((contact) => ({ ...contact, shape: 'ring' }))
}

function discsOf(grid: WallGrid, stations: readonly StationFinding[]): readonly Disc[] {
  return stations.flatMap((station) =>
    contactsOf(station).map((contact) => ({
      ...contact,
      deviationUm: (station.diameterMm - grid.middleMm) * 1000,
      shape: station.counted ? 'disc' : 'hollow',
    })),
  )
}

function contactsPointedAt(grid: WallGrid, { depthMm, angleDegrees }: PointedPlace) {
  const angle = angleDegrees * radians
  return [angle, angle + Math.PI].map((contact) => ({
    angle: contact,
    depthMm,
    deviationUm: deviationAt(grid, depthMm, contact),
  }))
}
