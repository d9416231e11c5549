import type { phone as english } from '../english/phone'
import type { Texts } from '../texts'

/** What the page says where it shows one or two of its parts at a time, in German. */
export const phone: Texts<typeof english> = {
  phone: {
    parts: 'Teile der Seite',
    findingsOpen: (name, questions) =>
      questions === 1 ? `${name}, eine Rückfrage offen` : `${name}, ${questions} Rückfragen offen`,
    toFindings: (verdict) => `${verdict} Befunde zeigen.`,
    menu: 'Menü',
    leftHand: 'Tasten für die linke Hand',
    rightHand: 'Tasten für die rechte Hand',
    pad: {
      label: 'Tasten',
      delete: 'Letzte Ziffer löschen',
      sign: 'Vorzeichen wechseln',
      point: 'Komma oder Punkt',
    },
    repeats: 'Ablesungen dieser Messstelle, zum Berichtigen',
    repeatNumber: (number, figure) => `Ablesung ${number}: ${figure}. Berichtigen.`,
    leaveIt: 'So lassen',
    unreachable: {
      asked: (place) => `Was hält Sie von ${place} ab?`,
      only: 'Nur diese Stelle',
      onlyMeans:
        'Sie wird als nicht erreichbar erfasst und schraffiert gezeichnet. Ist ein Schlitz im Weg, tragen Sie ihn unter „Messaufbau“ ein.',
      belt: (depth) => `Keine Achse bei ${depth}: ein Gürtel`,
      beltMeans: (from, to) =>
        `Ein Gürtel von ${from} bis ${to}: Wand, die niemand gemessen hat. Ändern können Sie ihn unter „Messaufbau“.`,
      beltName: 'nicht erreichbar',
    },
    skipped: (places) => `Übersprungen: ${places}.`,
    outOfReach: (places) => `Nicht erreichbar: ${places}.`,
    measureSkipped: 'Jetzt messen',
    measureHere: 'Hier messen',
    ports: 'Wo die Schlitze sind',
    plan: 'Ebenen, Achsen und Ablesungen',
    planHint:
      'Tippen Sie eine Stelle an, um sie zu messen oder zu berichtigen. Leeren Sie eine Tiefe oder einen Winkel, um sie herauszunehmen.',
    send: 'Senden',
  },
}
