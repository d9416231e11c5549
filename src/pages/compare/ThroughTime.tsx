import { interpolateNumber } from 'd3-interpolate'
import type { KeyboardEvent } from 'react'
import type { TimeLine } from '../../job/compared'
import type { TimeAhead } from '../../job/time-ahead'
import { compare, type InTime, leaveTime } from '../../session/comparing'
import { aheadSentences, aheadText } from '../../words/ahead'
import { boreTitle, surveyTitle } from '../../words/compared'
import { plain } from '../../words/numbers'
import { words } from '../../words/words'
import { hoursAhead, shareAhead } from './hours-ahead'
import { placeInTime, timeAtPlace } from './time-place'
import { type OnCompare, useStill } from './use-compared'

const steps = 1000

/** A wall that goes through the surveys of a bore; nothing where every bore was measured once. */
export function ThroughTime({ on }: { readonly on: OnCompare }) {
  const { job, lines, inTime, ahead } = on
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
              <Slider
                line={line}
                ahead={ahead}
                inTime={inTime}
                move={(next) => compare(job.id, { inTime: next })}
              />
            ) : null}
          </div>
        )
      })}
    </fieldset>
  )
}

function Slider(props: {
  readonly line: TimeLine
  readonly ahead: TimeAhead | undefined
  readonly inTime: InTime
  readonly move: (next: InTime) => void
}) {
  const { line, ahead, inTime, move } = props
  const { bore, points, places } = line
  const { measured = 1 } = ahead ?? {}
  const last = points.length - 1
  const isStill = useStill()
  const stops = stopsOf(last, ahead)
  const onKeyDown = (event: KeyboardEvent) => {
    const to = stopFor(event.key, inTime.at, stops)
    if (to === undefined) return
    event.preventDefault()
    if (to !== inTime.at) move({ boreId: bore.id, at: to, cameFrom: Math.min(last, Math.round(inTime.at)) })
  }
  const drag = (place: number) => {
    const at = timeAtPlace(places, place, measured)
    // Nothing moves by itself ahead of the last survey: only figures change.
    move({ boreId: bore.id, at: isStill && at < last ? Math.round(at) : at })
  }
  const said = atText(line, ahead, inTime.at)
  return (
    <div className="time-slider">
      <input
        type="range"
        min="0"
        max={steps}
        step="1"
        aria-label={words.compare.time.slider(boreTitle(bore))}
        aria-valuetext={said}
        value={Math.round(placeInTime(places, inTime.at, measured) * steps)}
        onKeyDown={onKeyDown}
        onChange={(event) => drag(Number(event.target.value) / steps)}
      />
      <span className="time-ticks" aria-hidden="true">
        {stops.map((stop) => (
          <i
            key={stop}
            className={stop > last ? 'is-ahead' : undefined}
            style={{ left: `${placeInTime(places, stop, measured) * 100}%` }}
          />
        ))}
      </span>
      <p aria-hidden="true">{said}</p>
      {ahead && inTime.at > last ? (
        <Ahead ahead={ahead} hours={hoursAhead(ahead, inTime.at - last)} />
      ) : Number.isInteger(inTime.at) ? null : (
        <p className="aside">{words.compare.time.faded}</p>
      )}
    </div>
  )
}

/** What the lines say of hours to come, at the station that meets its limit first. */
function Ahead({ ahead, hours }: { readonly ahead: TimeAhead; readonly hours: number }) {
  const [course] = ahead.courses.courses
  return (
    <div className="time-ahead" aria-live="polite">
      {(course ? aheadSentences(course, hours) : []).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      <p className="aside">{words.compare.time.ahead.faded}</p>
    </div>
  )
}

/** Where keys stop: each survey, then what is due ahead. */
function stopsOf(last: number, ahead: TimeAhead | undefined): readonly number[] {
  const surveys = Array.from({ length: last + 1 }, (_, index) => index)
  return [...surveys, ...(ahead?.stops.map((hours) => last + shareAhead(ahead, hours)) ?? [])]
}

/** The stop that a key leads to. */
function stopFor(key: string, at: number, stops: readonly number[]): number | undefined {
  switch (key) {
    case 'ArrowRight':
    case 'ArrowUp':
      return stops.find((stop) => stop > at) ?? stops.at(-1)
    case 'ArrowLeft':
    case 'ArrowDown':
      return stops.findLast((stop) => stop < at) ?? 0
    case 'Home':
      return 0
    case 'End':
      return stops.at(-1)
    default:
      return undefined
  }
}

/** What is seen, in words: a survey, or that it is none. */
function atText({ points }: TimeLine, ahead: TimeAhead | undefined, at: number): string {
  const said = words.compare.time
  const last = points.length - 1
  if (ahead && at > last) return aheadText(hoursAhead(ahead, at - last))
  const before = points[Math.min(last, Math.floor(at))]
  const after = points[Math.min(last, Math.ceil(at))]
  if (!before || !after) throw new Error(`ThroughTime: no surveys at ${at}`)
  if (before === after) return said.at(before.number, points.length, surveyTitle(before))
  const [from, to] = [before.survey.hoursRun, after.survey.hoursRun]
  if (from === undefined || to === undefined) {
    return said.between(surveyTitle(before), surveyTitle(after))
  }
  return said.betweenHours(plain(interpolateNumber(from, to)(at - Math.floor(at)), 0))
}
