import './scan-row.css'
import { lookAtScan, takeOffForm } from '../../session/scan-view'
import { scanReadOut } from '../../words/scan-read-out'
import { scanName } from '../../words/scans'
import { words } from '../../words/words'
import { scanAt } from './scan-place'
import { type DrawnScan, isUnderWay } from './use-drawn-scan'
import type { OnBench } from './use-job'
import { useSession } from './use-job'

/** From what the bore is drawn: its readings, or one of its scans, whole or without the smooth form. */
export function ScanRow({
  bench,
  drawn,
}: {
  readonly bench: OnBench
  readonly drawn: DrawnScan | undefined
}) {
  const { bore } = bench
  const { scans = [] } = bore
  if (scans.length === 0) return null
  const said = words.scans
  return (
    <div className="scan-row">
      <fieldset aria-label={said.shown}>
        <button
          type="button"
          aria-pressed={drawn === undefined}
          onClick={() => lookAtScan(bore.id, 'readings')}
        >
          {said.readings}
        </button>
        {scans.map((scan, index) => (
          <button
            key={scan.id}
            type="button"
            aria-pressed={drawn?.scan.id === scan.id}
            onClick={() => lookAtScan(bore.id, scan.id)}
          >
            {scanName(scan, index)}
          </button>
        ))}
      </fieldset>
      {drawn ? (
        <button
          type="button"
          aria-pressed={drawn.isLocal}
          title={said.localTitle}
          onClick={() => takeOffForm(!drawn.isLocal)}
        >
          {said.local}
        </button>
      ) : null}
    </div>
  )
}

/** What a scan that is not drawn yet is waiting for, or lacks. */
export function ScanStatus({ figures }: Pick<DrawnScan, 'figures'>) {
  const kind = figures?.kind ?? 'fetching'
  if (kind === 'fitted') return null
  return (
    <p className="picture-empty" role="status">
      {words.scans.status[kind]}
    </p>
  )
}

/** What is pointed at on a scan, in words; with nothing pointed at, what the picture shows and does not. */
export function ScanReadOut({ bench, drawn }: { readonly bench: OnBench; readonly drawn: DrawnScan }) {
  const pointed = useSession((state) => state.pointed)
  const marking = useSession((state) => state.marking)
  const said = words.scans
  const about = drawn.wall?.isSized ? said.sized : drawn.isLocal ? said.localSaid : said.noVerdict
  const kind = drawn.figures?.kind ?? 'fetching'
  const here = pointed && drawn.wall && scanReadOut(scanAt(drawn.wall, bench.bore.ports, pointed))
  // What keeps a scan from being drawn stands in the place of the picture.
  const text = isUnderWay(drawn) && kind !== 'fitted' ? said.status[kind] : drawn.wall ? (here ?? about) : ''
  return (
    <div className="read-out">
      <p aria-live="polite">{marking ? words.surface.marking : text}</p>
    </div>
  )
}
