import { showPart } from '../../../session/session'
import { surfaceLead } from '../../../words/surface'
import { verdictSentence } from '../../../words/verdict'
import { words } from '../../../words/words'
import type { OnBench } from '../use-job'

/** The verdict in two lines at most; a tap leads to what it stands on. */
export function VerdictStrip({ bench: { finding } }: { readonly bench: OnBench }) {
  const { verdict } = finding
  const said = [verdictSentence(finding), surfaceLead(finding)].filter(Boolean).join(' ')
  return (
    <button
      type="button"
      className={verdict.known ? `verdict-strip is-${verdict.verdict}` : 'verdict-strip'}
      aria-label={words.phone.toFindings(said)}
      onClick={() => showPart('findings')}
    >
      <span>{said}</span>
    </button>
  )
}
