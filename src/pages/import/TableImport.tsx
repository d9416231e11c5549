import './import.css'
import { useMemo, useState } from 'react'
import { isValue } from '../../formats/column-meaning'
import type { ReadTableFile, TableChoices, TableFile } from '../../formats/table-file'
import { jobOfTable } from '../../job/job-of-table'
import type { Job } from '../../job/schema'
import { type TakenTable, takeTable } from '../../job/take-table'
import { words } from '../../words/words'
import { type DestinationChoices, DestinationFields, type InHand, offeredFor } from './DestinationFields'
import type { FileReading } from './file-reading'
import { MappingFields } from './MappingFields'
import { PreviewTable } from './PreviewTable'
import { type AnyRefusedCell, TakenReport } from './TakenReport'

export interface TableImportProps {
  /** Of the file, without its ending. */
  readonly name: string
  readonly state: FileReading<TableFile>
  readonly choices: TableChoices
  /** Absent: there is no job on the bench. */
  readonly inHand: InHand | undefined
  readonly onChoose: (choices: TableChoices) => void
  readonly onStop: () => void
  readonly onAgain: () => void
  /** Both answer with what keeps the job from holding the readings, in words; with nothing when they are taken. */
  readonly onTake: (take: (job: Job, ids: () => string) => TakenTable) => Promise<readonly string[]>
  readonly onNewJob: (take: (ids: () => string) => TakenTable) => Promise<readonly string[]>
  readonly onAsScan: () => void
}

/** A table of readings before it is taken: what its columns hold, what each cell becomes, what is refused and why. */
export function TableImport(props: TableImportProps) {
  const { state, choices, onChoose, onAgain } = props
  const said = words.table
  if (state.kind === 'stopped' || state.kind === 'failed') {
    return (
      <>
        <p role="alert">{said[state.kind]}</p>
        <button type="button" className="button" onClick={onAgain}>
          {said.again}
        </button>
      </>
    )
  }
  const file = 'read' in state ? state.read : undefined
  return (
    <>
      {file && !file.ok ? (
        <>
          <p role="alert">
            {file.why === 'quote-left-open'
              ? said.notRead[file.why](String((file.row ?? 0) + 1))
              : said.notRead[file.why]}
          </p>
          <MappingFields file={undefined} choices={choices} onChoose={onChoose} />
        </>
      ) : null}
      {file?.ok ? <Mapped {...props} file={file} isBusy={state.kind === 'reading'} /> : null}
      {state.kind === 'reading' ? <Progress {...state} onStop={props.onStop} /> : null}
      <p>
        <button type="button" className="quiet" onClick={props.onAsScan}>
          {words.scans.asScan}
        </button>
      </p>
    </>
  )
}

function Progress({ done, all, onStop }: { done: number; all: number; onStop: () => void }) {
  const said = words.table
  return (
    <div className="import-progress" role="status">
      <progress {...(all === 0 ? {} : { max: all, value: done })} aria-label={said.reading} />
      <span>{all === 0 ? said.reading : said.progress(String(done), String(all))}</span>
      <button type="button" className="quiet" onClick={onStop}>
        {said.cancel}
      </button>
    </div>
  )
}

/** What was done last. */
type Done =
  | { readonly kind: 'taken'; readonly taken: TakenTable }
  | { readonly kind: 'refused'; readonly why: readonly string[] }

