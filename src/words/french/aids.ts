import type { aids as english } from '../english/aids'
import type { Texts } from '../texts'

/** Voice and pedals, for hands that hold a gauge, in French. */
export const aids: Texts<typeof english> = {
  aids: {
    menu: 'Voix et pédale',
    title: 'Voix et pédale',
    lead: 'Pour des mains qui tiennent un appareil. Enregistré sur cette machine seulement.',
    voice: 'Dire chaque point, chaque nombre pris et chaque question',
    noVoice: 'Ce navigateur n’a pas de voix.',
    try: 'Essayer',
    trial: 'Profondeur 25 mm, axe 90°. 54,012.',
    pedal: 'Une pédale tape une touche. Pressez-la une fois pour chaque chose qu’elle doit faire :',
    actions: {
      take: 'Prendre le nombre et continuer',
      again: 'Le prendre et lire de nouveau le même point',
      back: 'Revenir au point précédent',
      skip: 'Passer ce point',
    },
    press: (action) => `${action} : pressez maintenant la pédale, ou Échap pour y renoncer`,
    set: (action, key) => `${action} : ${key}. La changer.`,
    choose: (action) => `${action} : choisir une pédale`,
    none: 'pas de pédale',
    remove: (action) => `Enlever la pédale : ${action}`,
    typesText: (key) =>
      `La touche ${key} sert à taper et à se déplacer. Réglez la pédale sur une autre, comme F13 ou Page suivante.`,
    taken: (key, action) => `${key} sert déjà à : ${action}.`,
    next: (place) => `À suivre : ${place}.`,
  },
  spoken: {
    point: 'virgule',
    minus: 'moins',
    plusMinus: 'plus ou moins',
    degrees: 'degrés',
    millimetres: 'millimètres',
    microns: 'micromètres',
    inches: 'pouces',
  },
}
