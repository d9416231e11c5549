import { Color, LinearSRGBColorSpace, Vector3, Vector4 } from 'three'

const reader = new Color()

/** A CSS colour as a shader takes it: its sRGB figures 0…1, not converted. */
export function colourVector(css: string, into: Vector3 = new Vector3()): Vector3 {
  reader.setStyle(css, LinearSRGBColorSpace)
  return into.set(reader.r, reader.g, reader.b)
}

/** The same with an opacity 0…1. */
export function colourWithOpacity(css: string, opacity: number, into: Vector4 = new Vector4()): Vector4 {
  reader.setStyle(css, LinearSRGBColorSpace)
  return into.set(reader.r, reader.g, reader.b, opacity)
}
