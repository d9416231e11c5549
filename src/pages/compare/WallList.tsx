import { compare } from '../../session/comparing'
import { words } from '../../words/words'
import { useSession } from '../bench/use-job'
import type { OnCompare } from './use-compared'

/** The walls in the order of the picture: a press takes one in hand; what each holds at the place pointed at. */
export function WallList({ on }: { readonly on: OnCompare }) {
  const { job, walls, inHand } = on
  const pointed = useSession((state) => state.pointed)
  return (
    <ul className="wall-list">
      {walls.map((wall, index) => (
        <li key={wall.id} className={wall.isBetween ? 'is-between' : undefined}>
          <button
            type="button"
            aria-pressed={index === inHand}
            onClick={() => compare(job.id, { inHand: wall.id })}
          >
            {wall.title}
            <small>{wall.figure}</small>
          </button>
          <p aria-live={index === inHand ? 'polite' : 'off'}>
            {pointed ? wall.readOut(pointed) : null}
            {!pointed && index === 0 ? words.readOut.nothing : null}
          </p>
        </li>
      ))}
    </ul>
  )
}
