import { BufferAttribute, BufferGeometry, Color, Mesh, MeshStandardMaterial } from 'three'
import { GLTFExporter } from 'three/addons/exporters/GLTFExporter.js'
import { STLExporter } from 'three/addons/exporters/STLExporter.js'
import { type FaceKind, faceKinds, type WallSolid } from '../core/surface/wall-solid'

/** What is said of a model within its file. */
export interface ModelTexts {
  /** Of the one body in it. */
  readonly name: string
  /** Of its parts, each a material. */
  readonly parts: Readonly<Record<FaceKind, string>>
  readonly facts: Readonly<Record<string, string | number>>
}

/** What a part's colours are multiplied by: nobody measured what is fainter and has dark lines. */
const tones: Readonly<Record<FaceKind, string>> = {
  body: '#c4c3bd',
  measured: '#ffffff',
  unmeasured: '#c9c9c9',
  'unmeasured-line': '#454841',
}

/** An STL begins with 80 bytes that say what one likes, save that they must not begin with "solid". */
const stlHeaderBytes = 80

/**
 * The model as binary glTF 2.0 (ISO/IEC 12113:2022): metres, y up, the wall in its colours, a material for each
 * kind of face over one set of vertices. `facts` stand in asset.extras.
 */
export async function glbOf(
  solid: WallSolid,
  colour: (deviationUm: number) => string,
  texts: ModelTexts,
): Promise<ArrayBuffer> {
  const geometry = geometryOf(solid)
  geometry.setAttribute('color', coloursOf(solid, colour))
  const present = faceKinds.filter((kind) => solid.triangles[kind].length > 0)
  let start = 0
  for (const [index, kind] of present.entries()) {
    const { length } = solid.triangles[kind]
    geometry.addGroup(start, length, index)
    start += length
  }
  const mesh = new Mesh(
    geometry,
    present.map((kind) => materialOf(texts.parts[kind], tones[kind])),
  )
  mesh.name = texts.name
  mesh.scale.setScalar(0.001)
  const exporter = new GLTFExporter().register((writer) => ({
    afterParse: () => Object.assign(assetOf(writer), { extras: texts.facts }),
  }))
  const written = await exporter.parseAsync(mesh, { binary: true })
  if (!(written instanceof ArrayBuffer)) throw new Error('glbOf: expected bytes from the exporter')
  return written
}

/** The model as binary STL: millimetres, z up, standing on the bed, with a header of up to 80 ASCII characters. */
export function stlOf(solid: WallSolid, header: string): ArrayBuffer {
  const mesh = new Mesh(geometryOf(solid))
  mesh.rotation.x = Math.PI / 2
  mesh.position.z = solid.heightMm / 2
  mesh.updateMatrixWorld()
  const { buffer } = new STLExporter().parse(mesh, { binary: true })
  if (!(buffer instanceof ArrayBuffer)) throw new Error('stlOf: expected bytes from the exporter')
  const bytes = new TextEncoder().encode(header)
  if (bytes.length > stlHeaderBytes || header.startsWith('solid')) {
    throw new RangeError(`stlOf: expected a header of 80 bytes at most, got "${header}"`)
  }
  new Uint8Array(buffer).set(bytes)
  return buffer
}

function geometryOf({ positionsMm, triangles }: WallSolid): BufferGeometry {
  const geometry = new BufferGeometry()
  const index = Uint32Array.from(faceKinds.flatMap((kind) => [...triangles[kind]]))
  geometry.setAttribute('position', new BufferAttribute(positionsMm, 3))
  geometry.setIndex(new BufferAttribute(index, 1))
  return geometry
}

/** The wall's colours at its vertices, white at the others; linear, as glTF has them. */
function coloursOf({ deviationsUm }: WallSolid, colour: (deviationUm: number) => string): BufferAttribute {
  const colours = new Float32Array(deviationsUm.length * 3).fill(1)
  const linear = new Color()
  deviationsUm.forEach((deviation, vertex) => {
    if (!Number.isNaN(deviation)) linear.setStyle(colour(deviation)).toArray(colours, vertex * 3)
  })
  return new BufferAttribute(colours, 3)
}

function materialOf(name: string, tone: string): MeshStandardMaterial {
  const material = new MeshStandardMaterial({ color: tone, roughness: 0.9, metalness: 0, vertexColors: true })
  material.name = name
  return material
}

/** What the exporter writes about the file; its own texts do not say that a plugin may reach it. */
function assetOf(writer: object): object {
  const json = 'json' in writer ? writer.json : undefined
  const asset = typeof json === 'object' && json !== null && 'asset' in json ? json.asset : undefined
  if (typeof asset !== 'object' || asset === null) throw new Error('glbOf: expected the asset of a glTF file')
  return asset
}
