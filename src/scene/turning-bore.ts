import { type BufferGeometry, PerspectiveCamera, type RawShaderMaterial } from 'three'
import { rampSpan } from '../core/surface/ramp-span'
import type { WallGrid } from '../core/surface/wall-grid'
import { BoreCamera } from './bore-camera'
import { boreExtent } from './bore-extent'
import { discsOf, judgedLimits, ringsOf, scarsOf } from './bore-geometry'
import { boreLabels } from './bore-labels'
import { BorePaint } from './bore-paint'
import { BoreRenderer, type DrawnPart } from './bore-renderer'
import { cameraStart } from './camera-start'
import { doubtBandGeometry } from './doubt-band-geometry'
import { labelsOfTexts } from './handed-texts'
import { gridOfHanded, type HandedWall } from './handed-wall'
import { isoStepOf } from './iso-step-of'
import type { PictureLabels } from './picture-labels'
import { PictureOverlay } from './picture-overlay'
import { PictureView } from './picture-view'
import { setPorts } from './shared-uniforms'
import { shellGeometry } from './shell-geometry'
import { stationGeometry } from './station-geometry'
import { glassGeometry, provenGeometry, wallGeometry } from './wall-geometry'
import { wallPalette } from './wall-palette'

/** Room for the names of front and rear and for the depths on the left; less on a narrow picture. */
const margins = { top: 26, right: 16, bottom: 28, left: 48 }
const mostPixels = 2

interface Around {
  /** A hand or a key has moved it. */
  readonly onMoved: () => void
  /** The graphics stopped: nothing is drawn any more. */
  readonly onLost: () => void
}

/** The elements of a picture, with the classes that the picture's style sheet knows. */
function elementsIn(frame: HTMLElement, said: string) {
  const made = (tag: 'div' | 'p', className: string) => {
    const element = document.createElement(tag)
    element.className = className
    return element
  }
  const host = made('div', 'picture-canvas')
  const labels = made('div', 'picture-labels')
  labels.setAttribute('aria-hidden', 'true')
  const corner = made('div', 'picture-corner picture-scale')
  const drawn = made('p', '')
  drawn.textContent = said
  const bar = made('div', 'picture-scale-bar')
  const barText = made('p', 'picture-scale-line')
  corner.append(drawn, bar, barText)
  frame.append(host, labels, corner)
  return { host, labels, bar, barText }
}

/** A bore that a hand can turn, drawn without React: for a page that stands alone. Frames only on demand. */
export class TurningBore {
  readonly camera: BoreCamera
  readonly #frame: HTMLElement
  readonly #wall: HandedWall
  readonly #canvas: HTMLCanvasElement
  readonly #renderer: BoreRenderer
  readonly #pixelRatio = Math.min(mostPixels, window.devicePixelRatio)
  readonly #parts: readonly DrawnPart[]
  readonly #eye = new PerspectiveCamera(cameraStart.fov, 1, cameraStart.near, cameraStart.far)
  readonly #paint = new BorePaint()
  readonly #view = new PictureView()
  readonly #overlay: PictureOverlay
  readonly #labels: PictureLabels
  readonly #resized: ResizeObserver
  #asked: number | undefined
  #before = 0

  /** Undefined, with nothing put on the page, where there is no WebGL 2. */
  static in(frame: HTMLElement, wall: HandedWall, around: Around): TurningBore | undefined {
    const canvas = document.createElement('canvas')
    const context = canvas.getContext('webgl2', { antialias: true, alpha: true, premultipliedAlpha: true })
    return context ? new TurningBore(frame, wall, around, canvas, context) : undefined
  }

