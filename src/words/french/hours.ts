import type { hours as english } from '../english/hours'
import type { Texts } from '../texts'

/** How a bore has grown over the hours, and when it would meet its limit, as a chart, in French. */
export const hours: Texts<typeof english> = {
  hours: {
    title: (place) => `Cote selon les heures de marche à ${place}`,
    station: 'Point de mesure',
    stations: { first: (place) => `${place}, le premier à sa limite`, other: (place) => place },
    list: (place) => `Relevés et heures à ${place}. Les flèches gauche et droite vont de l’un à l’autre.`,
    point: 'Montrer sa cote selon les heures',
    unit: 'h de marche',
    lastSurvey: 'dernier relevé',
    none: {
      'no-readings': 'Cette vue apparaît avec la première lecture d’un appareil.',
      'no-limit':
        'Il n’y a pas de droite vers une limite sans limite : entrez une limite d’usure ou une plus grande cote.',
      'no-hours': 'Cette vue demande les heures de marche du dernier relevé.',
      'nothing-to-count-from':
        'Cette vue demande, pour compter à partir de là, un relevé antérieur avec ses heures, une zone sans segments, ou les cotes neuves.',
      'never-ran': 'Cet alésage n’a jamais tourné : il n’y a encore rien selon les heures.',
      'not-of-this-engine': 'Un alésage pour comparaison n’a pas d’heures de ce moteur.',
    },
    labels: {
      limit: (size) => `limite ${size}`,
      'next-check': (at) => `prochain contrôle ${at}`,
      earliest: (at) => `au plus tôt ${at}`,
      expected: (at) => `d’après la droite ${at}`,
      'last-two-expected': (at) => `d’après les deux derniers ${at}`,
      latest: (at) => `au plus tard ${at}`,
    },
    short: {
      'next-check': 'contrôle',
      earliest: 'au plus tôt',
      expected: 'droite',
      'last-two-expected': 'deux derniers',
      latest: 'au plus tard',
    },
    at: (hours) => `${hours} h`,
    reading: (survey, hours, size) => `${survey}, ${hours} : ${size}`,
    survey: (number) => `Relevé ${number}`,
    surveyOn: (number, day) => `Relevé ${number} du ${day}`,
    taken: {
      land: (size) => `À zéro heure : ${size}, la paroi que les segments ne touchent jamais`,
      'new-band': (size) => `À zéro heure : ${size}, la plus petite cote neuve`,
      surveys: (size) => `À zéro heure : ${size}`,
    },
    marks: {
      'next-check': (hours) => `${hours} : prochain contrôle`,
      earliest: (hours) => `${hours} : le plus tôt où il atteint sa limite`,
      expected: (hours) => `${hours} : la droite atteint la limite`,
      'last-two-expected': (hours) => `${hours} : la droite des deux derniers relevés atteint la limite`,
      latest: (hours) => `${hours} : le plus tard où il atteint sa limite`,
    },
    sentences: {
      now: 'Maintenant à sa limite, autant que ses lectures puissent le dire.',
      shrunk: 'Il a rétréci au-delà de son ± : mesurez de nouveau avant qu’aucune heure soit nommée.',
      earliest: (hours, limit) => `Atteint ${limit} à ${hours} h au plus tôt.`,
      expected: (hours) => `D’après la droite à ${hours} h.`,
      lastTwo: (hours) => `D’après les deux derniers relevés à ${hours} h.`,
      latest: (hours) => `À ${hours} h au plus tard.`,
      uncertain: 'L’accroissement ne ressort pas de son incertitude, seul le plus tôt est donc nommé.',
      changed:
        'Une seule vitesse d’usure ne va pas avec tous les relevés : les deux droites sont dessinées, et la borne la plus proche compte.',
      check: (hours) => `Prochain contrôle à ${hours} h au plus tard.`,
      key: 'Disques : lectures ; barres : leur ± U (95 %). Ombre : où peut se trouver la droite, 19 chances sur 20 de chaque côté.',
      ahead: 'Interrompu après le dernier relevé : s’il continue à s’user ainsi.',
      alone: 'Dessiné d’après un seul relevé : le rodage y est compris.',
    },
  },
}
