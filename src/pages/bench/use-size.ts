import { type RefObject, useLayoutEffect, useRef, useState } from 'react'

export interface Size {
  readonly width: number
  readonly height: number
}

/** Inner size of an element, whole pixels; while it is not shown, the one it had last. */
export function useSize(): readonly [RefObject<HTMLElement | null>, Size | undefined] {
  const ref = useRef<HTMLElement>(null)
  const [size, setSize] = useState<Size>()
  useLayoutEffect(() => {
    const element = ref.current
    if (!element) return
    const measure = () => {
      const { clientWidth: width, clientHeight: height } = element
      if (width === 0 || height === 0) return
      setSize((before) => (before?.width === width && before.height === height ? before : { width, height }))
    }
    measure()
    const resized = new ResizeObserver(measure)
    resized.observe(element)
    return () => resized.disconnect()
  }, [])
  return [ref, size]
}
