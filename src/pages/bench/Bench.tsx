import './bench.css'
import type { ReactNode } from 'react'
import { Proof } from './Proof'
import { NarrowBench } from './phone/NarrowBench'
import { useLayout } from './phone/use-layout'
import { Sheet } from './Sheet'
import { useOnBench } from './use-job'
import { WallColumn, type WallColumnProps } from './WallColumn'

export interface BenchProps extends Omit<WallColumnProps, 'bench'> {
  /** Where the figures are checked by simulation on request. */
  readonly simulation: ReactNode
  /** Stands above the findings where the bar has no room for it. */
  readonly findingsActions: ReactNode
}

/**
 * The Bench: readings left, the wall in the middle, what it proves on the right; in a narrow window one or two
 * of these at a time.
 */
export function Bench({ simulation, findingsActions, ...wall }: BenchProps) {
  const bench = useOnBench()
  const layout = useLayout()
  if (layout !== 'desk') {
    const findings = { simulation, actions: findingsActions }
    return <NarrowBench layout={layout} bench={bench} findings={findings} {...wall} />
  }
  return (
    <main className="bench">
      <Sheet bench={bench} />
      <WallColumn bench={bench} {...wall} />
      <Proof bench={bench} simulation={simulation} />
    </main>
  )
}
