import './shelf.css'
import { useDeferredValue, useMemo } from 'react'
import { useStore } from 'zustand'
import { shelfView } from '../../session/shelf-view'
import { words } from '../../words/words'
import { today } from '../today'
import { AsideList } from './AsideList'
import { JobRows } from './JobRows'
import { ShelfTools } from './ShelfTools'
import type { ShelfActs, ShelfJobs } from './shelf-jobs'
import { asked, inOrder, machinesOf, placeOf } from './shelf-query'

/** Every job of this browser: looked for, opened, copied, put away. */
export function Shelf(props: {
  readonly shelf: ShelfJobs
  readonly acts: ShelfActs
  /** Colours of the small maps, from tight to loose. */
  readonly colours: readonly string[]
}) {
  const { shelf, acts, colours } = props
  const query = useStore(shelfView)
  const { jobs } = shelf
  const ordered = useMemo(() => inOrder(jobs, query.order), [jobs, query.order])
  const day = today()
  const rows = useMemo(() => asked(ordered, query, day), [ordered, query, day])
  const machines = useMemo(() => machinesOf(jobs), [jobs])
  const here = useMemo(() => jobs.filter((job) => placeOf(job) === query.place).length, [jobs, query.place])
  const said = words.shelf
  const isAll = rows.length === here
  return (
    <main className="shelf">
      <header className="shelf-head">
        <span className="wordmark">{words.app.name}</span>
        <h1>{said.title}</h1>
        <p className="soft wide-only">{said.lead}</p>
        <div className="shelf-ways">
          <button type="button" className="button" onClick={acts.leave}>
            {shelf.onBench === undefined ? said.toFirstPage : said.back}
          </button>
          <button type="button" className="button" onClick={acts.startNew}>
            {said.newJob}
          </button>
          <button type="button" className="button" onClick={acts.chooseFile}>
            {said.open}
          </button>
          <button type="button" className="button" onClick={acts.showKeptSpecs}>
            {words.keptSpecs.title}
          </button>
        </div>
      </header>
      <ShelfTools query={query} machines={machines} />
      <Said shelf={shelf} count={isAll ? said.count(here) : said.found(rows.length, here)} />
      <JobRows
        rows={rows}
        today={day}
        shelf={shelf}
        acts={acts}
        colours={colours}
        none={isAll ? said.none[query.place] : said.none.found}
      />
      <AsideList aside={shelf.aside} isOpen={shelf.isWhole && jobs.length === 0} />
    </main>
  )
}

/** How many there are, what goes on, and what was done last with the way back. */
function Said({ shelf, count }: { readonly shelf: ShelfJobs; readonly count: string }) {
  const { isWhole, summing, said } = shelf
  // Spoken when it has come to rest, not at every letter of a search.
  const spoken = useDeferredValue(isWhole ? count : words.shelf.looking)
  return (
    <div className="shelf-said">
      <p role="status">
        {spoken}
        {summing ? <> · {words.shelf.summing(summing.done, summing.of)}</> : null}
      </p>
      <p role="status" className="shelf-done">
        {said?.text}{' '}
        {said?.undo ? (
          <button type="button" className="quiet" onClick={said.undo}>
            {words.shelf.undo}
          </button>
        ) : null}
      </p>
    </div>
  )
}
