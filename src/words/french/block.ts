import type { block as english } from '../english/block'
import type { Texts } from '../texts'

/** The bores of an engine beside each other, in French. */
export const block: Texts<typeof english> = {
  block: {
    title: 'Tous les alésages',
    heads: {
      bore: 'Alésage',
      largest: 'Le plus grand',
      smallest: 'Le plus petit',
      ovality: 'Ovalisation',
      taper: 'Conicité',
      standing: 'État',
    },
    none: '–',
    standings: { out: 'hors', 'too-close': 'trop juste', inside: 'dedans', none: 'non jugé' },
    compared: 'pour comparaison',
    interval: (low, high) => `${low} à ${high}`,
    all: {
      out: (count) => `Les ${count} alésages sont hors de leurs limites.`,
      'too-close': (count) => `Les ${count} alésages sont trop justes pour trancher.`,
      inside: (count) => `Les ${count} alésages sont dans leurs limites.`,
      none: (count) => `Aucun des ${count} alésages n’est encore jugé.`,
    },
    some: {
      out: (names) =>
        `${boresOf(names)} ${names.length === 1 ? 'est hors de ses limites' : 'sont hors de leurs limites'}.`,
      'too-close': (names) =>
        `${boresOf(names)} ${names.length === 1 ? 'est trop juste' : 'sont trop justes'} pour trancher.`,
      inside: (names) =>
        `${boresOf(names)} ${names.length === 1 ? 'est dans ses limites' : 'sont dans leurs limites'}.`,
      none: (names) =>
        `${boresOf(names)} ${names.length === 1 ? 'n’est pas encore jugé' : 'ne sont pas encore jugés'}.`,
    },
    choose: (name) => `Montrer l’alésage ${name}`,
  },
}

function boresOf(names: readonly string[]): string {
  const last = names[names.length - 1] ?? ''
  return names.length === 1 ? `L’alésage ${last}` : `Les alésages ${names.slice(0, -1).join(', ')} et ${last}`
}
