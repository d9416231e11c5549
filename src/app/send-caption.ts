import type { BoreFinding } from '../core/findings'
import type { Bore } from '../core/measured'
import type { Job } from '../job/schema'
import { boreHeading, surveySentence } from '../words/findings-page'
import { surfaceSentence } from '../words/surface'
import { leanSentence, provisionalSentence, sureSentence, verdictSentence } from '../words/verdict'
import { words } from '../words/words'

/** What stands above and below a picture that is sent. */
export interface Caption {
  readonly job: string
  readonly invented: string | undefined
  readonly bore: string
  readonly verdict: string
  readonly beside: readonly string[]
  readonly foot: readonly string[]
}

/** The caption of a bore's picture, in the words of the page. */
export function captionOf(job: Job, bore: Bore, finding: BoreFinding): Caption {
  const survey = bore.surveys.find(({ id }) => id === finding.surveyId)
  const { report, sentPicture } = words
  const drawnAlike = finding.notes.some(({ code }) => code === 'two-contacts-see-even-lobes-only')
  const provisional = finding.provisional.length > 0 && finding.stations.length > 0
  return {
    job: job.name.trim() === '' ? words.app.untitled : job.name,
    invented: job.invented ? report.invented : undefined,
    bore: sentPicture.bore(boreHeading(bore, finding), surveySentence(survey)),
    verdict: verdictSentence(finding),
    beside: [
      finding.blunders.length > 0 ? sentPicture.questionsOpen(finding.blunders.length) : undefined,
      leanSentence(finding),
      sureSentence(finding),
      provisionalSentence(finding),
      surfaceSentence(finding),
    ].filter((sentence) => sentence !== undefined),
    foot: [
      ...(drawnAlike ? [words.picture.symmetric] : []),
      sentPicture.betweenReadings,
      ...(provisional ? [words.cautions.provisional] : []),
      words.cautions.manual,
    ],
  }
}
