import type { LimitPair } from '../core/findings'
import type { SurfaceFinding } from '../core/measured'

/** Every text on the picture. Sizes in mm, deviations in µm on the diameter. */
export interface PictureLabels {
  /** What the picture shows, for those who cannot see it. */
  readonly picture: string
  /** Which keys turn, zoom, move and reset it. */
  readonly keys: string
  readonly sides: {
    readonly front: string
    readonly right: string
    readonly rear: string
    readonly left: string
  }
  /** "Form drawn ×500". */
  formDrawn(exaggeration: number): string
  /** Beside the scale bar: "20 µm on diameter". */
  onDiameter(micrometres: number): string
  /** Beside a ring's colour: "54.050 wear limit". */
  limit(which: 'min' | 'max' | 'new-max', sizeMm: number, pair: LimitPair): string
  /** The size that lines and signs count from: "54.025 = 0". */
  middle(sizeMm: number): string
  depth(depthMm: number): string
  /** Signed, on iso-lines: "+4". */
  deviation(micrometres: number): string
  /** What the hatch and the dots mean. */
  readonly notMeasured: string
  readonly tooClose: string
  /** What a double outline means. */
  readonly surfaceFinding: string
  /** Of a mark in a scan. */
  readonly scanMark: string
  /** Beside a surface finding, numbered from 1: "1 scratch". */
  surface(number: number, finding: SurfaceFinding): string
  /** What the squares mean. */
  readonly next: string
}
