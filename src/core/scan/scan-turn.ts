import type { RadialScan } from './radial-scan'

/** Angles are compared in steps of so many degrees, up to so many either way. */
const step = 1
const reach = 20
/** Openings say something about the angle when they hold this share of the wall at least. */
const leastGaps = 0.01
/** Two scans lie alike while no other turn fits this much better, as a share of the openings. */
const betterBy = 0.15
const mostPlaces = 3000

/**
 * By how many degrees clockwise the openings of one scan lie further than those of another of the same bore: that of
 * −20° to 20° at which most of them coincide; 0 where none fits clearly better than that. Undefined where either has
 * next to no openings. Own derivation.
 */
export function turnBetween(one: RadialScan, other: RadialScan): number | undefined {
  const levels = one.depthsMm.map((depth) => nearestIndex(other.depthsMm, depth))
  if (gapShare(one) < leastGaps || gapShare(other) < leastGaps) return undefined
  const gaps = gapPlaces(one)
  const agreement = (turn: number) => {
    let agree = 0
    for (const { level, angle } of gaps) {
      const at =
        (levels[level] ?? 0) * other.anglesDegrees.length + nearestAngle(other.anglesDegrees, angle + turn)
      if (Number.isNaN(other.radiiUm[at] ?? 0)) agree++
    }
    return agree / gaps.length
  }
  const unturned = agreement(0)
  let best = { turn: 0, share: unturned }
  for (let turn = -reach; turn <= reach; turn += step) {
    const share = agreement(turn)
    if (share > best.share) best = { turn, share }
  }
  return best.share - unturned > betterBy ? best.turn : 0
}

function gapShare({ radiiUm }: RadialScan): number {
  let gaps = 0
  for (const radius of radiiUm) if (Number.isNaN(radius)) gaps++
  return gaps / Math.max(1, radiiUm.length)
}

/** Openings of a scan, not more of them than are needed to tell how it is turned. */
function gapPlaces({ radiiUm, anglesDegrees }: RadialScan) {
  const places: { level: number; angle: number }[] = []
  radiiUm.forEach((radius, at) => {
    if (!Number.isNaN(radius)) return
    const level = Math.floor(at / anglesDegrees.length)
    places.push({ level, angle: anglesDegrees[at % anglesDegrees.length] ?? 0 })
  })
  const every = Math.ceil(places.length / mostPlaces)
  return every <= 1 ? places : places.filter((_, index) => index % every === 0)
}

function nearestIndex(values: readonly number[], wanted: number): number {
  let best = 0
  for (const [index, value] of values.entries()) {
    if (Math.abs(value - wanted) < Math.abs((values[best] ?? Number.POSITIVE_INFINITY) - wanted)) best = index
  }
  return best
}

/** Angles rise over one turn; the last is beside the first. */
function nearestAngle(angles: readonly number[], angle: number): number {
  const wanted = ((angle % 360) + 360) % 360
  let low = 0
  let high = angles.length
  while (low < high) {
    const half = (low + high) >> 1
    if ((angles[half] ?? 0) < wanted) low = half + 1
    else high = half
  }
  const after = low % angles.length
  const before = (low + angles.length - 1) % angles.length
  const apart = (index: number) =>
    Math.abs((((((angles[index] ?? 0) - wanted + 180) % 360) + 360) % 360) - 180)
  return apart(before) <= apart(after) ? before : after
}
