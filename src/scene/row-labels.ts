import { type BoreRow, drawnAt, type RowBore } from './bore-row'
import { DrawnPlaces } from './drawn-places'
import { outlineAt } from './label-places'
import { parts } from './place-labels'
import type { Label } from './stand-labels'

/** How far below the rim the name of a bore and its worst figure stand, CSS pixels. */
const belowPx = { title: 6, figure: 26 }

/** Name of each bore and its worst figure, below it; `offsets` in mm from the bore in hand. */
export function rowLabels(
  { bores }: BoreRow,
  offsets: readonly number[],
  exaggeration: number,
): readonly Label[] {
  const labels = bores.map((bore, index) => labelsOf(bore, offsets[index] ?? 0, exaggeration))
  return [...labels.map(({ title }) => title), ...labels.map(({ figure }) => figure)]
}

/** Under the middle of a bore, below the lowest place on the picture of its lower rim. */
function labelsOf(bore: RowBore, offsetMm: number, ofRow: number): { title: Label; figure: Label } {
  const { grid, pair } = bore
  const beside = { exaggeration: drawnAt(bore, ofRow), offsetMm }
  const rim = outlineAt({ grid, pair, beside }, grid.lengthMm)
  const middle = new DrawnPlaces({ middleMm: grid.middleMm, lengthMm: grid.lengthMm, beside }, [
    { angle: 0, depthMm: grid.lengthMm, deviationUm: 'axis' },
  ])
  const below = (part: keyof typeof belowPx): Label['offer'] => {
    const away = belowPx[part]
    return (view, room) => {
      if (!rim.lookFurthest(view, 0, 1) || !middle.look(view, 0)) return
      middle.y = rim.y + away
      room.offer(middle, parts.top)
    }
  }
  return {
    title: { text: bore.title, kind: 'bore', offer: below('title') },
    figure: { text: bore.figure, kind: 'figure', offer: below('figure') },
  }
}
