import type { BoreCamera } from './bore-camera'

const panStep = 0.06

type Move = (camera: BoreCamera) => void

const moves: Readonly<Record<string, Move>> = {
  ArrowLeft: (camera) => camera.turn(-1),
  ArrowRight: (camera) => camera.turn(1),
  ArrowUp: (camera) => camera.turn(0, 1),
  ArrowDown: (camera) => camera.turn(0, -1),
  '+': (camera) => camera.zoom(1),
  '=': (camera) => camera.zoom(1),
  '-': (camera) => camera.zoom(-1),
  '−': (camera) => camera.zoom(-1),
  Home: (camera) => camera.show('front', true),
}

const shifted: Readonly<Record<string, Move>> = {
  ArrowLeft: (camera) => camera.pan(-panStep, 0),
  ArrowRight: (camera) => camera.pan(panStep, 0),
  ArrowUp: (camera) => camera.pan(0, -panStep),
  ArrowDown: (camera) => camera.pan(0, panStep),
}

interface KeyPress {
  readonly key: string
  readonly shiftKey: boolean
  readonly ctrlKey: boolean
  readonly altKey: boolean
  readonly metaKey: boolean
}

/** The move that a key stands for; undefined where the key is not the picture's. */
export function moveOfKey(press: KeyPress): Move | undefined {
  if (press.ctrlKey || press.altKey || press.metaKey) return undefined
  return (press.shiftKey ? shifted[press.key] : undefined) ?? moves[press.key]
}
