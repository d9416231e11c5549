import { showPiston } from '../../session/session'
import { words } from '../../words/words'
import type { OnBench } from './use-job'
import { useSession } from './use-job'

/** Shows a piston in the bore, or takes it out again; nothing while no piston is on the list. */
export function PistonButton({ bench }: { readonly bench: OnBench }) {
  const shown = useSession((state) => state.piston)
  const { pistons = [] } = bench.job
  if (pistons.length === 0 || bench.bore.role !== 'of-this-engine') return null
  return (
    <button
      type="button"
      className="quiet"
      aria-pressed={shown !== undefined}
      onClick={() => showPiston(shown ? undefined : { share: 0 })}
    >
      {words.pistons.show}
    </button>
  )
}
