import { type BufferGeometry, Mesh, type Object3D } from 'three'
import { GLTFLoader } from 'three/addons/loaders/GLTFLoader.js'
import { STLLoader } from 'three/addons/loaders/STLLoader.js'
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest'
import { gridOf } from '../../../src/core/surface/grid-of'
import { wallOf } from '../../../src/core/surface/wall'
import { wallSolid } from '../../../src/core/surface/wall-solid'
import { glbOf, stlOf } from '../../../src/scene/model-files'
import { wallPaint } from '../../../src/scene/wall-palette'
import { inventedCylinder, inventedPorts } from '../core/surface/invented-cylinder'
import { allTriangles, checkedByManifold } from '../core/surface/manifold-of'

const { bore, finding } = inventedCylinder()
const wall = wallOf(bore, finding)
if (!wall) throw new Error('expected a wall')
const grid = gridOf(wall, finding, { rows: 24, columns: 48 })
const model = wallSolid(grid, inventedPorts, 500)
if (model.kind !== 'solid') throw new Error('expected a solid')
const solid = model
const inCore = checkedByManifold(solid.positionsMm, allTriangles(solid))

const texts = {
  name: 'An invented bore',
  parts: {
    body: 'body',
    measured: 'between readings',
    unmeasured: 'not measured',
    'unmeasured-line': 'hatch',
  },
  facts: { exaggeration: 500, scale: '1:1', units: 'mm' },
}

/** What a browser reads files with and Node lacks: as much of it as the exporter of three needs. */
class ReaderOfBlobs {
  result: ArrayBuffer | undefined
  onloadend: (() => void) | undefined
  readAsArrayBuffer(blob: Blob) {
    void blob.arrayBuffer().then((bytes) => {
      this.result = bytes
      this.onloadend?.()
    })
  }
}

beforeAll(() => {
  vi.stubGlobal('FileReader', ReaderOfBlobs)
})
afterAll(() => {
  vi.unstubAllGlobals()
})

function meshesIn(scene: Object3D): Mesh[] {
  const meshes: Mesh[] = []
  scene.traverse((part) => {
    if (part instanceof Mesh) meshes.push(part)
  })
  return meshes
}

/** Positions in a world of mm, one after another, of triangles without an index. */
function cornersOf(geometry: BufferGeometry): Float32Array {
  const flat = geometry.index ? geometry.toNonIndexed() : geometry
  return Float32Array.from(flat.getAttribute('position').array)
}

function checkedCorners(corners: Float32Array) {
  return checkedByManifold(
    corners,
    Uint32Array.from({ length: corners.length / 3 }, (_, i) => i),
    true,
  )
}

describe('a model of the wall in a file', () => {
  it('is opened from binary glTF in metres, with a material for what nobody measured, the facts, and closed', async () => {
    const bytes = await glbOf(solid, wallPaint(grid, finding.pair, 'light').colour, texts)
    const { scene, asset } = await new GLTFLoader().parseAsync(bytes, '')
    expect(asset).toMatchObject({ version: '2.0', extras: texts.facts })
    const meshes = meshesIn(scene)
    const materials = meshes.map(({ material }) => (Array.isArray(material) ? '' : material.name))
    expect(materials).toEqual(['body', 'between readings', 'not measured', 'hatch'])
    expect(meshes[0]?.parent?.name).toBe('An_invented_bore')

    scene.updateMatrixWorld(true)
    const corners = meshes.flatMap((mesh) => {
      const geometry = mesh.geometry.clone().applyMatrix4(mesh.matrixWorld).scale(1000, 1000, 1000)
      return [...cornersOf(geometry)]
    })
    const { volumeMm3, ...form } = checkedCorners(Float32Array.from(corners))
    expect(form).toEqual({ genus: 1, bodies: 1 })
    expect(volumeMm3 / inCore.volumeMm3).toBeCloseTo(1, 5)
  })

  it('has the colours of the picture at its wall', async () => {
    const bytes = await glbOf(solid, () => '#7fa9ba', texts)
    const { scene } = await new GLTFLoader().parseAsync(bytes, '')
    const measured = meshesIn(scene)[1]?.geometry
    const [vertex = 0] = measured?.index?.array ?? []
    const colour = [0, 1, 2].map((part) => measured?.getAttribute('color').getComponent(vertex, part) ?? 0)
    // sRGB to linear, IEC 61966-2-1: ((s + 0.055)/1.055)^2.4.
    const linear = [0x7f, 0xa9, 0xba].map((byte) => ((byte / 255 + 0.055) / 1.055) ** 2.4)
    colour.forEach((part, i) => {
      expect(part).toBeCloseTo(linear[i] ?? 0, 5)
    })
  })

  it('is opened from STL in millimetres, standing on the bed deck up and front forward, and closed', () => {
    const bytes = stlOf(solid, 'Wall drawn x500, scale 1:1, mm')
    const start = new TextDecoder().decode(bytes.slice(0, 80))
    expect(start).toBe('Wall drawn x500, scale 1:1, mm'.padEnd(80, '\0'))
    const corners = cornersOf(new STLLoader().parse(bytes))
    const { volumeMm3, ...form } = checkedCorners(corners)
    expect(form).toEqual({ genus: 1, bodies: 1 })
    expect(volumeMm3 / inCore.volumeMm3).toBeCloseTo(1, 5)

    const heights = corners.filter((_, i) => i % 3 === 2)
    expect(Math.min(...heights)).toBeCloseTo(0, 5)
    expect(Math.max(...heights)).toBeCloseTo(90, 5)
    // The groove's middle lies in front, toward −y, 1.2 mm within the outside, at the deck and not at the foot.
    const inFront = (height: number) =>
      Array.from({ length: corners.length / 3 }, (_, i) => corners.slice(i * 3, i * 3 + 3))
        .filter(([x = 1, y = 0, z = -1]) => Math.abs(x) < 1e-4 && y < 0 && Math.abs(z - height) < 1e-4)
        .reduce((furthest, [, y = 0]) => Math.max(furthest, -y), 0)
    expect(inFront(0)).toBeCloseTo(solid.outerDiameterMm / 2, 3)
    expect(inFront(90)).toBeCloseTo(solid.outerDiameterMm / 2 - 1.2, 3)
  })

  it('is refused with a header that an STL cannot have', () => {
    expect(() => stlOf(solid, 'x'.repeat(81))).toThrow('80 bytes at most')
    expect(() => stlOf(solid, 'solid wall')).toThrow('80 bytes at most')
  })
})
