import { mapGridOfBore } from '../../../job/selectors'
import { words } from '../../../words/words'
import { useSize } from '../use-size'
import { BoreMap, type WallColumnProps } from '../WallColumn'

type PortMapProps = Pick<WallColumnProps, 'bench' | 'paintOf'>

const height = 180

/** The wall unrolled, above the list of its ports. Nothing while there are none. */
export function PortMap(props: PortMapProps) {
  return props.bench.bore.ports.length === 0 ? null : <MapOfPorts {...props} />
}

/** Its room can be measured from when it is there. */
function MapOfPorts({ bench, paintOf }: PortMapProps) {
  const { job, bore, survey, finding } = bench
  const [room, size] = useSize()
  const grid = mapGridOfBore(job, bore.id, survey.id)
  return (
    <section className="port-map" ref={room} aria-label={words.phone.ports}>
      {size ? (
        <BoreMap
          bench={bench}
          grid={grid}
          paintOf={paintOf}
          box={{ width: size.width, height }}
          pair={finding.pair}
        />
      ) : null}
    </section>
  )
}
