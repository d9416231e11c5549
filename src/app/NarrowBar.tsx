import './bar.css'
import './narrow-bar.css'
import { useStore } from 'zustand'
import { jobStore } from '../job/job-store'
import { findingOf } from '../job/selectors'
import { type Layout, useLayout } from '../pages/bench/phone/use-layout'
import { chooseBore, session, setLeftHanded } from '../session/session'
import { verdictSentence } from '../words/verdict'
import { words } from '../words/words'
import { addBoreItems, boresInOrder, useChosenBore } from './BoreTabs'
import { CopyReminder, useReminder } from './CopyReminder'
import { goToPage } from './desk'
import { InventedBanner } from './InventedBanner'
import { JobMenu } from './JobMenu'
import { JobName } from './JobName'
import { Menu, type MenuItem } from './Menu'
import { PageTabs } from './PageTabs'
import { useThemeStep } from './theme-step'
import { UndoButtons } from './UndoButtons'

/** The top of a narrow window: the bore in hand, the job, whether it is kept, and a menu of all else. */
export function NarrowBar() {
  const page = useStore(session, (state) => state.page)
  const layout = useLayout()
  return (
    <>
      <header className="bar is-narrow">
        {page === 'bench' ? <BoreChip /> : layout === 'one' ? <ToBench /> : null}
        <JobName />
        {layout === 'two' ? <PageTabs /> : null}
        {layout === 'two' ? <UndoButtons /> : null}
        <NarrowMenu layout={layout} />
      </header>
      <Banner layout={layout} />
    </>
  )
}

function ToBench() {
  return (
    <button type="button" className="bar-button" onClick={() => goToPage('bench')}>
      {words.pages.toBench}
    </button>
  )
}

/** Which of the bores is in hand; opens the list of them. */
function BoreChip() {
  const job = useStore(jobStore, (state) => state.job)
  const chosen = useChosenBore()
  const own = job.bores.filter(({ role }) => role === 'of-this-engine')
  if (!chosen) return null
  const place = own.indexOf(chosen)
  const items = boresInOrder(job.bores).map((bore) => {
    const finding = findingOf(job, bore.id)
    return {
      label:
        bore.role === 'for-comparison'
          ? words.bar.comparisonTab(bore.name)
          : words.bar.boreTab(bore.name, finding ? verdictSentence(finding) : ''),
      pick: () => chooseBore(bore.id),
    }
  })
  const [first, ...others] = addBoreItems()
  return (
    <Menu
      text={place < 0 ? chosen.name : words.bar.boreChip(place + 1, own.length)}
      items={[...items, ...(first ? [{ ...first, apart: true }] : []), ...others]}
    />
  )
}

function NarrowMenu({ layout }: { readonly layout: Layout }) {
  const last = useStore(jobStore, ({ past }) => past.at(-1)?.label)
  const next = useStore(jobStore, ({ future }) => future[0]?.label)
  const isLeftHanded = useStore(session, (state) => state.leftHanded)
  const theme = useThemeStep()
  const page = useStore(session, (state) => state.page)
  const { undo, redo } = jobStore.getState()
  const pages: MenuItem[] =
    layout === 'two' || page !== 'bench'
      ? []
      : (['compare', 'show', 'report'] as const).map((name) => ({
          label: words.pages[name],
          pick: () => goToPage(name),
        }))
  const steps: MenuItem[] =
    layout === 'two'
      ? []
      : [
          ...(last === undefined ? [] : [{ label: words.undo.undoOf(last), pick: undo }]),
          ...(next === undefined ? [] : [{ label: words.undo.redoOf(next), pick: redo }]),
        ]
  return (
    <JobMenu
      text={words.phone.menu}
      before={[...pages, ...steps]}
      after={[
        {
          label: isLeftHanded ? words.phone.rightHand : words.phone.leftHand,
          pick: () => setLeftHanded(!isLeftHanded),
          apart: true,
        },
        { label: theme.text, pick: theme.next },
      ]}
    />
  )
}

/** Says that an example is one, or that a job stands in no file; the page for entering has no room to spare. */
function Banner({ layout }: { readonly layout: Layout }) {
  const invented = useStore(jobStore, ({ job }) => job.invented === true)
  const isEntering = useStore(session, ({ page, parts }) => page === 'bench' && parts.latest === 'enter')
  const remind = useReminder()
  if (!(invented || remind) || (layout === 'one' && isEntering)) return null
  return <div className="narrow-banner">{invented ? <InventedBanner /> : <CopyReminder />}</div>
}
