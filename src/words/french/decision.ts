import type { decision as english } from '../english/decision'
import type { Texts } from '../texts'

/** What to do with a bore, why, how sure that is, and what would change it, in French. */
export const decision: Texts<typeof english> = {
  title: 'Que faire',
  why: 'Pourquoi, et ce qui y changerait quelque chose',
  undecided: {
    'for-comparison': 'Pas de décision : un alésage pour comparer.',
    'earlier-survey': 'Pas de décision d’après un relevé antérieur : le dernier décide.',
    'no-readings': 'Pas encore de décision : aucune cote n’est mesurée.',
    'some-unread': 'Pas encore de décision : des points de mesure du plan ne sont pas lus.',
    'land-alone': 'Pas encore de décision : rien n’est lu là où passent les segments.',
    'no-limits': 'Pas encore de décision : ni limite de cote ni jeu ne sont entrés.',
  },
  outcomes: {
    'run-on': {
      plain: 'Laisser tourner, et contrôler de nouveau quand le manuel le dit.',
      at: (hours) => `Laisser tourner, et contrôler de nouveau à ${hours} heures de marche au plus tard.`,
      on: (hours, day) =>
        `Laisser tourner, et contrôler de nouveau à ${hours} heures de marche au plus tard, vers le ${day}.`,
    },
    'clean-and-measure-again': 'Nettoyer la paroi et mesurer de nouveau.',
    'measure-again-better': {
      all: 'Mesurer de nouveau, et mieux.',
      at: (places) => `Mesurer de nouveau, et mieux : ${places}.`,
    },
    'next-piston': {
      plain: 'Trouver un autre piston : aucun de la liste n’est connu pour aller.',
      named: (piston) => `Prendre le piston suivant : ${piston}.`,
      grade: (grade) => `Prendre le piston suivant : un de la classe ${grade}.`,
    },
    hone: {
      plain: 'Honer dans les limites.',
      atMost: (microns) => `Honer dans les limites : ${microns} au plus sur le diamètre.`,
    },
    'bore-oversize': {
      plain: 'Réaléser à la cote réparation suivante.',
      to: (oversize) => `Réaléser à la cote réparation suivante, ${oversize}.`,
    },
    're-plate': 'Faire revêtir la paroi à neuf, ou remplacer le cylindre.',
    'replace-or-sleeve': {
      plain: 'Le remplacer, ou le faire chemiser.',
      liner: 'Remplacer la chemise.',
    },
  },
  short: {
    'run-on': 'laisser tourner',
    'clean-and-measure-again': 'nettoyer et mesurer de nouveau',
    'measure-again-better': 'mesurer de nouveau, et mieux',
    'next-piston': 'prendre le piston suivant',
    hone: 'honer dans les limites',
    'bore-oversize': 'réaléser à la cote réparation suivante',
    're-plate': 'faire revêtir à neuf',
    'replace-or-sleeve': 'le remplacer ou le faire chemiser',
  },
  better: (ways) => `Mieux veut dire : ${ways.join(' ; ')}.`,
  betters: {
    'slip-asked': 'répondre à la question ouverte sur les lectures, ou y lire de nouveau',
    'contact-changed': 'régler l’appareil de nouveau, car une touche a été changée après son réglage',
    'no-setting-size': 'noter la cote à laquelle l’appareil a été réglé',
    'no-direction-test': 'trouver dans quel sens va l’aiguille pour un alésage plus grand, et le noter',
    'repeats-spread':
      'essuyer paroi et touches et balancer l’appareil jusqu’à ce que les répétitions concordent',
    'drift-with-order': 'laisser pièce et appareil venir à la même température, car les lectures ont dérivé',
    'zero-moved': 'régler l’appareil de nouveau, car son zéro a bougé de plus que les limites ne supportent',
    clean: 'nettoyer la paroi jusqu’au métal et l’essuyer à sec',
    'try-nail': 'passer l’ongle sur les marques et noter s’il accroche',
    'enter-ring-travel': 'entrer où passent les segments, ce qui dit si les piqûres sont sur leur passage',
    'set-by-ring': 'régler l’appareil avec une bague au lieu du micromètre',
    'record-what-is-missing':
      'noter ce qui manque (zéros, températures, contrôle du micromètre, genre de paroi)',
    'repeat-three-times': 'trois lectures à chacun de ces points, l’appareil sorti entre elles',
    'repeat-five-times':
      'cinq lectures ou plus à chacun de ces points, à tour de rôle, l’appareil sorti entre elles',
    'finer-gauge':
      'un appareil plus fin, car si souvent que celui-ci y lise, son cadran et sa profondeur laissent plus d’incertitude',
    'two-contacts': 'deux touches au lieu de trois, qui ne lisent que la moyenne d’un niveau',
    'more-axes': 'deux axes de plus à 45°',
    'enter-travel': 'entrer la course, qu’attend une limite de conicité',
    'measure-piston': 'mesurer le piston de nouveau avec le micromètre qui règle l’appareil',
  },
  needs: {
    size: (doubt) => `Une cote juste à ${doubt} près trancherait, si elle reste la même.`,
    shape: (doubt) => `Une différence juste à ${doubt} près trancherait, si elle reste la même.`,
  },
  sure: {
    same: (count) =>
      `Est-ce sûr : des cotes vraies que ces lectures permettent, ${count} sur 100 mènent au même résultat.`,
    all: 'Est-ce sûr : toutes les cotes vraies que ces lectures permettent mènent au même résultat.',
    besides: (others) => `Les autres : ${others}.`,
    ifKnown: (shares) => `Si les cotes étaient connues exactement : ${shares}.`,
    share: (outcome, count) => `${outcome}, ${count} sur 100`,
    almostAll: 'plus de 99',
    hardlyAny: 'moins de 1',
  },
  reasonsTitle: 'Pourquoi',
  at: (figure, place) => `${figure} à ${place}`,
  toRow: 'Montrer les chiffres qui sont derrière',
  listOf: (title) => `${title} :`,
  scannedUncleaned: 'métal collé, car un palpage a été fait avant qu’il soit nettoyé et aucun après',
  worn: (share) => `Part utilisée de l’usure permise : ${share}.`,
  clearance: {
    one: (figure, doubt) => `${figure} ${doubt}`,
    range: (least, most) => (least === most ? most : `${least} à ${most}`),
  },
  reasons: {
    surface: {
      ended: (what) => `Sur la paroi : ${what}. Cela condamne un alésage, quelle que soit sa cote.`,
      marked: (what) => `Sur la paroi : ${what}. Cela peut condamner un alésage, quelle que soit sa cote.`,
      covered: (what) =>
        `Sur la paroi : ${what}. Cela cache ce qui est dessous, et les cotes lues par-dessus ne sont pas celles de la paroi.`,
      'look-closer': (what) => `Sur la paroi : ${what}. Il n’est pas encore dit si cela compte.`,
      'cross-hatch': (what) => `Sur la paroi : ${what}. Cela parle en sa faveur.`,
    },
    readings: {
      unsteady: 'Les lectures ne sont pas assez stables pour qu’on bâtisse dessus.',
      'slip-asked': 'Une question sur les lectures est ouverte : l’une d’elles peut être une erreur.',
      'not-set': 'L’appareil n’a pas été réglé, ou personne ne sait comment : toute cote peut être fausse.',
    },
    grounds: {
      'one-reading': 'Ce qui dépasse sa limite repose sur une seule lecture que personne n’a répétée.',
      assumed: 'Ce qui dépasse sa limite repose sur des valeurs supposées pour ce qui n’a pas été noté.',
    },
    size: {
      inside: (figure) => `Le plus grand diamètre, ${figure}, est dans sa limite.`,
      above: (figure) => `Le plus grand diamètre, ${figure}, dépasse sa limite.`,
      below: (figure) => `Le plus petit diamètre, ${figure}, est sous sa limite.`,
      'other-grade': (figure) =>
        `Le plus grand diamètre, ${figure} : l’alésage a quitté sa classe et se trouve dans une autre.`,
      'under-new': (figure) =>
        `Le plus petit diamètre, ${figure}, est sous la plus petite cote neuve, ce que l’usure ne peut pas faire : métal sur la paroi, erreur, ou limites d’une autre cote.`,
      'too-close': (figure) =>
        `La cote est trop près de sa limite pour trancher ; la plus grande est ${figure}.`,
      'mean-only': (figure) =>
        `Seules les moyennes des niveaux sont dans les limites ; la plus grande est ${figure}.`,
    },
    ovality: {
      inside: (figure, limit) => `L’ovalisation, ${figure}, est dans sa limite de ${limit}.`,
      above: (figure, limit) => `L’ovalisation, ${figure}, dépasse sa limite de ${limit}.`,
      'too-close': (figure, limit) =>
        `L’ovalisation, ${figure}, est trop près de sa limite de ${limit} pour trancher.`,
      open: () => 'L’ovalisation n’a pas pu être jugée contre sa limite.',
    },
    taper: {
      inside: (figure, limit) => `La conicité, ${figure}, est dans sa limite de ${limit}.`,
      above: (figure, limit) => `La conicité, ${figure}, dépasse sa limite de ${limit}.`,
      'too-close': (figure, limit) =>
        `La conicité, ${figure}, est trop près de sa limite de ${limit} pour trancher.`,
      open: () => 'La conicité n’a pas pu être jugée contre toutes ses limites.',
    },
    plating: {
      'may-be-through': (share) =>
        `Du revêtement, ${share} est parti si une seule paroi a pris toute l’usure, ce que deux touches ne peuvent pas distinguer.`,
    },
    clearance: {
      inside: (piston, figure) => `Le jeu avec ${piston}, ${figure}, est dans celui du manuel.`,
      'too-loose': (piston, figure) => `Le jeu avec ${piston}, ${figure}, est trop grand.`,
      'too-tight': (piston, figure) => `Le jeu avec ${piston}, ${figure}, est trop petit.`,
      'too-close': (piston, figure) =>
        `Le jeu avec ${piston}, ${figure}, est trop près des limites du manuel pour trancher.`,
    },
    otherPiston: {
      fits: (piston, figure) => `Avec ${piston}, il est de ${figure}, dans celui du manuel.`,
      'too-close': (piston, figure) =>
        `Avec ${piston}, il est de ${figure}, trop près des limites du manuel pour trancher.`,
      'none-fits': () => 'Aucun des autres pistons de la liste ne va.',
      'none-listed': () => 'Aucun autre piston n’est sur la liste.',
    },
    outlook: {
      ahead: (hours) =>
        `S’il continue à s’user ainsi, il atteint sa limite à ${hours} heures de marche au plus tôt.`,
      now: 'D’après la droite passant par les relevés, il est maintenant à sa limite, autant qu’ils puissent le dire.',
      shrunk: 'Il est devenu plus petit qu’avant, de plus que son incertitude : saleté, ou erreur.',
    },
    ringGap: {
      inside: 'Le jeu à la coupe est dans ses limites.',
      'too-close': 'Le jeu à la coupe est trop près de sa limite pour trancher.',
      above: 'Le jeu à la coupe dépasse sa limite.',
      below: 'Le jeu à la coupe est sous le plus petit permis.',
    },
    wall: {
      plated: 'La paroi est revêtue : elle n’est ni réalésée ni honée à une cote plus grande.',
      other: 'La paroi n’est pas revêtue.',
      'not-known': 'Le genre de paroi n’est pas noté.',
    },
    honing: {
      room: (microns) => `Il y a de quoi honer : ${microns} sur le diamètre jusqu’à la limite.`,
      'no-room': 'Il n’y a pas de quoi honer dans la limite.',
      'not-allowed': 'La paroi ne peut pas être honée.',
    },
    oversize: {
      'cleans-up': (oversize) => `Une cote réparation rend la paroi nette : ${oversize}.`,
      'none-cleans-up': 'Aucune cote réparation du manuel n’est assez grande pour rendre la paroi nette.',
      'none-given': 'Aucune cote réparation n’est entrée.',
      'not-allowed': 'D’après ce qui est noté, la paroi ne peut pas être réalésée.',
    },
  },
  changesTitle: 'Ce qui y changerait quelque chose',
  change: (condition, outcome) => `${condition} : ${outcome}.`,
  changes: {
    readings: { sound: 'Si les lectures se révèlent justes' },
    surface: {
      'nothing-against': {
        marked: 'Si la marque peut être enlevée',
        other: 'Si rien sur la paroi ne parle contre',
      },
      marked: 'Si une marque sur le passage des segments accroche l’ongle',
    },
    grounds: { repeated: 'S’il dépasse encore quand on mesure de nouveau en notant tout' },
    size: {
      inside: 'Si la cote se révèle dans les limites',
      above: {
        inside: 'Dès que sa cote dépasse la limite',
        other: 'Si la cote se révèle au-dessus',
      },
    },
    ovality: {
      inside: 'Si l’ovalisation se révèle dans sa limite',
      above: 'Si l’ovalisation se révèle au-dessus',
    },
    taper: {
      inside: 'Si la conicité se révèle dans sa limite',
      above: 'Si la conicité se révèle au-dessus',
    },
    plating: { left: 'Si un palpage montre que les deux parois se sont usées pareil' },
    clearance: {
      inside: 'Si le jeu se révèle dans ses limites',
      'too-loose': 'Si le jeu se révèle trop grand',
    },
    otherPiston: { fits: 'Si l’on trouve un piston qui va' },
    honing: {
      room: 'Si la limite laisse de quoi honer',
      'no-room': 'Si honer jusqu’à la limite ne suffit pas',
    },
    oversize: {
      'cleans-up': 'Si le manuel a une cote réparation qui rend la paroi nette',
      'none-cleans-up': 'Si aucune cote réparation ne rend la paroi nette',
    },
  },
  hintsTitle: 'Ce sur quoi cela repose sans que ce soit prouvé',
  readOnce: {
    all: (places) =>
      `Chaque point n’a été lu qu’une fois. Tout tient à : ${places}. Lisez-y encore deux fois avant d’agir.`,
    some: (places) => `Lus une seule fois : ${places}. Lisez-y encore deux fois avant d’agir.`,
  },
  hints: {
    provisional: 'Tout n’a pas été noté ; des valeurs supposées remplacent le reste.',
    'two-axes': 'Deux axes peuvent manquer un ovale qui se trouve entre eux.',
    'no-size-limit': 'Aucune limite de cote n’est entrée.',
    'new-sizes-only':
      'Seules des cotes neuves sont entrées. Si le manuel a une limite d’usure, c’est elle qui serait jugée.',
    'one-survey':
      'La vitesse d’usure repose sur un seul relevé et sur ce qu’il était neuf ; le rodage y est compris.',
    'rate-changed':
      'La vitesse d’usure a changé d’un relevé à l’autre : savoir pourquoi vaut mieux que les heures.',
    'slope-uncertain': 'L’accroissement ne ressort pas de son incertitude.',
    'no-outlook': 'Aucune heure ne peut être nommée : il faut les heures de marche et une limite de cote.',
    'clearance-not-judged': 'Le jeu du piston n’a pas été jugé.',
    'piston-by-grade': 'Le piston n’a pas été mesuré : sa cote est celle de sa classe.',
    'piston-not-firm': 'Tout n’a pas été noté quand le piston a été mesuré.',
    'other-piston-too-close':
      'Que le piston suivant aille ou non est trop juste pour trancher : mesurez-le avant de le monter.',
    'no-piston-listed': 'Aucun piston de la liste n’est connu pour aller : le jeu dit quelle cote demander.',
    'wall-by-kind':
      'Ce que cette paroi permet est ce qui est d’usage pour son genre, non ce que dit le manuel.',
    'wall-not-known': 'Le genre de paroi n’est pas noté, et il décide de ce qui peut être fait.',
    'honing-allowance':
      'Que honer enlève au moins 10 µm sur le diamètre est un chiffre de métier, sans source publiée.',
    'clean-up-by-trade':
      'Ce que le réalésage enlève jusqu’à ce que la paroi soit nette est un chiffre de métier, non celui du manuel.',
    'oversize-too-close':
      'Que cette cote réparation rende la paroi nette ou non est trop juste pour trancher : le rectifieur le voit à la première passe.',
    'one-side-took-it':
      'Qu’une seule paroi ait pris toute l’usure est le pire des cas ; un palpage de tout le tour le dirait.',
  },
  cautionsTitle: 'À respecter',
  cautions: {
    'last-word':
      'Ceci suit des règles de métier et ne déclare rien sûr. Le manuel d’atelier et un rectifieur qualifié ont le dernier mot.',
    'stones-on-plating':
      'Pas de pierres sur un revêtement : lavez-le, et laissez tout le reste à un spécialiste du revêtement.',
    'honing-keeps-form': 'Le honage ne guérit ni la conicité ni l’ovalisation.',
    'mark-depth':
      'C’est un essai : si la marque reste quand la limite est atteinte, le honage n’était pas le remède. Mesurez d’abord la profondeur de la marque, et comptez-en le double sur le diamètre.',
    glaze:
      'La paroi est glacée ou ses stries croisées ont disparu : voyez dans le manuel ce que demandent des segments neufs. À elle seule, cette marque ne dit rien de l’usure.',
    'ring-gap-large':
      'Le jeu à la coupe dépasse sa limite : montez des segments neufs, et mesurez-le de nouveau.',
    'ring-gap-small':
      'Le jeu à la coupe est sous le plus petit permis : des bouts qui se touchent cassent les segments et rayent les parois.',
    'rings-with-piston':
      'Des pistons neufs reçoivent des segments neufs ; mesurez les deux avant de les monter.',
    'past-window-of-new':
      'Avec ce piston, le jeu n’est pas celui d’une paire neuve, bien que dans la limite de service.',
    'torque-plate': 'Il n’a pas été mesuré à nu : faites-le usiner et mesurer comme il a été mesuré ici.',
  },
  block: {
    title: 'Que faire du moteur',
    alike: {
      to: (count, oversize) => `Réaléser les ${count} cylindres à ${oversize}, car tous vont à la même cote.`,
      plain: (count) =>
        `Réaléser les ${count} cylindres à la cote réparation suivante, car tous vont à la même cote.`,
    },
    all: (count, what) => `Les ${count} alésages : ${what}.`,
    some: (names, what) => `${bores(names)} : ${what}.`,
    asked: (names) => `${bores(names)} ${names.length === 1 ? 'le demande' : 'le demandent'}.`,
    check: (hours) => `Contrôler de nouveau à ${hours} heures de marche au plus tard.`,
    undecided: (names) => `${bores(names)} : pas encore décidé.`,
  },
  byItself: (bore, text) => `Alésage ${bore} à lui seul : ${text.charAt(0).toLowerCase()}${text.slice(1)}`,
}

function bores(names: readonly string[]): string {
  const last = names[names.length - 1] ?? ''
  return names.length === 1 ? `Alésage ${last}` : `Alésages ${names.slice(0, -1).join(', ')} et ${last}`
}
