import { interpolateNumber } from 'd3-interpolate'
import type { KeyboardEvent } from 'react'
import type { TimeLine } from '../../job/compared'
import { compare, type InTime, leaveTime } from '../../session/comparing'
import { boreTitle, surveyTitle } from '../../words/compared'
import { plain } from '../../words/numbers'
import { words } from '../../words/words'
import { placeInTime, timeAtPlace } from './time-place'
import { type OnCompare, useStill } from './use-compared'

const steps = 1000

/** A wall that goes through the surveys of a bore; nothing where every bore was measured once. */
export function ThroughTime({ on }: { readonly on: OnCompare }) {
  const { job, lines, inTime } = on
  if (lines.length === 0) return null
  const said = words.compare.time
  return (
    <fieldset className="compare-part">
      <legend>{said.title}</legend>
      <p className="aside">{said.lead}</p>
      {lines.map((line) => {
        const { bore, points } = line
        const isShown = inTime?.boreId === bore.id
        return (
          <div key={bore.id}>
            <label className="compare-box">
              <input
                type="checkbox"
                checked={isShown}
                onChange={() =>
                  isShown
                    ? leaveTime()
                    : compare(job.id, { inTime: { boreId: bore.id, at: points.length - 1 } })
                }
              />
              <span>{said.show(boreTitle(bore))}</span>
            </label>
            {isShown ? (
              <Slider line={line} inTime={inTime} move={(next) => compare(job.id, { inTime: next })} />
            ) : null}
          </div>
        )
      })}
    </fieldset>
  )
}

function Slider(props: {
  readonly line: TimeLine
  readonly inTime: InTime
  readonly move: (next: InTime) => void
}) {
  const { line, inTime, move } = props
  const { bore, points, places } = line
  const isStill = useStill()
  const stepTo = (index: number) => {
    const to = Math.min(points.length - 1, Math.max(0, index))
    if (to !== inTime.at) move({ boreId: bore.id, at: to, cameFrom: Math.round(inTime.at) })
  }
  const onKeyDown = (event: KeyboardEvent) => {
    const index = stepOf(event.key, inTime.at, points.length - 1)
    if (index === undefined) return
    event.preventDefault()
    stepTo(index)
  }
  const drag = (place: number) => {
    const at = timeAtPlace(places, place)
    move({ boreId: bore.id, at: isStill ? Math.round(at) : at })
  }
  const said = atText(line, inTime.at)
  return (
    <div className="time-slider">
      <input
        type="range"
        min="0"
        max={steps}
        step="1"
        aria-label={words.compare.time.slider(boreTitle(bore))}
        aria-valuetext={said}
        value={Math.round(placeInTime(places, inTime.at) * steps)}
        onKeyDown={onKeyDown}
        onChange={(event) => drag(Number(event.target.value) / steps)}
      />
      <span className="time-ticks" aria-hidden="true">
        {places.map((place) => (
          <i key={place} style={{ left: `${place * 100}%` }} />
        ))}
      </span>
      <p aria-hidden="true">{said}</p>
      {Number.isInteger(inTime.at) ? null : <p className="aside">{words.compare.time.faded}</p>}
    </div>
  )
}

/** The survey that a key leads to. */
function stepOf(key: string, at: number, last: number): number | undefined {
  switch (key) {
    case 'ArrowRight':
    case 'ArrowUp':
      return Math.floor(at) + 1
    case 'ArrowLeft':
    case 'ArrowDown':
      return Math.ceil(at) - 1
    case 'Home':
      return 0
    case 'End':
      return last
    default:
      return undefined
  }
}

/** What is seen, in words: a survey, or that it is none. */
function atText({ points }: TimeLine, at: number): string {
  const said = words.compare.time
  const before = points[Math.floor(at)]
  const after = points[Math.ceil(at)]
  if (!before || !after) throw new Error(`ThroughTime: no surveys at ${at}`)
  if (before === after) return said.at(before.number, points.length, surveyTitle(before))
  const [from, to] = [before.survey.hoursRun, after.survey.hoursRun]
  if (from === undefined || to === undefined) {
    return said.between(surveyTitle(before), surveyTitle(after))
  }
  return said.betweenHours(plain(interpolateNumber(from, to)(at - Math.floor(at)), 0))
}
