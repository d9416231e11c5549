import { writeLengthsIn } from '../words/length-unit'
import { handedPage, unpackedWalls } from './handed-page'
import type { HandedWall } from './handed-wall'
import { moveOfKey } from './picture-keys'
import { TurningBore } from './turning-bore'

/** Everything of a wall on the page: its still picture, and what turns in its place while it is in view. */
class TurnedPicture {
  readonly #place: HTMLElement
  readonly #wall: HandedWall
  readonly #together: readonly TurnedPicture[]
  readonly #frame = document.createElement('div')
  readonly #buttons = document.createElement('div')
  #bore: TurningBore | undefined
  #fingerTurns = !window.matchMedia('(pointer: coarse)').matches

  constructor(place: HTMLElement, wall: HandedWall, together: readonly TurnedPicture[]) {
    this.#place = place
    this.#wall = wall
    this.#together = together
    this.#frame.className = 'bore-picture turning'
    this.#buttons.className = 'turning-buttons'
    this.#frame.tabIndex = 0
    this.#frame.setAttribute('role', 'application')
    this.#frame.setAttribute('aria-label', `${wall.texts.picture}. ${wall.texts.turning.keys}`)
    this.#frame.addEventListener('keydown', (event) => this.#press(event))
    this.#frame.addEventListener('focus', () => this.#bore?.camera.setWheelZooms(true))
    this.#frame.addEventListener('blur', () => this.#bore?.camera.setWheelZooms(false))
    this.#frame.addEventListener('pointerdown', () => this.#frame.focus({ preventScroll: true }))
    this.#makeButtons()
  }

  /** Begins to draw, where the browser can: until then, and without WebGL, the still picture stays. */
  start(): void {
    if (this.#bore) return
    this.#place.append(this.#frame)
    this.#bore = TurningBore.in(this.#frame, this.#wall, {
      onMoved: () => this.#bringTheOthers(false),
      onLost: () => this.stop(),
    })
    if (!this.#bore) {
      this.#frame.remove()
      return
    }
    this.#place.classList.add('is-turning')
    if (this.#together[0] === this) this.#place.closest(`.${handedPage.pictures}`)?.append(this.#buttons)
    this.#bore.camera.setWheelZooms(document.activeElement === this.#frame)
    this.#letFingers()
  }

  /** Lets go of the graphics, which a browser has for a few pictures only. */
  stop(): void {
    const bore = this.#bore
    this.#bore = undefined
    bore?.dispose()
    this.#frame.remove()
    this.#buttons.remove()
    this.#place.classList.remove('is-turning')
  }

  #press(event: KeyboardEvent): void {
    const move = moveOfKey(event)
    if (!move || !this.#bore) return
    event.preventDefault()
    move(this.#bore.camera)
    this.#bringTheOthers(true)
  }

  #bringTheOthers(eased: boolean): void {
    for (const other of this.#together) {
      if (other !== this && this.#bore) other.#bore?.camera.follow(this.#bore.camera, eased)
    }
  }

  #letFingers(): void {
    this.#bore?.camera.setOneFingerTurns(this.#fingerTurns, this.#frame)
  }

  #makeButtons(): void {
    const { turning } = this.#wall.texts
    const button = (text: string, press: (bore: TurningBore, button: HTMLButtonElement) => void) => {
      const element = document.createElement('button')
      element.type = 'button'
      element.textContent = text
      element.addEventListener('click', () => {
        if (this.#bore) press(this.#bore, element)
        this.#bringTheOthers(true)
      })
      this.#buttons.append(element)
    }
    button(turning.turnLeft, ({ camera }) => camera.turn(-1))
    button(turning.turnRight, ({ camera }) => camera.turn(1))
    button(turning.closer, ({ camera }) => camera.zoom(1))
    button(turning.further, ({ camera }) => camera.zoom(-1))
    button(turning.above, ({ camera }) => camera.show('above', true))
    button(turning.whole, ({ camera }) => camera.show('front', true))
    if (this.#fingerTurns) {
      const keys = document.createElement('p')
      keys.textContent = turning.keys
      this.#buttons.append(keys)
      return
    }
    button(turning.byFinger, (_, element) => {
      this.#fingerTurns = !this.#fingerTurns
      element.textContent = this.#fingerTurns ? turning.fingerDone : turning.byFinger
      this.#letFingers()
    })
  }
}

/** Turns each wall of the page while it is in view. */
async function turnBores(): Promise<void> {
  if (!document.createElement('canvas').getContext('webgl2')) return
  const packed = document.getElementById(handedPage.walls)
  if (!(packed instanceof HTMLTemplateElement)) return
  const walls = await unpackedWalls(packed.content.textContent ?? '')
  // All walls are of one job, in its unit.
  writeLengthsIn(walls[0]?.texts.unit ?? 'mm')
  const groups = new Map<string, TurnedPicture[]>()
  const pictures = new Map<Element, TurnedPicture>()
  for (const place of document.querySelectorAll<HTMLElement>(`[${handedPage.wall}]`)) {
    const wall = walls[Number(place.getAttribute(handedPage.wall))]
    const group = place.getAttribute(handedPage.group) ?? ''
    const together = groups.get(group) ?? []
    groups.set(group, together)
    if (!wall) continue
    place.parentElement?.classList.remove(handedPage.empty)
    const picture = new TurnedPicture(place, wall, together)
    together.push(picture)
    pictures.set(place, picture)
  }
  const seen = new IntersectionObserver(
    (changes) => {
      for (const { target, isIntersecting } of changes) {
        if (isIntersecting) pictures.get(target)?.start()
        else pictures.get(target)?.stop()
      }
    },
    { rootMargin: '30% 0px' },
  )
  for (const place of pictures.keys()) seen.observe(place)
}

// Where a browser cannot unpack the walls, the still pictures stay: the page is whole without this.
if ('DecompressionStream' in window && 'IntersectionObserver' in window) void turnBores()
