import type { LimitPair } from '../core/findings'
import type { PictureLabels } from '../scene/picture-labels'
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

function limitText(which: 'min' | 'max' | 'new-max', sizeMm: number, pair: LimitPair): string {
  const { limits } = words.picture
  const written = size(sizeMm)
  if (which === 'new-max') return limits.newMax(written)
  if (pair.kind === 'wear' && which === 'max') return limits.wear(written)
  if (pair.kind !== 'grade') return limits[which](written)
  const grade = pair.gradeName ?? ''
  return which === 'min' ? limits.gradeMin(grade, written) : limits.gradeMax(grade, written)
}
