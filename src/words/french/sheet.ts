import type { sheet as english } from '../english/sheet'
import type { Texts } from '../texts'

/** The grid of readings, the field for the next one, and questions about readings, in French. */
export const sheet: Texts<typeof english> = {
  grid: {
    title: 'Lectures',
    depthHead: 'Profondeur',
    depthUnit: 'mm sous le plan de joint',
    axisHead: (degrees) => degrees,
    axisSides: { frontRear: 'avant–arrière', rightLeft: 'droite–gauche' },
    meanHead: 'Moyenne',
    ovalityHead: 'Ovalisation',
    station: (place) => `Point de mesure à ${place}`,
    stationRead: (place, figure, mark) => `${place} : ${figure}, ${mark}`,
    stationSizeless: (place, typed) => `${place} : ${typed} au cadran, pas encore de cote`,
    stationEmpty: (place) => `${place} : aucune lecture`,
    stationBlocked: (place, by) => `${place} : aucune lecture, obstacle : ${by}`,
    withQuestion: (station) => `${station}, avec une question`,
    questionAt: (place) => `Question sur ${place}`,
    keys: 'Les flèches vont de case en case ; avec Maj elles en choisissent plusieurs. Suppr les vide ; copier, couper et coller vont vers un tableur et en viennent.',
    headIn: (head, unit) => `${head}, ${unit}`,
    stationOutOfReach: (place) => `${place} : aucune lecture, hors d’atteinte`,
    outOfReach: 'hors d’atteinte',
    repeats: (count) => `${count} ×`,
    spread: (microns) => `étendue ${microns}`,
    blockedBy: (by) => by,
    land: 'sans segments',
    addLevel: 'Ajouter un niveau',
    addAxis: 'Ajouter un axe',
    newLevel: 'Profondeur du nouveau niveau, mm',
    newAxis: 'Direction du nouvel axe, degrés',
    editLevel: (depth) => `Modifier le niveau à ${depth}`,
    editAxis: (axis) => `Modifier l’axe à ${axis}`,
    removeLevel: (depth) => `Retirer le niveau à ${depth}`,
    removeAxis: (axis) => `Retirer l’axe à ${axis}`,
    removeLevelAsk: (depth, readings) =>
      readings === 1
        ? `Le niveau à ${depth} porte une lecture. Retirer les deux ? Vous pouvez l’annuler.`
        : `Le niveau à ${depth} porte ${readings} lectures. Les retirer avec lui ? Vous pouvez l’annuler.`,
    removeAxisAsk: (axis, readings) =>
      readings === 1
        ? `L’axe à ${axis} porte une lecture. Retirer les deux ? Vous pouvez l’annuler.`
        : `L’axe à ${axis} porte ${readings} lectures. Les retirer avec lui ? Vous pouvez l’annuler.`,
    remove: 'Retirer',
    levelThere: (depth) => `Il y a déjà un niveau à ${depth}.`,
    axisThere: (axis) => `Il y a déjà un axe à ${axis}.`,
    axisTwice: (axis, same) => `Un axe à ${axis} est celui à ${same} : entrez-le avec un angle sous 180°.`,
    noLevels: 'Entrez les profondeurs auxquelles vous mesurez.',
    tooDeep: (length) => `L’alésage est long de ${length}.`,
  },
  next: {
    label: 'Lecture suivante',
    next: (place) => `À suivre : ${place}`,
    correcting: (place) => `Correction : ${place}`,
    repeat: (number, all) => `lecture ${number} sur ${all}`,
    inBore: (bore, place) => `${bore}, ${place}`,
    order: 'Lire',
    orderLabel: 'Ordre de lecture de plusieurs alésages',
    orders: { 'bore-by-bore': 'alésage par alésage', 'level-by-level': 'niveau par niveau' },
    repeatsPerStation: 'Lectures par point de mesure',
    allRead: 'Tous les points atteignables sont lus.',
    sizeField: 'Cote, mm',
    deviationField: 'Écart au cadran, µm',
    inchSizeField: 'Cote, in',
    inchDeviationField: 'Écart au cadran, 0,0001 in',
    take: 'Entrer',
    back: 'Retour',
    skip: 'Passer',
    cannotReach: 'Hors d’atteinte',
    inReach: 'Il est atteignable',
    again: 'Encore',
    clear: 'Vider',
    sign: '±',
    same: (figure) => `= ${figure}`,
    noSizeYet: 'La cote viendra dès que l’appareil aura été mesuré sur ses touches.',
    asDeviation: (microns) => `= ${microns} par rapport au réglage`,
    direction: {
      clockwise: 'Aiguille dans le sens horaire après zéro : plus grand. Tapez-le avec +.',
      anticlockwise:
        'Aiguille dans le sens antihoraire après zéro : plus grand. Tapez ce que montre le cadran, sens horaire +.',
      unknown:
        'Le sens du plus grand n’est pas noté : le sens horaire est supposé, et le verdict reste provisoire.',
    },
    farFromSetting: (found, setting) =>
      `${found} est loin de la cote de réglage ${setting}. Corrigez le nombre, ou la cote dans le montage ci-dessus.`,
    farFromTaken: (found, taken) =>
      `${found} est loin de ${taken}, cote seulement supposée tant que la cote de réglage n’est pas notée. Corrigez le nombre, ou notez-la dans le montage.`,
    settingFirst:
      'Notez d’abord dans le montage à quelle cote l’appareil a été réglé : sans elle, le cadran ne donne pas de cote.',
    severalHint: 'Plusieurs lectures d’un point : tapez-les avec des espaces entre elles.',
    noStation: 'Tous les points atteignables sont lus. Choisissez le point auquel ce nombre appartient.',
    notTaken: (typed, place) => (place === '' ? `Non pris : ${typed}` : `Non pris à ${place} : ${typed}`),
    putBack: (typed) => `Remettre ${typed}`,
    putBackShort: 'Remettre',
    forget: (typed) => `Abandonner ${typed}`,
    forgetShort: 'Abandonner',
    taken: (place, figure) => `${place} : ${figure} entré`,
    deepAcross: (depth, axis) => `Profondeur ${depth}, axe ${axis}`,
  },
  questions: {
    title: 'Questions sur les lectures',
    blocked: (place, by) =>
      `À ${place}, une touche tomberait ici : ${by}. Les deux touches étaient-elles sur le métal ?`,
    belowNew: (place) =>
      `À ${place}, l’alésage est plus petit que la plus petite cote neuve. La lecture, la classe et la limite sont-elles les bonnes ?`,
    settingTaken: (size) =>
      `À quelle cote l’appareil a-t-il été réglé ? Tant que ce n’est pas noté dans le montage, ${size} est supposé, comme dans tout nouveau dossier.`,
    roughSizeTaken: (size) =>
      `Quelle est à peu près la cote de l’alésage ? Tant que ce n’est pas noté dans le montage, ${size} est supposé, comme dans tout nouveau dossier.`,
    itIs: (size) => `C’est ${size}`,
    soakedApart: (bore, standard, reference) =>
      `Alésage à ${bore}, ${standard} à ${reference}, et pourtant ils sont restés côte à côte jusqu’à être égaux ? Lequel des deux est juste ?`,
    bothAt: (temperature) => `${temperature} pour les deux`,
    notYetEqual: 'Pas encore égaux',
    farOff: (place, from) => `La lecture à ${place} est à ${from} du réglage. Est-elle juste ?`,
    spread: (place, spread) =>
      `Les répétitions à ${place} diffèrent de ${spread}. Essuyez la paroi et mesurez de nouveau, ou retirez-en une.`,
    itIsRight: 'Elle est juste',
    takeItOut: 'La retirer',
    mend: 'Corriger',
    confirmed: 'confirmée',
    keptOut: 'gardée, dans aucun verdict tant que vous ne dites pas qu’elle est juste',
  },
  marks: {
    inside: 'dedans',
    above: 'au-dessus',
    below: 'au-dessous',
    'too-close': 'trop juste',
    blocked: 'lumière ?',
    none: 'sans limite',
  },
  marksSpoken: {
    inside: 'dans les limites',
    above: 'au-dessus de la limite',
    below: 'au-dessous de la limite',
    'too-close': 'trop juste pour trancher',
    blocked: 'à une lumière, dans aucun verdict',
    none: 'pas de verdict',
  },
}
