import type { ReactNode } from 'react'
import { ProfileChart } from '../../charts/ProfileChart'
import { SectionChart } from '../../charts/SectionChart'
import { UnrolledMap } from '../../charts/UnrolledMap'
import { scaleBar } from '../../core/surface/scale-bar'
import { boreTitle } from '../../words/compared'
import { roundStepUm } from '../../words/length-unit'
import { degrees, depth, inRoundMicrons, plain } from '../../words/numbers'
import { paperWords } from '../../words/paper-words'
import { words } from '../../words/words'
import type { Size } from '../bench/use-size'
import type { ReportWall } from './report-content'
import { pictureBox, pictureKey, type ReportLook, type ReportPicture } from './report-look'

/** Charts are drawn larger than they stand on the sheet, which makes their letters as small as those round them. */
const chartScale = 0.78
const letter = 6.2
const nothing = () => undefined

interface ViewProps {
  readonly wall: ReportWall
  readonly look: ReportLook
  /** On the sheet, CSS pixels, without its caption. */
  readonly box: Size
  readonly caption?: string
}

/** The wall unrolled, with its readings. */
export function MapView({ wall, look, box, caption }: ViewProps) {
  const { grid, finding, bore, survey } = wall
  if (!grid) return null
  return (
    <View box={box} caption={caption ?? paperWords.views.map}>
      <UnrolledMap
        grid={grid}
        paint={look.paintOf(grid, finding.pair)}
        lengthMm={grid.lengthMm}
        levelsMm={survey.levelsMm}
        ports={bore.ports}
        stations={finding.stations}
        surface={finding.surface}
        pair={finding.pair}
        pointed={undefined}
        onPoint={nothing}
        {...enlarged(box)}
      />
    </View>
  )
}

/** The wall cut across where it is widest. */
export function SectionView({
  wall,
  look,
  box,
  exaggeration,
}: ViewProps & { readonly exaggeration: number }) {
  const { grid, finding, bore, cut } = wall
  if (!grid || !cut) return null
  return (
    <View box={box} caption={paperWords.views.section(depth(cut.depthMm))}>
      <SectionChart
        grid={grid}
        paint={look.paintOf(grid, finding.pair)}
        finding={finding}
        ports={bore.ports}
        depthMm={cut.depthMm}
        exaggeration={exaggeration}
        pointed={undefined}
        onPoint={nothing}
        letter={letter}
        isSmall
        {...enlarged(box)}
      />
    </View>
  )
}

/** The wall along the axis on which it is widest. */
export function ProfileView({ wall, look, box }: ViewProps) {
  const { grid, finding, bore, cut, survey } = wall
  if (!grid || !cut) return null
  return (
    <View box={box} caption={paperWords.views.profile(degrees(cut.axis.axisDegrees))}>
      <ProfileChart
        grid={grid}
        paint={look.paintOf(grid, finding.pair)}
        finding={finding}
        bore={bore}
        levelsMm={survey.levelsMm}
        axesDegrees={cut.axesDegrees}
        {...cut.axis}
        pointed={undefined}
        onPoint={nothing}
        letter={letter}
        {...enlarged(box)}
      />
    </View>
  )
}

/** The picture of a bore, with how much it is exaggerated. */
export function PictureView(props: ViewProps & { readonly exaggeration: number; readonly isNew?: boolean }) {
  const { wall, look, box, exaggeration, isNew } = props
  const { bore, survey } = wall
  const picture = look.pictures.get(pictureKey(bore.id, survey.id)) ?? { kind: 'none' }
  const name = isNew ? newName(wall) : paperWords.views.now(boreTitle(bore))
  const shown = Math.min(box.width / pictureBox.width, box.height / pictureBox.height)
  return (
    <figure className="sheet-view" style={{ width: box.width }}>
      <div className="sheet-picture" style={{ height: box.height }}>
        {picture.kind === 'drawn' ? <img src={picture.url} alt={name} /> : null}
      </div>
      <figcaption dir="auto">
        {name}
        {picture.kind === 'drawn' ? <Scale {...{ picture, exaggeration, shown }} /> : null}
      </figcaption>
    </figure>
  )
}

/** What stands beside the used bore: a bore to compare with by its name, else the same one when it was new. */
export function newName({ bore }: Pick<ReportWall, 'bore'>): string {
  return bore.role === 'of-this-engine' ? paperWords.views.before : boreTitle(bore)
}

/** How long so many µm on the diameter are on the picture. */
function Scale(props: {
  readonly picture: Extract<ReportPicture, { kind: 'drawn' }>
  readonly exaggeration: number
  readonly shown: number
}) {
  const { picture, exaggeration, shown } = props
  const { micrometres, lengthPx } = scaleBar(exaggeration, picture.pixelsPerMm * shown, 48, roundStepUm())
  return (
    <span className="sheet-scale">
      <svg width={lengthPx + 2} height="8" viewBox={`0 0 ${lengthPx + 2} 8`} aria-hidden="true">
        <path d={`M1,1v6M1,4h${lengthPx}m0,-3v6`} />
      </svg>
      {inRoundMicrons(micrometres / 1000)}
    </span>
  )
}

/** How much all pictures of a report are exaggerated, and what their bars measure. */
export function drawnText(exaggeration: number): string {
  const factor = plain(exaggeration, exaggeration < 10 ? 1 : 0)
  return paperWords.views.drawn(words.picture.exaggerationIs(factor))
}

function View(props: { readonly box: Size; readonly caption: string; readonly children: ReactNode }) {
  const { box, caption, children } = props
  return (
    <figure className="sheet-view" style={{ width: box.width }}>
      {/* Nothing on paper can be pointed at. */}
      <div className="sheet-chart" style={{ height: box.height }} inert>
        {children}
      </div>
      <figcaption>{caption}</figcaption>
    </figure>
  )
}

function enlarged({ width, height }: Size): Size {
  return { width: Math.round(width / chartScale), height: Math.round(height / chartScale) }
}
