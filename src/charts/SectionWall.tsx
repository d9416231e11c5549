import { CutWall, type CutWallProps } from './CutWall'
import { cutPath, facePath } from './section-paths'
import type { SectionScale } from './section-scale'

/** The wall cut across, pale and hatched where nobody measured, open at the ports. */
export function SectionWall(
  props: Pick<CutWallProps, 'stretches' | 'limits' | 'paint'> & { readonly scale: SectionScale },
) {
  const { scale, ...wall } = props
  const area = {
    left: -scale.outer,
    top: -scale.outer,
    width: 2 * scale.outer,
    height: 2 * scale.outer,
    lengthMm: 1,
  }
  return (
    <CutWall
      {...wall}
      area={area}
      outlineOf={(points) => cutPath(scale, points)}
      faceOf={(points) => facePath(scale, points)}
      unmeasured="pale"
    />
  )
}
