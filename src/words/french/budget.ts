import type { budget as english } from '../english/budget'
import type { Texts } from '../texts'

/** What a doubt is made of, and what would shrink it, in French. */
export const budget: Texts<typeof english> = {
  budget: {
    title: 'De quoi l’incertitude est faite',
    of: (place, doubt) => `À ${place}, ${doubt} (95 %), faite de ces incertitudes types u.`,
    heads: { part: 'Part', amount: 'u, µm', share: 'Proportion' },
    kinds: {
      'wall-expansion': 'de combien la paroi se dilate à la chaleur',
      'standard-expansion': 'de combien l’étalon se dilate à la chaleur',
      'reference-temperature': 'température',
      'bore-thermometer': 'thermomètre sur l’alésage',
      'temperature-difference': 'alésage et étalon pas à la même température',
      standard: 'l’étalon lui-même',
      'standard-error': 'micromètre non contrôlé',
      setting: 'réglage de l’appareil',
      'zero-reading': 'lecture du zéro',
      'gauge-warmth': 'échauffement de l’appareil depuis son réglage',
      'drift-preset': 'dérive, pas de zéro de fin',
      'drift-measured': 'dérive entre les zéros',
      repeatability: 'répétitions',
      scale: 'cadran ou échelle',
      place: 'profondeur de l’appareil sur une pente',
      rocking: 'inclinaison que le balancement a laissée',
      'piston-expansion': 'de combien le piston se dilate à la chaleur',
      'piston-reading': 'lecture du micromètre sur le piston',
      'piston-range': 'les cotes que peut avoir le piston',
    },
    assumed: 'supposé',
    distributions: {
      normal: 'normale',
      rectangular: 'rectangulaire',
      student: (freedom) => `normale, ${freedom} degrés de liberté`,
    },
    scopes: {
      job: 'une erreur pour tout le dossier',
      standard: 'une pour tout ce qui est réglé avec cet étalon',
      thermometer: 'une pour tout ce qu’a lu ce thermomètre',
      'set-up': 'une pour ce montage',
      bore: 'une pour cet alésage',
      piston: 'une pour ce piston',
      station: 'de ce point seul',
      repeat: 'de chaque lecture seule',
    },
    inputs: {
      K: (u, sensitivity) => `${u} K × ${sensitivity}/K`,
      '1/K': (u, sensitivity) => `${u} millionièmes par K × ${sensitivity}·K`,
      mm: (u, sensitivity) => `${u} × ${sensitivity}`,
    },
    mostly: (part, share) => `L’essentiel : ${part} (${share}).`,
    shared: (part, share) => `La plus grande part : ${part} (${share}).`,
    improve: {
      'more-repeats': (before, after) => `Chaque point lu deux fois de plus : ${before} → ${after}.`,
      'set-by-ring': (before, after) => `Réglé avec une bague : ${before} → ${after}.`,
      'record-what-is-missing': (before, after) =>
        `Ce qui est supposé mesuré et noté : ${before} → ${after}.`,
      'know-the-temperatures': (before, after) =>
        `Températures connues deux fois mieux : ${before} → ${after}.`,
    },
    nothing: 'Aucun pas seul n’en enlèverait ici un vingtième.',
  },
}
