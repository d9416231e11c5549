/** What the page has drawn and when; kept by the probe in the page under test. */
export interface FrameProbe {
  /** Frames in which anything was drawn by WebGL. */
  frames: number
  /** When the last such frame was finished by the graphics, ms since navigation. */
  finishedAt: number
  /** Finishing times of the frames since the last input. */
  sinceInput: number[]
  /** When the last click or key came in, ms since navigation. */
  inputAt: number
  animationCallbacks: number
}

declare global {
  interface Window {
    frameProbe: FrameProbe
  }
}

/**
 * Runs in the page before its own scripts. Each frame is forced to its end by reading one pixel back, right
 * after the callback that drew it: a draw call by itself only queues work.
 */
export function installFrameProbe(): void {
  const probe: FrameProbe = { frames: 0, finishedAt: 0, sinceInput: [], inputAt: 0, animationCallbacks: 0 }
  window.frameProbe = probe
  const pixel = new Uint8Array(4)
  let waiting = false

  function finish(gl: WebGL2RenderingContext): void {
    waiting = false
    const bound = gl.getParameter(gl.READ_FRAMEBUFFER_BINDING)
    gl.bindFramebuffer(gl.READ_FRAMEBUFFER, null)
    gl.readPixels(0, 0, 1, 1, gl.RGBA, gl.UNSIGNED_BYTE, pixel)
    gl.bindFramebuffer(gl.READ_FRAMEBUFFER, bound)
    probe.frames += 1
    probe.finishedAt = performance.now()
    probe.sinceInput.push(probe.finishedAt)
  }

  const context = WebGL2RenderingContext.prototype
  for (const name of [
    'drawArrays',
    'drawElements',
    'drawArraysInstanced',
    'drawElementsInstanced',
  ] as const) {
    const draw: (...values: number[]) => void = context[name]
    Object.defineProperty(context, name, {
      value(this: WebGL2RenderingContext, ...values: number[]) {
        draw.apply(this, values)
        if (waiting) return
        waiting = true
        queueMicrotask(() => finish(this))
      },
    })
  }

  const request = window.requestAnimationFrame.bind(window)
  window.requestAnimationFrame = (callback) =>
    request((time) => {
      probe.animationCallbacks += 1
      callback(time)
    })

  for (const kind of ['click', 'keydown'] as const) {
    window.addEventListener(
      kind,
      (event) => {
        probe.inputAt = event.timeStamp
        probe.sinceInput = []
      },
      { capture: true },
    )
  }
}
