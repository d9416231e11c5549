import { htmlBlocks, text } from '../formats/html-blocks'
import { element, type HtmlNode } from '../formats/html-text'
import { inspectedScans } from '../job/inspected-scans'
import { jobInPageId } from '../job/job-in-page'
import type { Job } from '../job/schema'
import { findingsOf } from '../job/selectors'
import { writeJob } from '../job/write-job'
import { handedPage, packedWalls } from '../scene/handed-page'
import { handedTexts } from '../scene/handed-texts'
import { gridOfHanded, handedGrid, handedWall } from '../scene/handed-wall'
import type { Letterhead } from '../storage/letterhead'
import { dayText } from '../words/day-text'
import { findingsPage } from '../words/findings-page'
import { handOverWords } from '../words/hand-over-words'
import { scanPassages } from '../words/scan-passages'
import { words } from '../words/words'
import { fileName, dayText as isoDay } from './file-name'
import { boresToHand, type ShownWall, type ToldBore } from './hand-over-bores'
import { drawingsOf } from './hand-over-drawings'
import { photographsPart } from './hand-over-photographs'
import { stillOf } from './hand-over-pictures'
import { readingsPart } from './hand-over-readings'
import { scanDrawings } from './hand-over-scans'
import { handOverStyle } from './hand-over-style'
import { type PicturedBore, type PicturedWall, toldPart } from './hand-over-told'
import { pictureLabels } from './picture-labels'
import { standalonePage } from './standalone-page'

/**
 * The job as one page that needs nothing else. `whole`: with the photographs and scans that a file takes along.
 * `script`: what turns the walls in it.
 */
export async function handOverFile(
  whole: Job,
  letterhead: Letterhead,
  script: string,
  day: Date,
): Promise<File> {
  const told = await picturedBores(boresToHand(whole))
  const walls = told.flatMap(({ pictured }) => pictured)
  const page = await standalonePage({
    language: words.language.locale,
    title: titleOf(whole),
    generator: words.app.name,
    style: handOverStyle,
    body: [headOf(whole, letterhead, day), ...(await bodyOf(whole, told))],
    kept: {
      [jobInPageId]: writeJob(withoutPictures(whole)),
      [handedPage.walls]: await packedWalls(walls.map(({ wall }) => wallToHand(wall))),
    },
    script,
  })
  const name = fileName(whole.name, day, words.file.defaultName, 'html')
  return new File([page], name, { type: 'text/html' })
}

/** One picture after the other: each takes graphics of its own. */
async function picturedBores(bores: readonly ToldBore[]): Promise<readonly PicturedBore[]> {
  const all = bores.flatMap(({ wall, besideIt }) => [wall, besideIt]).filter((wall) => wall !== undefined)
  const told: PicturedBore[] = []
  let number = 0
  for (const bore of bores) {
    const pictured: PicturedWall[] = []
    for (const wall of [bore.wall, bore.besideIt]) {
      if (!wall) continue
      pictured.push({ wall, still: await stillOf(wall, all.length), number })
      number += 1
    }
    told.push({ ...bore, pictured })
  }
  return told
}

async function bodyOf(job: Job, told: readonly PicturedBore[]): Promise<readonly HtmlNode[]> {
  const said = handOverWords
  const scans = inspectedScans(job)
  const ofScans = await scanDrawings(job, scans)
  const drawings = told.flatMap(({ bore, ...one }, index) => {
    const drawn = [
      ...drawingsOf(job, { bore, ...one }, index),
      ...ofScans.filter(({ boreId }) => boreId === bore.id).map(({ drawing }) => drawing),
    ]
    if (drawn.length === 0) return []
    return [element('section', { class: 'drawings' }, text('h2', said.parts.drawings(one.title)), ...drawn)]
  })
  return [
    element(
      'main',
      {},
      ...told.map(toldPart),
      ...drawings,
      ...photographsPart(job, told),
      element(
        'section',
        { class: 'figures' },
        text('h2', said.parts.figures),
        ...htmlBlocks([...findingsPage(withoutHead(job), findingsOf(job)), ...scanPassages(scans)], 3),
      ),
      readingsPart(job),
    ),
    element('footer', {}, text('p', said.back(words.app.name)), text('p', words.cautions.manual)),
  ]
}

function headOf(job: Job, letterhead: Letterhead, day: Date): HtmlNode {
  const said = handOverWords
  const lines = [job.machine, job.customer === undefined ? undefined : said.customer(job.customer)]
  return element(
    'header',
    {},
    ...shopOf(letterhead),
    ...(job.invented ? [text('p', words.report.invented, 'invented')] : []),
    text('h1', titleOf(job)),
    ...lines.flatMap((line) => (line === undefined || line.trim() === '' ? [] : [text('p', line)])),
    text('p', `${said.made(words.app.name, dayText(isoDay(day)))} ${said.whole}`, 'soft'),
  )
}

/** Who hands it over, where the shop has a letterhead. */
function shopOf({ shopName, address, picture }: Letterhead): HtmlNode[] {
  const lines = [shopName, ...address.split('\n')].filter((line) => line.trim() !== '')
  if (lines.length === 0 && !picture) return []
  const shown = picture && {
    alt: shopName,
    width: picture.widthPx,
    height: picture.heightPx,
    src: `data:${picture.type};base64,${picture.base64}`,
  }
  return [
    element(
      'div',
      { class: 'shop' },
      ...(shown ? [element('img', shown)] : []),
      element('div', {}, ...lines.map((line) => text('p', line))),
    ),
  ]
}

function titleOf({ name }: Job): string {
  return name.trim() === '' ? words.app.untitled : name
}

/** Its name, machine and that it is invented stand at the head of the page. */
function withoutHead({ machine: _, invented: __, ...job }: Job): Job {
  return job
}

/** The photographs are on the page already: who opens it as a job finds them there. */
function withoutPictures({ photographs: _, ...job }: Job): Job {
  return job
}

/** Labels are written for the wall as the page will have it, rounded as it is. */
function wallToHand(wall: ShownWall) {
  const { finding, bore, exaggeration } = wall
  const { stations, surface, pair } = finding
  const grid = gridOfHanded(handedGrid(wall.mapGrid))
  const texts = handedTexts(
    words.picture.describe(wall.title, pictureLabels.formDrawn(exaggeration)),
    pictureLabels,
    { grid, stations, surface, pair, exaggeration },
    handOverWords.turning,
  )
  return handedWall({ grid, ports: bore.ports, stations, surface, pair, exaggeration, texts })
}
