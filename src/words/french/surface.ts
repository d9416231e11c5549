import type { surface as english } from '../english/surface'
import type { Texts } from '../texts'

/** What was seen or felt on the wall, in French. */
export const surface: Texts<typeof english> = {
  surface: {
    title: 'Surface',
    kinds: {
      scratch: 'rayure',
      scuff: 'trace de grippage',
      'stuck-metal': 'métal collé',
      'bare-aluminium': 'aluminium à nu',
      flaking: 'écaillage',
      ridge: 'bourrelet',
      pits: 'piqûres',
      rust: 'rouille',
      glaze: 'glaçage',
      'cross-hatch-worn-off': 'stries croisées disparues',
      'cross-hatch-seen': 'stries croisées visibles',
    },
    shapes: { patch: 'tache', streak: 'traînée le long de la course' },
    nail: { yes: 'accroche l’ongle', no: 'n’accroche pas l’ongle', notTried: 'ongle non essayé' },
    numbered: (number, kind) => `${number} ${kind}`,
    place: (depths, angles) => `${depths}, ${angles}`,
    between: (from, to) => `${from} à ${to}`,
    allRound: 'sur tout le tour',
    line: (title, place, parts) => `${title} : ${[place, ...parts].join(' ; ')}`,
    across: {
      measured: (length) => `largeur ${length}, mesurée`,
      place: (length) => `largeur ${length}, d’après sa place`,
    },
    along: {
      measured: (length) => `longueur ${length}, mesurée`,
      place: (length) => `longueur ${length}, d’après sa place`,
    },
    photographs: (count) => (count < 2 ? `${count === 1 ? 'une' : count} photo` : `${count} photos`),
    add: 'Ajouter un constat de surface',
    orDrag: 'Tapez la place d’un constat de surface ; ou tracez-le sur la carte à plat',
    mark: 'Marquer',
    markHelp: 'Tracer du doigt un constat de surface sur la carte à plat',
    marking: 'Tracez du doigt sur ce que vous avez trouvé.',
    record: 'Le noter',
    remove: (title) => `Retirer ${title}`,
    sentence:
      'Quoi : {kind}, forme : {shape}, profondeur de {fromDepthMm} à {toDepthMm} mm et angle de {fromDegrees} à {toDegrees}° ; {nail}. Largeur {acrossMm} mm, longueur {alongMm} mm. Note : {note}',
    draft:
      'Quoi : {kind}, profondeur de {fromDepthMm} à {toDepthMm} mm et angle de {fromDegrees} à {toDegrees}°, sens horaire vu d’en haut.',
    drawHelp: 'Ou tracez-le sur la carte à plat ; un doigt y trace dès que « Marquer » est pressé.',
    angleHelp:
      'Les angles peuvent passer par 0° : 350 à 10 font vingt degrés autour de l’avant. Deux fois le même est une ligne, 0 à 360 tout le tour.',
    labels: {
      kind: 'Genre',
      shape: 'Forme',
      fromDepthMm: 'De la profondeur, mm',
      toDepthMm: 'À la profondeur, mm',
      fromDegrees: 'De l’angle, degrés',
      toDegrees: 'À l’angle, degrés',
      nail: 'Ongle',
      acrossMm: 'Largeur autour de l’alésage, mm',
      alongMm: 'Longueur le long de l’alésage, mm',
      note: 'Note',
    },
    ends: { fromDepthMm: 'haut', toDepthMm: 'bas', fromDegrees: 'de', toDegrees: 'à' },
    missing: (labels) => `Reste à taper : ${labels.join(' ; ')}.`,
    byPlace: (length) => `${length} d’après sa place`,
    noNote: 'aucune',
    changes: {
      added: 'constat de surface ajouté',
      changed: 'constat de surface',
      removed: 'constat de surface retiré',
      photograph: 'photo ajoutée',
      photographRemoved: 'photo retirée',
    },
    lead: 'Surface : les chiffres seuls ne décident pas.',
    stops: {
      'bare-aluminium': (where) =>
        `De l’aluminium à nu à ${where} peut condamner un alésage dont la cote est bonne.`,
      flaking: (where) => `Un écaillage à ${where} peut condamner un alésage dont la cote est bonne.`,
      'catches-nail': (where, kind) =>
        `L’ongle accroche à ${where} (${kind}) : cela peut condamner un alésage dont la cote est bonne.`,
      'pits-in-ring-path': (where) =>
        `Des piqûres sur le passage des segments à ${where} peuvent condamner un alésage dont la cote est bonne.`,
      'pits-perhaps-in-ring-path': (where) =>
        `Des piqûres à ${where} peuvent condamner un alésage dont la cote est bonne si les segments y passent : entrez où passent les segments.`,
    },
    decides: 'C’est au manuel d’atelier et à un rectifieur qualifié de dire ce qu’il en advient.',
    nailWouldTell: (where) =>
      `Passez l’ongle sur la marque à ${where} : qu’il accroche ou non en dit plus que son aspect.`,
    hereToo: (titles) => `ici : ${titles}`,
  },
}
