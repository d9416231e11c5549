import type { Place } from '../../../core/findings'

const middle = { x: 42, y: 36 }
const radius = 26
const rule = { x: 7, top: 8, bottom: 64 }

/** The bore from above with the axis of a station across it, and at its side how deep the station lies. */
export function StationPictogram({
  place,
  levelsMm,
  lengthMm,
}: {
  readonly place: Place
  readonly levelsMm: readonly number[]
  readonly lengthMm: number
}) {
  const down = (depthMm: number) => rule.top + (depthMm / lengthMm) * (rule.bottom - rule.top)
  // Clockwise from the front, which lies at the top as in the picture from above.
  const angle = (place.axisDegrees * Math.PI) / 180
  const [dx, dy] = [Math.sin(angle) * radius, -Math.cos(angle) * radius]
  const depth = down(place.depthMm)
  return (
    <svg className="pictogram" viewBox="0 0 72 72" width="72" height="72" aria-hidden="true">
      <path className="pictogram-rule" d={`M${rule.x} ${rule.top}V${rule.bottom}`} />
      {levelsMm.map((level) => (
        <path key={level} className="pictogram-rule" d={`M${rule.x - 3} ${down(level)}h6`} />
      ))}
      <path className="pictogram-depth" d={`M${rule.x - 5} ${depth}h12`} />
      <circle className="pictogram-bore" cx={middle.x} cy={middle.y} r={radius} />
      <path className="pictogram-front" d={`M${middle.x - 4} 4h8l-4 5z`} />
      <path
        className="pictogram-axis"
        d={`M${middle.x - dx} ${middle.y - dy}L${middle.x + dx} ${middle.y + dy}`}
      />
      {[1, -1].map((end) => (
        <circle
          key={end}
          className="pictogram-contact"
          cx={middle.x + end * dx}
          cy={middle.y + end * dy}
          r="4"
        />
      ))}
    </svg>
  )
}
