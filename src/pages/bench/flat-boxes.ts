import type { ChartName } from '../../session/session'
import type { Size } from './use-size'

/** How the flat views share their room, pixels. */
export interface FlatBoxes {
  readonly isRow: boolean
  readonly chart: Size
  /** What is said of the chart stands below it, not beside it. */
  readonly isSideBelow: boolean
  /** About as wide as a letter of a label is. */
  readonly letter: number
}

/** Width of the tabs beside the view, with the gap after them. */
const tabs = 64
const side = 164
const gap = 12
const margin = 12
const leastHeight = 224

/**
 * In a wide place the tabs stand at the left and what is said of a chart at its right. In a narrow or a tall one
 * that is said below; tabs are in a row above where the place is as narrow as a phone.
 */
export function flatBoxes({ width, height }: Size, shown: ChartName): FlatBoxes {
  const isRow = width < 440
  const letter = isRow ? 6.7 : 6.2
  if (shown === 'map') {
    return { isRow, chart: { width: isRow ? width : width - tabs, height }, isSideBelow: false, letter }
  }
  const room = width - (isRow ? 2 * margin : tabs)
  const isSideBelow = room < 420 || height > 400
  const most = shown === 'section' ? 1 : 1.2
  const chartHeight = isSideBelow
    ? Math.min(Math.round(room * most), Math.max(270, height - 180))
    : Math.max(leastHeight, height)
  return {
    isRow,
    chart: { width: isSideBelow ? room : room - side - gap, height: chartHeight },
    isSideBelow,
    letter,
  }
}
