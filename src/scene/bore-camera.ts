import CameraControls from 'camera-controls'
import {
  Box3,
  Matrix4,
  type PerspectiveCamera,
  Quaternion,
  Raycaster,
  Sphere,
  Spherical,
  Vector2,
  Vector3,
  Vector4,
} from 'three'
import { type Aim, type Extent, fitCamera, type Margins } from './camera-fit'
import type { Box } from './place-labels'

CameraControls.install({
  THREE: { Box3, Matrix4, Quaternion, Raycaster, Sphere, Spherical, Vector2, Vector3, Vector4 },
})

/** A side of the wall to look at, straight down the bore, or wherever the picture was turned to. */
export type ViewName = 'front' | 'right' | 'rear' | 'left' | 'above' | 'free'

const sideAngles = { front: 0, right: Math.PI / 2, rear: Math.PI, left: -Math.PI / 2 } as const
/** Looking a little down into the bore, so that its mouth shows as an ellipse. */
const sidePolar = (67 * Math.PI) / 180
const turnStep = (15 * Math.PI) / 180
const tiltStep = (10 * Math.PI) / 180
const zoomStep = 1.2
/** Longest first step of an eased move, s: what went by before it must not swallow the move. */
const longestFirstStep = 0.1
/** So many seconds end any move. */
const wholeMove = 60
/** A move that has less than this to go has arrived, rad and shares of the distance: less than a third of a pixel. */
const arrived = 3e-4
/** Planes that cut off what is too near or too far need not follow a change as small as this, mm. */
const trifle = 0.1

/** A place of the wall to look at, or the whole wall on a side, or straight down the bore. */
export interface PlaceAim {
  readonly from: 'side' | 'above'
  /** Degrees clockwise seen from the deck; the front where absent. */
  readonly angleDegrees?: number
  readonly depthMm?: number
  /** Of the bore that is looked at. */
  readonly lengthMm: number
}

/** How much nearer a place is looked at than the whole bore. */
const nearer = 0.72
/** Seconds that a move takes, about: by a button, and while somebody listens. */
const pace = { button: 0.16, told: 0.5 }

/** The eye stands opposite the side it looks at, so that this side is the far wall. */
function aimAt(name: Exclude<ViewName, 'free'>): Aim {
  if (name === 'above') return { azimuth: Math.PI, polar: 0 }
  return { azimuth: Math.PI - sideAngles[name], polar: sidePolar }
}

export interface BoreCameraSurroundings {
  readonly margins: () => Margins
  /** Boxes at the corners that nothing may be drawn under, CSS pixels. */
  readonly corners: () => readonly Box[]
  /** The picture was moved by hand. */
  readonly onMoved: () => void
  /** A frame is needed. */
  readonly invalidate: () => void
}

/** Moves the eye round the bore: eased, interruptible, and at once for those who prefer less motion. */
export class BoreCamera {
  readonly #camera: PerspectiveCamera
  readonly #controls: CameraControls
  readonly #around: BoreCameraSurroundings
  readonly #calm = window.matchMedia('(prefers-reduced-motion: reduce)')
  #bores: readonly Extent[] = []
  #width = 1
  #height = 1
  readonly #goal = new Goal()
  readonly #way = new Way()
  #isMoving = false
  /** A hand has hold of it, and has moved it nowhere yet. */
  #isHeldStill = false

