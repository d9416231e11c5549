import { readdirSync, readFileSync } from 'node:fs'
import { expect, type Page, test } from '@playwright/test'
import { createServer, type ViteDevServer } from 'vite'
import { deviationAt, drawnPosition } from '../../src/core/surface/drawn-position'
import type { Toward, WallGrid } from '../../src/core/surface/wall-grid'
import { drawnRadius, onCircle } from '../../src/scene/bore-space'
import { seededRandom } from '../proof/seeded-random'

/** Drawn sizes here are tens of millimetres: single precision leaves about a hundredth of this. */
const toleranceMm = 1e-3
const exaggerations = [1, 20, 500]

interface Texture {
  readonly data: readonly number[]
  readonly width: number
  readonly height: number
}

/** A vertex shader with all that it reads, as plain data for the page. */
interface Run {
  readonly vertex: string
  readonly nodes: readonly number[]
  readonly captured: string
  readonly components: number
  readonly textures: Readonly<Record<string, Texture>>
  readonly numbers: Readonly<Record<string, number>>
  readonly gridSize: readonly [number, number]
}

let sources: ViteDevServer

test.beforeAll(async () => {
  sources = await createServer({
    configFile: false,
    server: { middlewareMode: true, hmr: false, ws: false, watch: null },
    optimizeDeps: { noDiscovery: true },
    appType: 'custom',
    logLevel: 'silent',
  })
})

test.afterAll(() => sources.close())

/** A grid of uneven columns and rows with deviations of up to 40 µm, some doubt edges infinite. */
function unevenGrid(seed: number): WallGrid {
  const random = seededRandom(seed).even
  const columns = 3 + Math.floor(random() * 60)
  const rows = 2 + Math.floor(random() * 40)
  const lengthMm = 30 + random() * 150
  const parts = (count: number, whole: number) => {
    const steps = Array.from({ length: count }, () => 0.05 + random())
    const sum = steps.reduce((a, b) => a + b, 0)
    let at = 0
    return Float64Array.from(steps, (step) => {
      const from = at
      at += (step / sum) * whole
      return from
    })
  }
  return {
    middleMm: 30 + random() * 100,
    lengthMm,
    depthsMm: Float64Array.from([...parts(rows - 1, lengthMm), lengthMm]),
    angles: parts(columns, 2 * Math.PI),
    deviationsUm: Float32Array.from({ length: rows * columns }, () => (random() - 0.5) * 80),
    hatched: Uint8Array.from({ length: (rows - 1) * columns }, () => (random() < 0.3 ? 1 : 0)),
    proven: Uint8Array.from({ length: rows * columns }, () => Math.floor(random() * 3)),
    doubtUm: Float32Array.from({ length: rows * columns * 4 }, () =>
      random() < 0.2 ? Number.POSITIVE_INFINITY : random() * 10,
    ),
  }
}

/** The grid as the picture's own textures, and the values of its own uniforms. */
async function inputsOf(grid: WallGrid, exaggeration: number, toward?: Toward) {
  const { sharedUniforms } = (await sources.ssrLoadModule(
    '/src/scene/shared-uniforms.ts',
  )) as typeof import('../../src/scene/shared-uniforms')
  const { WallTextures } = (await sources.ssrLoadModule(
    '/src/scene/wall-textures.ts',
  )) as typeof import('../../src/scene/wall-textures')
  const uniforms = sharedUniforms()
  new WallTextures(uniforms).write(grid, toward && { from: grid, to: toward.grid })
  const texture = (name: 'wallTexture' | 'towardTexture' | 'doubtTexture' | 'gridTexture'): Texture => {
    const image = uniforms[name].value?.image
    if (!(image?.data instanceof Float32Array)) throw new Error(`expected float data in ${name}`)
    return { data: [...image.data], width: image.width, height: image.height }
  }
  return {
    textures: {
      wallTexture: texture('wallTexture'),
      towardTexture: texture('towardTexture'),
      doubtTexture: texture('doubtTexture'),
      gridTexture: texture('gridTexture'),
    },
    numbers: {
      middleMm: uniforms.middleMm.value,
      lengthMm: uniforms.lengthMm.value,
      exaggeration,
      wallShare: toward?.share ?? uniforms.wallShare.value,
    },
    gridSize: [uniforms.gridSize.value.x, uniforms.gridSize.value.y] as const,
  }
}

