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
