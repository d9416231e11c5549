import type { EnginePaper } from '../../words/engine-paper'
import { paperWords } from '../../words/paper-words'
import { words } from '../../words/words'
import { isWithoutPicture, limitsParts } from './bore-parts'
import type { Report, ReportBore } from './report-content'
import { type Density, pictureBox, type ReportLook, sheetSizes, viewSizes } from './report-look'
import type { ReportPart } from './report-part'
import { codeParts, SheetHead, SignatureLine } from './SheetHead'
import { StationTable } from './SheetTable'
import { sectionParts, unbroken } from './SheetTexts'
import { drawnText, MapView, PictureView, ProfileView } from './SheetViews'

const gap = 18

/** The parts of what a report says of an engine as a whole. */
export function engineParts(report: Report, engine: EnginePaper, look: ReportLook): readonly ReportPart[] {
  const head = (
    <SheetHead
      look={look}
      kicker={paperWords.heading.engine}
      title={report.name}
      invented={report.invented}
      facts={[...report.facts, ...engine.facts]}
      verdict={engine.verdict}
      beside={[]}
      decision={engine.decision}
      besideDecision={engine.besideDecision}
    />
  )
  return [
    { id: 'head', across: 'sheet', node: head },
    { id: 'bores', across: 'sheet', node: <EngineTable engine={engine} /> },
    ...picturesParts(report, look),
    ...sectionParts(engine.reasons, look),
    ...limitsParts(engine.limits),
    ...sectionParts(engine.sections, look),
    ...codeParts(look),
    { id: 'signature', across: 'sheet', node: <SignatureLine /> },
  ]
}

/** Its bores, two beside each other, each with its map, profile and table. */
export function boresParts(report: Report, look: ReportLook, density: Density): readonly ReportPart[] {
  return [
    ...pairsOf(report.bores).map((bores, index) => boresPart({ look, density }, bores, index)),
    viewsNote(report),
  ]
}

function pairsOf<Item>(items: readonly Item[]): readonly (readonly Item[])[] {
  return items.flatMap((_, index) => (index % 2 === 0 ? [items.slice(index, index + 2)] : []))
}

/** So many pictures stand beside each other. */
const inRow = 4

/** The pictures of all bores in rows, at one exaggeration; none where none are drawn. */
function picturesParts(report: Report, look: ReportLook): ReportPart[] {
  const { exaggeration } = report
  const drawn = report.bores.filter((bore) => bore.grid && !isWithoutPicture(bore, look))
  if (exaggeration === undefined || drawn.length === 0) return []
  const { width: all } = sheetSizes[look.paper]
  const width = Math.floor((all - 10 * (inRow - 1)) / inRow)
  const box = { width, height: Math.round((width * pictureBox.height) / pictureBox.width) }
  return [
    {
      id: 'pictures',
      across: 'sheet',
      node: (
        <div className="sheet-views sheet-charts">
          {drawn.map((bore) => (
            <PictureView key={bore.bore.id} wall={bore} look={look} box={box} exaggeration={exaggeration} />
          ))}
          <p className="sheet-view-note">{drawnText(exaggeration)}</p>
        </div>
      ),
    },
  ]
}

interface Drawn {
  readonly look: ReportLook
  readonly density: Density
}

function boresPart(drawn: Drawn, bores: readonly ReportBore[], index: number): ReportPart {
  return {
    id: `bores ${index}`,
    across: 'sheet',
    node: (
      <div className="sheet-bores">
        {bores.map((bore) => (
          <BoreCell key={bore.bore.id} {...drawn} bore={bore} />
        ))}
      </div>
    ),
  }
}

function BoreCell({ look, density, bore }: Drawn & { readonly bore: ReportBore }) {
  const { paper } = bore
  const width = Math.floor((sheetSizes[look.paper].width - gap) / 2)
  const box = { width, height: viewSizes[density].chart - 12 }
  return (
    <section className="sheet-bore">
      <h3 className="sheet-heading" dir="auto">
        {paper.title}
      </h3>
      <p className="sheet-line" dir="auto">
        {unbroken(paper.verdict)}
      </p>
      <MapView wall={bore} look={look} box={box} />
      <ProfileView wall={bore} look={look} box={box} />
      <StationTable table={paper.table} />
    </section>
  )
}

function viewsNote({ exaggeration, bores }: Report): ReportPart {
  const isDrawn = exaggeration !== undefined && bores.some(({ grid }) => grid)
  return {
    id: 'views note',
    across: 'sheet',
    node: isDrawn ? (
      <p className="sheet-view-note">
        {paperWords.views.key} {paperWords.views.between}
      </p>
    ) : null,
  }
}

function EngineTable({ engine: { heads, rows } }: { readonly engine: EnginePaper }) {
  return (
    <div className="sheet-engine">
      <table>
        <caption>{paperWords.titles.bores}</caption>
        <thead>
          <tr>
            {heads.map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ boreId, name, figures, standing, decision }) => (
            <tr key={boreId}>
              <th scope="row" dir="auto">
                {name}
              </th>
              {figures.map((figure, index) => (
                <td key={heads[index + 1]}>
                  {figure ? (
                    <>
                      {unbroken(figure.figure)} <small>{unbroken(figure.doubt)}</small>
                    </>
                  ) : (
                    words.block.none
                  )}
                </td>
              ))}
              <td>{standing}</td>
              <td>{decision}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}
