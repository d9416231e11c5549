import { paperWords } from '../../words/paper-words'
import type { Report, ReportBore } from './report-content'
import { type Density, pictureBox, pictureKey, type ReportLook, sheetSizes, viewSizes } from './report-look'
import type { ReportPart } from './report-part'
import { codeParts, SheetHead, SignatureLine } from './SheetHead'
import { StationTable } from './SheetTable'
import { sectionParts } from './SheetTexts'
import { drawnText, MapView, newName, PictureView, ProfileView, SectionView } from './SheetViews'

const gap = 10

/** The parts of a report on one bore, in the order in which it is read. */
export function boreParts(
  report: Report,
  bore: ReportBore,
  look: ReportLook,
  density: Density,
): readonly ReportPart[] {
  const { paper } = bore
  const charts = <Charts {...{ report, bore, look, density }} />
  return [
    {
      id: 'head',
      across: 'sheet',
      node: (
        <SheetHead
          look={look}
          kicker={paperWords.heading.bore}
          title={paperWords.titleOf(paper.title, report.name)}
          invented={report.invented}
          facts={[...report.facts, ...paper.facts]}
          verdict={paper.verdict}
          beside={paper.beside}
          decision={paper.decision}
          besideDecision={paper.besideDecision}
          {...(bore.grid ? { views: <HeadViews {...{ report, bore, look, density }} /> } : {})}
        />
      ),
    },
    ...(bore.grid ? [{ id: 'charts', across: 'sheet', node: charts } as const] : []),
    ...sectionParts(paper.reasons, look),
    { id: 'stations', across: 'column', node: <StationTable table={paper.table} /> },
    ...limitsParts(paper.limits),
    ...sectionParts(paper.sections, look),
    ...codeParts(look),
    { id: 'signature', across: 'sheet', node: <SignatureLine /> },
  ]
}

/** The limits of size, and how figures are judged against them. */
export function limitsParts(limits: string): ReportPart[] {
  return [
    {
      id: 'limits',
      across: 'column',
      node: (
        <p className="sheet-line" dir="auto">
          <b>{paperWords.titles.limits}</b> {limits} {paperWords.judged}
        </p>
      ),
    },
  ]
}

interface ViewsProps {
  readonly report: Report
  readonly bore: ReportBore
  readonly look: ReportLook
  readonly density: Density
}

/** Whether this browser draws no picture of a bore. */
export function isWithoutPicture({ bore, survey }: ReportBore, look: ReportLook): boolean {
  return (look.pictures.get(pictureKey(bore.id, survey.id)) ?? { kind: 'none' }).kind === 'none'
}

/** The picture of the bore beside that of the new one, or beside its section where there is no new one. */
function HeadViews({ report, bore, look, density }: ViewsProps) {
  const { exaggeration } = report
  const { besideIt } = bore
  if (exaggeration === undefined) return null
  const half = {
    width: viewSizes[density].picture,
    height: Math.round((viewSizes[density].picture * pictureBox.height) / pictureBox.width),
  }
  const width = 2 * half.width + gap
  const { height } = half
  const flat = isWithoutPicture(bore, look)
  return (
    <div className="sheet-views" style={{ width }}>
      {flat ? (
        besideIt?.grid ? (
          <MapView wall={besideIt} look={look} box={{ width, height }} caption={newName(besideIt)} />
        ) : (
          <SectionView wall={bore} look={look} box={{ width, height }} exaggeration={exaggeration} />
        )
      ) : (
        <>
          <PictureView wall={bore} look={look} box={half} exaggeration={exaggeration} />
          {besideIt?.grid ? (
            <PictureView wall={besideIt} look={look} box={half} exaggeration={exaggeration} isNew />
          ) : (
            <SectionView wall={bore} look={look} box={half} exaggeration={exaggeration} />
          )}
        </>
      )}
      <p className="sheet-view-note">
        {drawnText(exaggeration)}
        {flat ? ` ${paperWords.views.noPicture}` : ''}
      </p>
    </div>
  )
}

/** Map, section and profile beside each other; the section where it does not stand at the head. */
function Charts({ report, bore, look, density }: ViewsProps) {
  const { exaggeration } = report
  if (exaggeration === undefined) return null
  const all = sheetSizes[look.paper].width
  const height = viewSizes[density].chart
  const hasSection = bore.besideIt?.grid !== undefined
  const shares = hasSection ? viewSizes[density].shares : [0.58, 0.42]
  const room = all - gap * (shares.length - 1)
  const [map = 0, section = 0, profile = section] = shares.map((share) => Math.floor(room * share))
  return (
    <div className="sheet-charts">
      <div className="sheet-views">
        <MapView wall={bore} look={look} box={{ width: map, height }} />
        {hasSection ? (
          <SectionView wall={bore} look={look} box={{ width: section, height }} exaggeration={exaggeration} />
        ) : null}
        <ProfileView wall={bore} look={look} box={{ width: profile, height }} />
      </div>
      <p className="sheet-view-note">
        {paperWords.views.key} {paperWords.views.between}
      </p>
    </div>
  )
}
