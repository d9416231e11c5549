import type { VerdictPlace } from '../core/conformity/standing'

/** Where the bar lies along 24 units whose ticks, the limits, stand at 6 and 18. */
const bars: { readonly [Place in VerdictPlace]: { readonly from: number; readonly to: number } } = {
  inside: { from: 8.5, to: 15.5 },
  above: { from: 19.5, to: 24 },
  below: { from: 0, to: 4.5 },
  'close-above': { from: 14.5, to: 21.5 },
  'close-below': { from: 2.5, to: 9.5 },
}

/**
 * A verdict as a shape: a bar between two ticks is inside, one across a tick too close to call, one beyond
 * a tick outside. What it means is said beside it, or by the tab that it stands in.
 */
export function VerdictShape({ place }: { readonly place: VerdictPlace }) {
  const { from, to } = bars[place]
  return (
    <svg className="verdict-shape" viewBox="0 0 24 10" aria-hidden="true">
      <path d="M6 0.5V9.5M18 0.5V9.5" strokeWidth="1.2" fill="none" />
      <rect x={from} y="3.5" width={to - from} height="3" stroke="none" />
    </svg>
  )
}
