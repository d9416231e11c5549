import type { whatIf as english } from '../english/what-if'
import type { Texts } from '../texts'

/** Sliders that try a decision out, in French. */
export const whatIf: Texts<typeof english> = {
  title: 'Et si',
  lead: 'Déplacez un curseur, et la décision suit. Rien de cela ne change le dossier.',
  asItIs: (headline) => `Tel quel : ${headline}`,
  thenIt: (headline) => `Alors : ${headline}`,
  labels: {
    plain: {
      hours: 'Continuer à partir d’ici',
      temperature: 'Température de l’alésage',
      limit: 'Plus grande cote permise',
      piston: 'Piston disponible, tel que le montre le micromètre',
      reading: 'Lecture',
    },
    reading: (place) => `Diamètre à ${place}`,
  },
  station: 'Point de la lecture',
  hoursOn: (on, run) => `${on} h (${run} heures de marche)`,
  looking: 'Recherche du point où elle bascule…',
  never: (from, to) => `De ${from} à ${to}, elle ne bascule pas.`,
  tips: (at, off, outcome) => `Bascule à ${at}, ${off} : ${outcome}.`,
  off: {
    later: (hours) => `${hours} h plus tard`,
    sooner: (hours) => `${hours} h plus tôt`,
    warmer: (kelvin) => `${kelvin} K de plus`,
    colder: (kelvin) => `${kelvin} K de moins`,
    more: (microns) => `${microns} de plus`,
    less: (microns) => `${microns} de moins`,
  },
  undecided: 'pas de décision',
  onlyThis: 'Seul cet alésage est essayé : un choix que partagent tous les alésages n’est fait que pour lui.',
  reset: 'Tel quel',
  closer: 'Calculer plus précisément si c’est sûr',
  running: (done, all) => `${done} jeux de cotes vraies sur ${all}`,
  cancel: 'Arrêter',
  failed: 'Cela n’a pas pu être calculé ici. Rechargez la page et essayez de nouveau.',
  closely: (trials) => `D’après ${trials} jeux de cotes vraies :`,
}
