import boreSpace from './shaders/bore-space.glsl?raw'
import doubtBandFragment from './shaders/doubt-band.frag.glsl?raw'
import doubtBandVertex from './shaders/doubt-band.vert.glsl?raw'
import marks from './shaders/marks.glsl?raw'
import pistonFragment from './shaders/piston.frag.glsl?raw'
import pistonVertex from './shaders/piston.vert.glsl?raw'
import ports from './shaders/ports.glsl?raw'
import shellFragment from './shaders/shell.frag.glsl?raw'
import shellVertex from './shaders/shell.vert.glsl?raw'
import stationFragment from './shaders/station.frag.glsl?raw'
import stationVertex from './shaders/station.vert.glsl?raw'
import strokeFragment from './shaders/stroke.frag.glsl?raw'
import strokeVertex from './shaders/stroke.vert.glsl?raw'
import wallFragment from './shaders/wall.frag.glsl?raw'
import wallVertex from './shaders/wall.vert.glsl?raw'
import wallFetch from './shaders/wall-fetch.glsl?raw'

/** A GLSL ES 3.00 program without its `#version` line. */
export interface ShaderSource {
  readonly vertex: string
  readonly fragment: string
}

const precision = 'precision highp float;\nprecision highp int;\nprecision highp sampler2D;\n'

/** Chunks in order: each may use what the ones before it declare. */
const joined = (...chunks: readonly string[]): string => [precision, ...chunks].join('\n')

export const wallSource: ShaderSource = {
  vertex: joined(boreSpace, wallFetch, wallVertex),
  fragment: joined(boreSpace, wallFetch, ports, marks, wallFragment),
}

export const strokeSource: ShaderSource = {
  vertex: joined(boreSpace, strokeVertex),
  fragment: joined(strokeFragment),
}

export const shellSource: ShaderSource = {
  vertex: joined(boreSpace, shellVertex),
  fragment: joined(boreSpace, ports, shellFragment),
}

export const pistonSource: ShaderSource = {
  vertex: joined(boreSpace, pistonVertex),
  fragment: joined(pistonFragment),
}

export const doubtBandSource: ShaderSource = {
  vertex: joined(boreSpace, wallFetch, doubtBandVertex),
  fragment: joined(boreSpace, marks, doubtBandFragment),
}

export const stationSource: ShaderSource = {
  vertex: joined(boreSpace, stationVertex),
  fragment: joined(stationFragment),
}
