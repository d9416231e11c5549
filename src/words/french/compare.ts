import type { compare as english } from '../english/compare'
import type { Texts } from '../texts'

/** Bores and surveys side by side, their difference, and a bore through time, in French. */
export const compare: Texts<typeof english> = {
  pages: {
    label: 'Pages',
    bench: 'Mesurer',
    compare: 'Comparer',
    show: 'Montrer',
    report: 'Rapport',
    toBench: 'Retour à la page Mesurer',
    explain: 'Expliquer au propriétaire',
  },
  compare: {
    title: 'Comparés',
    lead: 'De deux à huit, tous dessinés pareil : une amplification, une vue, un endroit montré.',
    nothing: 'Rien à comparer encore',
    nothingSaid:
      'Pour comparer, il faut deux relevés avec des lectures : mesurez cet alésage de nouveau, ajoutez un autre alésage du moteur, ou un neuf pour comparer.',
    tooFew: 'Choisissez-en au moins deux.',
    full: 'Huit au plus : retirez-en d’abord un.',
    walls: 'Parois côte à côte',
    show: (name) => `Montrer ${name}`,
    ofSurvey: (bore, survey) => `${bore}, ${survey}`,
    hours: (hours) => `${hours} h`,
    survey: (number, all) => `relevé ${number} sur ${all}`,
    flat: 'Ce navigateur ne dessine pas d’image en 3D ici. Les cartes montrent les mêmes parois, déroulées.',
    less: {
      title: 'Différence',
      lead: 'L’un moins l’autre, aux points que les deux ont.',
      one: 'Celui-ci',
      other: 'moins celui-ci',
      none: 'aucun',
      name: (one, other) => `${one} moins ${other}`,
      drawn: (factor) => `différence dessinée × ${factor}`,
      noStations:
        'Ces deux n’ont aucun point commun : niveaux à moins de 1 mm sur le même axe. Il n’y a pas de différence à lire.',
      readOtherwise:
        'L’un a été lu par trois touches, qui donnent la moyenne d’un niveau, l’autre par deux. Leur différence serait celle de deux choses.',
      withinDoubt: 'dans son incertitude, peut-être aucune',
      standsOut: 'bord de l’endroit où elle ressort au-delà de son incertitude',
      notBoth: 'non mesuré dans les deux',
      none0: 'aucune différence',
      tighter: 'le premier est plus serré',
      looser: 'le premier est plus large',
      key: 'Ce que veulent dire les couleurs de la différence',
      table: 'Différence à chaque point, µm, avec son incertitude',
      level: 'Profondeur',
      stands: 'ressort',
      within: 'dans son incertitude',
      rows: {
        largest: 'Plus grande différence',
        mean: 'Différence moyenne',
        asMade: 'De fabrication',
      },
      asMade: (microns) =>
        `Deux alésages neufs peuvent différer de ${microns} de fabrication : moins que cela n’est pas forcément de l’usure.`,
      warning: 'Pas serrés pareil',
    },
    time: {
      title: 'Au fil du temps',
      lead: 'Une paroi qui va de relevé en relevé, et dans les heures à venir là où une droite dit comment elle s’use. Les flèches vont pas à pas.',
      show: (bore) => `Montrer ${bore} au fil de ses relevés`,
      slider: (bore) => `${bore} au fil de ses relevés`,
      name: (bore) => `${bore} au fil du temps`,
      at: (number, all, survey) => `Relevé ${number} sur ${all} : ${survey}`,
      between: (from, to) => `Entre ${from} et ${to} : seulement dessiné`,
      betweenHours: (hours) => `Environ ${hours} h, entre des relevés : seulement dessiné`,
      betweenShort: 'seulement dessiné',
      faded: 'pâli : entre des relevés, personne ne l’a mesuré',
      ahead: {
        at: (hours) => `À ${hours} h, à venir : seules les cotes, d’après leurs droites`,
        short: (hours) => `${hours} h, à venir`,
        line: (place, figure) => `${place}, le premier à sa limite, d’après sa droite : ${figure}.`,
        lastTwo: (figure) => `D’après les deux derniers relevés : ${figure}.`,
        before: (earliest, limit) => `Avant ${earliest} h, le plus tôt où il atteint ${limit}.`,
        past: (earliest, limit) => `À partir de ${earliest} h, il peut dépasser ${limit} : mesurez avant.`,
        sides: '19 chances sur 20 de chaque côté, s’il continue à s’user ainsi.',
        faded:
          'pâli : la paroi telle qu’elle a été mesurée en dernier ; personne ne connaît sa forme plus tard',
      },
    },
    readOut: {
      difference: (depth, angle, figure) => `${depth} · ${angle} · ${figure} · à un point que les deux ont`,
      drawn: (depth, angle, figure, distance) =>
        `${depth} · ${angle} · dessiné ${figure} ; point le plus proche que les deux ont à ${distance}`,
      notBoth: (depth, angle) => `${depth} · ${angle} · non mesuré dans les deux`,
      ahead: (place, hours, figure) => `${place} · à ${hours} h d’après sa droite ${figure}`,
      aheadUnknown: 'entre les points, on ne sait rien des heures à venir',
      between: (depth, angle) => `${depth} · ${angle} · entre des relevés, seulement dessiné`,
    },
  },
}
