import type { BoreVerdict, Side } from '../core/findings'

/** Where the bar lies along 24 units whose ticks, the limits, stand at 6 and 18. */
const bars = {
  inside: { from: 8.5, to: 15.5 },
  above: { from: 19.5, to: 24 },
  below: { from: 0, to: 4.5 },
  'close-above': { from: 14.5, to: 21.5 },
  'close-below': { from: 2.5, to: 9.5 },
} as const

/**
 * A verdict as a shape: a bar between two ticks is inside, one across a tick too close to call, one beyond
 * a tick outside. Nothing where there is no verdict. What it means is said by the tab that it stands in.
 */
export function VerdictShape({ verdict }: { readonly verdict: BoreVerdict }) {
  if (!verdict.known) return null
  const { from, to } = bars[shapeOf(verdict)]
  return (
    <svg className="verdict-shape" viewBox="0 0 24 10" aria-hidden="true">
      <path d="M6 0.5V9.5M18 0.5V9.5" strokeWidth="1.2" fill="none" />
      <rect x={from} y="3.5" width={to - from} height="3" stroke="none" />
    </svg>
  )
}

function shapeOf(verdict: Extract<BoreVerdict, { known: true }>): keyof typeof bars {
  if (verdict.verdict !== 'too-close') return verdict.verdict
  return closeTo(verdict) === 'below' ? 'close-below' : 'close-above'
}

function closeTo(verdict: Extract<BoreVerdict, { known: true }>): Side {
  if (verdict.lean !== 'inside') return verdict.lean
  return verdict.below.length > 0 && verdict.above.length === 0 ? 'below' : 'above'
}
