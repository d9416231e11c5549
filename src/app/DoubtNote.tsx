import { correlationAround, correlationDepthMm } from '../core/surface/wall-correlation'
import { showDoubt } from '../session/session'
import { degrees, depth, inMicrons } from '../words/numbers'
import { words } from '../words/words'
import type { OtherWall } from './use-other-wall'

/** What the other walls are and are not, for as long as they are drawn. */
export function DoubtNote({ other }: { readonly other: OtherWall }) {
  const said = words.doubt
  const { why, spreadMm } = other
  return (
    <section className="doubt-note" aria-label={said.title}>
      {why ? (
        <p className="doubt-line" role="status">
          {said.none[why]}
        </p>
      ) : (
        <>
          <p className="doubt-line" role="status">
            <b>{said.title}.</b> {said.lead} <b>{said.eyeOnly}</b>
          </p>
          <p className="doubt-line soft">
            {spreadMm === undefined
              ? null
              : said.model(
                  inMicrons(spreadMm),
                  depth(correlationDepthMm),
                  degrees((correlationAround * 180) / Math.PI),
                )}
          </p>
        </>
      )}
      <p className="doubt-line doubt-ways">
        {other.isStepped && !why ? (
          <button type="button" className="quiet" onClick={other.next}>
            {said.next}
          </button>
        ) : null}
        <button type="button" className="quiet" onClick={() => showDoubt(false)}>
          {said.hide}
        </button>
      </p>
    </section>
  )
}