/** The shader that the picture draws the wall with, over its own geometry. */
async function drawnWall(grid: WallGrid, exaggeration: number, toward?: Toward): Promise<Run> {
  const { wallSource } = (await sources.ssrLoadModule(
    '/src/scene/shader-sources.ts',
  )) as typeof import('../../src/scene/shader-sources')
  const { wallGeometry } = (await sources.ssrLoadModule(
    '/src/scene/wall-geometry.ts',
  )) as typeof import('../../src/scene/wall-geometry')
  const geometry = wallGeometry(grid.angles.length, grid.depthsMm.length)
  return {
    ...(await inputsOf(grid, exaggeration, toward)),
    vertex: wallSource.vertex,
    nodes: [...geometry.getAttribute('node').array],
    captured: 'vPlace',
    components: 3,
  }
}

/** The wall's own fetch between nodes, under a main function of this test. */
async function mixedWall(grid: WallGrid, nodes: readonly number[]): Promise<Run> {
  const chunk = async (name: string) => {
    const { default: text } = await sources.ssrLoadModule(`/src/scene/shaders/${name}.glsl?raw`)
    return String(text)
  }
  const main = `
    in vec2 node;
    out vec3 vMixed; // deviation µm, angle rad, depth mm
    void main() {
      Cell cell = cellAt(node);
      vec4 span = spanOf(cell);
      float deviation = mixed(wallCornersIn(cell), cell).x;
      vMixed = vec3(deviation, mix(span.x, span.y, cell.share.x), mix(span.z, span.w, cell.share.y));
    }`
  return {
    ...(await inputsOf(grid, 1)),
    vertex: `precision highp float;\nprecision highp sampler2D;\n${await chunk('bore-space')}\n${await chunk('wall-fetch')}\n${main}`,
    nodes,
    captured: 'vMixed',
    components: 3,
  }
}

/**
 * Runs a vertex shader over points and gives back what it puts out. Every extension is refused, so float
 * textures cannot be filtered linearly: WebGL 2 alone must do.
 */
async function captured(page: Page, run: Run): Promise<number[]> {
  return page.evaluate((given) => {
    WebGL2RenderingContext.prototype.getExtension = () => null
    const gl = document.createElement('canvas').getContext('webgl2')
    if (!gl) throw new Error('no WebGL 2')
    const program = gl.createProgram()
    const fragment = 'precision highp float;\nout vec4 colour;\nvoid main() { colour = vec4(1.0); }'
    for (const [kind, text] of [
      [gl.VERTEX_SHADER, given.vertex],
      [gl.FRAGMENT_SHADER, fragment],
    ] as const) {
      const shader = gl.createShader(kind)
      if (!shader) throw new Error('no shader')
      gl.shaderSource(shader, `#version 300 es\n${text}`)
      gl.compileShader(shader)
      const log = gl.getShaderInfoLog(shader)
      if (log) throw new Error(log)
      gl.attachShader(program, shader)
    }
    gl.transformFeedbackVaryings(program, [given.captured], gl.SEPARATE_ATTRIBS)
    gl.linkProgram(program)
    if (!gl.getProgramParameter(program, gl.LINK_STATUS)) throw new Error(`${gl.getProgramInfoLog(program)}`)
    gl.useProgram(program)
    Object.entries(given.textures).forEach(([name, { data, width, height }], unit) => {
      gl.activeTexture(gl.TEXTURE0 + unit)
      gl.bindTexture(gl.TEXTURE_2D, gl.createTexture())
      gl.texParameteri(gl.TEXTURE_2D, gl.TEXTURE_MIN_FILTER, gl.NEAREST)
      gl.texParameteri(gl.TEXTURE_2D, gl.TEXTURE_MAG_FILTER, gl.NEAREST)
      gl.texImage2D(
        gl.TEXTURE_2D,
        0,
        gl.RGBA32F,
        width,
        height,
        0,
        gl.RGBA,
        gl.FLOAT,
        Float32Array.from(data),
      )
      gl.uniform1i(gl.getUniformLocation(program, name), unit)
    })
    for (const [name, value] of Object.entries(given.numbers)) {
      gl.uniform1f(gl.getUniformLocation(program, name), value)
    }
    gl.uniform2i(gl.getUniformLocation(program, 'gridSize'), given.gridSize[0], given.gridSize[1])
    const node = gl.getAttribLocation(program, 'node')
    gl.bindBuffer(gl.ARRAY_BUFFER, gl.createBuffer())
    gl.bufferData(gl.ARRAY_BUFFER, Float32Array.from(given.nodes), gl.STATIC_DRAW)
    gl.enableVertexAttribArray(node)
    gl.vertexAttribPointer(node, 2, gl.FLOAT, false, 0, 0)
    const points = given.nodes.length / 2
    const result = new Float32Array(points * given.components)
    gl.bindBuffer(gl.ARRAY_BUFFER, null)
    gl.bindBufferBase(gl.TRANSFORM_FEEDBACK_BUFFER, 0, gl.createBuffer())
    gl.bufferData(gl.TRANSFORM_FEEDBACK_BUFFER, result.byteLength, gl.STATIC_READ)
    gl.enable(gl.RASTERIZER_DISCARD)
    gl.beginTransformFeedback(gl.POINTS)
    gl.drawArrays(gl.POINTS, 0, points)
    gl.endTransformFeedback()
    gl.getBufferSubData(gl.TRANSFORM_FEEDBACK_BUFFER, 0, result)
    const error = gl.getError()
    if (error !== gl.NO_ERROR) throw new Error(`WebGL error ${error}`)
    return [...result]
  }, run)
}

