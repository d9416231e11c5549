import { useFrame } from '@react-three/fiber'
import { useEffect, useMemo, useRef } from 'react'
import type { BufferGeometry, Group, Mesh } from 'three'
import type { DrawnStation } from '../core/findings'
import type { SurfaceFinding } from '../core/measured'
import type { PlacedPiston } from '../core/piston/piston-in-bore'
import type { ScanMark } from '../core/scan/scan-marks'
import type { WallGrid } from '../core/surface/wall-grid'
import { discsOf, judgedLimits, ringsOf, scarsOf } from './bore-geometry'
import type { BorePaint } from './bore-paint'
import { pointerStrokes } from './bore-strokes'
import { doubtBandGeometry } from './doubt-band-geometry'
import { deviationAt } from './grid-reading'
import { pistonGeometry, pistonStrokes } from './piston-geometry'
import type { PointedPlace } from './pointed-place'
import { shellGeometry } from './shell-geometry'
import { type Disc, stationGeometry } from './station-geometry'
import { type BorePlace, strokeGeometry } from './stroke-geometry'
import { type PaintedBore, useBorePaint, useFreedWhenLost } from './use-bore-paint'
import type { WallGeometries } from './wall-geometries'
import { provenGeometry } from './wall-geometry'

export interface DrawnBoreProps extends PaintedBore {
  readonly stations: readonly DrawnStation[]
  readonly surface: readonly SurfaceFinding[]
  /** What stands out in the scan that the wall is drawn from. */
  readonly scanMarks?: readonly ScanMark[] | undefined
  /** A piston where it stands in the bore. */
  readonly piston?: PlacedPiston | undefined
  /** The cylinder of the outer limit. */
  readonly shell: boolean
  /** Rings of the limits at every level, beside those at the mouths. */
  readonly levelRings: boolean
  readonly discs: boolean
  /** Where the next reading is taken, by one of its contacts. */
  readonly next?: PointedPlace | undefined
  /**
   * The picture has so many nodes that the wall is drawn from every second one or fewer while the eye moves, and when it is
   * new; from all of them as soon as it rests.
   */
  readonly isCoarseFirst: boolean
  /** The unit grids that the bores of the picture share. */
  readonly geometries: WallGeometries
}

const radians = Math.PI / 180
/** What is drawn is always in sight, and its parts are freed by those who made them. */
const mesh = { frustumCulled: false, dispose: null }

