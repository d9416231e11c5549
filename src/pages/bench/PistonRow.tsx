import './piston-row.css'
import { useEffect, useMemo } from 'react'
import type { Piston } from '../../core/measured'
import {
  clearancesByLevel,
  type DrawnPiston,
  drawnPiston,
  placedPiston,
  ringGapsByLevel,
  shareAtDepth,
} from '../../core/piston/piston-in-bore'
import { showPiston } from '../../session/session'
import { pistonName } from '../../words/piston-names'
import { pistonPlaceText, pistonStandText } from '../../words/piston-place'
import { pistonWords } from '../../words/piston-words'
import { ChoiceField } from './ChoiceField'
import { type OnBench, useSession } from './use-job'

/** Steps of the slider along the stroke. */
const steps = 200

/** A piston chosen, moved along its stroke, and what was measured where it stands. */
export function PistonRow({ bench }: { readonly bench: OnBench }) {
  const { job, bore, finding } = bench
  const shown = useSession((state) => state.piston)
  const pistons = job.pistons ?? []
  const piston = pistons.find(({ id }) => id === shown?.id) ?? firstFor(pistons, bore.id)
  const found = useMemo(() => piston && drawnPiston(job, piston), [job, piston])
  const clearances = useMemo(
    () => (piston ? clearancesByLevel(job, finding, piston) : []),
    [job, finding, piston],
  )
  const gaps = useMemo(() => ringGapsByLevel(job, finding), [job, finding])
  const share = shown?.share ?? 0
  const drawn = found?.ok ? found.drawn : undefined
  useEffect(() => {
    if (!piston) return
    showPiston({ id: piston.id, share, ...(drawn ? { placed: placedPiston(drawn, share) } : {}) })
  }, [piston, drawn, share])
  if (!piston || !found) return null
  const said = pistonWords.shown
  const move = (to: number) => showPiston({ ...shown, id: piston.id, share: to })
  const stops = drawn ? stopsOf(drawn, clearances, gaps) : []
  const stop = (onward: 1 | -1) =>
    (onward === 1 ? stops : [...stops].reverse()).find((at) => onward * (at - share) > 1e-6)
  const [up, down] = [stop(-1), stop(1)]
  return (
    <div className="piston-row">
      <ChoiceField
        label={said.which}
        value={piston.id}
        options={pistons.map((one) => ({ value: one.id, text: pistonName(one, job) }))}
        onChoose={(id) => showPiston({ id, share })}
      />
      {drawn ? (
        <>
          <button type="button" disabled={up === undefined} onClick={() => move(up ?? share)}>
            {said.up}
          </button>
          <input
            type="range"
            min="0"
            max={steps}
            step="any"
            aria-label={said.along}
            aria-valuetext={pistonPlaceText(drawn, share)}
            value={share * steps}
            onChange={(event) => move(Number(event.target.value) / steps)}
            onKeyDown={(event) => {
              const by = slideKeys[event.key]
              if (by === undefined) return
              event.preventDefault()
              move(Math.min(1, Math.max(0, share + by)))
            }}
          />
          <button type="button" disabled={down === undefined} onClick={() => move(down ?? share)}>
            {said.down}
          </button>
        </>
      ) : null}
      <p aria-live="polite">
        {drawn
          ? pistonStandText(drawn, share, { clearances, gaps })
          : said.lacks(found.ok ? [] : found.lacks)}
      </p>
    </div>
  )
}

const slideKeys: Readonly<Record<string, number>> = {
  ArrowUp: -0.01,
  ArrowLeft: -0.01,
  ArrowDown: 0.01,
  ArrowRight: 0.01,
  PageUp: -0.1,
  PageDown: 0.1,
  Home: -1,
  End: 1,
}

/** The piston that ran in the bore, else the first on the list. */
function firstFor(pistons: readonly Piston[], boreId: string): Piston | undefined {
  return pistons.find((one) => one.boreId === boreId) ?? pistons[0]
}

/** Where along the stroke the height that was measured, or the top ring, stands at a level. */
function stopsOf(
  drawn: DrawnPiston,
  clearances: readonly { readonly depthMm: number }[],
  gaps: readonly { readonly depthMm: number }[],
): number[] {
  const at = (heightMm: number, levels: readonly { readonly depthMm: number }[]) =>
    levels.flatMap(({ depthMm }) => shareAtDepth(drawn, heightMm, depthMm) ?? [])
  const ring = drawn.topRingHeightMm
  return [...at(drawn.measuredAtMm, clearances), ...(ring === undefined ? [] : at(ring, gaps))].sort(
    (a, b) => a - b,
  )
}
