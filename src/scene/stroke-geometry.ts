import { BufferAttribute, BufferGeometry } from 'three'

/** A place given in the bore's own coordinates: rad clockwise from the deck, mm, µm on the diameter. */
export interface BorePlace {
  readonly angle: number
  readonly depthMm: number
  readonly deviationUm: number
}

/** What a line stands for; the material has a colour for each, and the shader counts outlines from `surface` on. */
export const strokeRoles = [
  'min',
  'max',
  'new-max',
  'pointer',
  'pointer-edge',
  'piston',
  'surface',
  'surface-middle',
  'scan-mark-ground',
  'scan-mark',
] as const
export type StrokeRole = (typeof strokeRoles)[number]

/** A line through places, of a constant width on the screen. */
export interface Stroke {
  readonly places: readonly BorePlace[]
  readonly widthPx: number
  readonly role: StrokeRole
  /** Opacities 0…1 of the parts on the far side of the bore and on the side that is turned to the eye. */
  readonly farOpacity: number
  readonly nearOpacity: number
}

const ringSteps = 128

/** A closed ring at one depth and one deviation. */
export function ring(depthMm: number, deviationUm: number): readonly BorePlace[] {
  return Array.from({ length: ringSteps + 1 }, (_, step) => ({
    angle: (step / ringSteps) * 2 * Math.PI,
    depthMm,
    deviationUm,
  }))
}

/** Each segment as a rectangle that the shader widens on the screen. */
export function strokeGeometry(strokes: readonly Stroke[]): BufferGeometry {
  const here: number[] = []
  const there: number[] = []
  const style: number[] = []
  const opacity: number[] = []
  const index: number[] = []
  for (const stroke of strokes) {
    const role = strokeRoles.indexOf(stroke.role)
    stroke.places.slice(1).forEach((to, segment) => {
      const from = stroke.places[segment] ?? to
      const first = here.length / 3
      for (const [at, other, sides] of [
        [from, to, [1, -1]],
        [to, from, [2, -2]],
      ] as const) {
        for (const side of sides) {
          here.push(at.angle, at.depthMm, at.deviationUm)
          there.push(other.angle, other.depthMm, other.deviationUm)
          style.push(side, stroke.widthPx, role)
          opacity.push(stroke.farOpacity, stroke.nearOpacity)
        }
      }
      index.push(first, first + 1, first + 2, first + 2, first + 1, first + 3)
    })
  }
  const geometry = new BufferGeometry()
  geometry.setAttribute('here', new BufferAttribute(new Float32Array(here), 3))
  geometry.setAttribute('there', new BufferAttribute(new Float32Array(there), 3))
  geometry.setAttribute('style', new BufferAttribute(new Float32Array(style), 3))
  geometry.setAttribute('opacity', new BufferAttribute(new Float32Array(opacity), 2))
  geometry.setIndex(index)
  return geometry
}
