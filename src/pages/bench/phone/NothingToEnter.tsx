import { showPart } from '../../../session/session'
import { placeText } from '../../../words/numbers'
import { words } from '../../../words/words'
import { ClosingStep } from '../ClosingStep'
import type { Entry } from '../use-entry'
import type { OnBench } from '../use-job'

/** No station is in hand: none is planned, or all are read or passed over. */
export function NothingToEnter({ bench, entry }: { readonly bench: OnBench; readonly entry: Entry }) {
  const { rows, skipped } = entry
  const first = skipped[0]
  const outOfReach = rows.flat().filter(({ isUnreachable }) => isUnreachable)
  const last = rows.flat().findLast(({ reading }) => reading !== undefined)
  if (rows.every((row) => row.length === 0)) {
    return (
      <div className="nothing-to-enter">
        <h2>{words.grid.noLevels}</h2>
        <button type="button" className="button" onClick={() => showPart('set-up')}>
          {words.parts.narrow.setUp}
        </button>
      </div>
    )
  }
  return (
    <div className="nothing-to-enter">
      <h2>{words.next.allRead}</h2>
      {outOfReach.length > 0 ? (
        <p>{words.phone.outOfReach(words.app.and(outOfReach.map(placeText)))}</p>
      ) : null}
      {first ? (
        <>
          <p>{words.phone.skipped(words.app.and(skipped.map(placeText)))}</p>
          <button type="button" className="button" onClick={() => entry.goTo(first)}>
            {words.phone.measureSkipped}
          </button>
        </>
      ) : (
        <ClosingStep {...bench} />
      )}
      <div className="station-row">
        {last ? (
          <button type="button" onClick={() => entry.goTo(last)}>
            {words.next.back}
          </button>
        ) : null}
        <button type="button" onClick={() => showPart('set-up')}>
          {words.parts.narrow.setUp}
        </button>
        <button type="button" onClick={() => showPart('findings')}>
          {words.parts.narrow.findings}
        </button>
      </div>
    </div>
  )
}