  private constructor(
    frame: HTMLElement,
    wall: HandedWall,
    around: Around,
    canvas: HTMLCanvasElement,
    context: WebGL2RenderingContext,
  ) {
    const grid = gridOfHanded(wall.grid)
    this.#frame = frame
    this.#wall = wall
    this.#labels = labelsOfTexts(wall.texts)
    const { host, ...elements } = elementsIn(frame, wall.texts.formDrawn)
    host.append(canvas)
    this.#canvas = canvas
    this.#renderer = new BoreRenderer(context)
    this.#overlay = new PictureOverlay({ frame, ...elements })
    this.#eye.position.set(...cameraStart.position)
    this.camera = new BoreCamera(this.#eye, frame, {
      margins: () => margins,
      corners: () => this.#overlay.corners,
      onMoved: around.onMoved,
      invalidate: () => this.invalidate(),
    })
    this.#parts = this.#partsOf(grid)
    this.#overlay.setLabels(
      boreLabels({ ...wall, grid, pair: wall.pair, isoStepUm: isoStepOf(grid), labels: this.#labels }),
    )
    canvas.addEventListener('webglcontextlost', around.onLost)
    this.#fitInto(frame)
    this.camera.setExtent([{ points: boreExtent({ ...wall, grid, pair: wall.pair }), offsetMm: 0 }])
    this.camera.show('front', false)
    this.#resized = new ResizeObserver(() => {
      this.#fitInto(frame)
      this.#overlay.remeasure()
      this.camera.fit(false)
    })
    this.#resized.observe(frame)
  }

  /** Draws a frame at the next chance. */
  invalidate(): void {
    this.#asked ??= requestAnimationFrame((now) => this.#step(now))
  }

  dispose(): void {
    if (this.#asked !== undefined) cancelAnimationFrame(this.#asked)
    this.#resized.disconnect()
    this.camera.dispose()
    this.#renderer.dispose()
    this.#frame.replaceChildren()
  }

  #fitInto({ clientWidth, clientHeight }: HTMLElement): void {
    const [width, height] = [Math.max(1, clientWidth), Math.max(1, clientHeight)]
    this.#canvas.width = Math.round(width * this.#pixelRatio)
    this.#canvas.height = Math.round(height * this.#pixelRatio)
    this.#eye.aspect = width / height
    this.#eye.updateProjectionMatrix()
    this.camera.resize(width, height)
    this.invalidate()
  }

  #step(now: number): void {
    this.#asked = undefined
    const more = this.camera.update((now - this.#before) / 1000)
    this.#before = now
    const { clientWidth: width, clientHeight: height } = this.#frame
    this.#view.see(this.#eye, { width, height }, this.camera.distance)
    this.#view.holdBore(this.#wall.exaggeration, 0)
    this.#paint.shared.viewport.value.set(width, height)
    this.#paint.shared.pixelRatio.value = this.#pixelRatio
    this.#overlay.follow(this.#view, this.#labels)
    this.#renderer.render(this.#parts, this.#eye, this.#canvas.width, this.#canvas.height)
    if (more) this.invalidate()
  }

  /** The same parts in the same order as the picture of the page. */
  #partsOf(grid: WallGrid): readonly DrawnPart[] {
    const { ports, pair, stations, surface, exaggeration } = this.#wall
    const paint = this.#paint
    const span = rampSpan(grid.middleMm, pair, grid.deviationsUm)
    paint.textures.write(grid)
    setPorts(paint.shared, ports)
    paint.shared.exaggeration.value = exaggeration
    paint.setLook({
      middleMm: grid.middleMm,
      pair,
      span,
      isoStepUm: isoStepOf(grid),
      isDifference: false,
      palette: wallPalette('light'),
    })
    const [columns, rows] = [grid.angles.length, grid.depthsMm.length]
    const { wall, shell, doubtBand, stroke, surface: scars } = paint
    const part = (geometry: BufferGeometry, material: RawShaderMaterial, isPoints = false): DrawnPart => ({
      geometry,
      material,
      isPoints,
    })
    return [
      part(wallGeometry(columns, rows), wall.far),
      ...(pair?.maxMm === undefined ? [] : [part(shellGeometry(), shell.material)]),
      part(doubtBandGeometry(columns, judgedLimits(pair)), doubtBand.material),
      part(glassGeometry(columns, rows), wall.near),
      part(provenGeometry(grid), wall.patches),
      ...(surface.length === 0 ? [] : [part(scarsOf(grid, surface, [], undefined), scars.material)]),
      part(ringsOf(grid, pair, stations), stroke.material),
      part(stationGeometry(discsOf(grid, stations)), paint.stations.material, true),
    ]
  }
}
