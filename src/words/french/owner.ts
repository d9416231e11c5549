import type { owner as english } from '../english/owner'
import type { Texts } from '../texts'

/** What the owner is told, in French: as plain and as short as the English. */
export const owner: Texts<typeof english> = {
  topics: {
    seen: 'Ce que vous voyez',
    now: 'Neuf, et maintenant',
    shape: 'Où large, où serré',
    used: 'Ce qui est usé',
    sure: 'Si c’est sûr',
    advice: 'Ce que nous proposons',
    causes: 'Pourquoi, et comment le ralentir',
  },
  nothing: 'Rien n’a encore été mesuré dans cet alésage, il n’y a donc rien à en dire.',
  scanned:
    'La forme de cet alésage a été palpée mais sa cote n’a pas été mesurée, personne ne peut donc dire son usure.',
  seen: {
    hair: {
      mm: 'Un cheveu a environ 70 µm d’épaisseur ; un µm est un millième de millimètre.',
      inch: 'Un cheveu a environ 0,003 in d’épaisseur.',
    },
    drawn: (factor) =>
      `Vous regardez dans l’alésage d’en haut, et chaque changement de sa largeur est dessiné ${factor} fois trop grand.`,
    flat: 'Vous voyez la paroi de l’alésage, coupée et mise à plat.',
    colours: 'Ce qui est bleu est serré, ce qui est ambre est large.',
    hatched: 'Là où la paroi est hachurée, personne n’a mesuré.',
  },
  now: {
    between: (least, most, now) =>
      `Neuf, il était large de ${least} à ${most} ; maintenant il est de ${now} au plus large [diamètre].`,
    least: (least, now) =>
      `Neuf, il était large de ${least} ou plus ; maintenant il est de ${now} au plus large [diamètre].`,
    alone: (now) => `Maintenant il est large de ${now} au plus large [diamètre].`,
    notEntered: 'Sa largeur à l’état neuf n’est pas notée ici.',
    doubt: 'Le chiffre après ± dit de combien cela peut être faux.',
    isNew: 'Il n’a pas encore tourné.',
    grown: {
      whenNew: (figure) => `À l’endroit le plus usé, il s’est agrandi de ${figure} depuis qu’il était neuf.`,
      since: (figure) => `À l’endroit le plus usé, il s’est agrandi de ${figure} depuis la première mesure.`,
      land: (figure) =>
        `À l’endroit le plus usé, il s’est agrandi de ${figure}, par rapport à la paroi qu’aucun segment ne touche.`,
      bore: (figure) => `À l’endroit le plus usé, il est plus large de ${figure} que le neuf.`,
      'new-band': (figure) =>
        `À l’endroit le plus usé, il s’est agrandi de ${figure} : on ne sait pas mieux combien il avait à l’état neuf.`,
    },
    grownNot: (figure) =>
      `Nulle part il n’est sûr qu’il se soit agrandi : ${figure} à l’endroit le plus usé.`,
    slip: 'L’une des lectures a l’air d’une erreur, et ces chiffres peuvent changer.',
    hairs: {
      half: 'C’est moins que la moitié d’un cheveu.',
      one: 'C’est moins qu’un cheveu.',
      about: 'C’est à peu près un cheveu.',
      more: (count) => (count === 1 ? 'C’est plus qu’un cheveu.' : `C’est plus que ${count} cheveux.`),
    },
  },
  shape: {
    places: (wide, tight) => `Il est le plus large ${wide}, et le plus serré ${tight}.`,
    ovalOnly: (depth, wide, tight) => `À ${depth} de profondeur, il est plus large ${wide} que ${tight}.`,
    even: 'Il est rond et régulier, autant que ces lectures puissent le dire.',
    place: (depth, across) => `à ${depth} de profondeur, ${across}`,
    down: (depth) => `à ${depth} de profondeur`,
    across: {
      frontRear: 'de l’avant à l’arrière',
      frontRight: 'de l’avant droit à l’arrière gauche',
      sides: 'd’un côté à l’autre',
      frontLeft: 'de l’avant gauche à l’arrière droit',
    },
    oval: (figure, depth) => `À ${depth} de profondeur, il est ovale [ovalisation] de ${figure}.`,
    ovalOpen: 'Aucun ovale ne ressort de l’incertitude de l’appareil.',
    longest: (across) => `Le grand côté de l’ovale va ${across}.`,
    taper: (figure) => `D’un bout à l’autre, sa largeur change [conicité] de ${figure}.`,
    taperOpen: 'Aucun changement d’un bout à l’autre ne ressort.',
    oneAxis: 'Il n’a pas été mesuré s’il est ovale.',
    interval: 'Les chiffres entre parenthèses disent combien ce peut être au moins et au plus.',
  },
  used: {
    share: (low, high) => `De l’usure que sa limite permet, ${low} à ${high} est utilisé.`,
    shareOne: (share) => `De l’usure que sa limite permet, ${share} est utilisé.`,
    left: (low, high) => `Il reste donc ${low} à ${high}.`,
    leftOne: (share) => `Il reste donc ${share}.`,
    mayBeAll: 'Il se peut donc qu’il ne reste rien.',
    over: (limit) => `Il est plus large que sa limite de ${limit} [limite d’usure].`,
    overNew: (limit) => `Il est plus large que ne peut l’être un neuf : ${limit}.`,
    under: (limit) => `Il est plus serré que ne peut l’être un neuf : ${limit}.`,
    insideNew: (least, most) => `Il est encore aussi large que peut l’être un neuf : ${least} à ${most}.`,
    insideLimit: (limit) => `Il est dans sa limite de ${limit} [limite d’usure].`,
    tooClose: (limit) => `Qu’il dépasse ou non sa limite de ${limit} est trop juste pour trancher.`,
    tooCloseNew: 'Qu’il soit aussi large que peut l’être un neuf est trop juste pour trancher.',
    notSaid: 'On ne peut pas dire combien en est usé.',
    plating: (both, one) =>
      `De la couche dure [revêtement], ${both} est parti si les deux côtés se sont usés pareil, ${one} si un côté a tout pris.`,
    platingDoubt: (low, high) => `Avec l’incertitude, ce peut être ${low} à ${high}.`,
    atLimit: 'Il est peut-être maintenant à sa limite.',
    earliest: (limit, hours) =>
      `S’il continue à s’user ainsi, il peut atteindre sa limite de ${limit} après ${hours} h de marche, et très probablement plus tard.`,
    shapeOver: {
      ovality: (figure, limit) =>
        `Il est plus ovale [ovalisation] que sa limite de ${limit} ne permet : ${figure}.`,
      taper: (figure, limit) =>
        `D’un bout à l’autre, sa largeur change [conicité] de plus que sa limite de ${limit} ne permet : ${figure}.`,
    },
    stops: {
      'bare-aluminium': (where) =>
        `Le métal nu paraît à travers la couche dure à ${where} : cela peut condamner un alésage de bonne cote.`,
      flaking: (where) =>
        `La couche dure s’écaille à ${where} : cela peut condamner un alésage de bonne cote.`,
      'catches-nail': (where, kind) =>
        `À ${where}, l’ongle accroche (${kind}) : cela peut condamner un alésage de bonne cote.`,
      'pits-in-ring-path': (where) =>
        `Il y a de petits trous là où passent les segments, à ${where} : cela peut condamner un alésage de bonne cote.`,
      'pits-perhaps-in-ring-path': (where) =>
        `Il y a de petits trous à ${where} : si les segments y passent, cela peut condamner un alésage de bonne cote.`,
    },
    none: {
      'no-readings': 'Rien n’a encore été mesuré.',
      'no-size-over-contacts': 'L’appareil n’a pas encore donné de cotes.',
      'no-limits': 'Aucune limite n’est notée, personne ne peut donc dire combien en est usé.',
      'all-blocked': 'Tout ce qui a été lu est à une ouverture, rien n’est donc encore jugé.',
    },
  },
  sure: {
    inside: (chances) => `Pour sa cote : ${chances} qu’il soit dans sa limite, au pire endroit.`,
    above: (chances) => `Pour sa cote : ${chances} qu’il dépasse sa limite, au pire endroit.`,
    below: (chances) => `Pour sa cote : ${chances} qu’il soit trop serré, au pire endroit.`,
    tooClose: 'Que sa cote soit ou non dans la limite est trop juste pour trancher.',
    leans: {
      inside: (chances) => `Au pire endroit : ${chances} qu’il soit dans sa limite.`,
      above: (chances) => `Au pire endroit : ${chances} qu’il dépasse sa limite.`,
      below: (chances) => `Au pire endroit : ${chances} qu’il soit trop serré.`,
      even: 'Au pire endroit, les chances sont à peu près égales.',
    },
    shapeTooClose: {
      ovality: (figure, limit) =>
        `Qu’il soit trop ovale ou non est trop juste pour trancher : ${figure}, et sa limite est ${limit}.`,
      taper: (figure, limit) =>
        `Que sa largeur change trop d’un bout à l’autre ou non est trop juste pour trancher : ${figure}, et sa limite est ${limit}.`,
    },
    notJudged: 'Aucune cote n’est jugée ici.',
    doubt: (doubt) => `Dans 19 cas sur 20, une largeur est juste à ${doubt} près.`,
    provisional: 'Tout ce sur quoi cela repose n’a pas été noté ; ce n’est donc pas le dernier mot.',
    openQuestions: 'L’une des lectures a l’air d’une erreur, et doit d’abord être revue.',
    gap: (from, to) => `Personne n’a mesuré entre ${from} et ${to} de profondeur.`,
    widestGap: (from, to) =>
      `Entre les endroits lus, personne n’a mesuré ; le plus grand vide va de ${from} à ${to} de profondeur.`,
    bothSides: 'L’appareil va d’une paroi à l’autre, il ne peut donc pas dire quel côté s’est usé.',
    twoAxes: 'On n’a lu que dans deux directions ; un ovale entre elles ne se verrait pas.',
    surfaceNote: 'Un appareil ne voit ni fissures ni rayures ; on les cherche à l’œil.',
  },
  advice: {
    outcomes: {
      'run-on':
        'Nous proposons de le laisser tourner tel quel, et de le mesurer de nouveau au prochain entretien.',
      'clean-and-measure-again': 'Nous proposons de bien le nettoyer, puis de le mesurer encore une fois.',
      'measure-again-better':
        'Nous proposons de le mesurer de nouveau, avec plus de soin, avant que vous décidiez.',
      'next-piston': 'Nous proposons un piston qui convient à l’alésage tel qu’il est.',
      hone: 'Nous proposons de meuler légèrement la paroi [honage], si cela enlève les marques.',
      'bore-oversize':
        'Nous proposons de l’agrandir à la taille suivante [cote réparation], avec un piston qui convient.',
      're-plate': 'Nous proposons une nouvelle couche dure sur la paroi [revêtement], ou un cylindre neuf.',
      'replace-or-sleeve': 'Nous proposons un cylindre neuf, ou une paroi neuve pressée dedans [chemise].',
    },
    runOnBy: (hours) =>
      `Nous proposons de le laisser tourner tel quel, et de le mesurer de nouveau à ${hours} h de marche au plus tard.`,
    runOnDay: (day) => `Aux heures qu’il fait chaque semaine, c’est le ${day}.`,
    boreTo: (oversize) =>
      `Nous proposons de l’agrandir de ${oversize} [cote réparation], avec un piston qui convient.`,
    boreAlike: (oversize) =>
      `Un autre alésage doit être agrandi, et tous vont à la même taille : nous le proposons aussi pour celui-ci, de ${oversize} [cote réparation].`,
    boreAlikeAny:
      'Un autre alésage doit être agrandi, et tous vont à la même taille : nous le proposons aussi pour celui-ci [cote réparation].',
    alone: (suggestion) => `À lui seul : ${suggestion}`,
    undecided: {
      'for-comparison': 'Celui-ci est là pour comparer, il n’y a donc rien à proposer.',
      'earlier-survey': 'C’est ainsi qu’il était, il n’y a donc rien à proposer.',
      'no-readings': 'Il n’y a rien à proposer avant qu’il soit mesuré.',
      'some-unread': 'Il n’y a rien à proposer avant que tout soit mesuré.',
      'land-alone': 'Il n’y a rien à proposer avant qu’on ait mesuré là où passent les segments.',
      'no-limits': 'Il n’y a rien à proposer avant que ses limites soient notées.',
    },
    covered: 'Quelque chose est posé sur la paroi et la cache ; il faut d’abord l’enlever.',
    play: {
      'too-loose': 'Le piston y a plus de place [jeu] qu’il ne peut en avoir.',
      'too-tight': 'Le piston y a moins de place [jeu] qu’il ne doit en avoir.',
      'too-close': 'Que le piston y ait la bonne place [jeu] ou non est trop juste pour trancher.',
      inside: 'Le piston y a la place [jeu] qu’il doit avoir.',
    },
    choices: {
      'run-on': (earliest, now) =>
        `Le laisser tourner donne les heures de ${now} à ${earliest} h, et très probablement plus.`,
      'run-on-open': 'On ne sait pas combien d’heures donne le laisser tourner.',
      'run-on-marked':
        'Tourner avec une telle marque peut abîmer davantage ; aucun chiffre ne dit combien de temps cela tiendrait.',
      'run-on-over': 'Tourner au-delà de sa limite met toute la machine en danger.',
      'next-piston': 'Un piston qui convient reprend le jeu, et ne donne pas plus d’heures à la paroi.',
      hone: 'Un meulage léger enlève de petites marques ; il enlève de la paroi, et la paroi reste aussi ovale qu’elle était.',
      'bore-oversize': 'L’agrandir rend toute la paroi neuve, et ses heures repartent de zéro.',
      're-plate': 'Une nouvelle couche rend la paroi neuve, et ses heures repartent de zéro.',
      'replace-or-sleeve':
        'Un cylindre neuf ou une chemise est une paroi neuve, et ses heures repartent de zéro.',
    },
    fromNew: (hours) =>
      `Cette paroi ferait au moins ${hours} h depuis le neuf, si elle continue à s’user ainsi.`,
    ifInside: (then) => `S’il se révèle dans la limite, ${then}.`,
    ifOver: (then) => `S’il se révèle au-dessus, ${then}.`,
    follows: {
      'run-on': 'il peut tourner encore',
      'clean-and-measure-again': 'il est nettoyé et mesuré de nouveau',
      'measure-again-better': 'autre chose est encore trop juste pour trancher',
      'next-piston': 'il lui faut un piston qui convient',
      hone: 'un meulage léger peut suffire',
      'bore-oversize': 'il est agrandi',
      're-plate': 'il lui faut une nouvelle couche dure [revêtement]',
      'replace-or-sleeve': 'il faut un cylindre neuf ou une paroi neuve [chemise]',
    },
    hours: {
      'no-limit':
        'On ne sait pas combien d’heures donne chaque choix : il n’y a pas de limite jusqu’où compter.',
      'no-hours':
        'On ne sait pas combien d’heures donne chaque choix : ses heures de marche n’ont pas été notées.',
      'nothing-to-count-from':
        'On ne sait pas combien d’heures donne chaque choix : il n’y a rien à partir de quoi compter.',
      shrunk:
        'On ne sait pas combien d’heures donne chaque choix : il se lit plus petit qu’avant, ce qui ne peut pas être.',
    },
    lastWord: 'Le manuel d’atelier et un rectifieur expérimenté ont le dernier mot.',
  },
  causes: {
    lead: 'Les chiffres montrent ce qui s’est usé, non pourquoi : chacune de ces choses est à vérifier.',
    none: 'Aucune forme ne ressort qui indiquerait une cause.',
    wideTop: 'Plus large en haut : le plus souvent la chaleur, la pression et un film d’huile mince.',
    wideBottom: 'Plus large en bas : parfois de la saleté dans l’huile, ou un piston lâche.',
    barrel: 'Le plus large au milieu : dans les pompes et compresseurs, la plupart s’usent ainsi.',
    waisted: 'Le plus serré au milieu : cherchez du métal collé à la paroi, ou des vis qui tirent dessus.',
    bell: 'Plus large à un bout : parfois il a été meulé ainsi, ou le piston y bascule.',
    stepped: 'Une marche où les segments repartent : la plupart des parois en ont une avec le temps.',
    oval: 'Ovale : le plus souvent le piston s’appuie sur deux côtés ; les vis et la chaleur aussi peuvent le faire.',
    rust: 'Rouille ou petits trous : de l’eau qui y est restée pendant qu’il ne servait pas.',
    scratch: 'Une rayure : quelque chose de dur est passé ; regardez le filtre et les joints.',
    scuff: 'Traces de grippage : cherchez trop peu d’huile, trop de chaleur, ou un dur travail à froid.',
    flaking: 'Une couche qui part : regardez les bords des ouvertures et la saleté dans l’air.',
    ridge: 'Un bourrelet : regardez là où les segments repartent.',
    rateChanged:
      'Il ne s’est pas usé toujours aussi vite : cherchez ce qui a changé, comme de la poussière passée par le filtre.',
    slow: 'Pour ralentir : gardez les filtres propres, prenez la bonne huile, et laissez chauffer avant un dur travail.',
    slowRust: 'Pour ralentir : huilez la paroi avant l’arrêt, et gardez-la au sec.',
  },
  show: {
    bore: 'Alésage',
    step: (number, all) => `${number} sur ${all}`,
    steps: 'Ce qui est dit',
    goTo: (number, topic) => `${number} : ${topic}`,
    next: 'Suivant',
    back: 'Retour',
    leave: 'Fermer',
    fullScreen: 'Plein écran',
    endFullScreen: 'Quitter le plein écran',
    fullScreenRefused: 'Le navigateur ne donne pas tout l’écran à cette page.',
    wall: 'La paroi de l’alésage',
    otherWindow: 'Montrer sur un autre écran',
    otherWindowBlocked:
      'Le navigateur n’a pas ouvert de seconde fenêtre. Permettez les fenêtres de cette page, puis essayez de nouveau.',
    follows: 'Cette fenêtre suit la page Mesurer.',
    turn: 'Le tourner à la main',
    turnBack: 'Revenir à ce qui est dit',
    turning: 'Tournez-le du doigt ou de la souris, ou avec les boutons.',
    behind: 'Les chiffres qui sont derrière',
    flat: 'Ce navigateur ne dessine pas d’image en 3D ici. La carte montre la même paroi, déroulée.',
    keys: 'Les flèches, Page précédente et Page suivante, ou Espace vont d’une phrase à l’autre ; Échap ferme.',
  },
}
