import type { block as english } from '../english/block'
import type { Texts } from '../texts'

export const block: Texts<typeof english> = {
  block: {
    title: 'Todos los cilindros',
    heads: {
      bore: 'Cilindro',
      largest: 'Ø máximo',
      smallest: 'Ø mínimo',
      ovality: 'Ovalización',
      taper: 'Conicidad',
      standing: 'Estado',
    },
    none: '–',
    standings: { out: 'fuera', 'too-close': 'demasiado justo', inside: 'dentro', none: 'sin evaluar' },
    compared: 'para comparar',
    interval: (low, high) => `de ${low} a ${high}`,
    all: {
      out: (count) => `Los ${count} cilindros están fuera de sus límites.`,
      'too-close': (count) => `Los ${count} cilindros están demasiado justos para decidir.`,
      inside: (count) => `Los ${count} cilindros están dentro de sus límites.`,
      none: (count) => `Ninguno de los ${count} cilindros está evaluado todavía.`,
    },
    some: {
      out: (names) => `${boresOf(names)} fuera de sus límites.`,
      'too-close': (names) =>
        `${boresOf(names)} ${names.length === 1 ? 'demasiado justo' : 'demasiado justos'} para decidir.`,
      inside: (names) => `${boresOf(names)} dentro.`,
      none: (names) => `${boresOf(names)} sin evaluar todavía.`,
    },
    choose: (name) => `Mostrar el cilindro ${name}`,
  },
}

/** The bores with their verb: "El cilindro 1 está", "Los cilindros 1, 2 y 3 están". */
function boresOf(names: readonly string[]): string {
  const last = names[names.length - 1] ?? ''
  return names.length === 1
    ? `El cilindro ${last} está`
    : `Los cilindros ${names.slice(0, -1).join(', ')} y ${last} están`
}