/** Everything drawn of one bore, in its own space. */
export function DrawnBore(props: DrawnBoreProps) {
  const {
    grid,
    stations,
    surface,
    scanMarks,
    piston,
    pair,
    pointed,
    next,
    shell: hasShell,
    levelRings,
    discs: hasDiscs,
    onPaper,
    isCoarseFirst,
    seen,
  } = props
  const { geometries } = props
  const paint = useBorePaint(props)
  const columns = grid.angles.length
  const contacts = useMemo(() => (pointed ? contactsPointedAt(grid, pointed) : []), [grid, pointed])
  const wall = useShared(geometries, 'wall', grid)
  const coarse = useShared(geometries, isCoarseFirst ? 'coarse' : 'wall', grid)
  const glass = useShared(geometries, 'glass', grid)
  const proven = useFreed(useMemo(() => provenGeometry(grid), [grid]))
  const shell = useFreed(useMemo(() => shellGeometry(), []))
  const bands = useFreed(useMemo(() => doubtBandGeometry(columns, judgedLimits(pair)), [columns, pair]))
  const rings = useFreed(
    useMemo(() => ringsOf(grid, pair, levelRings ? stations : []), [grid, pair, stations, levelRings]),
  )
  const discs = useFreed(useMemo(() => stationGeometry(discsOf(grid, stations)), [grid, stations]))
  const scars = useFreed(
    useMemo(() => scarsOf(grid, surface, scanMarks, pointed), [grid, surface, scanMarks, pointed]),
  )
  const line = useFreed(useMemo(() => strokeGeometry(pointerStrokes(contacts)), [contacts]))
  const squares = useFreed(useMemo(() => stationGeometry(squaresAt(grid, next)), [grid, next]))
  const marks = useFreed(useMemo(() => stationGeometry(ringsRound(contacts)), [contacts]))
  const measured = useRef<Group>(null)
  const whole = useRef<Mesh>(null)
  const rough = useRef<Mesh>(null)
  const drawn = useRef<WallGrid>(undefined)
  useFrame(({ invalidate }) => {
    const isNew = isCoarseFirst && drawn.current !== grid
    const isRough = isCoarseFirst && (isNew || seen.isMoving)
    drawn.current = grid
    drawn.current = grid
    if (whole.current) whole.current.visible = !isRough
    if (rough.current) rough.current.visible = isRough
    if (isNew) invalidate()
    const share = paint.shared.wallShare.value
    // Discs and doubt are those of a survey: none was made of what is drawn between two.
    if (measured.current)
      measured.current.visible = share <= 0 || share >= 1 || !paint.shared.fadesBetween.value
  })
  return (
    <>
      <mesh {...mesh} ref={whole} geometry={wall} material={paint.wall.far} renderOrder={0} />
      <mesh
        {...mesh}
        ref={rough}
        geometry={coarse}
        material={paint.wall.far}
        renderOrder={0}
        visible={false}
      />
      <mesh
        {...mesh}
        geometry={shell}
        material={paint.shell.material}
        renderOrder={1}
        visible={hasShell && pair?.maxMm !== undefined}
      />
      <group ref={measured}>
        <mesh {...mesh} geometry={bands} material={paint.doubtBand.material} renderOrder={2} />
        <mesh
          {...mesh}
          geometry={scars}
          material={paint.surface.material}
          renderOrder={4.5}
          visible={surface.length > 0 || (scanMarks?.length ?? 0) > 0}
        />
        <points
          {...mesh}
          geometry={discs}
          material={paint.stations.material}
          renderOrder={6}
          visible={hasDiscs}
        />
      </group>
      {piston ? <DrawnPiston paint={paint} piston={piston} middleMm={grid.middleMm} /> : null}
      <mesh {...mesh} geometry={glass} material={paint.wall.near} renderOrder={3} visible={!onPaper} />
      <mesh {...mesh} geometry={proven} material={paint.wall.patches} renderOrder={4} />
      <mesh {...mesh} geometry={rings} material={paint.stroke.material} renderOrder={5} />
      <points {...mesh} geometry={squares} material={paint.pointer.material} renderOrder={7} />
      <mesh {...mesh} geometry={line} material={paint.stroke.material} renderOrder={7} />
      <points {...mesh} geometry={marks} material={paint.pointer.material} renderOrder={8} />
    </>
  )
}

/** A piston in its bore, between the far wall and the glass. */
function DrawnPiston(props: {
  readonly paint: BorePaint
  readonly piston: PlacedPiston
  readonly middleMm: number
}) {
  const { paint, piston, middleMm } = props
  const skirt = useFreed(useMemo(() => pistonGeometry(piston, middleMm), [piston, middleMm]))
  const edges = useFreed(useMemo(() => strokeGeometry(pistonStrokes(piston, middleMm)), [piston, middleMm]))
  return (
    <>
      <mesh {...mesh} geometry={skirt} material={paint.piston.material} renderOrder={2.5} />
      <mesh {...mesh} geometry={edges} material={paint.stroke.material} renderOrder={2.6} />
    </>
  )
}

/** The unit grid of this size, shared with the other bores of the picture. */
function useShared(
  geometries: WallGeometries,
  kind: 'wall' | 'coarse' | 'glass',
  { angles, depthsMm }: WallGrid,
) {
  const [columns, rows] = [angles.length, depthsMm.length]
  const geometry = useMemo(() => geometries.of(kind, columns, rows), [geometries, kind, columns, rows])
  useFreedWhenLost(geometry)
  useEffect(() => {
    geometries.take(geometry)
    return () => geometries.giveBack(geometry)
  }, [geometries, geometry])
  return geometry
}

/** The geometry, freed when another takes its place. */
function useFreed(geometry: BufferGeometry): BufferGeometry {
  useFreedWhenLost(geometry)
  useEffect(() => () => geometry.dispose(), [geometry])
  return geometry
}

function ringsRound(contacts: readonly BorePlace[]): readonly Disc[] {
  return contacts.map((contact) => ({ ...contact, shape: 'ring' }))
}

function squaresAt(grid: WallGrid, next: PointedPlace | undefined): readonly Disc[] {
  return next ? contactsPointedAt(grid, next).map((contact) => ({ ...contact, shape: 'square' })) : []
}

function contactsPointedAt(grid: WallGrid, { depthMm, angleDegrees }: PointedPlace) {
  const angle = angleDegrees * radians
  return [angle, angle + Math.PI].map((contact) => ({
    angle: contact,
    depthMm,
    deviationUm: deviationAt(grid, depthMm, contact),
  }))
}
