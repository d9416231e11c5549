import type { BoreFinding, SurfaceFound, SurfaceLength } from '../core/findings'
import type { SurfaceFinding, SurfacePlace } from '../core/measured'
import { surfaceNear, surfaceWidthDegrees } from '../core/surface-findings/surface-place'
import { degrees, depth, depthFigure } from './numbers'
import { words } from './words'

/** Where a surface finding lies: 12 mm to 40 mm, 359° to 1°. */
export function surfacePlaceText(place: SurfacePlace): string {
  const said = words.surface
  const { fromDepthMm, toDepthMm, fromDegrees, toDegrees } = place
  const depths =
    fromDepthMm === toDepthMm ? depth(fromDepthMm) : said.between(depthFigure(fromDepthMm), depth(toDepthMm))
  const width = surfaceWidthDegrees(place)
  if (width === 0) return said.place(depths, degrees(withinTurn(fromDegrees)))
  if (width === 360) return said.place(depths, said.allRound)
  return said.place(depths, said.between(degrees(withinTurn(fromDegrees)), degrees(withinTurn(toDegrees))))
}

/** A surface finding by its number in the list, from 1, and its kind: 1 scratch. */
export function surfaceTitle(number: number, { kind }: Pick<SurfaceFinding, 'kind'>): string {
  return words.surface.numbered(number, words.surface.kinds[kind])
}

/** The surface findings of a bore, a line each, with where they lie and how large they are. */
export function surfaceLines({ surface }: Pick<BoreFinding, 'surface'>): string[] {
  return surface.map((found, index) =>
    words.surface.line(surfaceTitle(index + 1, found), surfacePlaceText(found), surfaceParts(found)),
  )
}

/** What else is recorded of a surface finding, besides its place. */
export function surfaceParts(found: SurfaceFound): string[] {
  const said = words.surface
  const { across, along, catchesNail, note, photos = [] } = found
  return [
    ...lengthText(said.across, across),
    ...lengthText(said.along, along),
    ...(catchesNail === undefined
      ? found.nailWouldTell
        ? [said.nail.notTried]
        : []
      : [catchesNail ? said.nail.yes : said.nail.no]),
    ...(note === undefined || note.trim() === '' ? [] : [note.trim().replace(/\s*\n\s*/g, ' ')]),
    ...(photos.length > 0 ? [said.photographs(photos.length)] : []),
  ]
}

function lengthText(
  texts: Readonly<Record<SurfaceLength['from'], (length: string) => string>>,
  length: SurfaceLength | undefined,
): string[] {
  return length === undefined ? [] : [texts[length.from](depth(rounded(length)))]
}

/** What follows from a place is no better than a tenth of a millimetre. */
function rounded({ mm, from }: SurfaceLength): number {
  return from === 'place' ? Math.round(mm * 10) / 10 : mm
}

/**
 * What of the surface can end a bore that is in size, and who decides; undefined where nothing recorded can.
 * A bore for comparison is not judged.
 */
export function surfaceSentence({ surface, role }: BoreFinding): string | undefined {
  const said = words.surface
  if (role === 'for-comparison') return undefined
  const stops = surface.flatMap((found) =>
    found.stop === undefined ? [] : [said.stops[found.stop](surfacePlaceText(found), said.kinds[found.kind])],
  )
  const untried = surface
    .filter(({ nailWouldTell }) => nailWouldTell)
    .map((found) => said.nailWouldTell(surfacePlaceText(found)))
  if (stops.length === 0) return untried.length === 0 ? undefined : [said.lead, ...untried].join(' ')
  return [said.lead, ...stops, ...untried, said.decides].join(' ')
}

/** The first words of `surfaceSentence`, where something recorded can end the bore. */
export function surfaceLead({ surface, role }: BoreFinding): string | undefined {
  const stops = role === 'of-this-engine' && surface.some(({ stop }) => stop !== undefined)
  return stops ? words.surface.lead : undefined
}

/** The titles of the surface findings at a place of the wall; undefined where there are none. */
export function surfaceHere(
  { surface, drawnLengthMm }: Pick<BoreFinding, 'surface' | 'drawnLengthMm'>,
  place: { readonly depthMm: number; readonly angleDegrees: number },
): string | undefined {
  const here = surfaceNear(surface, place, drawnLengthMm)
  const titles = here.map((found) => surfaceTitle(surface.indexOf(found) + 1, found))
  return titles.length === 0 ? undefined : words.surface.hereToo(words.app.and(titles))
}

function withinTurn(angle: number): number {
  return ((angle % 360) + 360) % 360
}
