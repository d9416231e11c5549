import { memo, useMemo } from 'react'
import { Thumbnail } from '../../charts/Thumbnail'
import { VerdictShape } from '../../charts/VerdictShape'
import { standingAt } from '../../core/conformity/standing'
import { thumbnailColumns, thumbnailMark, thumbnailRows } from '../../job/bore-thumbnail'
import type { BoreMap } from '../../job/job-summary'
import type { ListedJob } from '../../job/listed-job'
import { hoursDown } from '../../words/hours'
import { words } from '../../words/words'
import { dayAndTime, shortDay } from './day-and-time'

interface JobRowProps {
  readonly job: ListedJob
  readonly maps: readonly BoreMap[] | undefined
  readonly colours: readonly string[]
  /** Day, as in 2026-03-09. */
  readonly today: string
  readonly rowIndex: number
  readonly top: number
  readonly isInHand: boolean
  readonly isOnBench: boolean
  readonly onHand: (id: string) => void
  readonly onOpen: (job: ListedJob) => void
  readonly onMenu: (button: HTMLElement) => void
}

/** A job of the list. Enter or a touch opens it; what else is done with it stands behind its last button. */
export function JobRow(props: JobRowProps) {
  const { job, isInHand, isOnBench, onHand, onOpen, onMenu } = props
  const said = words.shelf
  const name = job.name.trim() === '' ? words.app.untitled : job.name
  return (
    <tr
      aria-rowindex={props.rowIndex}
      className={isOnBench ? 'shelf-row is-on-bench' : 'shelf-row'}
      style={{ top: props.top }}
    >
      <th scope="row" className="shelf-name">
        <button
          type="button"
          className="shelf-open"
          aria-label={words.kept.open(name)}
          tabIndex={isInHand ? 0 : -1}
          {...(isInHand ? { 'data-in-hand': '' } : {})}
          onFocus={() => onHand(job.id)}
          onClick={() => onOpen(job)}
        >
          {name}
        </button>
        <span className="soft">
          {[isOnBench ? said.onBench : '', job.unread ? said.unread[job.unread] : (job.machine ?? '')]
            .filter((text) => text !== '')
            .join(' · ')}
        </span>
      </th>
      <td className="shelf-maps">
        {props.maps?.map(({ name: bore, marks }) => (
          <BoreThumbnail key={bore} name={bore} marks={marks} colours={props.colours} />
        ))}
      </td>
      <td className="shelf-verdict">{job.unread ? null : <Worst job={job} />}</td>
      <td className="shelf-surveyed">
        <span className="narrow-only">{job.surveyedOn ? said.surveyed(shortDay(job.surveyedOn)) : null}</span>
        <span className="wide-only">{job.surveyedOn ? shortDay(job.surveyedOn) : said.notSurveyed}</span>
        <Check job={job} today={props.today} />
      </td>
      <td className="shelf-changed">
        {job.deletedAt ? said.goneOn(shortDay(job.deletedAt)) : dayAndTime(job.changedAt)}
      </td>
      <td className="shelf-readings">
        <span className="narrow-only">{said.readings(job.readings)}</span>
        <span className="wide-only">{job.readings}</span>
      </td>
      <td className="shelf-more">
        <button
          type="button"
          className="bar-button"
          aria-label={said.more(name)}
          aria-haspopup="menu"
          tabIndex={isInHand ? 0 : -1}
          onClick={(event) => {
            onHand(job.id)
            onMenu(event.currentTarget)
          }}
        >
          ⋯
        </button>
      </td>
    </tr>
  )
}

/** When the job is to be measured again, and whether that day has come. */
function Check({ job, today }: Pick<JobRowProps, 'job' | 'today'>) {
  const { checkOn, checkHours, deletedAt } = job
  if (deletedAt !== undefined) return null
  if (checkOn !== undefined) {
    return checkOn <= today ? (
      <strong className="shelf-check is-due">{words.shelf.checkDue(shortDay(checkOn))}</strong>
    ) : (
      <span className="soft shelf-check">{words.shelf.checkOn(shortDay(checkOn))}</span>
    )
  }
  if (checkHours === undefined) return null
  return <span className="soft shelf-check">{words.shelf.checkAt(hoursDown(checkHours))}</span>
}

/** How the worst bore stands, as its shape and in words. */
function Worst({ job }: { readonly job: ListedJob }) {
  const { place, judged, bores, marked } = job
  const isPart = place === undefined && judged > 0
  return (
    <>
      <span className="shelf-shape">{place ? <VerdictShape place={place} /> : null}</span>
      <span>
        {isPart ? words.shelf.judgedOf(judged, bores) : words.block.standings[standingAt(place)]}
        {marked > 0 ? <span className="soft shelf-marked">{words.shelf.surfaceMayEnd}</span> : null}
      </span>
    </>
  )
}

const BoreThumbnail = memo(function BoreThumbnail(props: {
  readonly name: string
  readonly marks: string
  readonly colours: readonly string[]
}) {
  const { name, marks, colours } = props
  const places = useMemo(() => [...marks].map(thumbnailMark), [marks])
  return (
    <Thumbnail
      places={places}
      columns={thumbnailColumns}
      rows={thumbnailRows}
      colours={colours}
      label={words.shelf.bore(name)}
    />
  )
})
