import { drawnFactor, type ScanWall } from '../pages/bench/use-drawn-scan'
import type { PictureLabels } from '../scene/picture-labels'
import { limitText } from '../words/limit-text'
import { depth, inRoundMicrons, plain, roundMicrons, size } from '../words/numbers'
import { surfaceTitle } from '../words/surface'
import { words } from '../words/words'

/** The texts on the picture, from the words in use. */
export const pictureLabels: PictureLabels = {
  picture: words.picture.label,
  keys: words.pictureTexts.keys,
  sides: words.sides,
  formDrawn: (exaggeration) => words.picture.exaggerationIs(plain(exaggeration, exaggeration < 10 ? 1 : 0)),
  onDiameter: (micrometres) => words.picture.scaleBar(inRoundMicrons(micrometres / 1000)),
  limit: limitText,
  middle: (sizeMm) => words.pictureTexts.middle(size(sizeMm)),
  depth,
  deviation: (micrometres) => roundMicrons(micrometres / 1000, { sign: true }),
  notMeasured: words.legend.hatch,
  tooClose: words.legend.stipple,
  surfaceFinding: words.legend.surface,
  scanMark: words.legend.scanMark,
  surface: surfaceTitle,
  next: words.pictureTexts.next,
}

/** Those of a scan: without a size its deviations are of the radius, drawn twice as far as of a diameter. */
export function scanLabels(wall: Pick<ScanWall, 'isSized' | 'isLocal'>): PictureLabels {
  const said = words.scans
  if (wall.isSized) return { ...pictureLabels, picture: said.picture }
  return {
    ...pictureLabels,
    picture: said.picture,
    formDrawn: (exaggeration) => pictureLabels.formDrawn(exaggeration / drawnFactor(wall)),
    onDiameter: (micrometres) => said.onRadius(inRoundMicrons(micrometres / 1000)),
    middle: () => (wall.isLocal ? said.noForm : said.noSize),
  }
}