function Mapped(props: TableImportProps & { readonly file: ReadTableFile; readonly isBusy: boolean }) {
  const { file, isBusy, choices, inHand, name, onChoose } = props
  const [wanted, setWanted] = useState<DestinationChoices>({ destination: undefined, addRepeats: false })
  const [done, setDone] = useState<Done>()
  const offered = offeredFor(file, inHand)
  const destination = offered.find((one) => one === wanted.destination) ?? offered[0] ?? 'new-job'
  const plan = useTaking(props, { ...wanted, destination })
  const planned = useMemo(() => plan(numbered()), [plan])
  const taken = done?.kind === 'taken' ? done.taken : planned
  const isReady = file.open.length === 0 && taken.readings > 0 && !isBusy
  const take = async () => {
    const made: { taken: TakenTable } = { taken }
    const keep = (one: TakenTable) => {
      made.taken = one
      return one
    }
    const why =
      destination === 'new-job' || !inHand
        ? await props.onNewJob((ids) => keep(plan(ids)))
        : await props.onTake((job, ids) => keep(plan(ids, job)))
    setDone(why.length > 0 ? { kind: 'refused', why } : { kind: 'taken', taken: made.taken })
  }
  const refused = inOrder([...file.content.refused, ...taken.refused])
  const isTaken = done?.kind === 'taken'
  return (
    <>
      {isTaken ? null : (
        <>
          <p className="soft">{words.table.lead}</p>
          <MappingFields file={file} choices={choices} onChoose={onChoose} />
          <PreviewTable
            file={file}
            refused={refused}
            onColumns={(columns) =>
              onChoose({ ...choices, headRow: file.mapping.headRow ?? 'none', columns })
            }
          />
          <OpenList file={file} />
          <DestinationFields
            name={name}
            inHand={inHand}
            offered={offered}
            destination={destination}
            wanted={wanted}
            needsSetting={
              wanted.settingSizeMm !== undefined || refused.some(({ why }) => why === 'setting-open')
            }
            onWanted={setWanted}
          />
        </>
      )}
      {isTaken ? null : (
        <p>
          <button type="button" className="button is-take" disabled={!isReady} onClick={() => void take()}>
            {isReady
              ? words.table.take(words.table.readings(taken.readings), unitText(file))
              : words.table.takeNothing}
          </button>
        </p>
      )}
      {file.open.length > 0 ? null : (
        <TakenReport taken={taken} refused={refused} heads={file.heads} isTaken={isTaken} />
      )}
      {done?.kind === 'refused' ? (
        <div role="alert">
          <p>{words.table.refusedJob}</p>
          <ul>
            {done.why.map((why) => (
              <li key={why}>{why}</li>
            ))}
          </ul>
        </div>
      ) : null}
    </>
  )
}

/** Ids for a plan that is only shown. */
function numbered(): () => string {
  let count = 0
  return () => `planned-${++count}`
}

type Plan = (ids: () => string, job?: Job) => TakenTable

function useTaking(
  { file, inHand, name }: TableImportProps & { readonly file: ReadTableFile },
  { destination, addRepeats, settingSizeMm }: DestinationChoices,
): Plan {
  const { readings } = file.content
  return useMemo((): Plan => {
    if (destination === 'new-job' || !inHand)
      return (ids) => jobOfTable(readings, { name, settingSizeMm }, ids)
    const choices = {
      boreId: inHand.bore.id,
      surveyId: inHand.survey.id,
      newBore: destination === 'new-bore',
      newSurvey: destination === 'new-survey',
      addRepeats,
      settingSizeMm,
    }
    return (ids, job = inHand.job) => takeTable(job, readings, choices, ids)
  }, [readings, inHand, name, destination, addRepeats, settingSizeMm])
}

/** What the readings are taken as, for the button that takes them. */
function unitText({ mapping }: ReadTableFile): string {
  const kinds = new Set(mapping.columns.filter(isValue))
  return words.app.and([...kinds].map((meaning) => words.table.meanings[meaning]))
}

function inOrder(cells: readonly AnyRefusedCell[]): readonly AnyRefusedCell[] {
  return [...cells].sort((a, b) => a.row - b.row || a.column - b.column)
}

function OpenList({ file }: { readonly file: ReadTableFile }) {
  if (file.open.length === 0) return null
  return (
    <ul className="import-open" role="status">
      {file.open.map((question) => (
        <li key={question}>{words.table.open[question]}</li>
      ))}
    </ul>
  )
}
