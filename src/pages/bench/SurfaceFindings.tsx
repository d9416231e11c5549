import './surface-findings.css'
import { lazy, Suspense, useEffect, useId, useRef } from 'react'
import type { SurfaceFound } from '../../core/findings'
import { middleOfSurface, surfaceNear } from '../../core/surface-findings/surface-place'
import { removeSurfaceFinding } from '../../job/surface-commands'
import { openSurface, pointAt } from '../../session/session'
import { surfaceParts, surfacePlaceText, surfaceTitle } from '../../words/surface'
import { words } from '../../words/words'
import { perform } from './perform'
import { type OnBench, useSession } from './use-job'

const SurfaceEditor = lazy(async () => ({ default: (await import('./SurfaceEditor')).SurfaceEditor }))
const SurfaceDraft = lazy(async () => ({ default: (await import('./SurfaceDraft')).SurfaceDraft }))

export interface SurfaceProps {
  readonly bench: OnBench
  /** The place of a new one is being typed. */
  readonly isAdding: boolean
  readonly setIsAdding: (isAdding: boolean) => void
}

/** What the wall showed, a row each, and the place of a new one; nothing while there is neither. */
export function SurfaceFindings({ bench, isAdding, setIsAdding }: SurfaceProps) {
  const { surface } = bench.finding
  if (surface.length === 0 && !isAdding) return null
  return (
    <section className="surface-findings" aria-label={words.surface.title}>
      <h2>{words.surface.title}</h2>
      {surface.length === 0 ? null : (
        <ul>
          {surface.map((found, index) => (
            <SurfaceRow key={found.id} bench={bench} found={found} number={index + 1} />
          ))}
        </ul>
      )}
      {isAdding ? (
        <Suspense fallback={null}>
          <SurfaceDraft bench={bench} onDone={() => setIsAdding(false)} />
        </Suspense>
      ) : null}
    </section>
  )
}

interface RowProps {
  readonly bench: OnBench
  readonly found: SurfaceFound
  /** From 1. */
  readonly number: number
}

/** One finding: focus or pointer on it lights its place, and its place pointed at lights it. */
function SurfaceRow({ bench, found, number }: RowProps) {
  const { bore, survey, finding } = bench
  const isOpen = useSession((state) => state.surfaceOpen === found.id)
  const isLit = useSession(
    ({ pointed }) => pointed !== undefined && surfaceNear([found], pointed, finding.drawnLengthMm).length > 0,
  )
  const id = useId()
  const row = useRef<HTMLLIElement>(null)
  const title = surfaceTitle(number, found)
  const light = () => pointAt({ ...middleOfSurface(found), from: 'sheet' })
  useEffect(() => {
    if (isOpen) row.current?.scrollIntoView({ block: 'nearest' })
  }, [isOpen])
  const remove = () => {
    openSurface(undefined)
    perform(words.surface.changes.removed, (job) =>
      removeSurfaceFinding(job, { boreId: bore.id, surveyId: survey.id }, found.id),
    )
  }
  return (
    <li ref={row} className={isLit ? 'is-lit' : ''}>
      <div className="surface-row">
        <button
          type="button"
          className="surface-name"
          aria-expanded={isOpen}
          aria-controls={isOpen ? id : undefined}
          onFocus={light}
          onPointerEnter={light}
          onClick={() => openSurface(isOpen ? undefined : found.id)}
        >
          <span className="surface-title">{title}</span> {surfacePlaceText(found)}
          <span className="aside">{surfaceParts(found).join('; ')}</span>
        </button>
        <button
          type="button"
          className="quiet"
          aria-label={words.surface.remove(title)}
          title={words.surface.remove(title)}
          onClick={remove}
        >
          ×
        </button>
      </div>
      {isOpen ? (
        <div id={id} className="panel surface-editor">
          <Suspense fallback={null}>
            <SurfaceEditor bench={bench} found={found} title={title} />
          </Suspense>
        </div>
      ) : null}
    </li>
  )
}
