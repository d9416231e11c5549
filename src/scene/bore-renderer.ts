import {
  BackSide,
  type BufferAttribute,
  type BufferGeometry,
  type DataTexture,
  DoubleSide,
  type IUniform,
  type PerspectiveCamera,
  type RawShaderMaterial,
} from 'three'

/** A part of the picture: a geometry with one of our own materials, drawn as triangles or as points. */
export interface DrawnPart {
  readonly geometry: BufferGeometry
  readonly material: RawShaderMaterial
  readonly isPoints: boolean
}

interface Program {
  readonly program: WebGLProgram
  readonly uniforms: readonly {
    readonly name: string
    readonly type: number
    readonly place: WebGLUniformLocation
  }[]
}

interface Buffers {
  readonly array: WebGLVertexArrayObject
  readonly count: number
  readonly isIndexed: boolean
}

/**
 * Draws bores, and nothing else, in WebGL 2: the geometries and materials of the picture by their own shaders, in the
 * order they are given. The renderer of three does the same and much more, and would be most of a page that is handed
 * over; `tests/browser/hand-over.spec.ts` compares the two.
 */
export class BoreRenderer {
  readonly #gl: WebGL2RenderingContext
  /** By the text of their shaders, which several materials may share. */
  readonly #programs = new Map<string, Program>()
  readonly #buffers = new Map<BufferGeometry, Buffers>()
  readonly #textures = new Map<DataTexture, WebGLTexture>()

  constructor(context: WebGL2RenderingContext) {
    this.#gl = context
  }

  /** Draws a frame; width and height in device pixels. */
  render(parts: readonly DrawnPart[], eye: PerspectiveCamera, width: number, height: number): void {
    const gl = this.#gl
    gl.viewport(0, 0, width, height)
    gl.depthMask(true)
    gl.clearColor(0, 0, 0, 0)
    gl.clear(gl.COLOR_BUFFER_BIT | gl.DEPTH_BUFFER_BIT)
    gl.enable(gl.BLEND)
    // The shaders write colours premultiplied by their cover.
    gl.blendFunc(gl.ONE, gl.ONE_MINUS_SRC_ALPHA)
    for (const part of parts) this.#draw(part, eye)
  }

  /** Gives the graphics back. */
  dispose(): void {
    this.#gl.getExtension('WEBGL_lose_context')?.loseContext()
  }

