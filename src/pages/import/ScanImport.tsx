import './import.css'
import './scan-import.css'
import { useId, useState } from 'react'
import { ScanPreview } from '../../charts/ScanPreview'
import type { Scan } from '../../core/measured'
import { scanCleanings } from '../../core/measured'
import type { RadialScan } from '../../core/scan/radial-scan'
import type { ReadScanTable, ScanChoices, ScanTable } from '../../formats/scan-table'
import { inTenthsOfMicrons } from '../../words/numbers'
import { heldRows, scanProblemPlace, scanProblemText, scanRefusalText } from '../../words/scan-table'
import { scanTableWords } from '../../words/scan-table-words'
import { words } from '../../words/words'
import type { FileReading } from './file-reading'
import { PickField } from './PickField'
import { ScanFields } from './ScanFields'

/** What is said of a scan when it is taken. */
export type SaidOfScan = Pick<Scan, 'name' | 'cleaning'>

export interface ScanImportProps {
  /** Of the file, without its ending. */
  readonly name: string
  readonly state: FileReading<ScanTable>
  readonly choices: ScanChoices
  /** Of the bore that takes it; absent: there is no job on the bench. */
  readonly boreName: string | undefined
  readonly onChoose: (choices: ScanChoices) => void
  readonly onStop: () => void
  readonly onAgain: () => void
  readonly onAsReadings: () => void
  /** Both answer with what keeps the scan from being taken, in words; with nothing when it is taken. */
  readonly onTake: (scan: RadialScan, said: SaidOfScan) => Promise<readonly string[]>
  readonly onNewJob: (scan: RadialScan, said: SaidOfScan) => Promise<readonly string[]>
}

/** A scan in a file before it is taken: what it holds, in which units, and what could not be read. */
export function ScanImport(props: ScanImportProps) {
  const { state, choices, onChoose, onAgain, onStop, onAsReadings } = props
  const said = scanTableWords
  if (state.kind === 'stopped' || state.kind === 'failed') {
    return (
      <>
        <p role="alert">{words.table[state.kind]}</p>
        <button type="button" className="button" onClick={onAgain}>
          {words.table.again}
        </button>
      </>
    )
  }
  const table = 'read' in state ? state.read : undefined
  return (
    <>
      {table && !table.ok ? (
        <>
          <p role="alert">{scanRefusalText(table)}</p>
          {table.problems ? <ProblemList problems={table.problems} count={table.problems.length} /> : null}
          <ScanFields table={undefined} choices={choices} onChoose={onChoose} />
        </>
      ) : null}
      {table?.ok ? <Held {...props} table={table} isBusy={state.kind === 'reading'} /> : null}
      {state.kind === 'reading' ? <Progress {...state} onStop={onStop} /> : null}
      <p>
        <button type="button" className="quiet" onClick={onAsReadings}>
          {said.asReadings}
        </button>
      </p>
    </>
  )
}

function Progress({ done, all, onStop }: { done: number; all: number; onStop: () => void }) {
  const said = scanTableWords
  return (
    <div className="import-progress" role="status">
      <progress {...(all === 0 ? {} : { max: all, value: done })} aria-label={said.reading} />
      <span>{all === 0 ? said.reading : said.progress(String(Math.floor((100 * done) / all)))}</span>
      <button type="button" className="quiet" onClick={onStop}>
        {words.table.cancel}
      </button>
    </div>
  )
}

