import { text } from '../formats/html-blocks'
import { element, type HtmlNode } from '../formats/html-text'
import type { Job } from '../job/schema'
import { boreHeading } from '../words/findings-page'
import { handOverWords } from '../words/hand-over-words'
import { surfaceLines, surfaceTitle } from '../words/surface'
import { words } from '../words/words'
import type { ToldBore } from './hand-over-bores'

/** The surface findings that have photographs, each with what was written of it; nothing where there are none. */
export function photographsPart(whole: Job, told: readonly ToldBore[]): HtmlNode[] {
  const known = new Map((whole.photographs ?? []).map((photo) => [photo.hash, photo]))
  const bores = told.flatMap(({ bore, finding }) => {
    const lines = surfaceLines(finding)
    const shown = finding.surface.flatMap((found, index) => {
      const photos = found.photos ?? []
      if (photos.length === 0) return []
      const title = surfaceTitle(index + 1, found)
      const pictures = photos.map(({ hash, name, widthPx, heightPx }, number) => {
        const kept = known.get(hash)
        const caption = handOverWords.photograph(number + 1, name)
        if (!kept) return text('p', `${caption}: ${words.photographs.notHere}`, 'soft')
        return element(
          'figure',
          { class: 'photograph' },
          element('img', {
            alt: words.photographs.large(name, title),
            width: widthPx,
            height: heightPx,
            src: `data:${kept.type};base64,${kept.base64}`,
            'data-hash': hash,
          }),
          text('figcaption', caption),
        )
      })
      return [text('p', lines[index] ?? title), ...pictures]
    })
    return shown.length === 0 ? [] : [text('h3', boreHeading(bore, finding)), ...shown]
  })
  return bores.length === 0
    ? []
    : [element('section', { class: 'photographs' }, text('h2', handOverWords.parts.photographs), ...bores)]
}
