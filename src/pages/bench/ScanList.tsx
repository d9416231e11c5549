import './scan-list.css'
import { useStore } from 'zustand'
import { type Bore, type Scan, scanCleanings } from '../../core/measured'
import { removeScan, setScan } from '../../job/scan-commands'
import { lookAtScan, scanView } from '../../session/scan-view'
import { dayText } from '../../words/day-text'
import { depth, plusMinusMicrons } from '../../words/numbers'
import { scanFormNotes, scanFormRows } from '../../words/scan-form'
import { scanFormWords } from '../../words/scan-form-words'
import { scanTableWords } from '../../words/scan-table-words'
import { scanName } from '../../words/scans'
import { words } from '../../words/words'
import { perform } from './perform'
import { type ScanWall, useDrawnScan } from './use-drawn-scan'
import type { OnBench } from './use-job'

const none = 'none'

/** The scans of a bore: when and how each was taken, what gives it a size, and the way to take it off again. */
export function ScanList({ bench }: { readonly bench: OnBench }) {
  const { scans = [] } = bench.bore
  const said = words.scans
  if (scans.length === 0) return null
  return (
    <section className="scan-list" aria-label={said.title}>
      <h2>{said.title}</h2>
      <ul>
        {scans.map((scan, index) => (
          <ScanEntry key={scan.id} bench={bench} scan={scan} name={scanName(scan, index)} />
        ))}
      </ul>
    </section>
  )
}

interface EntryProps {
  readonly bench: OnBench
  readonly scan: Scan
  readonly name: string
}

function ScanEntry({ bench, scan, name }: EntryProps) {
  const { bore } = bench
  const drawn = useDrawnScan(bench)
  const said = words.scans.list
  const places = scan.levels * scan.angles
  const about = [
    ...(scan.date === undefined ? [] : [dayText(scan.date)]),
    said.levels(String(scan.levels), String(scan.angles)),
    ...(scan.values < places ? [said.missing(String(places - scan.values))] : []),
  ]
  return (
    <li>
      <div className="scan-entry">
        <button
          type="button"
          className="scan-entry-name"
          aria-pressed={drawn?.scan.id === scan.id}
          aria-label={said.look(name)}
          onClick={() => lookAtScan(bore.id, scan.id)}
        >
          {name}
        </button>
        <button
          type="button"
          className="quiet"
          aria-label={said.remove(name)}
          title={said.remove(name)}
          onClick={() =>
            perform(words.scans.changes.removed(name), (job) => removeScan(job, bore.id, scan.id))
          }
        >
          ×
        </button>
      </div>
      <p className="aside">{about.join('; ')}</p>
      <div className="scan-entry-fields">
        <CleaningField bench={bench} scan={scan} name={name} />
        <TieField bench={bench} scan={scan} name={name} />
      </div>
      {drawn?.scan.id === scan.id && drawn.wall ? <LengthSaid bore={bore} wall={drawn.wall} /> : null}
      <TiesSaid scan={scan} />
      {drawn?.scan.id === scan.id ? <FormSaid scan={scan} /> : null}
    </li>
  )
}

/** Where the wall is drawn longer than the bore is known to be. */
function LengthSaid({
  bore: { lengthMm },
  wall: { grid, scan },
}: {
  readonly bore: Bore
  readonly wall: ScanWall
}) {
  if (lengthMm === undefined)
    return <p className="aside">{words.notes.lengthNotKnown(depth(grid.lengthMm))}</p>
  const deepest = scan.depthsMm[scan.depthsMm.length - 1] ?? 0
  if (deepest <= lengthMm) return null
  return <p className="aside">{words.scans.pastEnd(depth(deepest), depth(lengthMm))}</p>
}

function CleaningField({ bench, scan, name }: EntryProps) {
  const said = scanTableWords
  return (
    <select
      aria-label={words.scans.list.cleaning(name)}
      value={scan.cleaning ?? none}
      onChange={({ target }) => {
        const cleaning = scanCleanings.find((one) => one === target.value)
        perform(words.scans.changes.cleaning, (job) => setScan(job, bench.bore.id, scan.id, { cleaning }))
      }}
    >
      <option value={none}>{said.cleaningOpen}</option>
      {scanCleanings.map((one) => (
        <option key={one} value={one}>
          {said.cleaning[one]}
        </option>
      ))}
    </select>
  )
}

function TieField({ bench, scan, name }: EntryProps) {
  const { bore } = bench
  const said = words.scans.list
  return (
    <select
      aria-label={said.tie(name)}
      value={scan.tieSurveyId ?? none}
      onChange={({ target }) => {
        const tieSurveyId = bore.surveys.find(({ id }) => id === target.value)?.id
        perform(words.scans.changes.tie, (job) => setScan(job, bore.id, scan.id, { tieSurveyId }))
      }}
    >
      <option value={none}>{said.noTie}</option>
      {bore.surveys.map((survey, index) => (
        <option key={survey.id} value={survey.id}>
          {said.tieSurvey(survey.name ?? said.survey(String(index + 1)))}
        </option>
      ))}
    </select>
  )
}

/** What form the scan that is looked at proves, once that is worked out. */
function FormSaid({ scan }: Pick<EntryProps, 'scan'>) {
  const figures = useStore(scanView, (state) => state.figures[scan.id])
  if (figures?.kind !== 'fitted' || !figures.form) return null
  const { form, fit } = figures
  return (
    <div className="scan-form">
      <h3>{scanFormWords.title}</h3>
      <ul className="findings">
        {scanFormRows(form, fit).map(({ id, name, figure, detail }) => (
          <li key={id}>
            <span className="scan-form-row">
              <span>{name}</span>
              <strong>{figure}</strong>
            </span>
            <span className="aside">{detail}</span>
          </li>
        ))}
      </ul>
      {scanFormNotes(form).map((note) => (
        <p key={note} className="aside">
          {note}
        </p>
      ))}
    </div>
  )
}

/** What the stations of the survey give a scan, once that is known. */
function TiesSaid({ scan }: Pick<EntryProps, 'scan'>) {
  const figures = useStore(scanView, (state) => state.figures[scan.id])
  const said = words.scans.list
  if (scan.tieSurveyId === undefined || figures?.kind !== 'fitted') return null
  const { size } = figures
  if (!size.known) return <p className="aside">{said.noTies}</p>
  return (
    <p className="aside">
      {said.tied(String(size.ties.length), plusMinusMicrons(size.expandedUm / 1000))}
      {size.tiesAgree ? null : ` ${said.tiesDisagree}`}
    </p>
  )
}
