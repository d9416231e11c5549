import './kept-specs.css'
import { useEffect, useState } from 'react'
import { useStore } from 'zustand'
import type { KeptSpec } from '../job/kept-spec'
import { TypedField } from '../pages/bench/TypedField'
import { dayText } from '../words/day-text'
import { keptSpecText } from '../words/kept-spec-text'
import { words } from '../words/words'
import { Dialog } from './Dialog'
import {
  keptSpecs,
  lookForKeptSpecs,
  newJobWith,
  putSpec,
  removeSpec,
  renameSpec,
  specName,
} from './kept-specs'
import { closeKeptSpecs } from './questions'

/** All kept limits: renamed in place, begun with, or removed with a way back. */
export function KeptSpecsDialog() {
  const said = words.keptSpecs
  const list = useStore(keptSpecs, (state) => state.list)
  const [removed, setRemoved] = useState<KeptSpec>()
  useEffect(() => void lookForKeptSpecs(), [])
  const remove = (spec: KeptSpec) => {
    void removeSpec(spec.id)
    setRemoved(spec)
  }
  const restore = (spec: KeptSpec) => {
    void putSpec(spec)
    setRemoved(undefined)
  }
  return (
    <Dialog title={said.title} onClose={closeKeptSpecs} className="kept-specs">
      <p className="soft">{said.lead}</p>
      {removed ? (
        <p role="status">
          {said.removed(specName(removed))}{' '}
          <button type="button" className="quiet" onClick={() => restore(removed)}>
            {said.undo}
          </button>
        </p>
      ) : null}
      {list?.specs.length === 0 ? <p>{said.none}</p> : null}
      <ul className="spec-list">
        {list?.specs.map((spec) => (
          <SpecRow key={spec.id} spec={spec} onRemove={() => remove(spec)} />
        ))}
      </ul>
      {list && list.unread.length > 0 ? (
        <p className="soft">{said.unread(list.unread.map(specName))}</p>
      ) : null}
    </Dialog>
  )
}

function SpecRow({ spec, onRemove }: { readonly spec: KeptSpec; readonly onRemove: () => void }) {
  const said = words.keptSpecs
  const name = specName(spec)
  const rename = (typed: string) => {
    if (typed.trim() === '') return said.nameNeeded
    void renameSpec(spec, typed.trim())
    return undefined
  }
  return (
    <li>
      <div className="spec-about">
        <TypedField
          label={said.rename(name)}
          text={spec.name}
          placeholder={said.noName}
          numeric={false}
          commit={rename}
        />
        <span>{keptSpecText(spec.template.spec, spec.template.bores.length)}</span>
        <span className="soft">{said.typedOn(dayText(spec.typedOn))}</span>
      </div>
      <button
        type="button"
        className="button"
        aria-label={said.newJobFrom(name)}
        onClick={() => {
          closeKeptSpecs()
          void newJobWith(spec)
        }}
      >
        {said.newJob}
      </button>
      <button type="button" className="quiet" aria-label={said.removeNamed(name)} onClick={onRemove}>
        {said.remove}
      </button>
    </li>
  )
}
