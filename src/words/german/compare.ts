import type { compare as english } from '../english/compare'
import type { Texts } from '../texts'

export const compare: Texts<typeof english> = {
  pages: {
    label: 'Seiten',
    bench: 'Messen',
    compare: 'Vergleichen',
    show: 'Zeigen',
    report: 'Bericht',
    toBench: 'Zurück zum Messen',
    explain: 'Dem Besitzer erklären',
  },
  compare: {
    title: 'Verglichen',
    lead: 'Zwei bis acht, alle gleich gezeichnet: eine Überhöhung, eine Ansicht, eine gezeigte Stelle.',
    nothing: 'Noch nichts zu vergleichen',
    nothingSaid:
      'Zum Vergleichen braucht es zwei Messungen mit Ablesungen: Messen Sie diese Bohrung noch einmal, oder fügen Sie eine weitere Bohrung des Motors oder eine neue zum Vergleich hinzu.',
    tooFew: 'Wählen Sie mindestens zwei.',
    full: 'Höchstens acht: Nehmen Sie zuerst eine heraus.',
    walls: 'Wände nebeneinander',
    show: (name) => `${name} zeigen`,
    ofSurvey: (bore, survey) => `${bore}, ${survey}`,
    hours: (hours) => `${hours} h`,
    survey: (number, all) => `Messung ${number} von ${all}`,
    flat: 'Dieser Browser zeichnet hier kein 3D-Bild. Die Karten zeigen dieselben Wände, abgewickelt.',
    less: {
      title: 'Unterschied',
      lead: 'Eine minus die andere, an den Messstellen, die beide haben.',
      one: 'Diese',
      other: 'minus diese',
      none: 'keine',
      name: (one, other) => `${one} minus ${other}`,
      drawn: (factor) => `Unterschied × ${factor} gezeichnet`,
      noStations:
        'Diese beiden haben keine Messstelle gemeinsam: Ebenen bis 1 mm auseinander auf derselben Achse. Es gibt keinen Unterschied abzulesen.',
      readOtherwise:
        'Eine wurde mit drei Messbolzen gemessen, die das Mittel einer Ebene ergeben, die andere mit zwei. Ihr Unterschied wäre der von zwei verschiedenen Dingen.',
      withinDoubt: 'innerhalb seiner Unsicherheit, vielleicht keiner',
      standsOut: 'Rand des Bereichs, in dem er über seine Unsicherheit hinausgeht',
      notBoth: 'nicht in beiden gemessen',
      none0: 'kein Unterschied',
      tighter: 'die erste ist enger',
      looser: 'die erste ist weiter',
      key: 'Was die Farben des Unterschieds bedeuten',
      table: 'Unterschied an jeder Messstelle, µm, mit seiner Unsicherheit',
      level: 'Tiefe',
      stands: 'tritt hervor',
      within: 'innerhalb seiner Unsicherheit',
      rows: {
        largest: 'Größter Unterschied',
        mean: 'Mittlerer Unterschied',
        asMade: 'Von der Fertigung',
      },
      asMade: (microns) =>
        `Zwei neue Bohrungen können von der Fertigung her um ${microns} verschieden sein: Was darunter liegt, muss kein Verschleiß sein.`,
      warning: 'Nicht gleich verspannt',
    },
    time: {
      title: 'Im Lauf der Zeit',
      lead: 'Eine Wand von Messung zu Messung, und weiter in die kommenden Stunden, soweit eine Gerade sagt, wie sie verschleißt. Pfeiltasten gehen Schritt für Schritt.',
      show: (bore) => `${bore} durch ihre Messungen hindurch zeigen`,
      slider: (bore) => `${bore} durch ihre Messungen hindurch`,
      name: (bore) => `${bore} im Lauf der Zeit`,
      at: (number, all, survey) => `Messung ${number} von ${all}: ${survey}`,
      between: (from, to) => `Zwischen ${from} und ${to}: nur gezeichnet`,
      betweenHours: (hours) => `Etwa ${hours} h, zwischen Messungen: nur gezeichnet`,
      betweenShort: 'nur gezeichnet',
      faded: 'verblasst: zwischen Messungen, niemand hat es gemessen',
      ahead: {
        at: (hours) => `Bei ${hours} h, vorausgerechnet: Maße allein nach ihren Geraden`,
        short: (hours) => `${hours} h, voraus`,
        line: (place, figure) => `${place}, als Erstes an der Grenze, nach der Geraden: ${figure}.`,
        lastTwo: (figure) => `Nach den letzten beiden Messungen: ${figure}.`,
        before: (earliest, limit) => `Noch vor ${earliest} h; frühestens dann ist ${limit} erreicht.`,
        past: (earliest, limit) =>
          `Ab ${earliest} h kann sie über ${limit} liegen: Messen Sie, bevor es so weit ist.`,
        sides:
          'Jede der beiden Seiten gilt für sich in 19 von 20 Fällen, wenn sie so weiter verschleißt wie bisher.',
        faded:
          'verblasst: die Wand, wie sie zuletzt gemessen wurde; niemand kennt ihre Form zu einem späteren Zeitpunkt',
      },
    },
    readOut: {
      difference: (depth, angle, figure) =>
        `${depth} · ${angle} · ${figure} · an einer Messstelle, die beide haben`,
      drawn: (depth, angle, figure, distance) =>
        `${depth} · ${angle} · gezeichnet ${figure}; nächste Messstelle, die beide haben, ${distance} entfernt`,
      notBoth: (depth, angle) => `${depth} · ${angle} · nicht in beiden gemessen`,
      ahead: (place, hours, figure) => `${place} · bei ${hours} h nach der Geraden ${figure}`,
      aheadUnknown: 'zwischen den Messstellen ist über kommende Stunden nichts bekannt',
      between: (depth, angle) => `${depth} · ${angle} · zwischen Messungen, nur gezeichnet`,
    },
  },
}
