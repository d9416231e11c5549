import { jobOfCode } from '../job/code-of-job'
import { readingsIn } from '../job/readings-in'
import type { Job } from '../job/schema'
import { letterheadWords } from '../words/letterhead-words'
import { changeOver, layOut, say } from './desk'
import { withIdentity } from './open-file'
import { ask, showProblems, tell } from './questions'

/**
 * Asks whether the job of an address is to be opened, and lays it on the bench; what is no job is told of. False where
 * the address may still be needed: a newer page can read it.
 */
export async function openCode(code: string): Promise<boolean> {
  const said = letterheadWords.opening
  const read = jobOfCode(code)
  if (!read.ok) {
    if (read.why === 'no-job') showProblems(said.address, read.problems)
    else await tell(`${said.notOpened[read.why]} ${said.unharmed}`)
    return read.why !== 'newer'
  }
  const answer = await ask(question(read.job), [{ answer: 'open', label: said.open }])
  const job = answer === 'open' ? await withIdentity(read.job) : undefined
  if (job !== undefined) {
    await changeOver(() => {
      layOut(job)
      say(said.opened(nameOf(job)))
    })
  }
  return true
}

function question(job: Job): string {
  const said = letterheadWords.opening
  return said.ask(
    nameOf(job),
    apart(job.machine?.trim() ?? ''),
    said.bores(job.bores.length),
    said.readings(readingsIn(job)),
  )
}

function nameOf({ name }: Job): string {
  return name.trim() === '' ? letterheadWords.opening.untitled : apart(name.trim())
}

/** Whichever way it is written, what stands round it stays in its place (first strong isolate, Unicode UAX 9). */
function apart(text: string): string {
  return text === '' ? '' : `\u2068${text}\u2069`
}
