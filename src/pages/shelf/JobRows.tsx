import { type KeyboardEvent, useEffect, useRef, useState } from 'react'
import type { ListedJob } from '../../job/listed-job'
import { words } from '../../words/words'
import { useLayout } from '../bench/phone/use-layout'
import { JobRow } from './JobRow'
import { RowMenu } from './RowMenu'
import type { ShelfActs, ShelfJobs } from './shelf-jobs'
import { useRowsInView } from './use-rows-in-view'

/** Heights of a row, pixels, as the style sheet has them. */
const deskRow = 60
const phoneRow = 112
const deskHead = 28

interface JobRowsProps {
  readonly rows: readonly ListedJob[]
  /** Day, as in 2026-03-09. */
  readonly today: string
  readonly shelf: ShelfJobs
  readonly acts: ShelfActs
  readonly colours: readonly string[]
  /** What is said where there is no row. */
  readonly none: string
}

/** The jobs, a row each, of which only those in view are on the page; arrow keys go from row to row. */
export function JobRows({ rows, today, shelf, acts, colours, none }: JobRowsProps) {
  const isNarrow = useLayout() === 'one'
  const rowHeight = isNarrow ? phoneRow : deskRow
  const { list, onScroll, from, to, page, show } = useRowsInView(
    rows.length,
    rowHeight,
    isNarrow ? 0 : deskHead,
  )
  const [handId, setHand] = useState<string>()
  const [menu, setMenu] = useState<{ readonly job: ListedJob; readonly button: HTMLElement }>()
  const inHand = Math.max(
    0,
    rows.findIndex(({ id }) => id === handId),
  )
  const wantsFocus = useRef(false)
  useEffect(() => {
    if (!wantsFocus.current) return
    wantsFocus.current = false
    list.current?.querySelector<HTMLElement>('[data-in-hand]')?.focus({ preventScroll: true })
  })
  useMapsInView(rows, from, to, acts)
  const goTo = (index: number) => {
    const next = rows[Math.min(rows.length - 1, Math.max(0, index))]
    if (!next) return
    setHand(next.id)
    show(rows.indexOf(next))
    wantsFocus.current = true
  }
  const onKeyDown = (event: KeyboardEvent<HTMLTableSectionElement>) => {
    const target = goal(event.key, inHand, rows.length, page)
    const job = rows[inHand]
    if (target !== undefined) goTo(target)
    else if (event.key === 'Delete' && job && job.deletedAt === undefined && job.id !== shelf.onBench)
      remove(job)
    else return
    event.preventDefault()
  }
  const remove = (job: ListedJob) => {
    const next = rows[inHand + 1] ?? rows[inHand - 1]
    if (next) setHand(next.id)
    wantsFocus.current = true
    acts.remove(job)
  }
  const shown = indexes(from, to, inHand, rows.length)
  const { heads } = words.shelf
  return (
    <div className="shelf-list" ref={list} onScroll={onScroll}>
      <table aria-label={words.shelf.title} aria-rowcount={rows.length + 1}>
        <thead>
          <tr className="shelf-row" aria-rowindex={1}>
            {Object.entries(heads).map(([key, text]) => (
              <th key={key} scope="col" className={`shelf-${key}`}>
                {text}
              </th>
            ))}
          </tr>
        </thead>
        <tbody style={{ height: rows.length * rowHeight }} onKeyDown={onKeyDown}>
          {shown.map((index) => {
            const job = rows[index]
            return job ? (
              <JobRow
                key={job.id}
                job={job}
                today={today}
                maps={shelf.maps.get(job.id)}
                colours={colours}
                rowIndex={index + 2}
                top={index * rowHeight}
                isInHand={index === inHand}
                isOnBench={job.id === shelf.onBench}
                onHand={setHand}
                onOpen={acts.open}
                onMenu={(button) => setMenu({ job, button })}
              />
            ) : null
          })}
        </tbody>
      </table>
      {rows.length === 0 && shelf.isWhole ? <p className="shelf-none">{none}</p> : null}
      {menu ? (
        <RowMenu
          key={menu.job.id}
          job={menu.job}
          button={menu.button}
          isOnBench={menu.job.id === shelf.onBench}
          acts={{ ...acts, remove }}
          onClose={() => setMenu(undefined)}
        />
      ) : null}
    </div>
  )
}

/** Where a key leads from a row; undefined for one that leads nowhere. */
function goal(key: string, from: number, count: number, page: number): number | undefined {
  switch (key) {
    case 'ArrowDown':
      return from + 1
    case 'ArrowUp':
      return from - 1
    case 'PageDown':
      return from + page
    case 'PageUp':
      return from - page
    case 'Home':
      return 0
    case 'End':
      return count - 1
    default:
      return undefined
  }
}

/** The rows in view, and that in hand wherever it is: a row that has the focus must not go. */
function indexes(from: number, to: number, inHand: number, count: number): number[] {
  const inView = Array.from({ length: Math.max(0, to - from) }, (_, index) => from + index)
  if (inHand >= count || inView.includes(inHand)) return inView
  return inHand < from ? [inHand, ...inView] : [...inView, inHand]
}

function useMapsInView(rows: readonly ListedJob[], from: number, to: number, acts: ShelfActs) {
  const { wantMaps } = acts
  useEffect(() => {
    wantMaps(rows.slice(from, to).map(({ id }) => id))
  }, [rows, from, to, wantMaps])
}
