import './bench.css'
import { Proof } from './Proof'
import { Sheet } from './Sheet'
import { useOnBench } from './use-job'
import { WallColumn, type WallColumnProps } from './WallColumn'

/** The Bench: readings left, the wall in the middle, what it proves on the right. */
export function Bench(props: Omit<WallColumnProps, 'bench'>) {
  const bench = useOnBench()
  return (
    <main className="bench">
      <Sheet bench={bench} />
      <WallColumn bench={bench} {...props} />
      <Proof bench={bench} />
    </main>
  )
}
