import { memo, useMemo } from 'react'
import type { MapPaint } from '../../charts/MapWall'
import { SmallMap } from '../../charts/SmallMap'
import type { LimitPair } from '../../core/findings'
import type { WallGrid } from '../../core/surface/wall-grid'
import { findingOf, mapGridOfBore } from '../../job/selectors'
import { chooseBore } from '../../session/session'
import { type BlockRow, blockRows } from '../../words/block'
import { words } from '../../words/words'
import type { OnBench } from './use-job'
import './bore-strip.css'

/** From this many bores on they are shown side by side: two are told apart by their tabs. */
export const stripFrom = 3

type PaintOf = (grid: WallGrid, pair: LimitPair | undefined) => MapPaint

const gap = 8
const mapHeight = 44
const widestMap = 140

/**
 * A small map of each bore with its name and how it stands; a press shows that bore. It may follow a little
 * after the rest of the page: typing does not wait for it.
 */
export const BoreStrip = memo(function BoreStrip(props: {
  readonly bench: OnBench
  readonly paintOf: PaintOf
  readonly width: number
}) {
  const { bench, paintOf, width } = props
  const rows = blockRows(bench.findings)
  const mapWidth = Math.min(widestMap, Math.floor((width - gap * (rows.length - 1)) / rows.length))
  return (
    <div className="bore-strip">
      {rows.map((row) => (
        <StripBore key={row.boreId} row={row} bench={bench} paintOf={paintOf} width={mapWidth} />
      ))}
    </div>
  )
})

function StripBore(props: {
  readonly row: BlockRow
  readonly bench: OnBench
  readonly paintOf: PaintOf
  readonly width: number
}) {
  const { row, bench, paintOf, width } = props
  const { job } = bench
  const grid = mapGridOfBore(job, row.boreId)
  const finding = findingOf(job, row.boreId)
  const bore = job.bores.find(({ id }) => id === row.boreId)
  const pair = finding?.pair
  const paint = useMemo(() => (grid ? paintOf(grid, pair) : undefined), [grid, pair, paintOf])
  if (!bore || !finding) return null
  return (
    <button
      type="button"
      className="strip-bore"
      title={words.block.choose(row.name)}
      aria-current={row.boreId === bench.bore.id}
      onClick={() => chooseBore(row.boreId)}
    >
      <SmallMap
        grid={grid}
        paint={paint}
        lengthMm={finding.drawnLengthMm}
        ports={bore.ports}
        pair={pair}
        width={width}
        height={mapHeight}
      />
      <span className="strip-name">{row.name}</span>
      <span className="strip-standing">{row.standingText}</span>
    </button>
  )
}
