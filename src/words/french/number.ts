import type { number as english } from '../english/number'
import type { Texts } from '../texts'

/** How a typed number was refused, and how chances are said, in French. */
export const number: Texts<typeof english> = {
  number: {
    refused: {
      empty: 'Entrez un nombre.',
      letters: 'Entrez le nombre seul, sans unité ni lettres : 54,032 ou 54.032.',
      'other-sign': 'Il contient un signe qui n’appartient à aucun nombre. Entrez-le comme 54,032 ou 54.032.',
      'inner-space': 'Il y a une espace dans le nombre. Enlevez-la.',
      'sign-place': 'Mettez un seul signe, + ou −, devant le nombre.',
      'both-marks':
        'Virgule et point ensemble se lisent de deux façons. Prenez l’un des deux, et seulement pour les décimales : 54,032 ou 54.032.',
      'several-marks':
        'Il y a plus d’une virgule ou d’un point. Prenez-en un, et seulement pour les décimales.',
      'too-long': 'Il a plus de chiffres que n’en lit aucun appareil. Arrondissez-le.',
      'too-large': 'Ce nombre est trop grand pour tout ce qui se mesure ici.',
    },
    outOfRange: (found, least, most) => `${found} n’est pas entre ${least} et ${most}.`,
    waits: {
      low: (low, high) =>
        `${low} est plus que ${high}, l’autre bout. Il attend ici et compte dès que celui-ci est tapé aussi.`,
      high: (high, low) =>
        `${high} est moins que ${low}, l’autre bout. Il attend ici et compte dès que celui-ci est tapé aussi.`,
      same: 'Les deux bouts sont maintenant au même endroit. Il attend ici et compte dès que l’autre est tapé aussi.',
      alone: 'Il attend ici et compte dès que l’autre bout est tapé aussi.',
      fits: 'Il n’est pas encore compté. Pressez Entrée ici pour le compter.',
    },
    wholeOnly: 'Entrez un nombre entier.',
    chances: (of, all) => (of < 2 ? `${of} chance sur ${all}` : `${of} chances sur ${all}`),
    moreThan: (of, all) => `plus de ${of} chances sur ${all}`,
    fewerThan: (all) => `moins de 1 chance sur ${all}`,
    aboutEven: 'à peu près une chance sur deux',
    months: [
      'janvier',
      'février',
      'mars',
      'avril',
      'mai',
      'juin',
      'juillet',
      'août',
      'septembre',
      'octobre',
      'novembre',
      'décembre',
    ],
    day: (day, month, year) => `${day === 1 ? '1er' : day} ${month} ${year}`,
    range: (value, low, high) => `${value} (${low} à ${high})`,
  },
}
