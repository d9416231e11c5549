import type { ReactNode } from 'react'
import type { PaperItem, PaperSection } from '../../words/bore-paper'
import type { Fact } from '../../words/paper-facts'
import { rowUnder } from '../../words/paper-rows'
import { paperWords } from '../../words/paper-words'
import type { Row } from '../../words/row'
import type { ReportLook, ReportPhoto } from './report-look'
import type { ReportPart } from './report-part'
import { textPieces } from './text-pieces'

/** So many photographs find room in a report. */
export const mostPhotos = 4

/** The sections of a report, each of its lines a part of its own, so that columns break between them. */
export function sectionParts(sections: readonly PaperSection[], look: ReportLook): ReportPart[] {
  return sections.flatMap((section) => {
    const counted = photosShown(section.items)
    const items = section.items.flatMap((item, index) => {
      const [first = '', ...rest] = item.kind === 'row' ? [] : textPieces(item.text)
      const shown = item.kind === 'row' ? item : { ...item, text: first }
      return [
        columnPart(
          `${section.id} ${index}`,
          <Item item={shown} photos={counted.shown[index] ?? 0} look={look} />,
        ),
        ...rest.map((text, piece) =>
          columnPart(`${section.id} ${index} piece ${piece + 2}`, <PieceLine {...{ text, item }} />),
        ),
      ]
    })
    return [
      {
        id: `${section.id} heading`,
        across: 'column',
        withNext: items.length > 0,
        node: (
          <h3 className="sheet-heading" dir="auto">
            {section.title}
          </h3>
        ),
      },
      ...items,
      ...(counted.left > 0 ? [photosLeftPart(section.id, counted.left)] : []),
    ]
  })
}

function columnPart(id: string, node: ReactNode): ReportPart {
  return { id, across: 'column', node }
}

function photosLeftPart(id: string, count: number): ReportPart {
  return columnPart(
    `${id} photographs left`,
    <p className="sheet-line is-small">{paperWords.photosLeft(count)}</p>,
  )
}

/** What is left of a text that is too long for one piece. */
function PieceLine({ text, item }: { readonly text: string; readonly item: PaperItem }) {
  return (
    <p className={item.kind === 'paragraph' ? 'sheet-line' : 'sheet-line is-within'} dir="auto">
      {text}
    </p>
  )
}

/** How many photographs of each item are shown: the first of each, then the second, as long as there is room. */
export function photosShown(items: readonly PaperItem[]): { shown: number[]; left: number } {
  const has = items.map((item) => (item.kind === 'surface' ? item.photos.length : 0))
  const shown = has.map(() => 0)
  const all = has.reduce((sum, count) => sum + count, 0)
  for (let round = 1; round <= Math.max(0, ...has); round++) {
    for (const [index, count] of has.entries()) {
      const used = shown.reduce((sum, one) => sum + one, 0)
      if (count >= round && used < mostPhotos) shown[index] = round
    }
  }
  return { shown, left: all - shown.reduce((sum, count) => sum + count, 0) }
}

function Item(props: { readonly item: PaperItem; readonly photos: number; readonly look: ReportLook }) {
  const { item, photos, look } = props
  switch (item.kind) {
    case 'row':
      return <RowLines row={item.row} />
    case 'paragraph':
      return (
        <p className="sheet-line" dir="auto">
          {item.text}
        </p>
      )
    case 'bullet':
      return (
        <p className="sheet-line is-listed" dir="auto">
          {unbroken(item.text)}
        </p>
      )
    case 'surface':
      return (
        <div className="sheet-line is-listed sheet-surface">
          <span dir="auto">{item.text}</span>
          {photos > 0 ? (
            <span className="sheet-photos">
              {item.photos.slice(0, photos).map(({ hash, name }) => (
                <Photo key={hash} name={name} photo={look.photos.get(hash)} />
              ))}
            </span>
          ) : null}
        </div>
      )
  }
}

function Photo({ name, photo }: { readonly name: string; readonly photo: ReportPhoto | undefined }) {
  if (photo?.kind === 'shown') return <img className="sheet-photo" src={photo.url} alt={name} />
  return (
    <span className="sheet-photo is-absent" dir="auto">
      {photo?.kind === 'absent' ? paperWords.photoAbsent(name) : null}
    </span>
  )
}

function RowLines({ row }: { readonly row: Row }) {
  const under = rowUnder(row)
  return (
    <div className="sheet-row">
      <p className="sheet-row-head">
        <span className="sheet-row-name" dir="auto">
          {row.name}
        </span>
        <span className="sheet-row-figure">
          {unbroken(row.figure)}
          {row.verdictText === undefined ? null : (
            <b className={row.verdict === 'inside' ? undefined : 'is-out'}> {row.verdictText}</b>
          )}
        </span>
      </p>
      {under === '' ? null : (
        <p className="sheet-row-under" dir="auto">
          {unbroken(under)}
        </p>
      )}
    </div>
  )
}

/** Facts side by side at the head of a report. */
export function FactList({ facts }: { readonly facts: readonly Fact[] }) {
  return (
    <dl className="sheet-facts">
      {facts.map(({ label, value }) => (
        <div key={label}>
          <dt>{label}</dt>
          <dd dir="auto">{unbroken(value)}</dd>
        </div>
      ))}
    </dl>
  )
}

/** Figures keep their unit and their ± on the line that they stand on. */
export function unbroken(text: string): string {
  return text.replace(/(\d) (?=(?:%|µm|mm|h|°C)(?!\p{L}))/gu, '$1\u00a0').replace(/ ?± /g, '\u00a0±\u00a0')
}
