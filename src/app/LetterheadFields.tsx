import { useId } from 'react'
import { useStore } from 'zustand'
import type { Letterhead } from '../storage/letterhead'
import { letterheadWords } from '../words/letterhead-words'
import { reachOf, readAppAddress } from './app-address'
import { LetterheadPicture } from './LetterheadPicture'
import {
  type LetterheadField,
  leaveLetterhead,
  letterheadDrafts,
  take,
  typeLetterhead,
} from './letterhead-fields'

export function LetterheadFields({ letterhead }: { readonly letterhead: Letterhead }) {
  const said = letterheadWords.dialog
  const { appAddress = '' } = letterhead
  return (
    <div className="letterhead-fields">
      <Field field="shopName" label={said.shopName} text={letterhead.shopName} />
      <Field field="address" label={said.address} text={letterhead.address} lines={4} />
      <LetterheadPicture picture={letterhead.picture} />
      <Field field="appAddress" label={said.appAddress} text={appAddress} how={said.appAddressHow} />
      <Reach address={appAddress} />
      <ThisPage taken={appAddress} />
    </div>
  )
}

/** A field with its label above; what was refused stays in it with the reason beneath. */
function Field(props: {
  readonly field: LetterheadField
  readonly label: string
  readonly text: string
  readonly lines?: number
  readonly how?: string
}) {
  const { field, label, text, lines, how } = props
  const id = useId()
  const draft = useStore(letterheadDrafts, (drafts) => drafts[field])
  const described = [
    ...(how === undefined ? [] : [`${id}-how`]),
    ...(draft?.why === undefined ? [] : [`${id}-why`]),
  ]
  const shared = {
    id,
    value: draft?.typed ?? text,
    spellCheck: false,
    autoComplete: 'off',
    'aria-invalid': draft?.why !== undefined,
    ...(described.length === 0 ? {} : { 'aria-describedby': described.join(' ') }),
    onBlur: () => leaveLetterhead(field),
  }
  return (
    <div className="letterhead-field">
      <label htmlFor={id}>{label}</label>
      {lines === undefined ? (
        <input
          {...shared}
          type="text"
          inputMode={field === 'appAddress' ? 'url' : 'text'}
          onChange={(event) => typeLetterhead(field, event.target.value)}
          onKeyDown={(event) => {
            if (event.key === 'Enter') leaveLetterhead(field)
          }}
        />
      ) : (
        <textarea {...shared} rows={lines} onChange={(event) => typeLetterhead(field, event.target.value)} />
      )}
      {how === undefined ? null : (
        <span id={`${id}-how`} className="soft">
          {how}
        </span>
      )}
      {draft?.why === undefined ? null : (
        <span id={`${id}-why`} role="alert" className="refusal">
          {draft.why}
        </span>
      )}
      {draft?.mended === undefined ? null : <Use field={field} address={draft.mended} />}
    </div>
  )
}

function Use({ field, address }: { readonly field: LetterheadField; readonly address: string }) {
  return (
    <button type="button" className="quiet" onClick={() => take(field, address)}>
      {letterheadWords.dialog.useMended(address)}
    </button>
  )
}

/** Says so where an address is right and yet no customer's telephone can open it. */
function Reach({ address }: { readonly address: string }) {
  const reach = reachOf(address)
  return reach === undefined ? null : <p role="status">{letterheadWords.reach[reach]}</p>
}

/** Where this page came from is the likeliest address. */
function ThisPage({ taken }: { readonly taken: string }) {
  const here = readAppAddress(`${location.origin}${location.pathname}`)
  if (!here.ok || here.address === taken) return null
  return (
    <button type="button" className="quiet" onClick={() => take('appAddress', here.address)}>
      {letterheadWords.dialog.thisPage}
    </button>
  )
}
