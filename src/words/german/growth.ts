import type { growth as english } from '../english/growth'
import type { Texts } from '../texts'

export const growth: Texts<typeof english> = {
  growth: {
    wear: {
      whenNew: 'Größter Verschleiß, seit sie neu war',
      since: (visit) => `Größter Verschleiß seit ${visit}`,
      from: (bore) => `Größter Verschleiß gegenüber ${bore}`,
      land: 'Größter Verschleiß gegenüber der Wand, die kein Ring berührt',
      'new-band': 'Größter Verschleiß gegenüber den Neumaßen',
    },
    visitOn: (day) => `dem ${day}`,
    visitNumber: (number) => `Messung ${number}`,
    range: (low, high) => `${low} bis ${high}`,
    read: (stations) => `der größte an ${stations} Messstellen gemessene, keine Obergrenze`,
    anywhere: 'sie kann irgendwo innerhalb der Neumaße gefertigt worden sein',
    share: (low, high) =>
      low === high
        ? `${low} dessen, was die Verschleißgrenze zulässt`
        : `${low} bis ${high} dessen, was die Verschleißgrenze zulässt`,
    plating: (both, one, low, high) =>
      `von der Beschichtung ${both}, wenn beide Wände gleich verschlissen sind, ${one}, wenn eine Wand alles trägt; mit dem ± zwischen ${low} und ${high}`,
    asMade: (microns) =>
      `einschließlich dessen, was zwei neue Bohrungen von der Fertigung her verschieden sein können, ${microns}`,
    shrunk: (places) => `kleiner als zuvor, über das ± hinaus, bei ${places}: Schmutz oder ein Versehen?`,
    outlook: 'Aussicht',
    now: 'jetzt an der Grenze',
    nowDetail: 'soweit diese Ablesungen es sagen können',
    earliest: (hours) => `frühestens bei ${hours} h`,
    never: 'keine Stunden zu nennen',
    limit: (limit) => `bis ${limit}`,
    oneSided: 'wenn sie so weiter verschleißt wie bisher, in 19 von 20 Fällen später',
    expected: (hours) => `nach der Geraden bei ${hours} h`,
    latest: (hours) => `spätestens bei ${hours} h`,
    uncertain:
      'der Zuwachs tritt nicht aus seiner Unsicherheit hervor, also lässt sich nur der früheste Zeitpunkt nennen',
    lastTwo: (hours) => `nach den letzten beiden Messungen bei ${hours} h`,
    changed:
      'eine einzige Verschleißrate passt nicht zu allen Messungen; angegeben ist der frühere Zeitpunkt aus allen und aus den letzten beiden',
    from: {
      surveys: (count) => `aus ${count} Messungen`,
      land: 'aus dieser Messung und der Wand, die kein Ring berührt; das Einlaufen liegt mit darin',
      'new-band': 'aus dieser Messung und dem kleinsten Neumaß; das Einlaufen liegt mit darin',
    },
    check: {
      name: 'Nächste Prüfung',
      by: (hours) => `spätestens bei ${hours} Betriebsstunden`,
      after: (hours) => `nach weiteren ${hours} h`,
      why: {
        'half-way': 'die Hälfte des Weges bis zum frühesten Zeitpunkt',
        'service-interval': 'das Wartungsintervall, das bei den Grenzmaßen steht',
        'at-limit': 'sie kann jetzt an der Grenze sein',
      },
      date: (day, hoursPerWeek) => `bei ${hoursPerWeek} h pro Woche am ${day}`,
      due: 'dieser Tag ist gekommen',
    },
    reasons: {
      'no-limit': 'braucht ein größtes Maß',
      'no-hours': 'braucht die Betriebsstunden dieser Messung',
      'nothing-to-count-from':
        'braucht eine frühere Messung mit ihren Stunden, einen Rand ohne Ringlauf oder die Neumaße',
      shrunk:
        'die Bohrung ist über ihr ± hinaus kleiner geworden: messen Sie noch einmal, bevor Stunden genannt werden',
    },
    manual: 'die Intervalle des Werkstatthandbuchs gehen vor',
  },
}
