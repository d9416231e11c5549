import { createRoot, type ReconcilerRoot, type RootStore } from '@react-three/fiber'
import type { ReactNode } from 'react'
import { WebGLRenderer } from 'three'
import { cameraStart } from './camera-start'

/** Why the picture cannot be seen, or that it can be seen again. */
export type Trouble = 'no-webgl' | 'context-lost' | 'restored'

/** A canvas with its own tree of things to draw; frames only on demand. */
export interface PictureStage {
  render(scene: ReactNode): RootStore
  dispose(): void
}

/**
 * A canvas in a host element, with colours as the shaders write them. Undefined, after telling why, where
 * there is no WebGL 2. The canvas is new each time: a context given up cannot be had again from the old one.
 */
export function openStage(
  host: HTMLElement,
  onTrouble: (trouble: Trouble) => void,
): PictureStage | undefined {
  const canvas = document.createElement('canvas')
  const context = canvas.getContext('webgl2', { antialias: true, alpha: true, premultipliedAlpha: true })
  if (!context) {
    onTrouble('no-webgl')
    return undefined
  }
  host.append(canvas)
  const root = createRoot(canvas)
  void configure(root, context, host)
  const store = root.render(null)
  const resized = new ResizeObserver(() => {
    const { clientWidth, clientHeight } = host
    if (clientWidth > 0 && clientHeight > 0) store.getState().setSize(clientWidth, clientHeight)
  })
  resized.observe(host)
  const lost = () => onTrouble('context-lost')
  const restored = () => {
    store.getState().invalidate()
    onTrouble('restored')
  }
  canvas.addEventListener('webglcontextlost', lost)
  canvas.addEventListener('webglcontextrestored', restored)
  return {
    render: (scene) => root.render(scene),
    dispose() {
      resized.disconnect()
      canvas.removeEventListener('webglcontextlost', lost)
      canvas.removeEventListener('webglcontextrestored', restored)
      root.unmount()
      canvas.remove()
    },
  }
}

function configure(
  root: ReconcilerRoot<HTMLCanvasElement>,
  context: WebGL2RenderingContext,
  host: HTMLElement,
): PromiseLike<unknown> {
  return root.configure({
    flat: true,
    frameloop: 'demand',
    dpr: [1, 2],
    size: { width: host.clientWidth || 1, height: host.clientHeight || 1, top: 0, left: 0 },
    camera: cameraStart,
    gl: (defaults) => new WebGLRenderer({ ...defaults, context, antialias: true, alpha: true }),
  })
}
