import { useState } from 'react'
import { useStore } from 'zustand'
import type { TableChoices } from '../formats/table-file'
import { jobStore } from '../job/job-store'
import { newId } from '../job/new-id'
import type { Job } from '../job/schema'
import { surveyOf } from '../job/selectors'
import type { TakenTable } from '../job/take-table'
import { TableImport } from '../pages/import/TableImport'
import { chooseBore, chooseSurvey, session } from '../session/session'
import { problemText } from '../words/problems'
import { words } from '../words/words'
import { useChosenBore } from './BoreTabs'
import { changeOver, desk, layOut, say } from './desk'
import { showTable, type TableToImport } from './questions'
import { useTableFile } from './use-table-file'

/** A table of readings, looked at and taken: as one change of the job on the bench, or as a new job. */
export function ImportTable({ table }: { readonly table: TableToImport }) {
  const { name, bytes } = table
  const [choices, setChoices] = useState<TableChoices>({})
  const { state, stop, again } = useTableFile(bytes, choices)
  const job = useStore(jobStore, (state) => state.job)
  const bore = useChosenBore()
  const chosen = useStore(session, ({ surveyId }) => surveyId)
  const hasJob = useStore(desk, ({ shows, behindShelf }) => shows === 'bench' || behindShelf === 'bench')
  const survey = bore && surveyOf(bore, chosen)
  const inHand = hasJob && bore && survey ? { job, bore, survey } : undefined
  return (
    <TableImport
      name={name.replace(/\.\w+$/, '')}
      state={state}
      choices={choices}
      inHand={inHand}
      onChoose={setChoices}
      onStop={stop}
      onAgain={again}
      onTake={(take) => takeIntoJob(name, take)}
      onNewJob={(take) => takeAsNewJob(name, take(newId))}
      onAsScan={() => showTable({ ...table, holds: 'scan' })}
    />
  )
}

type Take = (job: Job, ids: () => string) => TakenTable

/** Takes a table as one change; what keeps the job from holding it, in words. */
async function takeIntoJob(name: string, take: Take): Promise<readonly string[]> {
  const made: { taken?: TakenTable } = {}
  const done = jobStore.getState().perform(words.changes.table(name), (job) => {
    made.taken = take(job, newId)
    return made.taken.job
  })
  if (!done.ok) return done.problems.map(problemText)
  show(made.taken)
  return []
}

async function takeAsNewJob(name: string, taken: TakenTable): Promise<readonly string[]> {
  await changeOver(() => {
    layOut(taken.job)
    say(words.file.opened(name))
    show(taken)
  })
  return []
}

/** The first survey that got readings comes into hand. */
function show(taken: TakenTable | undefined): void {
  const [first] = taken?.surveys ?? []
  if (!first) return
  chooseBore(first.boreId)
  const bore = taken?.job.bores.find(({ id }) => id === first.boreId)
  chooseSurvey(bore?.surveys.at(-1)?.id === first.surveyId ? undefined : first.surveyId)
}
