import { listOf, text } from '../formats/html-blocks'
import { element, type HtmlNode } from '../formats/html-text'
import { handedPage } from '../scene/handed-page'
import { surveySentence } from '../words/findings-page'
import { handOverWords } from '../words/hand-over-words'
import type { OwnerStep } from '../words/owner-step'
import { unbroken } from '../words/unbroken'
import { verdictSentence } from '../words/verdict'
import type { ShownWall, ToldBore } from './hand-over-bores'
import { type HeldPicture, heldLegend } from './hand-over-pictures'

/** A wall of a bore with its still picture, and its number among the walls that can be turned. */
export interface PicturedWall {
  readonly wall: ShownWall
  readonly still: HeldPicture | undefined
  readonly number: number
}

/** A bore with the pictures of its walls. */
export interface PicturedBore extends ToldBore {
  readonly pictured: readonly PicturedWall[]
}

/** What the owner is told of a bore: how it stands, its picture beside the new one, and the sentences. */
export function toldPart(told: PicturedBore, group: number): HtmlNode {
  const { finding, title, survey, steps, pictured } = told
  const said = handOverWords.pictures
  const [own, ...others] = pictured
  const verdict = verdictSentence(finding)
  return element(
    'section',
    { class: 'told' },
    text('h2', title),
    text('p', surveySentence(survey), 'soft'),
    text('p', verdict, 'verdict'),
    ...(own
      ? [
          element(
            'div',
            { class: others.length > 0 ? `${handedPage.pictures} two` : handedPage.pictures },
            pictureOf(own, group, said.now(title), said.alt(title, verdict)),
            ...others.map((one) =>
              pictureOf(one, group, said.beside(one.wall.title), said.altBeside(one.wall.title)),
            ),
            ...legendPart(own.wall),
          ),
        ]
      : []),
    element('ol', { class: 'steps' }, ...steps.map(stepPart)),
  )
}

function pictureOf({ still, number }: PicturedWall, group: number, caption: string, alt: string): HtmlNode {
  const place = { [handedPage.wall]: number, [handedPage.group]: group }
  return element(
    'figure',
    { class: still ? 'bore-figure' : `bore-figure ${handedPage.empty}` },
    element('div', { class: 'bore-place', ...place }, ...(still ? [pictureNode(still, alt)] : [])),
    text('figcaption', caption),
  )
}

function legendPart(wall: ShownWall): HtmlNode[] {
  const legend = heldLegend(wall)
  if (!legend) return []
  return [
    element(
      'figure',
      { class: 'legend' },
      pictureNode(legend.picture, legend.text),
      text('figcaption', handOverWords.pictures.marks),
    ),
  ]
}

function pictureNode({ address, width, height }: HeldPicture, alt: string): HtmlNode {
  return element('img', { alt, width, height, src: address })
}

function stepPart({ heading, sentence, beside }: OwnerStep): HtmlNode {
  return element(
    'li',
    {},
    text('h3', heading),
    text('p', unbroken(sentence), 'sentence'),
    ...(beside.length > 0 ? [listOf(beside.map(unbroken))] : []),
  )
}
