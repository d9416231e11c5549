import { useMemo } from 'react'
import { pistonRows } from '../../words/piston-rows'
import { words } from '../../words/words'
import { FindingRow } from './FindingRow'
import type { OnBench } from './use-job'

/** How the pistons on offer fit, which goes where, the oversize to bore to, and what the ring gaps say. */
export function PistonFindings(props: {
  readonly bench: OnBench
  readonly onOpen?: (() => void) | undefined
}) {
  const { bench, onOpen } = props
  const { job, findings, finding } = bench
  const rows = useMemo(() => pistonRows(job, findings), [job, findings])
  const all = useMemo(() => [...rows.ofBore(finding), ...rows.ofEngine], [rows, finding])
  if (all.length === 0) return null
  return (
    <ul className="findings" aria-label={words.pistons.title}>
      {all.map((row) => (
        <FindingRow key={row.id} row={row} onOpen={onOpen} />
      ))}
    </ul>
  )
}
