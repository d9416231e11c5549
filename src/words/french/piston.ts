import type { PistonLack } from '../../core/piston/piston-in-bore'
import type { piston as english } from '../english/piston'
import type { Texts } from '../texts'

const lackNames: Record<PistonLack, string> = {
  size: 'sa cote',
  height: 'la hauteur à laquelle elle a été mesurée',
  'crown-height': 'du bord de la jupe à la calotte',
  travel: 'la course du piston',
}

/** Pistons, their clearance, the oversize to bore to, and ring gaps, in French. */
export const piston: Texts<typeof english> = {
  engineTitle: 'Pistons et cote réparation du moteur',
  states: { fitted: 'a tourné dans un alésage', 'at-hand': 'est disponible', obtainable: 'peut se trouver' },
  clearance: {
    name: (piston) => `Jeu, ${piston}`,
    ranHere: 'a tourné ici',
    range: (least, most) => `${least} à ${most}`,
    withDoubt: (microns, doubt) => `${microns} ± ${doubt}`,
    atRest: (temperature) => `au repos à ${temperature}`,
    asMeasured: (figure, bore, piston) =>
      bore === piston
        ? `${figure} tel que mesuré à ${bore}`
        : `${figure} tel que mesuré, l’alésage à ${bore} et le piston à ${piston}`,
    rules: {
      'smallest-to-largest': 'plus petit alésage moins piston à plus grand alésage moins piston',
      'largest-bore': 'plus grand alésage moins piston',
      'mean-bore': 'moyenne de l’alésage moins piston',
      'smallest-bore': 'plus petit alésage moins piston',
    },
    read: (size) => `piston ${size} à 20 °C`,
    fromRange: (size) => `piston environ ${size}, non mesuré`,
    window: {
      both: {
        service: (min, max) => `au moins ${min}, en service au plus ${max}`,
        new: (min, max) => `${min} à ${max} neuf`,
      },
      min: (min) => `au moins ${min}`,
      max: {
        service: (max) => `en service au plus ${max}`,
        new: (max) => `au plus ${max} neuf`,
      },
      none: 'aucun jeu du manuel n’est entré',
    },
    verdicts: {
      inside: 'va',
      'too-tight': 'trop serré',
      'too-loose': 'trop large',
      'too-close': 'trop juste pour trancher',
    },
    leans: {
      inside: (chances) => `${chances} qu’il aille`,
      'too-tight': (chances) => `${chances} qu’il soit trop serré`,
      'too-loose': (chances) => `${chances} qu’il soit trop large`,
    },
    even: 'à peu près autant de chances qu’il aille ou non',
    asNew: {
      inside: 'aussi dans le jeu de pièces neuves',
      'too-tight': 'plus serré que ne peuvent l’être des pièces neuves',
      'too-loose': (max) => `plus large que ne peuvent l’être des pièces neuves, ${max}`,
      'too-close': (max) => `trop juste pour trancher contre les ${max} de pièces neuves`,
    },
    otherGrade: (bore, piston) => `l’alésage est marqué ${bore}, le piston ${piston}`,
    unknown: {
      'no-size': 'personne ne l’a mesuré et aucune cote n’est donnée pour lui',
      'no-readings': 'aucune lecture de cet alésage là où passent les segments',
      'other-oversize': 'il est pour une autre cote réparation',
      'other-height':
        'mesuré à une autre hauteur que ne le demande le manuel, ses limites ne le concernent donc pas',
    },
    notYet: 'pas encore',
    provisional: (gaps) => `provisoire : non noté ${gaps.join(', ')}`,
    provisionalShort: 'provisoire',
    gaps: {
      'no-micrometer': 'quel micromètre a mesuré le piston',
      'no-micrometer-check': 'ce que ce micromètre montre sur son propre étalon',
      'no-piston-temperature': 'température du piston',
      'no-micrometer-temperature': 'température du micromètre',
      'no-height': 'hauteur à laquelle le piston a été mesuré',
    },
    others: 'Autres pistons',
    othersFit: (fitting, all) =>
      fitting === 0
        ? 'aucun ne va'
        : all === fitting
          ? all === 1
            ? 'va'
            : 'tous vont'
          : fitting === 1
            ? `1 sur ${all} va`
            : `${fitting} sur ${all} vont`,
    other: (piston, figure, verdict) =>
      figure === '' ? `${piston} : ${verdict}` : `${piston} : ${figure}, ${verdict}`,
  },
  pairing: {
    name: 'Quel piston dans quel alésage',
    one: 'Piston le plus près du milieu de la plage',
    served: (served, all) => (served === all ? 'tous servis' : `${served} alésages servis sur ${all}`),
    nothing: 'aucun ne va',
    pair: (bore, piston) => `${bore} : ${piston}`,
    close: (pair) => `${pair} (trop juste pour trancher)`,
    worst: (departure, middle, bore) =>
      `au pire à ${departure} du milieu de la plage, ${middle}, dans l’alésage ${bore}`,
    worstAlone: (departure, middle) => `au pire à ${departure} de celui-ci, ${middle}`,
    closeAlone: 'qu’il aille ou non est trop juste pour trancher',
    fitNone: (bores) => `aucun piston proposé ne va dans : ${bores}`,
    left: (bores) => `il ne reste pas de piston pour : ${bores}`,
    notMeasured: (bores) => `non mesurés : ${bores}`,
    spare: (pistons) => `pas nécessaires : ${pistons}`,
  },
  oversize: {
    name: 'Cote réparation suivante',
    each: 'à chaque alésage la sienne',
    none: 'aucune',
    open: 'inconnue',
    alike: 'tous les cylindres pareils',
    order: (bores) => `réaléser dans cet ordre, le pire d’abord : ${bores}`,
    bore: (bore, largest, cleanUp, needed, off) => `${bore} (${largest} + ${cleanUp} = ${needed}${off})`,
    boreTo: (bore, oversize) => `${bore} à ${oversize}`,
    off: (least, most) => `, ${least} à ${most} enlevés`,
    close:
      'qu’elle rende la paroi nette ou non est trop juste pour trancher : réalésez le pire d’abord et regardez',
    proven: 'rend la paroi nette',
    hint: (cleanUp) =>
      `${cleanUp} jusqu’à la paroi nette est une indication de mémoire de métier : entrez celle du manuel`,
    pistons: (pistons) => `pistons proposés pour elle : ${pistons}`,
    noPistons: 'aucun piston pour elle n’est sur la liste',
    notMeasured: (bores) => `non mesurés : ${bores}`,
    honed: 'la fin se fait au honage ; un rectifieur dit combien',
    liner: 'une chemise peut être remplacée à la place',
    why: {
      plated: (bore) =>
        `l’alésage ${bore} est revêtu : il n’a pas de cote réparation ; un spécialiste enlève le revêtement et en met un neuf`,
      'own-process': (bore) =>
        `l’alésage ${bore} est en aluminium-silicium : seul le procédé propre que donne le manuel`,
      'manual-forbids': (bore) => `le manuel interdit de réaléser l’alésage ${bore}`,
      'wall-not-recorded': (bore) => `dites d’abord ce qu’est la paroi de l’alésage ${bore}`,
      'no-readings': () => 'demande des lectures',
      'no-standard-size': () => 'demande la plus petite cote neuve',
      'none-given': () => 'aucune cote réparation du manuel n’est entrée',
      'none-large-enough': (bore, cleanUp) =>
        `aucune du manuel n’est assez grande pour l’alésage ${bore} avec ${cleanUp} jusqu’à la paroi nette : une chemise ou un autre cylindre`,
    },
  },
  gap: {
    name: 'Jeu à la coupe',
    range: (least, most) => `${least} à ${most}`,
    each: (doubt) => `chacun ± ${doubt} à la jauge d’épaisseur`,
    typical: 'l’incertitude de la jauge d’épaisseur est une valeur typique',
    onlyLand: 'seulement sur une paroi que les segments ne touchent jamais : non jugé',
    window: {
      min: (min) => `au moins ${min}`,
      max: {
        service: (max) => `en service au plus ${max}`,
        new: (max) => `au plus ${max} neuf`,
      },
      none: 'aucun jeu à la coupe du manuel n’est entré',
    },
    verdicts: {
      inside: 'dedans',
      'too-small': 'trop petit',
      'too-large': 'trop grand',
      'too-close': 'trop juste pour trancher',
    },
    leans: {
      inside: (chances) => `${chances} qu’il soit dans les limites`,
      'too-small': (chances) => `${chances} qu’il soit trop petit`,
      'too-large': (chances) => `${chances} qu’il soit trop grand`,
    },
    taper: 'Conicité par les jeux à la coupe',
    taperBetween: (top, bottom) => `${top} moins ${bottom}, les jeux divisés par π`,
    coarse: (doubt) => `trop grossier pour montrer une conicité sous ${doubt}`,
    byGauge: (figure, differs) =>
      differs
        ? `l’appareil dit ${figure} : ils diffèrent de plus que leur incertitude, l’un des deux contient donc une erreur`
        : `l’appareil dit ${figure} : ils concordent autant qu’une jauge d’épaisseur puisse le dire`,
  },
  shown: {
    which: 'Piston montré dans l’alésage',
    along: 'Place le long de la course',
    up: 'Un niveau plus haut',
    down: 'Un niveau plus bas',
    crown: (depth) => `Calotte à ${depth} sous le plan de joint.`,
    range: (least, most) => `${least} à ${most}`,
    clearance: (depth, clearance, doubt) =>
      `À ${depth}, là où il a été mesuré en travers : jeu ${clearance} (${doubt} chacun), au repos.`,
    gap: {
      measured: (depth, gap, doubt) => `Segment à ${depth} : jeu ${gap} ± ${doubt}, mesuré.`,
      bore: (depth, gap, doubt) => `Segment à ${depth} : jeu ${gap} ± ${doubt}, tel que l’alésage l’ouvre.`,
    },
    between: 'Entre les niveaux : dessiné, non mesuré.',
    lacks: (lacks) =>
      `Il est dessiné dès que ceci est entré sous « Pistons » : ${lacks.map((one) => lackNames[one]).join(', ')}.`,
  },
  panel: {
    lead: 'D’après le manuel d’atelier, et tel que mesuré. Un piston se mesure en travers de sa jupe, à angle droit de son axe.',
    window:
      'Jeu neuf {min} à {max} mm, en service jusqu’à {limit} mm, pris comme {rule}, à {atC} °C. Le manuel fait mesurer le piston à {height} mm au-dessus du bord inférieur de sa jupe.',
    gapWindow: 'Jeu à la coupe neuf {min} à {max} mm, en service jusqu’à {limit} mm.',
    boring: 'Réaléser enlève au moins {cleanUp} mm jusqu’à ce que la paroi soit nette ; {alike}.',
    wall: 'Le manuel sur cette paroi : {bored} ; {honed}. C’est : {liner}.',
    wallTitle: 'Réalésage et honage',
    pistonsTitle: 'Pistons',
    noPistons: 'Aucun encore sur la liste.',
    what: '{name} : {state}{ranIn}, classe {grade}, pour {oversize}.',
    ranIn: ', alésage {bore}',
    read: 'Il s’est lu {read}, à {height} mm au-dessus du bord de la jupe, avec : {micrometer} ; le piston à {temperature} °C, le micromètre à {micrometerTemperature} °C, avec : {thermometer}.',
    range: 'Non mesuré, il va de {min} à {max} mm à 20 °C.',
    doubt:
      'Une lecture est juste à {doubt} µm (une incertitude type). Il se dilate de {expansion} millionièmes par kelvin.',
    shape:
      'Du bord inférieur de la jupe, il y a {crown} mm jusqu’au bord de la calotte et {ring} mm jusqu’au premier segment, pour le dessin.',
    stroke:
      'La course du piston est de {travel} mm ; en haut, sa calotte est à {crownAtTop} mm sous le plan de joint, pour le dessin.',
    details: 'Incertitude, dilatation et forme',
    ofPiston: (piston, label) => `${piston} : ${label}`,
    labels: {
      min: 'Plus petit jeu neuf, mm',
      max: 'Plus grand jeu neuf, mm',
      limit: 'Plus grand jeu en service, mm',
      rule: 'Règle du jeu',
      atC: 'Température à laquelle valent les jeux, °C',
      manualHeight: 'Hauteur au-dessus du bord de la jupe où le manuel fait mesurer, mm',
      gapMin: 'Plus petit jeu à la coupe neuf, mm',
      gapMax: 'Plus grand jeu à la coupe neuf, mm',
      gapLimit: 'Plus grand jeu à la coupe en service, mm',
      cleanUp: 'Ce que le réalésage enlève au moins, mm',
      alike: 'Si tous les cylindres vont à la même cote réparation',
      bored: 'Si le manuel permet le réalésage',
      honed: 'Si le manuel permet le honage',
      liner: 'Si c’est une chemise',
      name: 'nom',
      state: 'où il est',
      ranIn: 'alésage où il a tourné',
      grade: 'classe',
      oversize: 'cote réparation pour laquelle il est, mm',
      read: 'cote montrée par le micromètre, mm',
      height: 'hauteur au-dessus du bord de la jupe, mm',
      micrometer: 'micromètre',
      temperature: 'température du piston, °C',
      micrometerTemperature: 'température du micromètre, °C',
      thermometer: 'thermomètre',
      crown: 'bord de la jupe à calotte, mm',
      topRing: 'bord de la jupe à premier segment, mm',
      travel: 'Course du piston, mm',
      crownAtTop: 'Calotte sous le plan de joint, en haut, mm',
      rangeMin: 'plus petite cote possible, mm',
      rangeMax: 'plus grande cote possible, mm',
      doubt: 'incertitude de lecture, µm',
      expansion: 'dilatation, millionièmes par kelvin',
      feeler: 'Incertitude type d’un jeu à la jauge d’épaisseur, µm',
      gapDepth: (number) => `Profondeur du jeu à la coupe ${number}, mm`,
      gap: (number) => `Jeu à la coupe ${number}, mm`,
      newDepth: 'Profondeur d’un autre jeu à la coupe, mm',
      newGap: 'Autre jeu à la coupe, mm',
    },
    taken: (figure) => `supposé ${figure}`,
    hinted: (figure) => `${figure}, une indication de mémoire`,
    standardSize: 'la cote d’origine',
    alike: {
      yes: 'tous les cylindres vont à la même cote réparation',
      no: 'chaque alésage a sa propre cote réparation',
    },
    unsaid: { bored: 'rien n’est dit du réalésage', honed: 'rien n’est dit du honage' },
    mayBeBored: { yes: 'elle peut être réalésée', no: 'elle n’est pas réalésée' },
    mayBeHoned: { yes: 'elle peut être honée', no: 'elle n’est pas honée' },
    liner: { yes: 'une chemise qui peut être sortie', no: 'pas de chemise' },
    newMicrometer: 'un autre micromètre',
    add: {
      fitted: 'Ajouter un piston qui a tourné ici',
      'at-hand': 'Ajouter un piston disponible',
      obtainable: 'Ajouter un piston qui peut se trouver',
    },
    remove: (piston) => `Retirer ${piston}`,
    gapsTitle: 'Jeux à la coupe de ce relevé',
    gap: 'À {depth} mm de profondeur {gap} mm.',
    newGap: 'Un autre : à {depth} mm de profondeur {gap} mm.',
    feeler: 'Un jeu à la jauge d’épaisseur est juste à {feeler} µm (une incertitude type).',
    waitsForDepth: 'Compté comme jeu à la coupe dès que sa profondeur est là.',
    waitsForGap: 'Compté comme jeu à la coupe dès que le jeu est là.',
    removeGap: (depth) => `Retirer le jeu à la coupe à ${depth}`,
  },
  changes: {
    piston: 'piston',
    added: 'piston ajouté',
    removed: 'piston retiré',
    gap: 'jeu à la coupe',
    gapRemoved: 'jeu à la coupe retiré',
  },
}
