import { mostCompared } from '../../job/compared'
import { compare } from '../../session/comparing'
import { comparedTitle, largestFigure } from '../../words/compared'
import { words } from '../../words/words'
import type { OnCompare } from './use-compared'

/** A box to check for each bore and survey. */
export function ChooseCompared({ on }: { readonly on: OnCompare }) {
  const { job, all, shown } = on
  const said = words.compare
  const isFull = shown.length >= mostCompared
  const toggle = (key: string, isShown: boolean) => {
    const before = shown.map((one) => one.key)
    compare(job.id, { shown: isShown ? before.filter((one) => one !== key) : [...before, key] })
  }
  return (
    <fieldset className="compare-part">
      <legend>{said.title}</legend>
      <p className="aside">{isFull ? said.full : said.lead}</p>
      {all.map((one) => {
        const isShown = shown.includes(one)
        return (
          <label key={one.key} className="compare-box">
            <input
              type="checkbox"
              checked={isShown}
              disabled={isFull && !isShown}
              onChange={() => toggle(one.key, isShown)}
            />
            <span>{comparedTitle(one)}</span>
            <small>{largestFigure(one.finding)}</small>
          </label>
        )
      })}
    </fieldset>
  )
}
