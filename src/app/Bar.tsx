import './bar.css'
import { useStore } from 'zustand'
import { jobStore } from '../job/job-store'
import { useLayout, useOnPaper } from '../pages/bench/phone/use-layout'
import { session } from '../session/session'
import { words } from '../words/words'
import { BoreTabs } from './BoreTabs'
import { CopyReminder, useReminder } from './CopyReminder'
import { InventedBanner } from './InventedBanner'
import { JobMenu } from './JobMenu'
import { JobName } from './JobName'
import { NarrowBar } from './NarrowBar'
import { PageTabs } from './PageTabs'
import { SendButton } from './SendButton'
import { useThemeStep } from './theme-step'
import { UndoButtons } from './UndoButtons'

/** The top of the page: which job, whether it is kept, its bores, and what is done with the whole of it. */
export function Bar() {
  const onPaper = useOnPaper()
  if (useLayout() === 'desk') return <DeskBar />
  return (
    <>
      <NarrowBar />
      {onPaper ? <DeskBar /> : null}
    </>
  )
}

function DeskBar() {
  const page = useStore(session, (state) => state.page)
  const invented = useStore(jobStore, ({ job }) => job.invented === true)
  const remind = useReminder()
  const theme = useThemeStep()
  return (
    <header className="bar">
      <span className="wordmark">{words.app.name}</span>
      <JobName />
      {page === 'bench' ? <BoreTabs /> : null}
      {invented ? (
        <div className="bar-banner">
          <InventedBanner />
        </div>
      ) : remind ? (
        <div className="bar-banner">
          <CopyReminder />
        </div>
      ) : null}
      <div className="bar-right">
        <PageTabs />
        <UndoButtons />
        <SendButton />
        <JobMenu after={[{ label: theme.text, pick: theme.next, apart: true }]} />
      </div>
    </header>
  )
}
