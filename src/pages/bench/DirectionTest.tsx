import { useState } from 'react'
import type { SetUp, Standard } from '../../core/measured'
import { setSetUp } from '../../job/set-up-commands'
import { words } from '../../words/words'
import { perform } from './perform'

/** A guided step of ten seconds: a size is made smaller, and the needle shows which way larger is. */
export function DirectionTest(props: {
  readonly setUp: SetUp
  readonly standard: Standard
  readonly onDone: () => void
}) {
  const { setUp, standard, onDone } = props
  const [hasStayed, setHasStayed] = useState(false)
  const said = words.setUp.directionTest
  const went = (smallerIs: 'clockwise' | 'anticlockwise') => {
    const largerIs = smallerIs === 'clockwise' ? 'anticlockwise' : 'clockwise'
    perform(words.changes.setUp, (job) => setSetUp(job, setUp.id, { largerIs }))
    onDone()
  }
  return (
    <section className="panel" aria-label={said.title}>
      <p>{standard.kind === 'micrometer' ? said.close(said.by[standard.markedIn ?? 'mm']) : said.push}</p>
      <div className="panel-buttons">
        {(['clockwise', 'anticlockwise'] as const).map((way) => (
          <button key={way} type="button" className="button" onClick={() => went(way)}>
            {said.went[way]}
          </button>
        ))}
        <button type="button" className="button" onClick={() => setHasStayed(true)}>
          {said.stayed}
        </button>
      </div>
      <p className="aside" aria-live="polite">
        {hasStayed ? said.stayedHelp : said.why}
      </p>
    </section>
  )
}
