import { setAxes, setLevels } from '../../job/commands'
import { setEntryOrder } from '../../session/session'
import { inShownUnit, lengthUnit } from '../../words/length-unit'
import { degrees, depth } from '../../words/numbers'
import { readNumbers } from '../../words/read-number'
import { words } from '../../words/words'
import { ChoiceField } from './ChoiceField'
import { useFieldLayout } from './field-layout'
import { lengthMarks } from './marks'
import { perform } from './perform'
import { type Refusal, TypedField } from './TypedField'
import type { OnBench } from './use-job'
import { useSession } from './use-job'

/**
 * Fields that add levels and axes to the survey's plan, one number or several with spaces between, and for
 * several bores the order they are read in.
 */
export function AddToPlan({ job, bore, survey }: OnBench) {
  const said = words.grid
  const addLevels = (typed: string): Refusal =>
    withNumbers(typed, (shown) => {
      const marks = lengthMarks(lengthUnit())
      const values = marks ? shown.map(marks.kept) : shown
      const twice = values.find((value) => survey.levelsMm.includes(value))
      if (twice !== undefined) return said.levelThere(depth(twice))
      return perform(words.changes.levels, (job) =>
        setLevels(job, bore.id, survey.id, [...survey.levelsMm, ...values]),
      )
    })
  const addAxes = (typed: string): Refusal =>
    withNumbers(typed, (values) => {
      const over = values.find((value) => value >= 180)
      if (over !== undefined) return said.axisTwice(degrees(over), degrees(over - 180))
      const twice = values.find((value) => survey.axesDegrees.includes(value))
      if (twice !== undefined) return said.axisThere(degrees(twice))
      return perform(words.changes.axes, (job) =>
        setAxes(job, bore.id, survey.id, [...survey.axesDegrees, ...values]),
      )
    })
  return (
    <p className="add-to-plan">
      <TypedField
        label={inShownUnit(said.newLevel)}
        text=""
        placeholder={said.addLevel}
        width={widthOf(said.addLevel)}
        commit={addLevels}
      />
      <TypedField
        label={said.newAxis}
        text=""
        placeholder={said.addAxis}
        width={widthOf(said.addAxis)}
        commit={addAxes}
      />
      {job.bores.length > 1 ? <OrderChoice /> : null}
    </p>
  )
}

/** In digits; English has room for more than it needs, since what is typed is longer. */
function widthOf(placeholder: string): number {
  return Math.max(14, placeholder.length)
}

/** Which of several bores comes next. */
function OrderChoice() {
  const order = useSession((state) => state.entryOrder)
  const isStacked = useFieldLayout() === 'stacked'
  const said = words.next
  const options = (['bore-by-bore', 'level-by-level'] as const).map((way) => ({
    value: way,
    text: said.orders[way],
  }))
  const choose = (way: string) => setEntryOrder(way === 'level-by-level' ? 'level-by-level' : 'bore-by-bore')
  if (isStacked) {
    return <ChoiceField label={said.orderLabel} value={order} options={options} onChoose={choose} />
  }
  return (
    <label className="wanted">
      {said.order}
      <select aria-label={said.orderLabel} value={order} onChange={(event) => choose(event.target.value)}>
        {options.map(({ value, text }) => (
          <option key={value} value={value}>
            {text}
          </option>
        ))}
      </select>
    </label>
  )
}

function withNumbers(typed: string, keep: (values: readonly number[]) => Refusal): Refusal {
  const read = readNumbers(typed)
  return read.ok ? keep(read.values) : words.number.refused[read.why]
}
