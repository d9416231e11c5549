import { words } from '../../words/words'

/** Beside a chart: which level or axis it is, the way to the next, and what the readings there say. */
export function ChartSide(props: {
  readonly title: string
  readonly before: { readonly label: string; readonly go: (() => void) | undefined }
  readonly after: { readonly label: string; readonly go: (() => void) | undefined }
  readonly sentences: readonly string[]
}) {
  const { title, before, after, sentences } = props
  return (
    <div className="chart-side">
      <div className="chart-step">
        <StepButton {...before} mark="‹" />
        <strong>{title}</strong>
        <StepButton {...after} mark="›" />
      </div>
      {[...sentences, words.charts.between].map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
    </div>
  )
}

function StepButton(props: {
  readonly label: string
  readonly mark: string
  readonly go: (() => void) | undefined
}) {
  const { label, mark, go } = props
  return (
    <button
      type="button"
      className="chart-step-button"
      aria-label={label}
      title={label}
      disabled={!go}
      onClick={go}
    >
      {mark}
    </button>
  )
}
