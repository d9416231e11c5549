import type { block as english } from '../english/block'
import type { Texts } from '../texts'

export const block: Texts<typeof english> = {
  block: {
    title: 'Alle Bohrungen',
    heads: {
      bore: 'Bohrung',
      largest: 'Größter Ø',
      smallest: 'Kleinster Ø',
      ovality: 'Unrundheit',
      taper: 'Konizität',
      standing: 'Stand',
    },
    none: '–',
    standings: { out: 'außerhalb', 'too-close': 'zu knapp', inside: 'innerhalb', none: 'nicht beurteilt' },
    compared: 'zum Vergleich',
    interval: (low, high) => `${low} bis ${high}`,
    all: {
      out: (count) => `Alle ${count} Bohrungen liegen außerhalb ihrer Grenzen.`,
      'too-close': (count) => `Bei allen ${count} Bohrungen ist es zu knapp für ein Urteil.`,
      inside: (count) => `Alle ${count} Bohrungen liegen innerhalb ihrer Grenzen.`,
      none: (count) => `Von den ${count} Bohrungen ist noch keine beurteilt.`,
    },
    some: {
      out: (names) => `${boresOf(names)} ${names.length === 1 ? 'liegt' : 'liegen'} außerhalb ihrer Grenzen.`,
      'too-close': (names) =>
        `Bei ${names.length === 1 ? '' : 'den '}${bores(names)} ist es zu knapp für ein Urteil.`,
      inside: (names) => `${boresOf(names)} ${names.length === 1 ? 'liegt' : 'liegen'} innerhalb.`,
      none: (names) => `${boresOf(names)} ${names.length === 1 ? 'ist' : 'sind'} noch nicht beurteilt.`,
    },
    choose: (name) => `Bohrung ${name} zeigen`,
  },
}

function boresOf(names: readonly string[]): string {
  return `${names.length === 1 ? '' : 'Die '}${bores(names)}`
}

function bores(names: readonly string[]): string {
  const last = names[names.length - 1] ?? ''
  return names.length === 1 ? `Bohrung ${last}` : `Bohrungen ${names.slice(0, -1).join(', ')} und ${last}`
}
