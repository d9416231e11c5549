import type { doubt as english } from '../english/doubt'
import type { Texts } from '../texts'

/** Other walls that fit the same readings, on request, in the picture, in French. */
export const doubt: Texts<typeof english> = {
  doubt: {
    show: 'Montrer l’incertitude',
    help: 'Dessine l’une après l’autre d’autres parois qui vont avec les mêmes lectures. Échap y met fin.',
    hide: 'Retour à la paroi',
    next: 'Une autre paroi',
    title: 'Autres parois qui vont avec les mêmes lectures',
    lead: 'Tirées au sort, l’une après l’autre : les endroits mesurés ne bougent que dans leur incertitude, les autres davantage.',
    eyeOnly: 'Pour l’œil seul : aucun chiffre n’en vient.',
    model: (spread, depth, around) =>
      `Autour de la paroi entre les lectures, dispersion ${spread} ; deux endroits vont ensemble selon ρ(écart en profondeur / ${depth}) · ρ(écart d’angle / ${around}), ρ(r) = (1 + √3·r)·e^(−√3·r).`,
    none: {
      'too-few-readings': 'D’autres parois peuvent être dessinées à partir de trois lectures.',
      'two-readings-at-one-place':
        'Deux lectures sont au même endroit, dit depuis l’un et l’autre bout de son axe. D’autres parois sont dessinées quand l’une d’elles est vidée.',
      'wall-meets-axis':
        'À cette amplification, d’autres parois seraient dessinées à travers l’axe. Choisissez-en une plus petite à côté de l’image.',
    },
  },
}
