import type { Page } from '@playwright/test'

/** A finger in a glove hits what is this wide and high, CSS pixels. */
const least = 44

/**
 * What is wrong with where things stand on the page as it is shown: a page that scrolls sideways, something to
 * press or to fill in that is cut off at a side, too small for a finger, or over another such thing; text that
 * runs out of its box. What lies below the end of a part that scrolls is left out.
 */
export async function troublesOf(page: Page): Promise<string[]> {
  return page.evaluate((least) => {
    const troubles: string[] = []
    const { clientWidth, scrollWidth, clientHeight, scrollHeight } = document.documentElement
    if (scrollWidth > clientWidth) troubles.push(`the page is ${scrollWidth} wide`)
    if (scrollHeight > clientHeight) troubles.push(`the page is ${scrollHeight} high`)

    const isSeen = (element: Element) =>
      element.checkVisibility({ visibilityProperty: true }) && !element.closest('.only-heard, [popover]')
    const nameOf = (element: Element) =>
      `${element.tagName.toLowerCase()}.${element.className} "${(element.getAttribute('aria-label') ?? element.textContent ?? '').trim().slice(0, 40)}"`
    const shownBox = (element: Element) => {
      const box = element.getBoundingClientRect()
      let [left, top, right, bottom] = [box.left, box.top, box.right, box.bottom]
      for (let up = element.parentElement; up; up = up.parentElement) {
        const style = getComputedStyle(up)
        const edge = up.getBoundingClientRect()
        if (style.overflowX !== 'visible')
          [left, right] = [Math.max(left, edge.left), Math.min(right, edge.right)]
        if (style.overflowY !== 'visible')
          [top, bottom] = [Math.max(top, edge.top), Math.min(bottom, edge.bottom)]
      }
      return { element, box, left, top, right, bottom }
    }
    const scrollsSideways = (element: Element) =>
      element.closest('.repeats, .bore-strip, .plan-grid, .kept-list') !== null

    const pressed = [...document.querySelectorAll('button, input:not([hidden]), select, summary')]
      .filter(isSeen)
      .map(shownBox)
      .filter(({ left, top, right, bottom }) => right - left > 0 && bottom - top > 0)
    for (const { element, box, left, right } of pressed) {
      if (box.left < -0.5 || box.right > innerWidth + 0.5 || right - left < box.width - 0.5) {
        if (!scrollsSideways(element)) troubles.push(`cut at a side: ${nameOf(element)}`)
      }
      // A row is hit as a whole where its button covers it.
      const covers = getComputedStyle(element, '::after').position === 'absolute'
      const hit = covers ? (element.closest('li, tr') ?? element).getBoundingClientRect() : box
      if (Math.min(hit.width, hit.height) < least - 0.5) {
        troubles.push(`${hit.width.toFixed(0)} × ${hit.height.toFixed(0)}: ${nameOf(element)}`)
      }
    }
    for (const [index, one] of pressed.entries()) {
      for (const other of pressed.slice(index + 1)) {
        if (one.element.contains(other.element) || other.element.contains(one.element)) continue
        const across = Math.min(one.right, other.right) - Math.max(one.left, other.left)
        const down = Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top)
        if (across > 1 && down > 1) troubles.push(`${nameOf(one.element)} over ${nameOf(other.element)}`)
      }
    }
    for (const element of document.querySelectorAll(
      'h2, p, .finding-detail span, .finding-figure, .part-bar button, .pad-key, .station-row button',
    )) {
      if (isSeen(element) && element.scrollWidth > element.clientWidth + 1 && element.clientWidth > 0) {
        troubles.push(`runs out of its box: ${nameOf(element)}`)
      }
    }
    return troubles
  }, least)
}
