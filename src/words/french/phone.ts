import type { phone as english } from '../english/phone'
import type { Texts } from '../texts'

/** What the page says where it shows one or two of its parts at a time, in French. */
export const phone: Texts<typeof english> = {
  phone: {
    parts: 'Parties de la page',
    findingsOpen: (name, questions) =>
      questions === 1 ? `${name}, une question ouverte` : `${name}, ${questions} questions ouvertes`,
    toFindings: (verdict) => `${verdict} Voir les constats.`,
    menu: 'Menu',
    leftHand: 'Touches pour la main gauche',
    rightHand: 'Touches pour la main droite',
    pad: {
      label: 'Touches',
      delete: 'Effacer le dernier chiffre',
      sign: 'Changer le signe',
      point: 'Virgule ou point',
    },
    repeats: 'Lectures de ce point, à corriger',
    repeatNumber: (number, figure) => `Lecture ${number} : ${figure}. La corriger.`,
    leaveIt: 'Laisser ainsi',
    unreachable: {
      asked: (place) => `Qu’est-ce qui empêche d’atteindre ${place} ?`,
      only: 'Seulement ce point',
      onlyMeans:
        'Il est noté comme hors d’atteinte et dessiné en hachures. Si une lumière gêne, entrez-la sous « Montage ».',
      belt: (depth) => `Aucun axe à ${depth} : une bande`,
      beltMeans: (from, to) =>
        `Une bande de ${from} à ${to} : paroi que personne n’a mesurée. Elle se modifie sous « Montage ».`,
      beltName: 'hors d’atteinte',
    },
    skipped: (places) => `Passés : ${places}.`,
    outOfReach: (places) => `Hors d’atteinte : ${places}.`,
    measureSkipped: 'Les mesurer maintenant',
    measureHere: 'Mesurer ici',
    ports: 'Où sont les lumières',
    plan: 'Niveaux, axes et lectures',
    planHint:
      'Touchez un point pour le mesurer ou le corriger. Videz une profondeur ou un angle pour le retirer.',
    send: 'Envoyer',
  },
}
