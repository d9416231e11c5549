import { type RefObject, useCallback, useLayoutEffect, useRef, useState } from 'react'

/** So many rows beyond each edge are there too, so that a quick hand meets no gap. */
const beyond = 4

export interface RowsInView {
  readonly list: RefObject<HTMLDivElement | null>
  readonly onScroll: () => void
  /** The first of the rows that are there, and the first after them. */
  readonly from: number
  readonly to: number
  /** Rows that fit in at once. */
  readonly page: number
  /** Brings a row into view. */
  readonly show: (index: number) => void
}

/** Which of many rows of one height are in view of the element that scrolls them beneath a head that stays. */
export function useRowsInView(count: number, rowHeight: number, headHeight: number): RowsInView {
  const list = useRef<HTMLDivElement>(null)
  const [first, setFirst] = useState(0)
  const [page, setPage] = useState(12)
  const onScroll = useCallback(() => {
    if (list.current) setFirst(Math.floor(list.current.scrollTop / rowHeight))
  }, [rowHeight])
  useLayoutEffect(() => {
    const element = list.current
    if (!element) return
    const measure = () => setPage(Math.max(1, Math.floor((element.clientHeight - headHeight) / rowHeight)))
    measure()
    const sizes = new ResizeObserver(measure)
    sizes.observe(element)
    return () => sizes.disconnect()
  }, [rowHeight, headHeight])
  const show = useCallback(
    (index: number) => {
      const element = list.current
      if (!element) return
      const top = index * rowHeight
      if (top < element.scrollTop) element.scrollTop = top
      const bottom = top + headHeight + rowHeight - element.clientHeight
      if (bottom > element.scrollTop) element.scrollTop = bottom
    },
    [rowHeight, headHeight],
  )
  // Fewer rows than before may leave the list scrolled past its end until the browser says so.
  const start = Math.min(first, Math.max(0, count - page))
  return {
    list,
    onScroll,
    show,
    page,
    from: Math.max(0, start - beyond),
    to: Math.min(count, start + page + 1 + beyond),
  }
}
