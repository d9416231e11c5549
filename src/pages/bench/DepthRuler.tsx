import type { Belt, Port } from '../../core/measured'

const height = 40
const width = 12

/**
 * A piece of a ruler beside a level's depth: the wall as a line from half way to the level above to half
 * way to the level below, notched where ports open, dashed where a belt runs.
 */
export function DepthRuler(props: {
  readonly ports: readonly Port[]
  readonly belts: readonly Belt[]
  readonly levelsMm: readonly number[]
  readonly depthMm: number
}) {
  const { ports, belts, levelsMm, depthMm } = props
  const levels = [...levelsMm].sort((a, b) => a - b)
  const at = levels.indexOf(depthMm)
  const above = levels[at - 1]
  const below = levels[at + 1]
  const from = above === undefined ? depthMm - 5 : (above + depthMm) / 2
  const to = below === undefined ? depthMm + 5 : (depthMm + below) / 2
  const y = (mm: number) => {
    const share =
      mm <= depthMm ? (mm - from) / (depthMm - from) / 2 : 0.5 + (mm - depthMm) / (to - depthMm) / 2
    return Math.min(height, Math.max(0, share * height))
  }
  return (
    <svg className="depth-ruler" width={width} height={height} aria-hidden="true">
      <line x1="3" x2="3" y1="0" y2={height} />
      <line x1="3" x2="9" y1={height / 2} y2={height / 2} />
      {[...ports, ...belts].map((opening) => {
        const top = y(opening.fromDepthMm)
        const bottom = y(opening.toDepthMm)
        return bottom > top ? (
          <rect
            key={opening.id}
            x="1"
            width="4"
            y={top}
            height={bottom - top}
            className={'fromDegrees' in opening ? 'notch' : 'notch is-belt'}
          />
        ) : null
      })}
    </svg>
  )
}
