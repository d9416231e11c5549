import { useStore } from 'zustand'
import type { Bore } from '../core/measured'
import { addSurvey, removeBore, removeSurvey } from '../job/bore-commands'
import { describeJob } from '../job/commands'
import { jobStore } from '../job/job-store'
import { newId } from '../job/new-id'
import type { Job } from '../job/schema'
import { surveyOf } from '../job/selectors'
import { chooseSurvey, session } from '../session/session'
import { languages } from '../words/languages'
import { words } from '../words/words'
import { useChosenBore } from './BoreTabs'
import { copyAsNewJob, saveJobToFile, showShelf, startNewJob } from './desk'
import { Menu, type MenuItem } from './Menu'
import {
  ask,
  showAids,
  showExamples,
  showKeys,
  showLanguage,
  showLetterhead,
  showNote,
  showVersions,
} from './questions'
import { saveAllToFile } from './save-all'
import { useFileChooser } from './use-file-chooser'

/** Everything that is done with a job as a whole, between what else its place has room for. */
export function JobMenu(props: {
  readonly text?: string
  readonly before?: readonly MenuItem[]
  readonly after?: readonly MenuItem[]
}) {
  const { text = words.file.menu, before = [], after = [] } = props
  const file = useFileChooser()
  const table = useFileChooser('table')
  const items = useItems(file.choose, table.choose)
  return (
    <>
      <Menu text={text} items={[...before, ...items, ...after]} />
      {file.field}
      {table.field}
    </>
  )
}

function useItems(chooseFile: () => void, chooseTable: () => void): MenuItem[] {
  const bore = useChosenBore()
  const isOnly = useStore(jobStore, ({ job }) => job.bores.length === 1)
  const shownIn = useStore(jobStore, ({ job }) => job.shownIn)
  const { file } = words
  return [
    { label: file.new, pick: () => void startNewJob() },
    { label: file.open, pick: chooseFile },
    { label: words.table.menu, pick: chooseTable },
    { label: file.kept, pick: showShelf },
    { label: file.save, pick: () => void saveJobToFile(false), apart: true },
    { label: file.saveAs, pick: () => void saveJobToFile(true) },
    { label: file.saveAll, pick: () => void saveAllToFile() },
    { label: words.versions.menu, pick: showVersions },
    { label: file.duplicate, pick: () => void copyAsNewJob() },
    { label: words.note.menu, pick: showNote, apart: true },
    { label: file.letterhead, pick: showLetterhead },
    { label: file.examples, pick: showExamples },
    { label: words.aids.menu, pick: showAids },
    { label: words.keyList.menu, pick: showKeys },
    { label: words.lengths[shownIn === 'inch' ? 'mm' : 'inch'], pick: () => writeIn(shownIn) },
    ...(languages.length > 1 ? [{ label: words.language.menu, pick: showLanguage }] : []),
    ...(bore
      ? [{ label: words.bar.addSurvey(nameOf(bore)), pick: () => measureAgain(bore), apart: true }]
      : []),
    ...(bore && bore.surveys.length > 1
      ? [{ label: words.bar.removeSurvey, pick: () => void removeSurveyAsked(bore) }]
      : []),
    ...(bore && !isOnly
      ? [{ label: words.bar.removeBore(nameOf(bore)), pick: () => void removeAsked(bore) }]
      : []),
  ]
}

/** Lengths of the job in inches, or in mm again. */
function writeIn(before: Job['shownIn']) {
  const shownIn = before === 'inch' ? undefined : 'inch'
  jobStore.getState().perform(words.lengths.change, (job) => describeJob(job, { shownIn }))
}

function nameOf({ role, name }: Bore): string {
  return role === 'for-comparison' ? name : words.bar.boreNamed(name)
}

function measureAgain(bore: Bore) {
  jobStore.getState().perform(words.changes.surveyAdded, (job) => addSurvey(job, bore.id, newId))
  chooseSurvey(undefined)
}

async function removeSurveyAsked(bore: Bore): Promise<void> {
  const survey = surveyOf(bore, session.getState().surveyId)
  const answer = await ask(words.bar.removeSurveyAsk, [{ answer: 'remove', label: words.bar.removeSurvey }])
  if (answer !== 'remove' || !survey) return
  jobStore.getState().perform(words.changes.surveyRemoved, (job) => removeSurvey(job, bore.id, survey.id))
  chooseSurvey(undefined)
}

async function removeAsked(bore: Bore): Promise<void> {
  const name = nameOf(bore)
  const answer = await ask(words.bar.removeBoreAsk(name), [
    { answer: 'remove', label: words.bar.removeBore(name) },
  ])
  if (answer !== 'remove') return
  jobStore.getState().perform(words.changes.boreRemoved, (job) => removeBore(job, bore.id))
}
