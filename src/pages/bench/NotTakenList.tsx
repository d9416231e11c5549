import { forgetNotTaken, type NotTaken } from '../../session/session'
import { placeText } from '../../words/numbers'
import { words } from '../../words/words'
import { useSession } from './use-job'

/** So many are listed; those before them come up as these go. */
const mostListed = 3

/** Numbers that were typed and gave way to others before they were taken: nobody has to type them twice. */
export function NotTakenList(props: {
  readonly surveyId: string
  readonly onPutBack: (one: NotTaken) => void
}) {
  const said = words.next
  const all = useSession((state) => state.notTaken)
  const here = all.filter(({ surveyId }) => surveyId === props.surveyId).slice(-mostListed)
  if (here.length === 0) return null
  return (
    <ul className="not-taken">
      {here.map((one) => (
        <li key={all.indexOf(one)}>
          <span>{said.notTaken(one.typed, one.at ? placeText(one.at) : '')}</span>
          <button
            type="button"
            className="quiet"
            aria-label={said.putBack(one.typed)}
            onClick={() => props.onPutBack(one)}
          >
            {said.putBackShort}
          </button>
          <button
            type="button"
            className="quiet"
            aria-label={said.forget(one.typed)}
            onClick={() => forgetNotTaken(one)}
          >
            {said.forgetShort}
          </button>
        </li>
      ))}
    </ul>
  )
}
