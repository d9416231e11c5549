import type { scans as english } from '../english/scans'
import type { Texts } from '../texts'

/** Scans of radii: keeping them with a bore, looking at them, in German. */
export const scans: Texts<typeof english> = {
  scans: {
    title: 'Abtastungen',
    importTitle: (file) => `Eine Abtastung aus ${file}`,
    asScan: 'Das sind Radien einer Abtastung',
    shown: 'Gezeichnet nach',
    readings: 'Ablesungen',
    unnamed: (index) => `Abtastung ${index}`,
    local: 'Ohne die glatte Form',
    localTitle:
      'Nimmt die Form weg, die glatt um die Bohrung und an ihr entlang läuft, damit Örtliches hervortritt',
    status: {
      fetching: 'Die Abtastung wird geholt …',
      fitting: 'Die Achse der Abtastung wird eingepasst …',
      'not-here':
        'Die Radien dieser Abtastung sind nicht in diesem Browser. Öffnen Sie die Datei des Auftrags, in der sie enthalten sind, oder lesen Sie die Abtastung noch einmal ein.',
      'no-axis':
        'Es lässt sich keine Achse einpassen: Keine Ebene dieser Abtastung hat sechs Radien ohne eine Lücke von einer halben Umdrehung. Tasten Sie ringsum ab.',
      failed:
        'Dieser Browser konnte die Abtastung nicht einpassen. Schließen Sie andere Seiten und öffnen Sie den Auftrag noch einmal.',
    },
    noSize: 'kein Maß: 0 ist die Mitte der Abtastung',
    noForm: '0 ist die glatte Form',
    onRadius: (micrometres) => `${micrometres} im Radius`,
    noVerdict: 'Form um die eingepasste Achse, im Radius. Kein Maß: keine Grenzmaße, kein Urteil.',
    localSaid: 'Was aus der glatten Form hervortritt, im Radius. Hier gibt es keine Grenzmaße.',
    sized: 'Das Doppelte des Radius um die eingepasste Achse; Ablesungen geben ihm sein Maß.',
    pastEnd: (scanned, length) =>
      `Die Abtastung reicht bis ${scanned}, weiter als die angegebene Bohrungslänge von ${length}.`,
    picture: 'Die Bohrung, wie ein Taster sie abgetastet hat, dreidimensional',
    nothing: 'Zeigen Sie auf die Wand, um sie abzulesen.',
    at: (depth, angle) => `${depth} · ${angle}`,
    noRadius: 'kein Radius: ein Schlitz, oder nicht gemessen',
    port: (name) => `Schlitz „${name}“`,
    radius: (radius) => `Radius ${radius} von der Mitte`,
    over: (over) => `${over} gegenüber der glatten Form`,
    twiceRadius: (size) => `doppelter Radius ${size}`,
    radii: (count) => `${count} Radien`,
    twiceRadii: (count) => `${count} Radien, verdoppelt,`,
    levelText: (radii, place, least, most) => `${radii} bei ${place}, von ${least} bis ${most}.`,
    oneWall: 'Ein Taster liest eine Wand: Was gegenüberliegt, wird für sich gelesen.',
    list: {
      levels: (levels, angles) => `${levels} Ebenen × ${angles} Winkel`,
      missing: (count) => (count === '1' ? '1 Stelle leer' : `${count} Stellen leer`),
      look: (name) => `${name} ansehen`,
      remove: (name) => `${name} entfernen`,
      cleaning: (name) => `${name}: vor oder nach dem Reinigen`,
      tie: (name) => `${name}: Maß aus`,
      noTie: 'kein Maß',
      tieSurvey: (survey) => `Maß aus ${survey}`,
      survey: (index) => `Messung ${index}`,
      noTies:
        'Keine ihrer Messstellen liegt in der Abtastung auf Metall, deshalb hat die Abtastung kein Maß.',
      tied: (count, doubt) =>
        count === '1'
          ? `Maß aus 1 Anschlussmessstelle, ${doubt} im Radius.`
          : `Maß aus ${count} Anschlussmessstellen, ${doubt} im Radius.`,
      tiesDisagree:
        'Sie unterscheiden sich um mehr, als ihre Unsicherheit erklärt: Ist es dieselbe Bohrung, unverändert?',
    },
    changes: {
      taken: (name) => `Abtastung ${name} übernommen`,
      removed: (name) => `Abtastung ${name} entfernt`,
      cleaning: 'vor oder nach dem Reinigen',
      tie: 'was der Abtastung ihr Maß gibt',
    },
    leftOut: {
      notHere: (count) =>
        count === 1
          ? 'Eine Abtastung fehlt darin: Sie ist nicht in diesem Browser.'
          : `${count} Abtastungen fehlen darin: Sie sind nicht in diesem Browser.`,
      noRoom: (count) =>
        count === 1
          ? 'Eine Abtastung fehlt darin: Die Datei würde größer, als Borewall sie liest.'
          : `${count} Abtastungen fehlen darin: Die Datei würde größer, als Borewall sie liest.`,
    },
    damaged: (count) =>
      count === 1
        ? 'Eine Abtastung in dieser Datei ist beschädigt und wurde weggelassen.'
        : `${count} Abtastungen in dieser Datei sind beschädigt und wurden weggelassen.`,
  },
}