function Held(props: ScanImportProps & { readonly table: ReadScanTable; readonly isBusy: boolean }) {
  const { name, table, choices, boreName, isBusy, onChoose, onTake, onNewJob } = props
  const said = scanTableWords
  const nameId = useId()
  const [typedName, setTypedName] = useState(name)
  const [cleaning, setCleaning] = useState<Scan['cleaning']>()
  const [why, setWhy] = useState<readonly string[]>([])
  const [isTaking, setTaking] = useState(false)
  const isReady = table.open.length === 0 && !isBusy && !isTaking
  const take = async (by: ScanImportProps['onTake']) => {
    const trimmed = typedName.trim()
    const saidOfIt = { ...(trimmed === '' ? {} : { name: trimmed }), ...(cleaning ? { cleaning } : {}) }
    setTaking(true)
    try {
      setWhy(await by(table.scan, saidOfIt))
    } finally {
      setTaking(false)
    }
  }
  const { problemCount } = table
  return (
    <>
      <p className="soft">{said.lead}</p>
      <ScanFields table={table} choices={choices} onChoose={onChoose} />
      {table.open.length > 0 ? (
        <ul className="import-open" role="status">
          {table.open.map((question) => (
            <li key={question}>{said.open[question]}</li>
          ))}
        </ul>
      ) : null}
      <div className="scan-held">
        <Figures table={table} />
        <figure>
          <ScanPreview scan={table.scan} label={said.map} width={360} height={160} />
          <figcaption className="soft">{said.map}</figcaption>
        </figure>
      </div>
      <Notes table={table} />
      <ProblemList problems={table.problems} count={problemCount} isKept />
      <div className="pick-fields">
        <div className="pick-field">
          <label htmlFor={nameId}>{said.labels.name}</label>
          <input
            id={nameId}
            value={typedName}
            maxLength={120}
            onChange={({ target }) => setTypedName(target.value)}
          />
        </div>
        <PickField
          label={said.labels.cleaning}
          value={cleaning ?? 'open'}
          options={[
            ['open', said.cleaningOpen],
            ...scanCleanings.map((one) => [one, said.cleaning[one]] as const),
          ]}
          onPick={(value) => setCleaning(scanCleanings.find((one) => one === value))}
        />
      </div>
      <p className="soft">{said.noSize}</p>
      <p className="scan-takes">
        {boreName === undefined ? null : (
          <button
            type="button"
            className="button is-take"
            disabled={!isReady}
            onClick={() => void take(onTake)}
          >
            {problemCount > 0 ? said.takeWith(places(problemCount), boreName) : said.take(boreName)}
          </button>
        )}
        <button
          type="button"
          className={boreName === undefined ? 'button is-take' : 'button'}
          disabled={!isReady}
          onClick={() => void take(onNewJob)}
        >
          {said.newJob}
        </button>
      </p>
      {why.length > 0 ? (
        <div role="alert">
          <p>{said.refusedJob}</p>
          <ul>
            {why.map((one) => (
              <li key={one}>{one}</li>
            ))}
          </ul>
        </div>
      ) : null}
    </>
  )
}

function Figures({ table }: { readonly table: ReadScanTable }) {
  const { scan, values, layout } = table
  let [leastUm, mostUm] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]
  for (const radius of scan.radiiUm) {
    if (radius < leastUm) leastUm = radius
    if (radius > mostUm) mostUm = radius
  }
  const rows = heldRows({ ...scan, values, layout, leastUm, mostUm })
  return (
    <dl>
      {rows.map(([name, text]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{text}</dd>
        </div>
      ))}
    </dl>
  )
}

function Notes({ table: { closing, repeated } }: { readonly table: ReadScanTable }) {
  const said = scanTableWords
  return (
    <>
      {closing.count > 0 ? (
        <p className="soft">
          {said.closing(String(closing.count), inTenthsOfMicrons(closing.farthestUm / 1000))}
        </p>
      ) : null}
      {repeated > 0 ? <p className="soft">{said.repeated(String(repeated))}</p> : null}
    </>
  )
}

function places(count: number): string {
  const said = scanTableWords
  return count === 1 ? said.problem : said.manyProblems(String(count))
}

function ProblemList(props: {
  readonly problems: ReadScanTable['problems']
  readonly count: number
  readonly isKept?: boolean
}) {
  const { problems, count, isKept = false } = props
  const said = scanTableWords
  if (count === 0) return null
  return (
    <div role="status">
      <p className="import-summary">{said.problemsTitle(places(count))}</p>
      <ul className="problem-list scan-problems">
        {problems.map((problem) => (
          <li key={`${problem.line} ${problem.column} ${problem.code}`}>
            <span className="place">{scanProblemPlace(problem)}</span> {scanProblemText(problem)}
          </li>
        ))}
        {count > problems.length ? <li>{said.moreProblems(String(count - problems.length))}</li> : null}
      </ul>
      {isKept ? <p className="soft">{said.problemsKept}</p> : null}
    </div>
  )
}
