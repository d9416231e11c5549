import type { plan as english } from '../english/plan'
import type { Texts } from '../texts'

/** Where a bore can and should be measured, and how often, in French. */
export const plan: Texts<typeof english> = {
  plan: {
    title: 'Plan de mesure',
    lead: 'Que voulez-vous savoir ? {question}',
    question: 'Ce que les lectures doivent dire',
    questions: {
      size: 'la cote, contre des limites',
      'out-of-round': 'l’ovalisation',
      bolts: 'une forme à quatre coins, due aux vis',
      'along-depth': 'la conicité et la forme en profondeur',
      wear: 'l’usure, contre la zone sans segments',
    },
    unknown: {
      'no-length':
        'Un plan demande la longueur de l’alésage : entrez-la dans la phrase sur l’alésage. Course des segments, lumières et bandes l’améliorent.',
      'too-short': 'L’alésage est trop court pour qu’une touche de cette largeur y tienne.',
      'all-barred':
        'Nulle part dans cet alésage toutes les touches ne trouvent du métal : lumières ou bandes gênent tous les axes.',
      'three-contacts-see-no-oval':
        'Trois touches lisent la moyenne d’un niveau et ne voient pas d’ovale. Cette question demande un appareil à deux touches.',
      'radial-probe':
        'Un palpeur sur broche lit tout le tour. Ce plan est pour les appareils qui se tiennent en travers de l’alésage.',
    },
    axes: {
      size: 'deux à angle droit, c’est ce que demandent les manuels. Un ovale entre eux ne se verrait pas ; l’ovalisation en demande trois.',
      'out-of-round':
        'il en faut au moins trois pour la grandeur et la direction d’un ovale. Une forme à quatre coins aurait encore l’air d’un ovale.',
      bolts:
        'six trouvent une forme à quatre coins quelle que soit sa position, à côté d’un ovale, avec un axe de reste. Quatre la manqueraient dans une direction.',
      'along-depth': 'la conicité se juge axe par axe, sur deux à angle droit.',
      wear: 'deux à angle droit, car l’usure est rarement pareille en travers et en long.',
    },
    axesAre: (axes, why) => `Axes ${axes} : ${why}`,
    oneAxisIs: (axis) =>
      `Axe ${axis} : trois touches lisent d’un coup la moyenne d’un niveau. Des lectures à deux touches montreraient s’il est ovale.`,
    keeps: 'Autant permettent de garder ceux que le manuel nomme ou qui sont déjà lus.',
    turned: (angle) =>
      `Tournés de ${angle} depuis l’avant, pour que les lumières laissent plus de niveaux entiers.`,
    heads: { depth: 'Profondeur', axes: 'Axes', why: 'Pourquoi' },
    all: 'tous',
    only: (axes) => `seulement ${axes}`,
    reasons: {
      'upper-land':
        'zone sans segments au-dessus de leur course : garde la cote d’origine et montre un mauvais réglage',
      'lower-land': 'zone sans segments au-dessous de leur course : garde la cote d’origine',
      'top-of-travel':
        'juste sous le haut de la course des segments, où l’usure est en général la plus grande',
      'bottom-of-travel': 'juste au-dessus du bas de la course des segments',
      'near-top': 'près du bout supérieur',
      'near-bottom': 'près du bout inférieur',
      middle: 'milieu',
      'upper-quarter': 'au quart de la descente : comment va la paroi entre les deux',
      'lower-quarter': 'aux trois quarts de la descente : comment va la paroi entre les deux',
      read: 'déjà lu',
      'read-before': 'lu au relevé précédent : l’usure se prend au même endroit',
    },
    portReasons: {
      'above-ports': (names) => `juste au-dessus (${names}), où la paroi est encore entière`,
      'below-ports': (names) => `juste au-dessous (${names}), où la paroi est de nouveau entière`,
      'beside-ports': (names) => `à côté (${names}), ce qu’on peut y atteindre`,
    },
    others: (first, more) => `${first} et ${more} de plus`,
    inTheWay: (names) => `gêne les autres : ${names}`,
    tooFewForOval: 'trop peu pour un ovale',
    barred: (from, to, names) =>
      `Entre ${from} et ${to}, aucun axe n’a de métal sous chaque touche : ${names}.`,
    barredMiddle: (from, to, names) =>
      `Le milieu de cet alésage ne peut pas être mesuré : entre ${from} et ${to}, aucun axe n’a de métal sous chaque touche (${names}). Les niveaux au-dessus et au-dessous n’en disent rien.`,
    noTravel:
      'La course des segments n’est pas notée, aucun niveau ne peut donc être mis dans une zone sans segments : entrez-la dans la phrase sur l’alésage.',
    shortLand: {
      upper: (height) =>
        `La zone au-dessus de la course des segments, haute de ${height}, est trop courte pour une touche.`,
      lower: (height) =>
        `La zone au-dessous de la course des segments, haute de ${height}, est trop courte pour une touche.`,
    },
    measurable: 'Tout ce qui peut être mesuré',
    band: (from, to, axes) => `${from} à ${to} : ${axes}`,
    everyAxis: 'tous les axes',
    noAxis: (names) => `aucun axe (${names})`,
    range: (from, to) => `${from} à ${to}`,
    take: 'Prendre ce plan',
    taken: 'La grille ci-dessous a ces niveaux et ces axes.',
    takenKeeps: 'Les niveaux et axes qui portent des lectures restent.',
    change: 'plan de mesure',
    repeats: {
      sentence: 'Pour connaître {quantity} à ± {wanted} µm près :',
      label: 'Incertitude voulue, ± µm',
      quantities: {
        size: 'un diamètre',
        'out-of-round': 'la différence de deux diamètres d’un niveau',
        bolts: 'la différence de deux diamètres d’un niveau',
        'along-depth': 'la différence de deux moyennes de niveau',
        wear: 'l’usure à un point de mesure',
      },
      notAbove: 'Donnez une incertitude au-dessus de 0.',
      once: (doubt) => `Une lecture à chaque point suffit (${doubt}).`,
      several: (count, doubt, once) =>
        `${count} lectures à chaque point (${doubt} ; avec une seule ${once}).`,
      ask: (count) => (count < 2 ? 'Demander une lecture' : `Demander ${count} lectures`),
      tooMany: (count, once) =>
        `Il faudrait ${count} lectures à chaque point, plus que n’en fait personne (avec une seule ${once}).`,
      never: (least) =>
        `Aucun nombre de lectures n’y arrive ici. Ce qu’elles ne réduisent pas laisse ${least}.`,
      slope: 'Là où la paroi a une marche, comme à un bourrelet, l’incertitude de la profondeur s’y ajoute.',
      remedies: {
        'set-by-ring': 'Réglé avec une bague',
        'record-what-is-missing': 'Ce qui est supposé mesuré et noté',
        'know-the-temperatures': 'Températures connues deux fois mieux',
        'finer-gauge': 'Un comparateur lu à 0,001 mm',
        'all-together': 'Tout cela ensemble',
      },
      suffices: (what, count) =>
        count < 2 ? `${what} : une lecture suffirait.` : `${what} : ${count} lectures suffiraient.`,
      atBest: (what, least) => `${what} : ${least} au mieux.`,
      nothing: 'Rien de ce qu’on sait de cet appareil et de ce réglage n’y changerait autant.',
    },
  },
}