  constructor(camera: PerspectiveCamera, element: HTMLElement, around: BoreCameraSurroundings) {
    this.#camera = camera
    this.#around = around
    this.#controls = new CameraControls(camera, element)
    this.#controls.smoothTime = pace.button
    this.#controls.draggingSmoothTime = 0.04
    this.#controls.minPolarAngle = 0
    this.#controls.maxPolarAngle = (115 * Math.PI) / 180
    this.#controls.addEventListener('controlstart', () => {
      this.#goal.moves(this.#controls)
      this.#isHeldStill = true
      around.invalidate()
    })
    this.#controls.addEventListener('control', () => {
      // A finger that scrolls the page moves nothing here, and is told of all the same.
      if (this.#isHeldStill && this.#goal.moves(this.#controls)) this.#isHeldStill = false
      if (!this.#isHeldStill) around.onMoved()
      around.invalidate()
    })
    this.#controls.addEventListener('controlend', () => {
      this.#isHeldStill = false
    })
    this.#controls.addEventListener('transitionstart', around.invalidate)
  }

  /** From the eye to the middle of the bore, mm. */
  get distance(): number {
    return this.#controls.distance
  }

  /** Where it looks from, once the move in hand is over. */
  get aim(): Aim {
    const end = this.#controls.getSpherical(new Spherical(), true)
    return { azimuth: end.theta, polar: end.phi }
  }

  /** One finger turns the bore, or scrolls the page and two fingers turn. */
  setOneFingerTurns(oneFingerTurns: boolean, element: HTMLElement): void {
    const { ACTION } = CameraControls
    this.#controls.touches.one = oneFingerTurns ? ACTION.TOUCH_ROTATE : ACTION.NONE
    this.#controls.touches.two = oneFingerTurns ? ACTION.TOUCH_DOLLY_TRUCK : ACTION.TOUCH_DOLLY_ROTATE
    element.style.touchAction = oneFingerTurns ? 'none' : 'pan-x pan-y'
  }

  /** The wheel comes nearer, or scrolls the page. */
  setWheelZooms(zooms: boolean): void {
    this.#controls.mouseButtons.wheel = zooms ? CameraControls.ACTION.DOLLY : CameraControls.ACTION.NONE
  }

  /** What a fitted view must hold. */
  setExtent(bores: readonly Extent[]): void {
    this.#bores = bores
  }

  resize(width: number, height: number): void {
    this.#width = width
    this.#height = height
  }

  show(name: Exclude<ViewName, 'free'>, eased: boolean): void {
    const aim = aimAt(name)
    this.#goTo({ azimuth: this.#nearest(aim.azimuth), polar: aim.polar }, eased)
  }

  /** Goes to a place, slowly enough to be followed by the eye. */
  lookAt({ from, angleDegrees = 0, depthMm, lengthMm }: PlaceAim, eased: boolean): void {
    const angle = (angleDegrees * Math.PI) / 180
    const aim = from === 'above' ? aimAt('above') : { azimuth: Math.PI - angle, polar: sidePolar }
    const azimuth = this.#nearest(aim.azimuth)
    const whole = this.#goTo({ azimuth, polar: aim.polar }, eased, pace.told)
    if (from === 'above' || depthMm === undefined) return
    const transition = this.#eases(eased)
    void this.#controls.setTarget(0, (lengthMm / 2 - depthMm) / 2, 0, transition)
    void this.#controls.dollyTo(whole * nearer, transition)
  }

  /** The whole bore along a line of sight, at once. */
  lookAlong(aim: Aim): void {
    this.#goTo(aim, false)
  }

  /** Goes where another eye is going. */
  follow(camera: BoreCamera, eased: boolean): void {
    const other = camera.#controls
    const end = other.getSpherical(new Spherical(), true)
    const target = other.getTarget(new Vector3(), true)
    const shift = other.getFocalOffset(new Vector3(), true)
    const transition = this.#eases(eased)
    void this.#controls.rotateTo(end.theta, end.phi, transition)
    void this.#controls.setTarget(target.x, target.y, target.z, transition)
    void this.#controls.setFocalOffset(shift.x, shift.y, shift.z, transition)
    void this.#controls.dollyTo(end.radius, transition)
    this.#around.invalidate()
  }

  /** The whole bore from where the eye is. */
  fit(eased: boolean): void {
    this.#goTo(this.aim, eased)
  }

  /** Turns by steps, so that the wall in view moves on clockwise seen from the deck; tilts by steps upward. */
  turn(steps: number, tilts = 0): void {
    void this.#controls.rotate(-steps * turnStep, -tilts * tiltStep, this.#eases(true))
    this.#around.invalidate()
  }

  zoom(steps: number): void {
    void this.#controls.dollyTo(this.#controls.distance / zoomStep ** steps, this.#eases(true))
    this.#around.invalidate()
  }

  /** Moves the picture by shares of its height, to the right and down. */
  pan(right: number, down: number): void {
    const height = 2 * this.#controls.distance * Math.tan((this.#camera.fov * Math.PI) / 360)
    void this.#controls.truck(-right * height, -down * height, this.#eases(true))
    this.#around.invalidate()
  }

  /** Moves on by a frame; true while there is more to come. */
  update(seconds: number): boolean {
    // A machine that draws slowly makes few steps of a move, not a slow move.
    this.#isMoving = this.#controls.update(this.#isMoving ? seconds : Math.min(seconds, longestFirstStep))
    if (this.#isMoving && this.#way.left(this.#controls) < arrived) {
      this.#controls.update(wholeMove)
      this.#isMoving = false
    }
    const far = this.#controls.distance + 600
    const near = Math.max(1, this.#camera.position.length() - 400)
    if (Math.abs(this.#camera.near - near) > trifle || Math.abs(this.#camera.far - far) > trifle) {
      this.#camera.near = near
      this.#camera.far = far
      this.#camera.updateProjectionMatrix()
    }
    this.#camera.updateMatrixWorld()
    return this.#isMoving
  }

  dispose(): void {
    this.#controls.dispose()
  }

  /** Gives the distance that it goes to, mm. */
  #goTo(aim: Aim, eased: boolean, seconds: number = pace.button): number {
    const { distance, shiftUp } = fitCamera(this.#bores, aim, {
      width: this.#width,
      height: this.#height,
      fieldOfView: (this.#camera.fov * Math.PI) / 180,
      margins: this.#around.margins(),
      corners: this.#around.corners(),
    })
    const transition = this.#eases(eased)
    this.#controls.smoothTime = seconds
    this.#controls.minDistance = distance * 0.25
    this.#controls.maxDistance = distance * 3
    void this.#controls.rotateTo(aim.azimuth, aim.polar, transition)
    void this.#controls.setTarget(0, 0, 0, transition)
    void this.#controls.setFocalOffset(0, -shiftUp, 0, transition)
    void this.#controls.dollyTo(distance, transition)
    this.#around.invalidate()
    return distance
  }

  #eases(wanted: boolean): boolean {
    return wanted && !this.#calm.matches
  }

  /** The turn nearest to the present one that ends at an azimuth. */
  #nearest(azimuth: number): number {
    const turn = 2 * Math.PI
    return azimuth + Math.round((this.#controls.azimuthAngle - azimuth) / turn) * turn
  }
}

