import './send.css'
import { useEffect, useId, useMemo, useState } from 'react'
import { useStore } from 'zustand'
import type { Bore } from '../core/measured'
import { jobStore } from '../job/job-store'
import type { Job } from '../job/schema'
import { findingOf, surveyOf } from '../job/selectors'
import { session } from '../session/session'
import { verdictSentence } from '../words/verdict'
import { words } from '../words/words'
import { useChosenBore } from './BoreTabs'
import { Dialog } from './Dialog'
import { nameOr } from './desk'
import { download } from './download'
import { fileName } from './file-name'
import { HandOver } from './HandOver'
import { ModelToPrint } from './ModelToPrint'
import { SendTables } from './SendTables'
import { type DrawnToSend, pictureToSend } from './send-picture'
import { textToSend } from './send-text'
import { type Parcel, type Sent, sendBy, type Way, waysFor } from './send-ways'

/** Text and picture as they will be sent, and the ways in which this browser can send them. */
export function SendPanel({ onClose }: { readonly onClose: () => void }) {
  const job = useStore(jobStore, (state) => state.job)
  const bore = useChosenBore()
  const chosen = useStore(session, (state) => state.surveyId)
  const surveyId = bore && surveyOf(bore, chosen)?.id
  const picture = usePicture(job, bore, surveyId)
  const parcel = useMemo(() => parcelOf(job, bore, picture), [job, bore, picture])
  const [said, setSaid] = useState('')
  const offered = waysFor(navigator, parcel)
  const send = async (way: Way) => setSaid(sentText(way, await sendBy(way, navigator, parcel), parcel))
  const buttons = (of: readonly Way[]) =>
    of
      .filter((way) => offered.includes(way))
      .map((way) => (
        <button key={way} type="button" className="button" onClick={() => void send(way)}>
          {words.send.ways[way]}
        </button>
      ))
  return (
    <Dialog title={words.send.title} className="send" onClose={onClose} said={said}>
      <p className="soft">{words.send.lead}</p>
      <div className="send-ways is-share">
        {picture === 'drawing' ? <SharingLater /> : buttons(['share', 'share-text'])}
      </div>
      <div className="send-parts">
        <section className="send-part">
          <PicturePreview picture={picture} alt={pictureAlt(job, bore, surveyId)} />
          <div className="send-ways">
            {buttons(['copy-picture', 'save-picture'])}
            {bore && parcel.picture ? (
              <SaveForPrint
                job={job}
                bore={bore}
                surveyId={surveyId}
                name={parcel.picture.name}
                onSaid={setSaid}
              />
            ) : null}
          </div>
          {bore ? <ModelToPrint job={job} bore={bore} surveyId={surveyId} /> : null}
        </section>
        <section className="send-part">
          <TextPreview text={parcel.text} />
          <div className="send-ways">{buttons(['copy-text', 'save-text'])}</div>
        </section>
      </div>
      <HandOver job={job} onSaid={setSaid} />
      <SendTables job={job} onSaved={(name) => setSaid(words.send.done.saved(name))} />
    </Dialog>
  )
}

/** Saves the picture with four pixels for each of the page's, drawn when it is asked for. */
function SaveForPrint(props: {
  readonly job: Job
  readonly bore: Bore
  readonly surveyId: string | undefined
  readonly name: string
  readonly onSaid: (said: string) => void
}) {
  const { job, bore, surveyId, onSaid } = props
  const [isDrawing, setDrawing] = useState(false)
  const save = async () => {
    setDrawing(true)
    onSaid(words.send.drawing)
    const drawn = await pictureToSend(job, bore, surveyId, 'print')
    setDrawing(false)
    if (drawn.kind !== 'drawn') return onSaid(words.send.failed['save-picture'])
    const name = props.name.replace(/(?=\.png$)/, '-print')
    download(new File([drawn.blob], name, { type: 'image/png' }))
    onSaid(words.send.done.saved(name))
  }
  return (
    <button
      type="button"
      className="button"
      aria-disabled={isDrawing}
      onClick={() => (isDrawing ? undefined : void save())}
    >
      {words.send.saveForPrint}
    </button>
  )
}

