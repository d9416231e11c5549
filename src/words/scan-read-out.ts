import { degrees, depth, inTenthsOfMicrons, size } from './numbers'
import { words } from './words'

/** What a scan holds at a place pointed at. */
export interface PointedScan {
  readonly depthMm: number
  readonly angleDegrees: number
  /** Name of the port, where there is one. */
  readonly port: string | undefined
  /** The radius read there, or the nearest within half a step, µm from the middle; absent where there is none. */
  readonly radiusUm: number | undefined
  /** The same less the smooth form, µm. */
  readonly overUm: number | undefined
  /** Twice the radius as a size, mm, where the scan has one. */
  readonly sizeMm: number | undefined
}

/** One line on a place of a scan. */
export function scanReadOut(pointed: PointedScan): string {
  const said = words.scans
  const place = said.at(
    depth(Number(pointed.depthMm.toFixed(1))),
    degrees(Number((pointed.angleDegrees % 360).toFixed(1))),
  )
  if (pointed.port !== undefined) return `${place} · ${said.port(pointed.port)}`
  if (pointed.radiusUm === undefined || pointed.overUm === undefined) return `${place} · ${said.noRadius}`
  const signed = (um: number) => inTenthsOfMicrons(um / 1000, { sign: true })
  const parts = [
    place,
    pointed.sizeMm === undefined
      ? said.radius(signed(pointed.radiusUm))
      : said.twiceRadius(size(pointed.sizeMm)),
    said.over(signed(pointed.overUm)),
  ]
  return parts.join(' · ')
}

/** What a level or a line of a scan holds, a sentence each; µm as they are drawn, from a middle, mm, where there is a size. */
export function scanCutSentences(
  at: { readonly depthMm: number } | { readonly angleDegrees: number },
  drawnUm: readonly number[],
  middleMm: number | undefined,
): string[] {
  const said = words.scans
  const least = drawnUm.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY)
  const most = drawnUm.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY)
  if (drawnUm.length === 0) return [said.noRadius, said.oneWall]
  const written = (um: number) =>
    middleMm === undefined ? inTenthsOfMicrons(um / 1000, { sign: true }) : size(middleMm + um / 1000)
  const range = [written(least), written(most)] as const
  const of = middleMm === undefined ? said.radii : said.twiceRadii
  const count = String(drawnUm.length)
  return [
    'depthMm' in at
      ? said.levelText(of(count), depth(at.depthMm), ...range)
      : said.levelText(of(count), degrees(at.angleDegrees), ...range),
    said.oneWall,
  ]
}