/** How far an eye has to go. */
class Way {
  readonly #now = new Spherical()
  readonly #end = new Spherical()
  readonly #from = new Vector3()
  readonly #to = new Vector3()

  /** The largest of what is left to turn, rad, and to move, as a share of the distance. */
  left(controls: CameraControls): number {
    controls.getSpherical(this.#now, false)
    controls.getSpherical(this.#end, true)
    const { theta, phi, radius } = this.#end
    const turn = Math.max(Math.abs(theta - this.#now.theta), Math.abs(phi - this.#now.phi))
    controls.getTarget(this.#from, false)
    const target = this.#from.distanceTo(controls.getTarget(this.#to, true))
    controls.getFocalOffset(this.#from, false)
    const offset = this.#from.distanceTo(controls.getFocalOffset(this.#to, true))
    return Math.max(turn, Math.max(Math.abs(radius - this.#now.radius), target, offset) / radius)
  }
}

/** Where an eye is going. */
class Goal {
  readonly #from = new Spherical()
  readonly #target = new Vector3()
  readonly #fromBefore = new Spherical()
  readonly #targetBefore = new Vector3()

  /** Whether it goes elsewhere now than when this was asked last. */
  moves(controls: CameraControls): boolean {
    this.#fromBefore.copy(this.#from)
    this.#targetBefore.copy(this.#target)
    controls.getSpherical(this.#from, true)
    controls.getTarget(this.#target, true)
    const { radius, phi, theta } = this.#from
    const before = this.#fromBefore
    const isTurned = theta !== before.theta || phi !== before.phi
    return isTurned || radius !== before.radius || !this.#target.equals(this.#targetBefore)
  }
}
