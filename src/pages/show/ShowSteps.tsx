import { ownerWords } from '../../words/owner-words'
import type { Talk } from './use-talk'

/** Back, which of the things told it is, and next. */
export function ShowSteps(props: { readonly talk: Talk; readonly onGoTo: (step: number) => void }) {
  const { talk, onGoTo } = props
  const { steps, at } = talk
  const said = ownerWords.show
  return (
    <nav className="show-steps" aria-label={said.steps} title={said.keys}>
      <button type="button" aria-disabled={at === 0} onClick={() => onGoTo(at - 1)}>
        {said.back}
      </button>
      <ol className="show-dots">
        {steps.map(({ topic, heading }, index) => (
          <li key={topic}>
            <button
              type="button"
              aria-label={said.goTo(index + 1, heading)}
              aria-current={index === at ? 'step' : undefined}
              onClick={() => onGoTo(index)}
            />
          </li>
        ))}
      </ol>
      <p className="show-count">{said.step(at + 1, steps.length)}</p>
      <button
        type="button"
        className="is-next"
        aria-disabled={at === steps.length - 1}
        onClick={() => onGoTo(at + 1)}
      >
        {said.next}
      </button>
    </nav>
  )
}
