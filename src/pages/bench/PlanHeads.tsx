import type { ReactNode } from 'react'
import { moveAxis, moveLevel, removeAxis, removeLevel } from '../../job/commands'
import { degrees, depth } from '../../words/numbers'
import { words } from '../../words/words'
import { NumberField } from './NumberField'
import { perform } from './perform'
import type { OnBench } from './use-job'

/** Head of an axis's column: its angle can be corrected, or cleared to remove the axis. */
export function AxisHead({ bench, axisDegrees }: { readonly bench: OnBench; readonly axisDegrees: number }) {
  const { bore, survey } = bench
  const label = degrees(axisDegrees)
  const keep = (value: number | undefined) => {
    if (value === undefined) {
      const held = survey.readings.filter((reading) => reading.axisDegrees === axisDegrees).length
      if (held > 0 && !window.confirm(words.grid.removeAxisAsk(label, held))) return undefined
      return perform(words.changes.axes, (job) =>
        removeAxis(job, bore.id, survey.id, axisDegrees, { withReadings: true }),
      )
    }
    if (survey.axesDegrees.includes(value)) return words.grid.axisThere(degrees(value))
    return perform(words.changes.axes, (job) => moveAxis(job, bore.id, survey.id, axisDegrees, value))
  }
  const sides = words.grid.axisSides
  const side = axisDegrees === 0 ? sides.frontRear : axisDegrees === 90 ? sides.rightLeft : ''
  return (
    <th scope="col">
      <NumberField label={words.grid.editAxis(label)} value={axisDegrees} none="" keep={keep} />°
      <small>{side}</small>
    </th>
  )
}

/** Head of a level's row: its depth can be corrected, or cleared to remove the level. */
export function LevelHead(props: {
  readonly bench: OnBench
  readonly depthMm: number
  readonly children: ReactNode
}) {
  const { bench, depthMm, children } = props
  const { bore, survey } = bench
  const label = depth(depthMm)
  const keep = (value: number | undefined) => {
    if (value === undefined) {
      const held = survey.readings.filter((reading) => reading.depthMm === depthMm).length
      if (held > 0 && !window.confirm(words.grid.removeLevelAsk(label, held))) return undefined
      return perform(words.changes.levels, (job) =>
        removeLevel(job, bore.id, survey.id, depthMm, { withReadings: true }),
      )
    }
    if (survey.levelsMm.includes(value)) return words.grid.levelThere(depth(value))
    return perform(words.changes.levels, (job) => moveLevel(job, bore.id, survey.id, depthMm, value))
  }
  return (
    <th scope="row" className="level-head">
      {children}
      <NumberField label={words.grid.editLevel(label)} length value={depthMm} none="" keep={keep} />
    </th>
  )
}