  #draw({ geometry, material, isPoints }: DrawnPart, eye: PerspectiveCamera): void {
    const gl = this.#gl
    const program = this.#programOf(material)
    const buffers = this.#buffersOf(geometry, program)
    if (buffers.count === 0) return
    gl.useProgram(program.program)
    this.#setSides(material)
    gl.depthMask(material.depthWrite)
    gl.depthFunc(gl.LEQUAL)
    if (material.depthTest) gl.enable(gl.DEPTH_TEST)
    else gl.disable(gl.DEPTH_TEST)
    this.#setUniforms(program, material, eye)
    gl.bindVertexArray(buffers.array)
    if (buffers.isIndexed) gl.drawElements(gl.TRIANGLES, buffers.count, gl.UNSIGNED_INT, 0)
    else gl.drawArrays(isPoints ? gl.POINTS : gl.TRIANGLES, 0, buffers.count)
  }

  /** As three does: a back side is drawn by turning the rule for fronts round. */
  #setSides({ side }: RawShaderMaterial): void {
    const gl = this.#gl
    gl.frontFace(side === BackSide ? gl.CW : gl.CCW)
    gl.cullFace(gl.BACK)
    if (side === DoubleSide) gl.disable(gl.CULL_FACE)
    else gl.enable(gl.CULL_FACE)
  }

  #setUniforms({ uniforms }: Program, material: RawShaderMaterial, eye: PerspectiveCamera): void {
    const gl = this.#gl
    let unit = 0
    for (const { name, type, place } of uniforms) {
      if (name === 'projectionMatrix') gl.uniformMatrix4fv(place, false, eye.projectionMatrix.elements)
      // Bores stand in the space of the world.
      else if (name === 'modelViewMatrix') gl.uniformMatrix4fv(place, false, eye.matrixWorldInverse.elements)
      else if (type === gl.SAMPLER_2D) {
        gl.activeTexture(gl.TEXTURE0 + unit)
        gl.bindTexture(gl.TEXTURE_2D, this.#textureOf(material.uniforms[name]?.value))
        gl.uniform1i(place, unit)
        unit += 1
      } else this.#setNumbers(place, type, numbersOf(material.uniforms[name]))
    }
  }

  #setNumbers(place: WebGLUniformLocation, type: number, numbers: readonly number[]): void {
    const gl = this.#gl
    if (type === gl.FLOAT) gl.uniform1fv(place, numbers)
    else if (type === gl.FLOAT_VEC2) gl.uniform2fv(place, numbers)
    else if (type === gl.FLOAT_VEC3) gl.uniform3fv(place, numbers)
    else if (type === gl.FLOAT_VEC4) gl.uniform4fv(place, numbers)
    else if (type === gl.INT_VEC2) gl.uniform2iv(place, numbers)
    else gl.uniform1iv(place, numbers)
  }

  #programOf({ vertexShader, fragmentShader }: RawShaderMaterial): Program {
    const text = vertexShader + fragmentShader
    const known = this.#programs.get(text)
    if (known) return known
    const made = this.#madeProgram(vertexShader, fragmentShader)
    this.#programs.set(text, made)
    return made
  }

  #madeProgram(vertexShader: string, fragmentShader: string): Program {
    const gl = this.#gl
    const program = gl.createProgram()
    for (const [kind, text] of [
      [gl.VERTEX_SHADER, vertexShader],
      [gl.FRAGMENT_SHADER, fragmentShader],
    ] as const) {
      const shader = gl.createShader(kind)
      if (!shader) throw new Error('BoreRenderer: the graphics make no shader')
      gl.shaderSource(shader, `#version 300 es\n${text}`)
      gl.compileShader(shader)
      gl.attachShader(program, shader)
    }
    gl.linkProgram(program)
    if (!gl.getProgramParameter(program, gl.LINK_STATUS) && !gl.isContextLost()) {
      throw new Error(`BoreRenderer: ${gl.getProgramInfoLog(program)}`)
    }
    const count: number = gl.getProgramParameter(program, gl.ACTIVE_UNIFORMS) ?? 0
    const uniforms = Array.from({ length: count }, (_, index) => {
      const info = gl.getActiveUniform(program, index)
      const place = info && gl.getUniformLocation(program, info.name)
      return info && place ? [{ name: info.name.replace('[0]', ''), type: info.type, place }] : []
    }).flat()
    return { program, uniforms }
  }

  #buffersOf(geometry: BufferGeometry, { program }: Program): Buffers {
    const known = this.#buffers.get(geometry)
    if (known) return known
    const gl = this.#gl
    const array = gl.createVertexArray()
    gl.bindVertexArray(array)
    let vertices = 0
    for (const [name, attribute] of Object.entries(geometry.attributes)) {
      const place = gl.getAttribLocation(program, name)
      vertices = attribute.count
      if (place < 0) continue
      gl.bindBuffer(gl.ARRAY_BUFFER, gl.createBuffer())
      gl.bufferData(gl.ARRAY_BUFFER, new Float32Array(attribute.array), gl.STATIC_DRAW)
      gl.enableVertexAttribArray(place)
      gl.vertexAttribPointer(place, attribute.itemSize, gl.FLOAT, false, 0, 0)
    }
    const index: BufferAttribute | null = geometry.getIndex()
    if (index) {
      gl.bindBuffer(gl.ELEMENT_ARRAY_BUFFER, gl.createBuffer())
      gl.bufferData(gl.ELEMENT_ARRAY_BUFFER, new Uint32Array(index.array), gl.STATIC_DRAW)
    }
    const made = { array, count: index ? index.count : vertices, isIndexed: index !== null }
    this.#buffers.set(geometry, made)
    return made
  }

  /** Numbers read as they stand: neither filtered nor repeated. */
  #textureOf(value: unknown): WebGLTexture | null {
    if (!isDataTexture(value)) return null
    const known = this.#textures.get(value)
    if (known) return known
    const gl = this.#gl
    const texture = gl.createTexture()
    const { width, height, data } = value.image
    gl.bindTexture(gl.TEXTURE_2D, texture)
    gl.texParameteri(gl.TEXTURE_2D, gl.TEXTURE_MIN_FILTER, gl.NEAREST)
    gl.texParameteri(gl.TEXTURE_2D, gl.TEXTURE_MAG_FILTER, gl.NEAREST)
    gl.texParameteri(gl.TEXTURE_2D, gl.TEXTURE_WRAP_S, gl.CLAMP_TO_EDGE)
    gl.texParameteri(gl.TEXTURE_2D, gl.TEXTURE_WRAP_T, gl.CLAMP_TO_EDGE)
    const floats = data instanceof Float32Array ? data : null
    gl.texImage2D(gl.TEXTURE_2D, 0, gl.RGBA32F, width, height, 0, gl.RGBA, gl.FLOAT, floats)
    this.#textures.set(value, texture)
    return texture
  }
}

function isDataTexture(value: unknown): value is DataTexture {
  return typeof value === 'object' && value !== null && 'isDataTexture' in value
}

/** A uniform's numbers one after the other: a number, a yes or no, a vector, or a list of them. */
function numbersOf(uniform: IUniform<unknown> | undefined): readonly number[] {
  const value = uniform?.value
  const all = Array.isArray(value) ? value : [value]
  return all.flatMap((one) => {
    if (typeof one === 'number' || typeof one === 'boolean') return [Number(one)]
    if (typeof one !== 'object' || one === null || !('toArray' in one)) return []
    const { toArray } = one
    const numbers: unknown = typeof toArray === 'function' ? toArray.call(one) : []
    return Array.isArray(numbers) ? numbers.map(Number) : []
  })
}
