import type { verdict as english } from '../english/verdict'
import type { Texts } from '../texts'

/** The verdict on a bore in sentences, in German. */
export const verdict: Texts<typeof english> = {
  verdict: {
    none: {
      'no-readings': 'Noch keine Ablesungen.',
      'no-size-over-contacts':
        'Noch keine Maße: Das Messgerät wurde in der Bohrung auf null gestellt und muss noch über seine Messbolzen gemessen werden.',
      'no-limits': 'Kein Urteil über das Maß: Es sind keine Grenzmaße eingetragen.',
      'all-blocked':
        'Kein Urteil: Alle Ablesungen stehen an einem Schlitz oder Gürtel und warten auf Ihr Wort.',
    },
    where: {
      worst: (count, all, place) =>
        count === all
          ? `allen ${all} Messstellen, vor allem bei ${place}`
          : `${count} von ${all} Messstellen, vor allem bei ${place}`,
    },
    inside: {
      wear: 'Innerhalb der Verschleißgrenze.',
      band: 'Innerhalb der Grenzmaße für neu.',
      grade: (grade) => `Innerhalb der Grenzmaße der Größenklasse ${grade}.`,
    },
    above: {
      wear: (where) => `Über der Verschleißgrenze bei ${where}.`,
      band: (where) => `Über dem größten Neumaß bei ${where}.`,
      grade: (where, grade) => `Über dem größten Maß der Größenklasse ${grade} bei ${where}.`,
    },
    below: {
      band: (where) => `Unter dem kleinsten Neumaß bei ${where}.`,
      grade: (where, grade) => `Unter dem kleinsten Maß der Größenklasse ${grade} bei ${where}.`,
    },
    tooClose: (where) => `Zu knapp für ein Urteil bei ${where}.`,
    tooCloseAbove: {
      wear: (count, all) => `Zu knapp für ein Urteil: ${countOf(count, all)} über der Verschleißgrenze.`,
      band: (count, all) => `Zu knapp für ein Urteil: ${countOf(count, all)} über dem größten Neumaß.`,
      grade: (count, all, grade) =>
        `Zu knapp für ein Urteil: ${countOf(count, all)} über dem größten Maß der Größenklasse ${grade}.`,
    },
    tooCloseBelow: {
      band: (count, all) => `Zu knapp für ein Urteil: ${countOf(count, all)} unter dem kleinsten Neumaß.`,
      grade: (count, all, grade) =>
        `Zu knapp für ein Urteil: ${countOf(count, all)} unter dem kleinsten Maß der Größenklasse ${grade}.`,
    },
    shape: {
      ovality: {
        above: 'Die Unrundheit liegt über ihrem Grenzwert.',
        'too-close': 'Bei der Unrundheit ist es zu knapp für ein Urteil.',
        unknown: 'Die Unrundheit ließ sich nicht beurteilen.',
      },
      taper: {
        above: 'Die Konizität liegt über ihrem Grenzwert.',
        'too-close': 'Bei der Konizität ist es zu knapp für ein Urteil.',
        unknown: 'Die Konizität ließ sich nicht beurteilen.',
      },
      both: {
        above: 'Unrundheit und Konizität liegen über ihren Grenzwerten.',
        'too-close': 'Bei Unrundheit und Konizität ist es zu knapp für ein Urteil.',
        unknown: 'Unrundheit und Konizität ließen sich nicht beurteilen.',
      },
    },
    lean: {
      inside: (chances) => `So gemessen liegt sie ${chances} innerhalb.`,
      above: (chances) => `So gemessen liegt sie ${chances} darüber.`,
      below: (chances) => `So gemessen liegt sie ${chances} darunter.`,
      even: 'Ob sie innerhalb liegt oder nicht, ist etwa gleich wahrscheinlich.',
    },
    leanAt: {
      inside: (place, chances) => `Bei ${place} liegt sie, so gemessen, ${chances} innerhalb.`,
      above: (place, chances) => `Bei ${place} liegt sie, so gemessen, ${chances} darüber.`,
      below: (place, chances) => `Bei ${place} liegt sie, so gemessen, ${chances} darunter.`,
      even: (place) => `Bei ${place} ist etwa gleich wahrscheinlich, ob sie innerhalb liegt oder nicht.`,
    },
    alone: (place, chances, stations) =>
      `Für sich genommen liegt die Messstelle bei ${place} außerhalb: so gemessen ${chances}. Die äußerste von ${stations} Ablesungen ist aber oft nur die unglücklichste; um es für die Bohrung nachzuweisen, braucht es mehr.`,
    sure: {
      inside: (place, chances) =>
        `Am knappsten ist es bei ${place}: Dort liegt sie, so gemessen, ${chances} innerhalb.`,
      above: (place, chances) => `Bei ${place} liegt sie, so gemessen, ${chances} darüber.`,
      below: (place, chances) => `Bei ${place} liegt sie, so gemessen, ${chances} darunter.`,
    },
    settle: (doubt) =>
      `Eine Ablesung mit einer Unsicherheit von ${doubt} würde es klären, wenn sie gleich bleibt.`,
    settleAt: (place, doubt) =>
      `Bei ${place} würde eine Ablesung mit einer Unsicherheit von ${doubt} es klären, wenn sie gleich bleibt.`,
    settledByNone: 'Sie liegt so nahe an der Grenze, dass kein Innenmessgerät es klären würde.',
    provisional: {
      'no-setting-size': 'Vorläufig: Auf welches Maß das Messgerät eingestellt war, ist nicht erfasst.',
      'no-opening-zero': 'Vorläufig: Die Null zu Beginn ist nicht erfasst.',
      'no-closing-zero': 'Vorläufig: Die Null am Ende ist nicht erfasst.',
      'no-bore-temperature': 'Vorläufig: Die Temperatur der Bohrung ist nicht erfasst.',
      'no-reference-temperature':
        'Vorläufig: Die Temperatur von Ring oder Bügelmessschraube ist nicht erfasst.',
      'no-micrometer-check':
        'Vorläufig: Eine Prüfung der Bügelmessschraube an ihrem eigenen Einstellnormal ist nicht erfasst.',
      'no-direction-test':
        'Vorläufig: Eine Prüfung der Zeigerrichtung ist nicht erfasst; angenommen ist, dass im Uhrzeigersinn größer ist. Stimmt das nicht, ist jede Zahl gespiegelt.',
      'no-wall-kind': 'Vorläufig: Die Art der Wand ist nicht erfasst.',
      'no-dial-over-contacts':
        'Vorläufig: Was die Messuhr zeigte, während die Bügelmessschraube das Messgerät hielt, ist nicht erfasst; angenommen ist 0.',
    },
    provisionalSeveral: (missing) => `Vorläufig. Nicht erfasst: ${missing.join(', ')}.`,
    missing: {
      'no-setting-size': 'Maß, auf das das Messgerät eingestellt war',
      'no-opening-zero': 'Null zu Beginn',
      'no-closing-zero': 'Null am Ende',
      'no-bore-temperature': 'Temperatur der Bohrung',
      'no-reference-temperature': 'Temperatur von Ring oder Bügelmessschraube',
      'no-micrometer-check': 'Prüfung der Bügelmessschraube an ihrem eigenen Einstellnormal',
      'no-direction-test': 'Prüfung der Zeigerrichtung (angenommen ist: im Uhrzeigersinn größer)',
      'no-wall-kind': 'Art der Wand',
      'no-dial-over-contacts':
        'Messuhr, während die Bügelmessschraube das Messgerät hielt (angenommen ist 0)',
    },
    contactChanged:
      'Vorläufig: Nach dem Einstellen wurde ein Messbolzen gewechselt, jedes Maß kann also falsch sein. Stellen Sie das Messgerät neu ein und messen Sie noch einmal.',
    aboutMeanOnly:
      'Vorläufig: Drei Messbolzen lesen das Mittel einer Ebene, und das Urteil gilt nur für dieses Mittel.',
    assumed: 'Dafür stehen angenommene Werte, und ihre Unsicherheit steckt in jedem ±.',
    about: (stations) =>
      stations === 1
        ? 'Das gilt für die eine gemessene Messstelle, nicht für die übrige Wand.'
        : `Das gilt für die ${stations} gemessenen Messstellen, nicht für die Wand dazwischen.`,
    comparison: (smallest, largest, stations) =>
      stations === 1
        ? `Zum Vergleich: ${smallest} an einer Messstelle.`
        : `Zum Vergleich: ${smallest} bis ${largest} an ${stations} Messstellen.`,
    comparisonNone: 'Zum Vergleich: noch keine Ablesungen.',
    comparisonBlocked:
      'Zum Vergleich: Alle Ablesungen stehen an einem Schlitz oder Gürtel und warten auf Ihr Wort.',
  },
}

function countOf(count: number, all: number): string {
  if (all === 1) return 'die eine Messstelle liegt'
  return count === 1 ? `eine von ${all} Messstellen liegt` : `${count} von ${all} Messstellen liegen`
}
