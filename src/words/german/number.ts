import type { number as english } from '../english/number'
import type { Texts } from '../texts'

export const number: Texts<typeof english> = {
  number: {
    refused: {
      empty: 'Geben Sie eine Zahl ein.',
      letters: 'Geben Sie nur die Zahl ein, ohne Einheit und ohne Buchstaben: 54,032 oder 54.032.',
      'other-sign': 'Ein Zeichen darin gehört zu keiner Zahl. Geben Sie sie so ein: 54,032 oder 54.032.',
      'inner-space': 'Mitten in der Zahl steht ein Leerzeichen. Nehmen Sie es heraus.',
      'sign-place': 'Setzen Sie ein einziges Vorzeichen, + oder −, vor die Zahl.',
      'both-marks':
        'Komma und Punkt zusammen lassen sich auf zwei Arten lesen. Nehmen Sie nur eines davon, und nur für die Dezimalstellen: 54,032 oder 54.032.',
      'several-marks':
        'Es steht mehr als ein Komma oder Punkt darin. Nehmen Sie nur einen, und nur für die Dezimalstellen.',
      'too-long': 'Das sind mehr Stellen, als ein Messgerät anzeigt. Runden Sie die Zahl.',
      'too-large': 'Die Zahl ist zu groß für alles, was hier gemessen wird.',
    },
    outOfRange: (found, least, most) => `${found} liegt außerhalb von ${least} bis ${most}.`,
    waits: {
      low: (low, high) =>
        `${low} ist mehr als ${high}, das andere Ende. Der Wert wartet hier und zählt, sobald auch jenes eingetragen ist.`,
      high: (high, low) =>
        `${high} ist weniger als ${low}, das andere Ende. Der Wert wartet hier und zählt, sobald auch jenes eingetragen ist.`,
      same: 'Beide Enden sind jetzt dieselbe Stelle. Der Wert wartet hier und zählt, sobald auch das andere eingetragen ist.',
      alone: 'Der Wert wartet hier und zählt, sobald auch das andere Ende eingetragen ist.',
      fits: 'Der Wert zählt noch nicht. Drücken Sie hier die Eingabetaste, damit er zählt.',
    },
    wholeOnly: 'Geben Sie eine ganze Zahl ein.',
    chances: (of, all) => `in ${of} von ${all} Fällen`,
    moreThan: (of, all) => `in mehr als ${of} von ${all} Fällen`,
    fewerThan: (all) => `in weniger als 1 von ${all} Fällen`,
    aboutEven: 'in etwa der Hälfte der Fälle',
    months: [
      'Januar',
      'Februar',
      'März',
      'April',
      'Mai',
      'Juni',
      'Juli',
      'August',
      'September',
      'Oktober',
      'November',
      'Dezember',
    ],
    day: (day, month, year) => `${day}. ${month} ${year}`,
    range: (value, low, high) => `${value} (${low} bis ${high})`,
  },
}
