import { GLSL3, type IUniform, RawShaderMaterial, type ShaderMaterialParameters } from 'three'
import type { ShaderSource } from './shader-sources'

/**
 * A material whose shader writes sRGB as it stands, premultiplied by its cover. Nothing here writes depth or
 * is sorted by distance unless asked to: the order of drawing is set on the meshes.
 */
export function rawMaterial(
  source: ShaderSource,
  uniforms: Readonly<Record<string, IUniform>>,
  settings: ShaderMaterialParameters = {},
): RawShaderMaterial {
  return new RawShaderMaterial({
    glslVersion: GLSL3,
    vertexShader: source.vertex,
    fragmentShader: source.fragment,
    uniforms: { ...uniforms },
    transparent: true,
    premultipliedAlpha: true,
    depthWrite: false,
    toneMapped: false,
    ...settings,
  })
}
