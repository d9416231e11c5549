import './bench.css'
import type { ReactNode } from 'react'
import { Proof } from './Proof'
import { NarrowBench } from './phone/NarrowBench'
import { useLayout, useOnPaper } from './phone/use-layout'
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
 * of these at a time. Printed from there it is that of a desk, beside the narrow one, so that nothing typed there
 * is lost; its picture would come too late.
 */
export function Bench({ findingsActions, ...props }: BenchProps) {
  const bench = useOnBench()
  const layout = useLayout()
  const onPaper = useOnPaper()
  if (layout === 'desk') return <DeskBench bench={bench} {...props} />
  const { simulation, ...wall } = props
  const findings = { simulation, actions: findingsActions }
  return (
    <>
      <NarrowBench layout={layout} bench={bench} findings={findings} {...wall} />
      {onPaper ? (
        <DeskBench bench={bench} {...props} {...(wall.picture ? { picture: nothing } : {})} />
      ) : null}
    </>
  )
}

function nothing() {
  return null
}

function DeskBench(props: Omit<BenchProps, 'findingsActions'> & Pick<WallColumnProps, 'bench'>) {
  const { bench, simulation, ...wall } = props
  return (
    <main className="bench">
      <Sheet bench={bench} />
      <WallColumn bench={bench} {...wall} />
      <Proof bench={bench} simulation={simulation} />
    </main>
  )
}
