import './block-table.css'
import { chooseBore } from '../../session/session'
import { type BlockFigure, blockRows, blockSentence } from '../../words/block'
import { words } from '../../words/words'
import type { OnBench } from './use-job'

/** The bores of the engine beside each other; nothing for an engine of one bore. */
export function BlockTable({ findings, bore }: OnBench) {
  const sentence = blockSentence(findings)
  if (sentence === undefined) return null
  const { heads, title, choose } = words.block
  return (
    <section className="block" aria-label={title}>
      <p className="block-sentence">{sentence}</p>
      <table className="block-table">
        <thead>
          <tr>
            {[heads.bore, heads.largest, heads.smallest, heads.ovality, heads.taper].map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {blockRows(findings).map((row) => (
            <tr
              key={row.boreId}
              className={row.boreId === bore.id ? 'is-chosen' : undefined}
              onClick={() => chooseBore(row.boreId)}
            >
              <th scope="row">
                <button
                  type="button"
                  className="block-bore"
                  title={choose(row.name)}
                  aria-current={row.boreId === bore.id}
                  onClick={() => chooseBore(row.boreId)}
                >
                  {row.name}
                </button>
                <span className={`block-standing is-${row.standing}`}>{row.standingText}</span>
              </th>
              <Figure {...row.largest} />
              <Figure {...row.smallest} />
              <Figure {...row.ovality} />
              <Figure {...row.taper} />
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}

function Figure({ figure, doubt }: Partial<BlockFigure>) {
  return (
    <td>
      {figure ?? words.block.none}
      {doubt === undefined ? null : <small>{doubt}</small>}
    </td>
  )
}
