import type { hours as english } from '../english/hours'
import type { Texts } from '../texts'

export const hours: Texts<typeof english> = {
  hours: {
    title: (place) => `Maß über die Betriebsstunden bei ${place}`,
    station: 'Messstelle',
    stations: { first: (place) => `${place}, als Erstes an der Grenze`, other: (place) => place },
    list: (place) =>
      `Messungen und Stunden bei ${place}. Pfeil links und rechts gehen von einer zur nächsten.`,
    point: 'Maß über die Stunden zeigen',
    unit: 'Betriebsstunden',
    lastSurvey: 'letzte Messung',
    none: {
      'no-readings': 'Diese Ansicht erscheint mit der ersten Ablesung eines Messgeräts.',
      'no-limit':
        'Ohne Grenze gibt es keine Gerade zu ihr: Tragen Sie eine Verschleißgrenze oder ein größtes Maß ein.',
      'no-hours': 'Diese Ansicht braucht die Betriebsstunden der letzten Messung.',
      'nothing-to-count-from':
        'Diese Ansicht braucht eine frühere Messung mit ihren Stunden, einen Rand ohne Ringlauf oder die Neumaße, um davon aus zu zählen.',
      'never-ran': 'Diese Bohrung ist nie gelaufen: Über Stunden gibt es noch nichts.',
      'not-of-this-engine': 'Eine Bohrung zum Vergleich hat keine Stunden dieses Motors.',
    },
    labels: {
      limit: (size) => `Grenze ${size}`,
      'next-check': (at) => `nächste Prüfung ${at}`,
      earliest: (at) => `frühestens ${at}`,
      expected: (at) => `nach der Geraden ${at}`,
      'last-two-expected': (at) => `nach den letzten beiden ${at}`,
      latest: (at) => `spätestens ${at}`,
    },
    short: {
      'next-check': 'Prüfung',
      earliest: 'frühestens',
      expected: 'Gerade',
      'last-two-expected': 'letzte beide',
      latest: 'spätestens',
    },
    at: (hours) => `${hours} h`,
    reading: (survey, hours, size) => `${survey}, ${hours}: ${size}`,
    survey: (number) => `Messung ${number}`,
    surveyOn: (number, day) => `Messung ${number} am ${day}`,
    taken: {
      land: (size) => `Bei null Stunden: ${size}, die Wand, die kein Ring berührt`,
      'new-band': (size) => `Bei null Stunden: ${size}, das kleinste Neumaß`,
      surveys: (size) => `Bei null Stunden: ${size}`,
    },
    marks: {
      'next-check': (hours) => `${hours}: nächste Prüfung`,
      earliest: (hours) => `${hours}: frühestens dann ist die Grenze erreicht`,
      expected: (hours) => `${hours}: die Gerade erreicht die Grenze`,
      'last-two-expected': (hours) => `${hours}: die Gerade der letzten beiden Messungen erreicht die Grenze`,
      latest: (hours) => `${hours}: spätestens dann ist die Grenze erreicht`,
    },
    sentences: {
      now: 'Jetzt an der Grenze, soweit die Ablesungen es sagen können.',
      shrunk:
        'Sie ist über ihr ± hinaus kleiner geworden: Messen Sie noch einmal, bevor Stunden genannt werden.',
      earliest: (hours, limit) => `Erreicht ${limit} frühestens bei ${hours} h.`,
      expected: (hours) => `Nach der Geraden bei ${hours} h.`,
      lastTwo: (hours) => `Nach den letzten beiden Messungen bei ${hours} h.`,
      latest: (hours) => `Spätestens bei ${hours} h.`,
      uncertain:
        'Der Zuwachs tritt nicht aus seiner Unsicherheit hervor, also ist nur der früheste Zeitpunkt genannt.',
      changed:
        'Eine einzige Verschleißrate passt nicht zu allen Messungen: Beide Geraden sind gezeichnet, und die frühere Grenze zählt.',
      check: (hours) => `Nächste Prüfung spätestens bei ${hours} h.`,
      key: 'Scheiben: Ablesungen; Balken: ihr ± U (95 %). Schattierung: wo die Gerade liegen kann, nach jeder Seite für sich in 19 von 20 Fällen.',
      ahead: 'Nach der letzten Messung gestrichelt: wenn sie so weiter verschleißt wie bisher.',
      alone: 'Aus einer einzigen Messung gezeichnet: das Einlaufen liegt mit darin.',
    },
  },
}
