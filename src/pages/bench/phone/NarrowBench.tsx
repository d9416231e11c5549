import './narrow.css'
import { useDeferredValue, useState } from 'react'
import { type PartName, type PartsShown, showPart } from '../../../session/session'
import { words } from '../../../words/words'
import { openQuestions } from '../open-questions'
import { type OnBench, useSession } from '../use-job'
import type { WallColumnProps } from '../WallColumn'
import { EnterPart } from './EnterPart'
import { FindingsPart, type FindingsSlots } from './FindingsPart'
import { SetUpPart } from './SetUpPart'
import type { Layout } from './use-layout'
import { VerdictStrip } from './VerdictStrip'
import { WallPart } from './WallPart'

const onOne: readonly PartName[] = ['enter', 'wall', 'findings', 'set-up']
const onTwo: readonly PartName[] = ['enter', 'set-up', 'wall', 'findings']

/**
 * The Bench in a narrow window: one part at a time, on a tablet two. Parts stay where they are while others
 * are shown, so that nothing typed is lost.
 */
export function NarrowBench(
  props: WallColumnProps & {
    readonly layout: Exclude<Layout, 'desk'>
    readonly findings: FindingsSlots
  },
) {
  const { layout, bench, findings, ...wall } = props
  const parts = useSession((state) => state.parts)
  const isLeftHanded = useSession((state) => state.leftHanded)
  const shown = shownParts(layout, parts)
  const isHidden = (name: PartName) => !shown.includes(name)
  const [wasWallShown, setWasWallShown] = useState(false)
  // What is not seen is brought up to date when there is time.
  const later = useDeferredValue(bench)
  const benchOf = (name: PartName) => (isHidden(name) ? later : bench)
  // Once seen it stays: the picture would have to be made anew each time.
  if (!wasWallShown && shown.includes('wall')) setWasWallShown(true)
  return (
    <main className={`narrow is-${layout}${isLeftHanded ? ' is-left-handed' : ''}`}>
      <div className="narrow-part is-left" hidden={isHidden('enter')}>
        <EnterPart bench={bench} />
      </div>
      <div className="narrow-part is-left" hidden={isHidden('set-up')}>
        {layout === 'one' ? <VerdictStrip bench={bench} /> : null}
        <SetUpPart bench={benchOf('set-up')} paintOf={wall.paintOf} />
      </div>
      <div className="narrow-part is-right" hidden={isHidden('wall')}>
        <VerdictStrip bench={bench} />
        {wasWallShown ? (
          <WallPart bench={benchOf('wall')} layout={layout} isShown={!isHidden('wall')} {...wall} />
        ) : null}
      </div>
      <div className="narrow-part is-right" hidden={isHidden('findings')}>
        <FindingsPart bench={benchOf('findings')} {...findings} />
      </div>
      <PartBar names={layout === 'one' ? onOne : onTwo} shown={shown} bench={bench} />
    </main>
  )
}

function shownParts(layout: Layout, { latest, left, right }: PartsShown): readonly PartName[] {
  return layout === 'one' ? [latest] : [left, right]
}

function PartBar(props: {
  readonly names: readonly PartName[]
  readonly shown: readonly PartName[]
  readonly bench: OnBench
}) {
  const { names, shown, bench } = props
  const said = words.parts.narrow
  const texts = { enter: said.enter, wall: said.wall, findings: said.findings, 'set-up': said.setUp }
  const questions = openQuestions(bench).length
  return (
    <nav className="part-bar" aria-label={words.phone.parts}>
      {names.map((name) => {
        const counts = name === 'findings' && questions > 0
        return (
          <button
            key={name}
            type="button"
            aria-current={shown.includes(name) ? 'page' : undefined}
            {...(counts ? { 'aria-label': words.phone.findingsOpen(texts[name], questions) } : {})}
            onClick={() => showPart(name)}
          >
            {texts[name]}
            {counts ? <span className="part-count">{questions}</span> : null}
          </button>
        )
      })}
    </nav>
  )
}
