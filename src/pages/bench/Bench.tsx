import './bench.css'
import type { ReactNode } from 'react'
import { Proof } from './Proof'
import { Sheet } from './Sheet'
import { useOnBench } from './use-job'
import { WallColumn, type WallColumnProps } from './WallColumn'

export interface BenchProps extends Omit<WallColumnProps, 'bench'> {
  /** Where the figures are checked by simulation on request. */
  readonly simulation: ReactNode
}

/** The Bench: readings left, the wall in the middle, what it proves on the right. */
export function Bench({ simulation, ...props }: BenchProps) {
  const bench = useOnBench()
  return (
    <main className="bench">
      <Sheet bench={bench} />
      <WallColumn bench={bench} {...props} />
      <Proof bench={bench} simulation={simulation} />
    </main>
  )
}
