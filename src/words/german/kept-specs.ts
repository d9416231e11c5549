import type { keptSpecs as english } from '../english/kept-specs'
import type { Texts } from '../texts'

export const keptSpecs: Texts<typeof english> = {
  keptSpecs: {
    title: 'Gemerkte Grenzmaße',
    lead: 'Was Sie aus Ihren eigenen Werkstatthandbüchern eingetragen haben, in diesem Browser gespeichert für den nächsten Motor dieser Art. Borewall bringt keine eigenen Grenzmaße mit: Vergleichen Sie sie mit dem Werkstatthandbuch, bevor Sie sich auf sie verlassen.',
    none: 'Noch ist nichts gemerkt. Tragen Sie die Grenzmaße eines Auftrags ein, und wählen Sie dann „Diese Grenzmaße merken“.',
    take: 'Mit gemerkten Grenzmaßen beginnen …',
    takeHint: 'Grenzmaße mit ihren Regeln, der Zylinder, seine Ebenen und Achsen, und wie er gemessen wird.',
    keep: 'Diese Grenzmaße merken …',
    keepName: 'Name für diese Grenzmaße',
    keepDo: 'Merken',
    keptAs: (name, day) =>
      `Grenzmaße, am ${day} unter „${name}“ gemerkt, aus dem eigenen Werkstatthandbuch des Benutzers.`,
    typedOn: (day) => `eingetragen am ${day}, aus dem eigenen Werkstatthandbuch des Benutzers`,
    taken: (name) => `Grenzmaße aus „${name}“`,
    kept: (name) => `Gemerkt als ${name}.`,
    replaceAsk: (name) => `Unter ${name} sind schon Grenzmaße gemerkt. Diese an ihre Stelle setzen?`,
    replace: 'An ihre Stelle setzen',
    rename: (name) => `Name von ${name}`,
    nameNeeded: 'Es braucht einen Namen.',
    newJob: 'Neuer Auftrag',
    newJobFrom: (name) => `Neuer Auftrag mit ${name}`,
    remove: 'Entfernen',
    removeNamed: (name) => `${name} entfernen`,
    removed: (name) => `${name} entfernt.`,
    undo: 'Rückgängig',
    unread: (names) =>
      `Nicht zu lesen und unverändert gelassen: ${names.map((name) => `„${name}“`).join(', ')}.`,
    noName: 'ohne Namen',
    band: (from, to) => `neu ${from} bis ${to}`,
    bandFrom: (from) => `neu ab ${from}`,
    bandTo: (to) => `neu bis ${to}`,
    grades: (names) => `Größenklassen ${names.join(', ')}`,
    wear: (limit) => `Verschleißgrenze ${limit}`,
    ovality: (limit) => `Unrundheit ${limit}`,
    taper: (limit) => `Konizität ${limit}`,
    bores: (count) => (count === 1 ? '1 Bohrung' : `${count} Bohrungen`),
  },
}
