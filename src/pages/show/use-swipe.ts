import { type TouchEvent, useRef } from 'react'

/** A finger that goes this far across, CSS pixels, and half as far up or down at most, swipes. */
const least = 48

/**
 * A swipe across, as handlers of an element. Touches and no pointers: a browser that scrolls takes the pointer away,
 * and tells of the touch to its end.
 */
export function useSwipe(onSwipe: (to: 'next' | 'back') => void) {
  const start = useRef<{ readonly x: number; readonly y: number }>(undefined)
  return {
    onTouchStart({ touches }: TouchEvent) {
      const [one, other] = [touches[0], touches[1]]
      start.current = one && !other ? { x: one.clientX, y: one.clientY } : undefined
    },
    onTouchEnd({ changedTouches }: TouchEvent) {
      const end = changedTouches[0]
      const from = start.current
      start.current = undefined
      if (!from || !end) return
      const [across, down] = [end.clientX - from.x, end.clientY - from.y]
      if (Math.abs(across) < least || Math.abs(down) > Math.abs(across) / 2) return
      onSwipe(across < 0 ? 'next' : 'back')
    },
    onTouchCancel() {
      start.current = undefined
    },
  }
}