/** Keeps the place of the button that shares, where there will be one, while the picture is drawn. */
function SharingLater() {
  return 'share' in navigator ? (
    <button type="button" className="button" disabled>
      {words.send.ways.share}
    </button>
  ) : null
}

/** Drawn once for each job and bore; a picture that comes too late is let go. */
function usePicture(job: Job, bore: Bore | undefined, surveyId: string | undefined): DrawnToSend | 'drawing' {
  const [picture, setPicture] = useState<DrawnToSend | 'drawing'>('drawing')
  useEffect(() => {
    let wanted = true
    const show = (drawn: DrawnToSend) => {
      if (wanted) setPicture(drawn)
    }
    setPicture('drawing')
    if (!bore) return
    pictureToSend(job, bore, surveyId).then(show, (error: unknown) => {
      reportError(error)
      show({ kind: 'failed' })
    })
    return () => {
      wanted = false
    }
  }, [job, bore, surveyId])
  return picture
}

function PicturePreview({ picture, alt }: { picture: DrawnToSend | 'drawing'; alt: string }) {
  const blob = picture !== 'drawing' && picture.kind === 'drawn' ? picture.blob : undefined
  const address = useAddress(blob)
  const { send } = words
  return (
    <>
      <h3>{send.picture}</h3>
      {picture === 'drawing' ? <p role="status">{send.drawing}</p> : null}
      {picture !== 'drawing' && picture.kind !== 'drawn' ? <p>{send.noPicture[picture.kind]}</p> : null}
      {address ? <img className="send-picture" src={address} alt={alt} /> : null}
      {picture !== 'drawing' && picture.kind === 'drawn' && picture.of === 'flat-map' ? (
        <p className="soft">{send.flat}</p>
      ) : null}
    </>
  )
}

function useAddress(blob: Blob | undefined): string | undefined {
  const [address, setAddress] = useState<string>()
  useEffect(() => {
    if (!blob) return setAddress(undefined)
    const made = URL.createObjectURL(blob)
    setAddress(made)
    return () => URL.revokeObjectURL(made)
  }, [blob])
  return address
}

/** A field that is only read: its text can be selected and copied where the clipboard cannot be had. */
function TextPreview({ text }: { readonly text: string }) {
  const id = useId()
  return (
    <>
      <h3>
        <label htmlFor={id}>{words.send.text}</label>
      </h3>
      <textarea id={id} className="send-text" readOnly value={text} wrap="off" spellCheck={false} />
    </>
  )
}

function parcelOf(job: Job, bore: Bore | undefined, picture: DrawnToSend | 'drawing'): Parcel {
  const today = new Date()
  const text = textToSend(job)
  const name = fileName(job.name, today, words.file.defaultName, 'txt')
  const blob = picture !== 'drawing' && picture.kind === 'drawn' ? picture.blob : undefined
  const pictureName = fileName(
    `${job.name.trim() || words.file.defaultName} ${boreText(bore)}`,
    today,
    words.file.defaultName,
    'png',
  )
  return {
    title: words.app.title(nameOr(job.name)),
    text,
    textFile: new File([text], name, { type: 'text/plain' }),
    picture: blob && new File([blob], pictureName, { type: 'image/png' }),
  }
}

function boreText(bore: Bore | undefined): string {
  if (!bore) return ''
  return bore.role === 'for-comparison' ? bore.name : words.bar.boreNamed(bore.name)
}

function pictureAlt(job: Job, bore: Bore | undefined, surveyId: string | undefined): string {
  const finding = bore && findingOf(job, bore.id, surveyId)
  return bore && finding ? words.send.pictureOf(boreText(bore), verdictSentence(finding)) : words.send.picture
}

function sentText(way: Way, { kind }: Sent, { textFile, picture }: Parcel): string {
  const { cancelled, done, failed } = words.send
  if (kind === 'cancelled') return cancelled
  if (kind === 'failed') return failed[way]
  const texts: Record<Way, string> = {
    share: done.share,
    'share-text': done.share,
    'copy-text': done.copiedText,
    'copy-picture': done.copiedPicture,
    'save-text': done.saved(textFile.name),
    'save-picture': done.saved(picture?.name ?? ''),
  }
  return texts[way]
}
