import type { Place } from '../../../core/findings'
import { setBelts } from '../../../job/commands'
import { newId } from '../../../job/new-id'
import { depth, depthFigure, placeText } from '../../../words/numbers'
import { words } from '../../../words/words'
import { perform } from '../perform'
import type { OnBench } from '../use-job'

/** Half the width of a belt round a level that nobody can reach, mm. */
const halfBeltMm = 2

/**
 * A place that the gauge cannot reach: written down for this station alone, or as a belt, a depth that cannot be
 * measured all round.
 */
export function Unreachable(props: {
  readonly bench: OnBench
  readonly place: Place
  readonly onOnly: () => void
  /** The station is out of reach by a belt now. */
  readonly onBelt: () => void
  readonly onDone: () => void
}) {
  const { bench, place, onOnly, onBelt, onDone } = props
  const { bore, survey } = bench
  const said = words.phone.unreachable
  const belt = beltRound(place.depthMm, bore.lengthMm)
  // With a reading at this depth it was not out of reach all round.
  const canBelt = survey.readings.every(({ depthMm }) => depthMm < belt.from || depthMm > belt.to)
  const addBelt = () => {
    const band = { id: newId(), name: said.beltName, fromDepthMm: belt.from, toDepthMm: belt.to }
    perform(words.changes.belts, (job) => setBelts(job, bore.id, [...bore.belts, band]))
    onBelt()
    onDone()
  }
  return (
    <fieldset className="unreachable" aria-label={said.asked(placeText(place))}>
      <p>{canBelt ? said.beltMeans(depthFigure(belt.from), depth(belt.to)) : said.onlyMeans}</p>
      <div className="station-row">
        <button type="button" onClick={onDone}>
          {words.app.cancel}
        </button>
        <button
          type="button"
          onClick={() => {
            onOnly()
            onDone()
          }}
        >
          {said.only}
        </button>
        {canBelt ? (
          <button type="button" onClick={addBelt}>
            {said.belt(depth(place.depthMm))}
          </button>
        ) : null}
      </div>
    </fieldset>
  )
}

function beltRound(depthMm: number, lengthMm: number | undefined) {
  const to = depthMm + halfBeltMm
  return {
    from: Math.max(0, depthMm - halfBeltMm),
    to: lengthMm === undefined ? to : Math.max(depthMm, Math.min(lengthMm, to)),
  }
}
