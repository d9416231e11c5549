/** The bores of an engine beside each other. */
export const block = {
  block: {
    title: 'All bores',
    heads: {
      bore: 'Bore',
      largest: 'Largest',
      smallest: 'Smallest',
      ovality: 'Out-of-round',
      taper: 'Taper',
      standing: 'Stands',
    },
    none: '–',
    standings: { out: 'out', 'too-close': 'too close', inside: 'inside', none: 'not judged' },
    compared: 'for comparison',
    interval: (low: string, high: string) => `${low} to ${high}`,
    all: {
      out: (count: number) => `All ${count} bores are out of their limits.`,
      'too-close': (count: number) => `All ${count} bores are too close to call.`,
      inside: (count: number) => `All ${count} bores are inside their limits.`,
      none: (count: number) => `None of the ${count} bores is judged yet.`,
    },
    some: {
      out: (names: readonly string[]) =>
        `${boresOf(names)} ${names.length === 1 ? 'is out of its limits' : 'are out of their limits'}.`,
      'too-close': (names: readonly string[]) => `${boresOf(names)} ${isOrAre(names)} too close to call.`,
      inside: (names: readonly string[]) => `${boresOf(names)} ${isOrAre(names)} inside.`,
      none: (names: readonly string[]) => `${boresOf(names)} ${isOrAre(names)} not judged yet.`,
    },
    choose: (name: string) => `Show bore ${name}`,
  },
} as const

function boresOf(names: readonly string[]): string {
  const last = names[names.length - 1] ?? ''
  return names.length === 1 ? `Bore ${last}` : `Bores ${names.slice(0, -1).join(', ')} and ${last}`
}

function isOrAre(names: readonly string[]): string {
  return names.length === 1 ? 'is' : 'are'
}
