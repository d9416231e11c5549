import type { setUp as english } from '../english/set-up'
import type { Texts } from '../texts'

/** The set-up sentences and what belongs to them, in French. */
export const setUp: Texts<typeof english> = {
  setUp: {
    title: 'Montage',
    which: '{setUp} :',
    sizes:
      '{gauge}, lu à {step} {dialUnit} près, réglé à {size} {sizeUnit} avec : {standard}. Noté : {entry}. Zéro {zeroOpen} avant, {zeroClose} après. Alésage {boreTemperature}, {reference} {referenceTemperature}, {thermometers}.',
    deviations:
      '{gauge}, lu à {step} {dialUnit} près, réglé à {size} {sizeUnit} avec : {standard}. Noté : {entry} ; {direction} est plus grand ({directionTest}). Zéro {zeroOpen} avant, {zeroClose} après. Alésage {boreTemperature}, {reference} {referenceTemperature}, {thermometers}.',
    reverse:
      '{gauge}, lu à {step} {dialUnit} près. Noté : {entry} ; {direction} est plus grand ({directionTest}). Sur ses touches, le micromètre a montré {overContacts} {sizeUnit}, le cadran étant à {dialOverContacts}. Revenu à son zéro dans l’alésage, le cadran a montré {zeroOpen} avant, {zeroClose} après. Alésage {boreTemperature}, {reference} {referenceTemperature}, {thermometers}.',
    direct:
      '{gauge}, lu à {step} {dialUnit} près, dans un alésage d’environ {size}. Noté : {entry}. Alésage {boreTemperature}, {reference} {referenceTemperature}, {thermometers}.',
    directChecked:
      '{gauge}, lu à {step} {dialUnit} près. Contrôlé avec : {standard}, {size} ; il montrait en trop {micrometerError} avant et {zeroClose} après. Noté : {entry}. Alésage {boreTemperature}, {reference} {referenceTemperature}, {thermometers}.',
    micrometerCheck: 'Sur son propre étalon, le micromètre montre en trop : {micrometerError}.',
    labels: {
      gauge: 'Appareil de mesure',
      step: 'Échelon de lecture, µm',
      size: 'Cote de réglage, mm',
      standard: 'Réglé avec',
      entry: 'Les lectures sont notées comme',
      direction: 'L’aiguille va dans ce sens quand l’alésage est plus grand',
      zeroOpen: 'Zéro avant la mesure, µm, sens horaire positif',
      zeroClose: 'Zéro après la mesure, µm, sens horaire positif',
      boreTemperature: 'Température de l’alésage, °C',
      referenceTemperature: 'Température de la bague ou du micromètre, °C',
      thermometers: 'Comment les températures ont été prises',
      micrometerError: 'Ce que le micromètre montre en trop sur son propre étalon, µm',
      setUp: 'Montage de ce relevé',
      dialUnit: 'Graduation de l’appareil',
      sizeUnit: 'Graduation de la bague ou du micromètre',
      directionTest: 'Trouver dans quel sens va l’aiguille',
      overContacts: 'Micromètre sur les touches de l’appareil, mm',
      dialOverContacts: 'Cadran pendant que le micromètre tenait l’appareil, µm, sens horaire positif',
      roughSize: 'Cote approximative de l’alésage, mm',
      reference: 'Ce dont on donne la température à côté de l’alésage',
    },
    inchLabels: {
      step: 'Échelon de lecture, 0,0001 in',
      size: 'Cote de réglage, in',
      zeroOpen: 'Zéro avant la mesure, 0,0001 in, sens horaire positif',
      zeroClose: 'Zéro après la mesure, 0,0001 in, sens horaire positif',
      micrometerError: 'Ce que le micromètre montre en trop sur son propre étalon, 0,0001 in',
      overContacts: 'Micromètre sur les touches de l’appareil, in',
      dialOverContacts: 'Cadran pendant que le micromètre tenait l’appareil, 0,0001 in, sens horaire positif',
      roughSize: 'Cote approximative de l’alésage, in',
    },
    units: {
      size: { mm: 'mm', inch: 'in' },
      dial: { mm: 'µm', inch: '× 0,0001 in' },
    },
    withUnit: (figure, unit) => `${figure} ${unit}`,
    notRecorded: (taken) => `non noté (${taken})`,
    taken: {
      zero: '0 supposé',
      size: (size) => `${size} supposé`,
      drift: (halfWidth) => `± ${halfWidth} supposé`,
      temperature: '20 ± 5 supposé',
      sameTemperature: (celsius) => `${celsius} ± 1 supposé`,
      micrometer: (halfWidth) => `0 ± ${halfWidth} supposé`,
      clockwise: 'sens horaire supposé',
      nothing: 'rien supposé',
    },
    noSizesYet:
      'Ces lectures n’ont pas encore de cote : notez d’abord ce que le micromètre a montré sur les touches.',
    references: { ring: 'bague', micrometer: 'micromètre' },
    gauges: {
      'dial-0.001-ring': 'Comparateur d’alésage 0,001, réglé dans une bague',
      'dial-0.001-micrometer': 'Comparateur d’alésage 0,001, réglé au micromètre',
      'dial-0.01': 'Comparateur d’alésage 0,01',
      'dial-0.01-simple': 'Comparateur d’alésage 0,01, de fabrication simple',
      telescoping: 'Jauge télescopique et micromètre',
      'internal-micrometer-rods': 'Micromètre d’intérieur à rallonges',
      'three-contact-micrometer': 'Micromètre d’intérieur à trois touches',
      'air-plug': 'Tampon pneumatique',
      'radial-probe': 'Palpeur radial sur broche',
    },
    standards: { ring: 'bague étalon', micrometer: 'micromètre' },
    entries: {
      size: 'cotes en mm',
      deviation: 'écarts au cadran',
      reverse: 'cadran, mis à zéro dans l’alésage',
      direct: 'cotes lues directement',
    },
    directions: { clockwise: 'sens horaire', anticlockwise: 'sens antihoraire' },
    thermometers: {
      one: 'par un seul thermomètre',
      two: 'par deux thermomètres',
      soaked: 'laissés côte à côte jusqu’à être égaux',
    },
    directionTest: {
      open: 'à vérifier',
      title: 'Dans quel sens va l’aiguille ?',
      close: (by) =>
        `Tenez l’appareil entre les faces du micromètre. Fermez le micromètre de ${by} et regardez l’aiguille : dans quel sens est-elle allée ?`,
      push: 'Laissez l’appareil dans sa bague. Enfoncez une touche d’un cheveu et regardez l’aiguille : dans quel sens est-elle allée ?',
      why: 'La cote est ainsi devenue plus petite ; un alésage plus grand envoie donc l’aiguille dans l’autre sens. Les cadrans diffèrent en cela, et un sens pris sans vérifier inverse tous les chiffres.',
      by: { mm: '0,01 mm', inch: '0,0005 in' },
      went: {
        clockwise: 'Elle est allée dans le sens horaire',
        anticlockwise: 'Elle est allée dans le sens antihoraire',
      },
      stayed: 'Elle n’a pas bougé',
      stayedHelp:
        'Alors rien n’est noté. Voyez si ce sont bien les touches de l’appareil qui sont tenues entre les faces, et non son corps, et si l’aiguille n’est pas au bout de sa course ; puis essayez de nouveau.',
    },
    more: {
      title: 'Plus',
      survey:
        'Alésage au pied à coulisse : {caliper}. Mesuré {clamping}, par : {measuredBy}. Heures depuis la dernière marche, le lavage ou le honage : {rested}. Touche de l’appareil après son réglage : {contact}.',
      surveyPlate:
        'Alésage au pied à coulisse : {caliper}. Mesuré {clamping}, serrée à {torque} N·m, par : {measuredBy}. Heures depuis la dernière marche, le lavage ou le honage : {rested}. Touche de l’appareil après son réglage : {contact}.',
      setUp:
        'Dernier étalonnage de l’appareil : {calibrated} ; un tour de l’aiguille : {turn}. Échauffement possible depuis le réglage : {warmed} K. Au zéro de fin, {reference} : {referenceClose}.',
      setUpDirect: 'Dernier étalonnage de l’appareil : {calibrated}.',
      labels: {
        caliper: 'L’alésage au pied à coulisse',
        clamping: 'Ce qui était boulonné à l’alésage',
        torque: 'Couple des vis de la plaque, N·m',
        measuredBy: 'Qui a mesuré',
        rested: 'Heures depuis la dernière marche, le lavage ou le honage',
        contact: 'La touche de l’appareil après son réglage',
        calibrated: 'Jour du dernier étalonnage, année-mois-jour',
        turn: 'Un tour de l’aiguille',
        warmed: 'De combien l’appareil a pu s’échauffer depuis son réglage, K',
        reference: 'Ce dont on donne la température à côté de l’alésage',
        referenceClose: 'Température de la bague ou du micromètre au zéro de fin, °C',
      },
      caliperHelp:
        'Un pied à coulisse est grossier, mais il montre un tambour mal lu d’un tour ou une aiguille qui a fait un tour de plus.',
      clampings: { bare: 'à nu', 'torque-plate': 'avec une plaque de serrage', assembled: 'assemblé' },
      contacts: { kept: 'inchangée', changed: 'changée' },
      turnTaken: (typical) => `${typical} supposé`,
      warmedNone: 'aucun supposé',
      referenceCloseTaken: 'comme au début',
    },
    closing: {
      deviation: 'Remettez maintenant l’appareil sur son réglage : le cadran montre {zeroClose}.',
      reverse:
        'Remettez maintenant l’appareil là où vous l’avez mis à zéro dans l’alésage : le cadran montre {zeroClose}.',
      direct: 'Lisez maintenant l’étalon encore une fois ({standard}). Il montre en trop : {zeroClose}.',
      overContacts:
        'Mesurez maintenant l’appareil sur ses touches : le micromètre montre {overContacts}, le cadran étant à {dialOverContacts}.',
      labels: {
        zeroClose: 'Zéro de fin',
        overContacts: 'Sur les touches',
        dialOverContacts: 'Cadran pendant ce temps',
        standard: 'Avec quoi il a été contrôlé',
      },
    },
    typicalTitle: 'Valeurs typiques',
    typical:
      'Valeurs typiques pour ce genre d’appareil, de mémoire de métier ; changez ce que vous savez mieux. Toutes sont des incertitudes types, sauf la dérive, qui est une demi-largeur.',
    typicalSentence:
      'Les répétitions se dispersent de {repeatability} µm, connu par {repeatabilityFreedom} degrés de liberté. Réglage juste à {setting} µm, cadran ou échelle à {scale} µm, balancement à {rocking} µm ; dérive sans zéro de fin ± {drift} µm. {standardKind} : juste à {standardDoubt} µm ; un thermomètre : à {thermometerDoubt} K. Les touches portent à {contact} mm de chaque côté (pieds d’un étrier de centrage : à {feet} mm de l’une d’elles) ; la profondeur est tenue à {depthDoubt} mm.',
    typicalLabels: {
      repeatability: 'Écart type des répétitions, µm',
      repeatabilityFreedom: 'Degrés de liberté sur lesquels il repose',
      setting: 'Incertitude type du réglage, µm',
      scale: 'Incertitude type du cadran ou de l’échelle, µm',
      rocking: 'Incertitude type due à l’inclinaison que le balancement a laissée, µm',
      drift: 'Demi-largeur de la dérive sans zéro de fin, µm',
      standardKind: 'Avec quoi l’appareil a été réglé',
      standardDoubt: 'Incertitude type de la bague ou du micromètre lui-même, µm',
      thermometerDoubt: 'Incertitude type d’un thermomètre, K',
      contact: 'Demi-largeur d’une touche sur la paroi, mm',
      feet: 'D’une touche à chaque pied de l’étrier de centrage, mm le long de la paroi',
      depthDoubt: 'Incertitude type de la profondeur, mm',
    },
    noFigure: 'aucune',
    temperatureEffect: {
      short: (effect) => `Chacune corrigée de ${effect} pour la température.`,
      none: 'À ces températures, rien n’est corrigé.',
      sum: (effect) => `À ces températures, chaque lecture est corrigée de ${effect}.`,
      parts: (bore, boreC, standard, reference, referenceC) =>
        `Parts : alésage à ${boreC}, ${bore} ; ${reference} à ${referenceC}, ${standard}.`,
      doubt: (doubt) => `C’est juste à ${doubt} près.`,
      notRecorded:
        'Les deux températures n’ont pas été notées : ce qui manque est supposé, et son incertitude est comptée.',
    },
    survey: 'Mesuré : {date} ; heures de marche : {hours}.',
    surveyOfSeveral: 'Relevé {which}, mesuré : {date} ; heures de marche : {hours}.',
    surveyNumber: (number, all) => `${number} sur ${all}`,
    surveyLabels: {
      which: 'Quel relevé est montré',
      date: 'Jour de la mesure, année-mois-jour',
      hours: 'Heures de marche',
    },
  },
}
