import type { handOver as english } from '../english/hand-over'
import type { Texts } from '../texts'

/** The page that is handed over as a file, in German. */
export const handOver: Texts<typeof english> = {
  whole: 'Diese Datei ist vollständig. Sie braucht kein Netz und sendet nirgendwohin etwas.',
  made: (app, day) => `Erstellt mit ${app} am ${day}.`,
  back: (app) =>
    `${app} öffnet diese Datei wie einen Auftrag: auswählen oder auf die Seite ziehen. Alle Ablesungen sind darin.`,
  customer: (customer) => `Für ${customer}`,
  parts: {
    drawings: (bore) => `${bore}: die Zeichnungen`,
    figures: 'Die Zahlen',
    readings: 'Die Ablesungen, wie sie aufgeschrieben wurden',
    photographs: 'Fotos der Wand',
  },
  pictures: {
    now: (bore) => `${bore}, wie sie jetzt ist`,
    beside: (other) => `Zum Vergleich: ${other}`,
    alt: (bore, verdict) => `Bild der Wand. ${bore}: ${verdict}`,
    altBeside: (other) => `Bild der Wand. ${other}`,
    marks: 'Was Farben und Zeichen bedeuten',
  },
  turning: {
    turnLeft: 'Nach links drehen',
    turnRight: 'Nach rechts drehen',
    closer: 'Näher',
    further: 'Weiter weg',
    above: 'Von oben',
    whole: 'Von vorn',
    byFinger: 'Mit einem Finger drehen',
    fingerDone: 'Der Finger verschiebt wieder die Seite',
    keys: 'Zum Drehen ziehen. Die Pfeiltasten drehen, Plus und Minus gehen näher heran und weiter weg.',
  },
  drawings: {
    map: 'Die Wand abgewickelt, von innen gesehen. Der Winkel geht quer, die Tiefe nach unten.',
    section: (depth, factor) => `Quer durch die Bohrung bei ${depth}. ${factor}.`,
    profile: (axis) => `Längs der Bohrung auf ${axis}.`,
    scan: 'Abgewickelt, ohne die glatte Form: Blau steht vor, Bernstein steht zurück. Umrandet ist, was heraussticht, mit seiner Nummer in der Liste.',
  },
  readings: {
    lead: 'Jede Ablesung, wie sie aufgeschrieben wurde, bevor sie auf 20 °C umgerechnet wurde.',
    sizes: 'Maße in mm',
    dial: 'Anzeige der Messuhr, µm',
    none: '–',
    depth: 'Tiefe',
  },
  photograph: (number, finding) => `${number}: ${finding}`,
}
