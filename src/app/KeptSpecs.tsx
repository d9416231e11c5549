import './kept-specs.css'
import { useEffect, useRef, useState } from 'react'
import { useStore } from 'zustand'
import { jobStore } from '../job/job-store'
import { hasLimits, isMeasured, keptSpecOf } from '../job/kept-spec'
import type { KeptSpecsProps } from '../pages/bench/kept-specs-slot'
import { dayText } from '../words/day-text'
import { words } from '../words/words'
import { KeepSpec } from './KeepSpec'
import { keptSpecs, lookForKeptSpecs, specName, takeSpec } from './kept-specs'
import { TakeSpec } from './TakeSpec'

/** Where the sheet begins, kept limits for a job that has none; beside limits, a way to keep them. */
export function KeptSpecs({ place }: KeptSpecsProps) {
  useEffect(() => {
    if (keptSpecs.getState().list === undefined) void lookForKeptSpecs()
  }, [])
  return place === 'start' ? <Start /> : <BesideLimits />
}

function Start() {
  const job = useStore(jobStore, (state) => state.job)
  const readOnly = useStore(jobStore, (state) => state.readOnly)
  const specs = useStore(keptSpecs, ({ list }) => list?.specs)
  if (!specs || specs.length === 0 || readOnly || hasLimits(job) || isMeasured(job)) return null
  return <TakeSpec specs={specs} onTake={takeSpec} />
}

function BesideLimits() {
  const job = useStore(jobStore, (state) => state.job)
  const readOnly = useStore(jobStore, (state) => state.readOnly)
  const specs = useStore(keptSpecs, ({ list }) => list?.specs)
  const [isAsking, setAsking] = useState(false)
  const opener = useRef<HTMLButtonElement>(null)
  // What an example invents is nobody's manual.
  if (!specs || !hasLimits(job) || job.invented === true) return null
  const kept = keptSpecOf(job, specs)
  if (kept) {
    return <span className="kept-as">{words.keptSpecs.keptAs(specName(kept), dayText(kept.typedOn))}</span>
  }
  if (readOnly) return null
  if (isAsking) return <KeepSpec onDone={() => setAsking(false)} />
  return (
    <button ref={opener} type="button" className="quiet" onClick={() => setAsking(true)}>
      {words.keptSpecs.keep}
    </button>
  )
}
