import { roundSizes, unitText } from '../words/length-unit'
import { plain, size } from '../words/numbers'
import { words } from '../words/words'
import type { HoursScale } from './hours-scale'
import { labelRow } from './label-row'

/** Sizes at the left, hours run below. */
export function HoursAxes({ scale, letter }: { readonly scale: HoursScale; readonly letter: number }) {
  const { left, top, width, height, x, y } = scale
  const [right, bottom] = [left + width, top + height]
  const unit = words.hours.unit
  const ends = { left, right: right - unit.length * letter }
  const hours = x.ticks(Math.max(2, Math.floor(width / 84)))
  const texts = labelRow(
    hours.map((at) => ({ x: x(at), texts: [plain(at, 1)] })),
    ends,
    letter,
  )
  const sizes = roundSizes((perUnit) =>
    y
      .copy()
      .domain(y.domain().map((mm) => mm / perUnit))
      .ticks(Math.max(2, Math.floor(height / 44))),
  )
  return (
    <g className="map-axes">
      <path d={`M${left},${top}V${bottom}H${right}`} className="hours-frame" />
      {sizes.map((mm) => (
        <g key={mm}>
          <line x1={left} x2={right} y1={y(mm)} y2={y(mm)} className="chart-level" />
          <text x={left - 6} y={y(mm) + 4} textAnchor="end">
            {size(mm)}
          </text>
        </g>
      ))}
      {hours.map((at, i) => (
        <g key={at}>
          <line x1={x(at)} x2={x(at)} y1={bottom} y2={bottom + 4} />
          {texts[i] ? (
            <text x={texts[i].x} y={bottom + 16}>
              {texts[i].text}
            </text>
          ) : null}
        </g>
      ))}
      <text x={right} y={bottom + 16} textAnchor="end" className="map-unit">
        {unit}
      </text>
      <text x={left - 6} y={top - 2} textAnchor="end" className="map-unit">
        {unitText()}
      </text>
    </g>
  )
}
