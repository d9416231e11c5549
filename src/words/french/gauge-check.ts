import type { gaugeCheck as english } from '../english/gauge-check'
import type { Texts } from '../texts'

/** What reading one place again and again shows of a gauge, in French. */
export const gaugeCheck: Texts<typeof english> = {
  gaugeCheck: {
    title: 'Comment il répète',
    heading: 'Contrôles d’appareils',
    help: 'Lisez le même endroit encore et encore, dix fois ou plus : un point de mesure, ou la bague. Sortez l’appareil à chaque fois, et laissez tout le reste tel quel. Tapez les lectures dans l’ordre où elles ont été prises, avec des espaces entre elles.',
    field: (gauge) => `Lectures d’un contrôle : ${gauge}`,
    again: (gauge, number) => `Lectures du contrôle ${number} : ${gauge}`,
    date: (gauge, number) => `Jour du contrôle ${number}, année-mois-jour : ${gauge}`,
    writtenAs: (gauge) => `Ce que sont les lectures du contrôle : ${gauge}`,
    written: {
      sizesMm: (unit) => `cotes en ${unit}`,
      dialUm: (unit) => `lectures du cadran en ${unit}`,
    },
    studies: 'Plusieurs personnes, plusieurs pièces',
    studiesLoading: 'Un instant…',
    another: 'Un autre contrôle, {writtenAs} :',
    refused: (piece, why) => `« ${piece} » : ${why}`,
    add: 'Garder ce contrôle',
    remove: (gauge, number) => `Retirer le contrôle ${number} : ${gauge}`,
    checked: 'Contrôlé {date}, {unit} :',
    of: (gauge, day) => (day === undefined ? gauge : `${gauge}, ${day}`),
    one: 'Une seule lecture ne montre pas comment un appareil répète : il en faut deux, et dix ou plus disent quelque chose.',
    scatter: (readings, deviation, freedom, low, high) =>
      `${readings} lectures se dispersent avec un écart type de ${deviation}, connu par ${freedomOf(freedom)} : il est entre ${low} et ${high} dans 95 de 100 contrôles pareils.`,
    belowStep: (readings, deviation, step, counted) =>
      `${readings} lectures se dispersent avec un écart type de ${deviation}, moins que ne peut montrer l’échelon de ${step} ; ${counted} est compté à la place.`,
    drift: {
      none: (drift, doubt) =>
        `De la première à la dernière, elles dérivent de ${drift} ± ${doubt} : rien qui ressorte.`,
      standsOut: (drift, doubt) =>
        `De la première à la dernière, elles dérivent de ${drift} ± ${doubt}. Cela ressort : laissez l’appareil et la pièce venir à la même température, voyez si toutes les vis sont serrées, et contrôlez de nouveau.`,
    },
    share: (six, share, band) =>
      `Six écarts types d’une lecture, ${six}, font ${share} de la plage de ${band} de la plus petite à la plus grande cote neuve.`,
    good: (bore, repeats, doubt) =>
      `Avec cette dispersion, un point de l’alésage ${bore}, lu ${repeats === 1 ? 'une fois' : `${repeats} fois`}, est juste à ${doubt} près, avec tout le reste de son montage.`,
    answer: {
      band: (margin, band) =>
        `Cela peut répondre si un alésage est dans la plage de ${band} : des lectures à ${margin} ou plus à l’intérieur des deux limites sont prouvées.`,
      never: (band, needed) =>
        `Cela ne peut pas répondre si un alésage est dans la plage de ${band} : il faut ${needed}.`,
      wear: (margin) =>
        `Cela répond s’il est dans la limite d’usure, sauf pour des lectures à moins de ${margin} de la limite : elles restent trop justes pour trancher.`,
      'one-limit': (margin) =>
        `Cela répond s’il est dans la limite, sauf pour des lectures à moins de ${margin} d’elle : elles restent trop justes pour trancher.`,
      nothing:
        'Aucune limite n’est entrée, il n’y a donc pas encore de question à laquelle il pourrait répondre.',
    },
    notUsed:
      'Aucun alésage de ce moteur n’a été mesuré avec lui, il n’y a donc pas encore de question à laquelle il pourrait répondre.',
    use: (deviation, freedom) => `Prendre ${deviation} et ${freedomOf(freedom)} pour cet appareil`,
    inUse:
      'Ce sont maintenant les chiffres propres de l’appareil. Un relevé qui a assez de répétitions à lui suit plutôt celles-ci.',
  },
}

function freedomOf(freedom: number): string {
  return freedom < 2 ? `${freedom} degré de liberté` : `${freedom} degrés de liberté`
}
