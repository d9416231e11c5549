import type { SurfaceFound, SurfaceLength, SurfaceStop } from '../findings'
import type { Bore, SurfaceFinding, Survey } from '../measured'
import { surfaceWidthDegrees } from './surface-place'

/** Marks on which the fingernail decides. */
const feltByNail: ReadonlySet<SurfaceFinding['kind']> = new Set(['scratch', 'scuff', 'ridge'])

/**
 * The surface findings of a survey, each with its size (mm) and with what it means for a decision. Width around
 * and length along are as measured, or follow from the place: width = π·D·(degrees between the edges)/360 for a
 * bore of about D mm. What can end a bore that is in size: bare aluminium, flaking, a scratch, scuff or ridge
 * that catches a fingernail, pits in the ring path (common practice, no published source). None of it changes
 * the verdict on sizes. Throws for a diameter that is not above 0.
 */
export function surfaceFound(
  survey: Pick<Survey, 'surfaceFindings'>,
  bore: Pick<Bore, 'ringTravelMm'>,
  diameterMm: number,
): SurfaceFound[] {
  if (!(diameterMm > 0 && Number.isFinite(diameterMm))) {
    throw new RangeError(`surfaceFound: expected a diameter above 0 mm, got ${diameterMm}`)
  }
  return (survey.surfaceFindings ?? []).map((finding) => {
    const around = (Math.PI * diameterMm * surfaceWidthDegrees(finding)) / 360
    const across = lengthOf(finding.acrossMm, around)
    const along = lengthOf(finding.alongMm, finding.toDepthMm - finding.fromDepthMm)
    const stop = stopOf(finding, bore)
    return {
      ...finding,
      ...(across ? { across } : {}),
      ...(along ? { along } : {}),
      ...(stop ? { stop } : {}),
      nailWouldTell: feltByNail.has(finding.kind) && finding.catchesNail === undefined,
    }
  })
}

function lengthOf(measuredMm: number | undefined, placeMm: number): SurfaceLength | undefined {
  if (measuredMm !== undefined) return { mm: measuredMm, from: 'measured' }
  return placeMm > 0 ? { mm: placeMm, from: 'place' } : undefined
}

function stopOf(
  finding: SurfaceFinding,
  { ringTravelMm }: Pick<Bore, 'ringTravelMm'>,
): SurfaceStop | undefined {
  if (finding.kind === 'bare-aluminium' || finding.kind === 'flaking') return finding.kind
  if (feltByNail.has(finding.kind)) return finding.catchesNail ? 'catches-nail' : undefined
  if (finding.kind !== 'pits') return undefined
  if (!ringTravelMm) return 'pits-perhaps-in-ring-path'
  const apart = finding.toDepthMm < ringTravelMm.from || finding.fromDepthMm > ringTravelMm.to
  return apart ? undefined : 'pits-in-ring-path'
}
