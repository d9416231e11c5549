import type { verdict as english } from '../english/verdict'
import type { Texts } from '../texts'

/** The verdict on a bore in sentences, in French. */
export const verdict: Texts<typeof english> = {
  verdict: {
    none: {
      'no-readings': 'Pas encore de lectures.',
      'no-size-over-contacts':
        'Pas encore de cotes : l’appareil a été mis à zéro dans l’alésage et doit encore être mesuré sur ses touches.',
      'no-limits': 'Pas de verdict sur la cote : aucune limite n’est entrée.',
      'all-blocked':
        'Pas de verdict : toutes les lectures sont à une lumière ou une bande et attendent votre avis.',
    },
    where: {
      worst: (count, all, place) =>
        count === all
          ? `tous les ${all} points de mesure, surtout à ${place}`
          : `${count} des ${all} points de mesure, surtout à ${place}`,
    },
    inside: {
      wear: 'Dans la limite d’usure.',
      band: 'Dans les limites du neuf.',
      grade: (grade) => `Dans les limites de la classe ${grade}.`,
    },
    above: {
      wear: (where) => `Au-dessus de la limite d’usure à ${where}.`,
      band: (where) => `Au-dessus de la plus grande cote neuve à ${where}.`,
      grade: (where, grade) => `Au-dessus de la plus grande cote de la classe ${grade} à ${where}.`,
    },
    below: {
      band: (where) => `Au-dessous de la plus petite cote neuve à ${where}.`,
      grade: (where, grade) => `Au-dessous de la plus petite cote de la classe ${grade} à ${where}.`,
    },
    tooClose: (where) => `Trop juste pour trancher à ${where}.`,
    tooCloseAbove: {
      wear: (count, all) =>
        `Trop juste pour trancher : ${countOf(count, all)} au-dessus de la limite d’usure.`,
      band: (count, all) =>
        `Trop juste pour trancher : ${countOf(count, all)} au-dessus de la plus grande cote neuve.`,
      grade: (count, all, grade) =>
        `Trop juste pour trancher : ${countOf(count, all)} au-dessus de la plus grande cote de la classe ${grade}.`,
    },
    tooCloseBelow: {
      band: (count, all) =>
        `Trop juste pour trancher : ${countOf(count, all)} au-dessous de la plus petite cote neuve.`,
      grade: (count, all, grade) =>
        `Trop juste pour trancher : ${countOf(count, all)} au-dessous de la plus petite cote de la classe ${grade}.`,
    },
    shape: {
      ovality: {
        above: 'L’ovalisation dépasse sa limite.',
        'too-close': 'L’ovalisation est trop juste pour trancher.',
        unknown: 'L’ovalisation n’a pas pu être jugée.',
      },
      taper: {
        above: 'La conicité dépasse sa limite.',
        'too-close': 'La conicité est trop juste pour trancher.',
        unknown: 'La conicité n’a pas pu être jugée.',
      },
      both: {
        above: 'L’ovalisation et la conicité dépassent leurs limites.',
        'too-close': 'L’ovalisation et la conicité sont trop justes pour trancher.',
        unknown: 'L’ovalisation et la conicité n’ont pas pu être jugées.',
      },
    },
    lean: {
      inside: (chances) => `${capital(chances)} qu’il soit dans les limites.`,
      above: (chances) => `${capital(chances)} qu’il soit au-dessus.`,
      below: (chances) => `${capital(chances)} qu’il soit au-dessous.`,
      even: 'À peu près autant de chances qu’il soit dans les limites ou non.',
    },
    leanAt: {
      inside: (place, chances) => `À ${place} : ${chances} qu’il soit dans les limites.`,
      above: (place, chances) => `À ${place} : ${chances} qu’il soit au-dessus.`,
      below: (place, chances) => `À ${place} : ${chances} qu’il soit au-dessous.`,
      even: (place) => `À ${place} : à peu près autant de chances qu’il soit dans les limites ou non.`,
    },
    alone: (place, chances, stations) =>
      `Pris seul, le point à ${place} est hors limites, avec ${chances}. La plus éloignée de ${stations} lectures est souvent la plus malchanceuse ; il en faut donc plus pour le prouver de l’alésage.`,
    sure: {
      inside: (place, chances) =>
        `Le plus près d’être hors limites est ${place} : ${chances} qu’il y soit dans les limites.`,
      above: (place, chances) => `À ${place} : ${chances} qu’il soit au-dessus.`,
      below: (place, chances) => `À ${place} : ${chances} qu’il soit au-dessous.`,
    },
    settle: (doubt) => `Une lecture juste à ${doubt} près trancherait, si elle reste la même.`,
    settleAt: (place, doubt) =>
      `À ${place}, une lecture juste à ${doubt} près trancherait, si elle reste la même.`,
    settledByNone: 'Il est si près de la limite qu’aucun appareil d’alésage ne trancherait.',
    provisional: {
      'no-setting-size': 'Provisoire : la cote à laquelle l’appareil a été réglé n’a pas été notée.',
      'no-opening-zero': 'Provisoire : aucun zéro de départ n’a été noté.',
      'no-closing-zero': 'Provisoire : aucun zéro de fin n’a été noté.',
      'no-bore-temperature': 'Provisoire : la température de l’alésage n’a pas été notée.',
      'no-reference-temperature':
        'Provisoire : la température de la bague ou du micromètre n’a pas été notée.',
      'no-micrometer-check': 'Provisoire : aucun contrôle du micromètre sur son propre étalon n’a été noté.',
      'no-direction-test':
        'Provisoire : aucun essai du sens de l’aiguille n’a été noté, et le sens horaire est supposé plus grand. Sinon, tous les chiffres sont inversés.',
      'no-wall-kind': 'Provisoire : le genre de paroi n’a pas été noté.',
      'no-dial-over-contacts':
        'Provisoire : aucune lecture du cadran n’a été notée pendant que le micromètre tenait l’appareil, et 0 est supposé.',
    },
    provisionalSeveral: (missing) => `Provisoire. Non noté : ${missing.join(', ')}.`,
    missing: {
      'no-setting-size': 'cote à laquelle l’appareil a été réglé',
      'no-opening-zero': 'zéro de départ',
      'no-closing-zero': 'zéro de fin',
      'no-bore-temperature': 'température de l’alésage',
      'no-reference-temperature': 'température de la bague ou du micromètre',
      'no-micrometer-check': 'contrôle du micromètre sur son propre étalon',
      'no-direction-test': 'essai du sens de l’aiguille (sens horaire supposé plus grand)',
      'no-wall-kind': 'genre de paroi',
      'no-dial-over-contacts': 'cadran pendant que le micromètre tenait l’appareil (0 supposé)',
    },
    contactChanged:
      'Provisoire : une touche de l’appareil a été changée après son réglage, toute cote peut donc être fausse. Réglez-le de nouveau et mesurez encore.',
    aboutMeanOnly:
      'Provisoire : trois touches lisent la moyenne d’un niveau, et le verdict ne porte que sur cette moyenne.',
    assumed: 'Des valeurs supposées les remplacent, et leur incertitude est dans chaque ±.',
    about: (stations) =>
      stations === 1
        ? 'Cela vaut pour le seul point mesuré, non pour le reste de la paroi.'
        : `Cela vaut pour les ${stations} points mesurés, non pour la paroi entre eux.`,
    comparison: (smallest, largest, stations) =>
      stations === 1
        ? `Pour comparaison : ${smallest} à un point de mesure.`
        : `Pour comparaison : ${smallest} à ${largest} à ${stations} points de mesure.`,
    comparisonNone: 'Pour comparaison : pas encore de lectures.',
    comparisonBlocked:
      'Pour comparaison : toutes les lectures sont à une lumière ou une bande et attendent votre avis.',
  },
}

function countOf(count: number, all: number): string {
  if (all === 1) return 'le seul point de mesure est'
  return count === 1 ? `un des ${all} points de mesure est` : `${count} des ${all} points de mesure sont`
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1)
}
