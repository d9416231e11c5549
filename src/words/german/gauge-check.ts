import type { gaugeCheck as english } from '../english/gauge-check'
import type { Texts } from '../texts'

export const gaugeCheck: Texts<typeof english> = {
  gaugeCheck: {
    title: 'Wiederholbarkeit',
    heading: 'Prüfungen von Messgeräten',
    help: 'Messen Sie eine Stelle immer wieder, zehnmal oder öfter: eine Messstelle oder den Ring. Nehmen Sie das Messgerät jedes Mal heraus, und lassen Sie alles andere, wie es ist. Geben Sie die Ablesungen in der Reihenfolge ein, in der sie genommen wurden, mit Leerzeichen dazwischen.',
    field: (gauge) => `Ablesungen einer Prüfung: ${gauge}`,
    again: (gauge, number) => `Ablesungen der Prüfung ${number}: ${gauge}`,
    date: (gauge, number) => `Tag der Prüfung ${number}, Jahr-Monat-Tag: ${gauge}`,
    writtenAs: (gauge) => `Was die Ablesungen der Prüfung sind: ${gauge}`,
    written: {
      sizesMm: (unit) => `Maße in ${unit}`,
      dialUm: (unit) => `Ablesungen der Messuhr in ${unit}`,
    },
    studies: 'Mehrere Personen, mehrere Teile',
    studiesLoading: 'Einen Moment …',
    another: 'Noch eine Prüfung, {writtenAs}:',
    refused: (piece, why) => `„${piece}“: ${why}`,
    add: 'Diese Prüfung behalten',
    remove: (gauge, number) => `Prüfung ${number} herausnehmen: ${gauge}`,
    checked: 'Geprüft {date}, {unit}:',
    of: (gauge, day) => (day === undefined ? gauge : `${gauge}, ${day}`),
    one: 'Eine einzelne Ablesung zeigt nicht, wie gut ein Messgerät wiederholt: Es braucht zwei, ab zehn sagt es etwas aus.',
    scatter: (readings, deviation, freedom, low, high) =>
      `${readings} Ablesungen streuen mit einer Standardabweichung von ${deviation}, bekannt aus ${freedomOf(freedom)}: Sie liegt in 95 von 100 solchen Prüfungen zwischen ${low} und ${high}.`,
    belowStep: (readings, deviation, step, counted) =>
      `${readings} Ablesungen streuen mit einer Standardabweichung von ${deviation}, weniger, als der Schritt von ${step} zeigen kann; stattdessen zählt ${counted}.`,
    drift: {
      none: (drift, doubt) =>
        `Von der ersten bis zur letzten driften sie um ${drift} ± ${doubt}: keine Drift, die hervortritt.`,
      standsOut: (drift, doubt) =>
        `Von der ersten bis zur letzten driften sie um ${drift} ± ${doubt}. Das tritt hervor: Lassen Sie Messgerät und Teil auf eine Temperatur kommen, sehen Sie nach, ob jede Schraube fest ist, und prüfen Sie noch einmal.`,
    },
    share: (six, share, band) =>
      `Sechs Standardabweichungen einer Ablesung, ${six}, sind ${share} der Spanne von ${band} zwischen kleinstem und größtem Neumaß.`,
    good: (bore, repeats, doubt) =>
      `Mit dieser Streuung ist eine Messstelle der Bohrung ${bore}, ${times(repeats)} gemessen, auf ${doubt} genau, alles andere im Messaufbau mitgerechnet.`,
    answer: {
      band: (margin, band) =>
        `Das kann beantworten, ob eine Bohrung innerhalb der Spanne von ${band} liegt: Ablesungen, die ${margin} oder mehr innerhalb beider Grenzmaße liegen, sind nachgewiesen.`,
      never: (band, needed) =>
        `Das kann nicht beantworten, ob eine Bohrung innerhalb der Spanne von ${band} liegt: Nötig ist ${needed}.`,
      wear: (margin) =>
        `Das beantwortet, ob sie innerhalb der Verschleißgrenze liegt, außer bei Ablesungen, die näher als ${margin} an der Grenze liegen: Die bleiben zu knapp für ein Urteil.`,
      'one-limit': (margin) =>
        `Das beantwortet, ob sie innerhalb des Grenzmaßes liegt, außer bei Ablesungen, die näher als ${margin} daran liegen: Die bleiben zu knapp für ein Urteil.`,
      nothing:
        'Es sind keine Grenzmaße eingetragen, es gibt also noch keine Frage, die es beantworten könnte.',
    },
    notUsed:
      'Keine Bohrung dieses Motors wurde damit gemessen, es gibt also noch keine Frage, die es beantworten könnte.',
    use: (deviation, freedom) => `${deviation} und ${freedomGiven(freedom)} für dieses Messgerät nehmen`,
    inUse:
      'Das sind jetzt die eigenen Zahlen des Messgeräts. Eine Messung mit genügend eigenen Wiederholungen richtet sich stattdessen nach diesen.',
  },
}

function times(repeats: number): string {
  return repeats === 1 ? 'einmal' : `${repeats}-mal`
}

function freedomOf(freedom: number): string {
  return freedom === 1 ? '1 Freiheitsgrad' : `${freedom} Freiheitsgraden`
}

function freedomGiven(freedom: number): string {
  return freedom === 1 ? '1 Freiheitsgrad' : `${freedom} Freiheitsgrade`
}