function largestDifference(one: readonly number[], other: readonly number[]): number {
  expect(one).toHaveLength(other.length)
  return one.reduce((most, value, index) => {
    const difference = Math.abs(value - (other[index] ?? Number.NaN))
    return Math.max(most, difference)
  }, 0)
}

test.describe('the shader that draws the wall, without linear filtering of float textures', () => {
  for (const seed of [1, 2, 3, 4]) {
    test(`puts every node where the core puts it, uneven grid from seed ${seed}`, async ({ page }) => {
      const grid = unevenGrid(seed)
      for (const exaggeration of exaggerations) {
        const run = await drawnWall(grid, exaggeration)
        const expected = pairsOf(run.nodes).flatMap(([column, row]) => [
          ...drawnPosition(grid, exaggeration, column, row),
        ])
        expect(run.nodes).toHaveLength((grid.angles.length + 1) * grid.depthsMm.length * 2)
        expect(largestDifference(await captured(page, run), expected)).toBeLessThan(toleranceMm)
      }
    })
  }

  test('puts every node on its way between two surveys where the core puts it, and at either end exactly on that survey’s wall, uneven grid from seed 5', async ({
    page,
  }) => {
    const grid = unevenGrid(5)
    const random = seededRandom(50).even
    const there = { ...grid, deviationsUm: grid.deviationsUm.map(() => (random() - 0.5) * 80) }
    const wallAt = async (share: number) => {
      const run = await drawnWall(grid, 500, { grid: there, share })
      const expected = pairsOf(run.nodes).flatMap(([column, row]) => [
        ...drawnPosition(grid, 500, column, row, { grid: there, share }),
      ])
      const drawn = await captured(page, run)
      expect(largestDifference(drawn, expected), `share ${share}`).toBeLessThan(toleranceMm)
      return drawn
    }
    for (const share of [0.25, 0.8]) await wallAt(share)
    expect(await wallAt(0)).toEqual(await captured(page, await drawnWall(grid, 500)))
    expect(await wallAt(1)).toEqual(await captured(page, await drawnWall(there, 500)))
  })

  test('mixes between nodes as the core does, over the seam too, 2000 places from seed 7', async ({
    page,
  }) => {
    const grid = unevenGrid(7)
    const random = seededRandom(70).even
    const nodes = Array.from({ length: 2000 }, () => [
      Math.fround(random() * grid.angles.length),
      Math.fround(random() * (grid.depthsMm.length - 1)),
    ]).flat()
    const mixes = await captured(page, await mixedWall(grid, nodes))
    const deviations = mixes.filter((_, index) => index % 3 === 0)
    const expected = pairsOf(nodes).map(([column, row]) => deviationAt(grid, column, row))
    // 1e-3 µm at deviations of 40 µm: single precision carries the share of a cell to about 1e-5.
    expect(largestDifference(deviations, expected)).toBeLessThan(1e-3)
    const places = pairsOf(nodes).map(([column, row]) => drawnPosition(grid, 0, column, row))
    const seen = places.map((_, index) =>
      placeOnCircle(grid, mixes[index * 3 + 1] ?? 0, mixes[index * 3 + 2] ?? 0),
    )
    expect(
      largestDifference(
        seen.flat(),
        places.flatMap((place) => [...place]),
      ),
    ).toBeLessThan(toleranceMm)
  })

  test('would be caught putting a node a hundredth of a millimetre off', async ({ page }) => {
    const grid = unevenGrid(8)
    const run = await drawnWall(grid, 500)
    const [column = 0, row = 0] = run.nodes.slice(10, 12)
    const before = await captured(page, run)
    const columns = grid.angles.length
    const moved = grid.deviationsUm.slice()
    const node = row * columns + (column % columns)
    moved[node] = (moved[node] ?? 0) + 0.04
    const after = await captured(page, await drawnWall({ ...grid, deviationsUm: moved }, 500))
    expect(largestDifference(before, after)).toBeGreaterThan(5 * toleranceMm)
  })
})

