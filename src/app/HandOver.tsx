import { useState } from 'react'
import type { Job } from '../job/schema'
import { emptyLetterhead } from '../storage/letterhead'
import { words } from '../words/words'
import { download } from './download'
import { jobForFile, leftBehind } from './job-for-file'
import { letterheadStore, readLetterhead } from './letterhead'

/** The job as one page for its owner, made when it is asked for. */
export function HandOver({ job, onSaid }: { readonly job: Job; readonly onSaid: (said: string) => void }) {
  const [isMaking, setMaking] = useState(false)
  const said = words.send.handOver
  const make = async () => {
    setMaking(true)
    onSaid(said.making)
    onSaid(await saved(job))
    setMaking(false)
  }
  return (
    <section className="send-tables">
      <h3>{said.title}</h3>
      <p className="soft">{said.lead}</p>
      <div className="send-ways">
        <button
          type="button"
          className="button"
          aria-disabled={isMaking}
          onClick={() => (isMaking ? undefined : void make())}
        >
          {said.make}
        </button>
      </div>
    </section>
  )
}

/** What became of it, in words. */
async function saved(job: Job): Promise<string> {
  try {
    const [{ handOverFile }, { default: script }] = await Promise.all([
      import('./hand-over-file'),
      import('../scene/turn-handed-bores.ts?alone'),
    ])
    const whole = await jobForFile(job)
    await readLetterhead()
    const kept = letterheadStore.getState()
    // Where none can be read the page goes without, as a report does.
    const letterhead = kept.kind === 'read' ? kept.letterhead : emptyLetterhead
    const file = await handOverFile(whole.job, letterhead, script, new Date())
    download(file)
    return [words.send.done.saved(file.name), leftBehind(whole) ?? ''].join('. ').replace(/\. $/, '')
  } catch (error) {
    reportError(error)
    return words.send.handOver.failed
  }
}
