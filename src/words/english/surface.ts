import type { SurfaceStop } from '../../core/findings'
import type { SurfaceKind, SurfaceShape } from '../../core/measured'

/** What was seen or felt on the wall: its names, what it means, and how it is written down. */
export const surface = {
  surface: {
    title: 'Surface',
    kinds: {
      scratch: 'scratch',
      scuff: 'scuff',
      'stuck-metal': 'stuck metal',
      'bare-aluminium': 'bare aluminium',
      flaking: 'flaking',
      ridge: 'ridge',
      pits: 'pits',
      rust: 'rust',
      glaze: 'glaze',
      'cross-hatch-worn-off': 'cross-hatch worn off',
      'cross-hatch-seen': 'cross-hatch seen',
    } satisfies Record<SurfaceKind, string>,
    shapes: { patch: 'patch', streak: 'streak along the stroke' } satisfies Record<SurfaceShape, string>,
    nail: { yes: 'catches a fingernail', no: 'no fingernail catches', notTried: 'fingernail not tried' },
    /** "Scratch 1", in lists and beside the mark on the wall. */
    numbered: (number: number, kind: string) => `${number} ${kind}`,
    place: (depths: string, angles: string) => `${depths}, ${angles}`,
    between: (from: string, to: string) => `${from} to ${to}`,
    allRound: 'all round',
    line: (title: string, place: string, parts: readonly string[]) =>
      `${title}: ${[place, ...parts].join('; ')}`,
    across: {
      measured: (length: string) => `${length} wide as measured`,
      place: (length: string) => `${length} wide by its place`,
    },
    along: {
      measured: (length: string) => `${length} long as measured`,
      place: (length: string) => `${length} long by its place`,
    },
    photographs: (count: number) => (count === 1 ? 'one photograph' : `${count} photographs`),
    add: 'Add a surface finding',
    orDrag: 'Type the place of a surface finding; or drag over it on the flat map',
    mark: 'Mark',
    markHelp: 'Draw a surface finding on the flat map with a finger',
    marking: 'Draw with a finger over what you found.',
    record: 'Record it',
    remove: (title: string) => `Remove ${title}`,
    /** Without its photographs. */
    sentence:
      'What: {kind}, a {shape}, from {fromDepthMm} to {toDepthMm} mm deep and from {fromDegrees} to {toDegrees}°; {nail}. Width {acrossMm} mm, length {alongMm} mm. Note: {note}',
    draft:
      'What: {kind}, from {fromDepthMm} to {toDepthMm} mm deep and from {fromDegrees} to {toDegrees}°, clockwise from above.',
    drawHelp: 'Or drag over it on the flat map; a finger draws there once Mark is pressed.',
    angleHelp:
      'Angles may cross 0°: 350 to 10 is twenty degrees about the front. Twice the same is a line, 0 to 360 all round.',
    labels: {
      kind: 'Kind',
      shape: 'Shape',
      fromDepthMm: 'From depth, mm',
      toDepthMm: 'To depth, mm',
      fromDegrees: 'From angle, degrees',
      toDegrees: 'To angle, degrees',
      nail: 'Fingernail',
      acrossMm: 'Width around the bore, mm',
      alongMm: 'Length along the bore, mm',
      note: 'Note',
    },
    ends: { fromDepthMm: 'top', toDepthMm: 'bottom', fromDegrees: 'from', toDegrees: 'to' },
    missing: (labels: readonly string[]) => `Still to be typed: ${labels.join('; ')}.`,
    byPlace: (length: string) => `${length} by its place`,
    noNote: 'none',
    changes: {
      added: 'surface finding added',
      changed: 'surface finding',
      removed: 'surface finding removed',
      photograph: 'photograph added',
      photographRemoved: 'photograph removed',
    },
    lead: 'Surface: figures alone do not decide.',
    stops: {
      'bare-aluminium': (where: string) => `Bare aluminium at ${where} can end a bore that is in size.`,
      flaking: (where: string) => `Flaking at ${where} can end a bore that is in size.`,
      'catches-nail': (where: string, kind: string) =>
        `A fingernail catches on the ${kind} at ${where}: that can end a bore that is in size.`,
      'pits-in-ring-path': (where: string) =>
        `Pits in the ring path at ${where} can end a bore that is in size.`,
      'pits-perhaps-in-ring-path': (where: string) =>
        `Pits at ${where} can end a bore that is in size if the rings pass there: enter where the rings run.`,
    } satisfies Record<SurfaceStop, (where: string, kind: string) => string>,
    decides: 'What becomes of it is for the service manual and a qualified machinist to say.',
    nailWouldTell: (where: string) =>
      `Draw a fingernail across the mark at ${where}: whether it catches decides more than its looks.`,
    /** Within a read-out. */
    hereToo: (titles: string) => `here: ${titles}`,
  },
}
