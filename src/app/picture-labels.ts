import type { PictureLabels } from '../scene/picture-labels'
import { limitText } from '../words/limit-text'
import { depth, inMicrons, microns, plain, size } from '../words/numbers'
import { surfaceTitle } from '../words/surface'
import { words } from '../words/words'

/** The texts on the picture, from the words in use. */
export const pictureLabels: PictureLabels = {
  picture: words.picture.label,
  keys: words.pictureTexts.keys,
  sides: words.sides,
  formDrawn: (exaggeration) => words.picture.exaggerationIs(plain(exaggeration, exaggeration < 10 ? 1 : 0)),
  onDiameter: (micrometres) => words.picture.scaleBar(inMicrons(micrometres / 1000)),
  limit: limitText,
  middle: (sizeMm) => words.pictureTexts.middle(size(sizeMm)),
  depth,
  deviation: (micrometres) => microns(micrometres / 1000, { sign: true }),
  notMeasured: words.legend.hatch,
  tooClose: words.legend.stipple,
  surfaceFinding: words.legend.surface,
  surface: surfaceTitle,
  next: words.pictureTexts.next,
}