test('shell, bands, lines, discs and piston are placed by one function of the shaders, which puts places where the core does, 500 from seed 9', async ({
  page,
}) => {
  const folder = new URL('../../src/scene/shaders/', import.meta.url)
  const others = readdirSync(folder).filter(
    (name) => name.endsWith('.vert.glsl') && name !== 'wall.vert.glsl',
  )
  expect(others).toEqual(
    ['doubt-band', 'piston', 'shell', 'station', 'stroke'].map((name) => `${name}.vert.glsl`),
  )
  for (const name of others)
    expect(readFileSync(new URL(name, folder), 'utf8'), name).toContain('drawnPlace(')
  const grid = unevenGrid(9)
  const random = seededRandom(90).even
  const nodes = Array.from({ length: 500 }, () => [
    Math.fround((random() - 0.5) * 4 * Math.PI),
    Math.fround(random() * grid.lengthMm),
  ]).flat()
  for (const exaggeration of exaggerations) {
    const deviationUm = Math.fround((random() - 0.5) * 100)
    const run = await placed(grid, nodes, exaggeration, deviationUm)
    const radius = drawnRadius(grid.middleMm, exaggeration, deviationUm)
    const expected = pairsOf(nodes).flatMap(([angle, depthMm]) => {
      const { x, y, z } = onCircle(grid.lengthMm, angle, depthMm, radius)
      return [x, y, z]
    })
    // The sine of a shader is good to 2⁻¹¹ on some machines, and these are lines and discs.
    expect(largestDifference(await captured(page, run), expected)).toBeLessThan(radius * 2 ** -11)
  }
})

/** The function that places all but the wall, under a main function of this test. */
async function placed(
  grid: WallGrid,
  nodes: readonly number[],
  exaggeration: number,
  deviationUm: number,
): Promise<Run> {
  const { default: chunk } = await sources.ssrLoadModule('/src/scene/shaders/bore-space.glsl?raw')
  const main = `
    in vec2 node; // angle rad, depth mm
    uniform float deviationUm;
    out vec3 vPlace;
    void main() { vPlace = drawnPlace(outwardAt(node.x), node.y, deviationUm); }`
  const inputs = await inputsOf(grid, exaggeration)
  return {
    ...inputs,
    textures: {},
    numbers: { ...inputs.numbers, deviationUm },
    vertex: `precision highp float;\n${chunk}\n${main}`,
    nodes,
    captured: 'vPlace',
    components: 3,
  }
}

function pairsOf(flat: readonly number[]): readonly (readonly [number, number])[] {
  return Array.from({ length: flat.length / 2 }, (_, index) => [
    flat[index * 2] ?? 0,
    flat[index * 2 + 1] ?? 0,
  ])
}

/** A place of the middle cylinder, mm: where exaggeration 0 draws every node. */
function placeOnCircle(grid: WallGrid, angle: number, depthMm: number): readonly number[] {
  const radius = grid.middleMm / 2
  return [-radius * Math.sin(angle), grid.lengthMm / 2 - depthMm, radius * Math.cos(angle)]
}
