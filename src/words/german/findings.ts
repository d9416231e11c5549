import type { findings as english } from '../english/findings'
import type { Texts } from '../texts'

export const findings: Texts<typeof english> = {
  findings: {
    title: 'Befunde',
    largest: 'Größter Durchmesser',
    smallest: 'Kleinster Durchmesser',
    ovality: 'Unrundheit',
    taper: 'Konizität',
    fittedOval: 'Eingepasstes Oval',
    fittedAcross: (axis, doubt, axes) => `am größten bei ${axis} ± ${doubt}, aus ${axes} Achsen`,
    fittedNoDirection: (most) => `keine Richtung tritt hervor; höchstens ${most}`,
    fittedThree: 'drei Achsen können es nicht von einer vierbogigen Form unterscheiden',
    ovalAtLeast: 'Wahres Oval',
    ovalAtLeastFigure: (least) => `${least} oder mehr`,
    ovalAtLeastDetail: 'zwei Achsen lassen offen, wie viel mehr',
    depthForm: 'Form in der Tiefe',
    depthForms: {
      straight: 'gerade',
      tapered: 'konisch',
      barrel: 'bauchig',
      waisted: 'tailliert',
      'bell-mouthed': 'am Ende aufgeweitet',
      stepped: 'gestuft',
    },
    depthStraight: 'soweit diese Ablesungen es zeigen',
    depthEnds: (difference) => `oben minus unten ${difference}`,
    depthMiddle: (depth, difference) => `${depth} liegt ${difference} neben der Geraden zwischen den Enden`,
    depthBell: {
      top: (difference) => `oben ${difference} weiter`,
      bottom: (difference) => `unten ${difference} weiter`,
    },
    depthStep: (depth, land, difference) => `${depth} minus Rand ohne Ringlauf bei ${land} ${difference}`,
    grades: {
      name: 'Größenklassen',
      inside: (grades) => `innerhalb von ${listed(grades)}`,
      insideNone: 'außerhalb von allen',
      undecided: 'keine nachgewiesen',
      tooClose: (grades) => `zu knapp für ein Urteil: ${listed(grades)}`,
      tooNarrow: (grades) => `zu schmal für dieses Messgerät: ${listed(grades)}`,
      above: (grades) => `größer als: ${listed(grades)}`,
      below: (grades) => `kleiner als: ${listed(grades)}`,
      rule: (stations) =>
        stations === 1 ? 'nach der einen Messstelle' : `innerhalb, wenn es alle ${stations} Messstellen sind`,
      information: 'zur Kenntnis: beurteilt wird allein die Verschleißgrenze',
    },
    byRule: (rule) => `Regel: ${rule}`,
    widestMean: 'Mittel der weitesten Ebene',
    difference: (bore) => `Größter Unterschied zu ${bore}`,
    meanDifference: (bore) => `Mittlerer Unterschied zu ${bore}`,
    limits: {
      wear: (size) => `Verschleißgrenze ${size}`,
      max: (size) => `größtes Neumaß ${size}`,
      min: (size) => `kleinstes Neumaß ${size}`,
      gradeMax: (grade, size) => `größtes Maß der Größenklasse ${grade} ${size}`,
      gradeMin: (grade, size) => `kleinstes Maß der Größenklasse ${grade} ${size}`,
      minNotJudged: (size) => `kleinstes Neumaß ${size}, neben einer Verschleißgrenze nicht beurteilt`,
      shape: (microns) => `Grenzwert ${microns}`,
      share: {
        bore: (microns, share, size) => `Grenzwert ${microns} = ${share} × ${size}`,
        travel: (microns, share, travel) => `Grenzwert ${microns} = ${share} × ${travel} Hub`,
      },
      smallestOf: (limit, count) => `${limit}, der kleinste von ${count} angegebenen`,
      noTravel: 'ein Grenzwert hängt vom Hub ab: tragen Sie ihn bei den Grenzmaßen ein',
      none: 'kein Grenzmaß eingetragen',
    },
    chance: {
      inside: (chances) => `${chances} innerhalb`,
      above: (chances) => `${chances} darüber`,
      below: (chances) => `${chances} darunter`,
      even: 'ob innerhalb oder nicht, ist etwa gleich wahrscheinlich',
    },
    leans: { inside: 'eher innerhalb', above: 'eher darüber' },
    between: (larger, smaller) => `größer bei ${larger}; kleiner bei ${smaller}`,
    meanOf: (axes) => (axes === 1 ? 'eine Achse' : `Mittel von ${axes} Achsen`),
    stationsBoth: (count) =>
      count === 1 ? 'eine Messstelle, die beide haben' : `${count} Messstellen, die beide haben`,
    largestRead: 'der größte gemessene, keine Obergrenze',
    asMade: (microns) => `zwei neue Bohrungen können von der Fertigung her um ${microns} verschieden sein`,
    madeSo: {
      beyond:
        'mehr, als zwei neue Bohrungen verschieden sein können, also kommt es nicht allein von der Fertigung',
      within:
        'nicht mehr, als zwei neue Bohrungen verschieden sein können: sie können so gefertigt worden sein',
    },
    clampingsApart: (one, other) =>
      `verschieden gemessen (${one} und ${other}): Schrauben verformen eine Bohrung, also ist das kein Verschleiß`,
    otherRules: 'Nach anderen Regeln',
    notYet: 'noch nicht',
    why: {
      'no-readings': 'noch keine Ablesungen außerhalb eines Randes ohne Ringlauf',
      'one-axis-at-every-level': 'braucht eine zweite Achse auf einer Ebene',
      'one-level-on-every-axis': 'braucht eine zweite Ebene auf einer Achse',
      'axes-not-named': 'nennen Sie bei den Grenzmaßen die Achsen X und Y des Werkstatthandbuchs',
      'named-axis-not-measured':
        'braucht Ablesungen auf den Achsen X und Y, die bei den Grenzmaßen genannt sind',
      'no-common-axis': 'braucht eine Achse, die oben und unten gemessen ist',
      'three-contacts-see-no-oval': 'drei Messbolzen messen das Mittel einer Ebene und sehen kein Oval',
    },
    point: (name) => `Auf der Wand zeigen: ${name}`,
    barLabel: (low, high, limit) => `von ${low} bis ${high}, Grenze ${limit}`,
  },
  notes: {
    title: 'Was diese Ablesungen nicht zeigen können',
    cannotProve: (doubt, needed) =>
      `Dieses Messgerät kann innerhalb dieser Spanne nichts nachweisen: Es ist auf ${doubt} genau. Nötig wäre ${needed}, und auch das reicht nur in der Mitte der Spanne.`,
    lessThanAnyGauge: 'weniger, als irgendein Innenmessgerät erreicht',
    belowNew: (place) =>
      `Bei ${place} ist die Bohrung zweifelsfrei kleiner als das kleinste Neumaß. Prüfen Sie Ablesung, Größenklasse und Grenzmaß; auf einer beschichteten Wand kann es angeriebenes Metall vom Kolben sein.`,
    blocked: (place, by) =>
      `Bei ${place} im Weg: ${by}. Die Ablesung bleibt gespeichert, zählt aber in keinem Urteil, bis Sie bestätigen, dass beide Messbolzen auf Metall standen.`,
    soakedApart: (bore, standard, reference) =>
      `Erfasst sind für die Bohrung ${bore} und für das Einstellnormal (${standard}) ${reference}, obwohl beide bis zum Temperaturausgleich nebeneinander lagen. Beides zugleich kann nicht stimmen; der Unterschied geht, wie er erfasst ist, in jedes Maß ein.`,
    temperatureDecides: {
      inside: (place, doubt, without) => temperatureKeepsOpen(place, doubt, without, 'innerhalb'),
      above: (place, doubt, without) => temperatureKeepsOpen(place, doubt, without, 'darüber'),
      below: (place, doubt, without) => temperatureKeepsOpen(place, doubt, without, 'darunter'),
    },
    largeCorrection: (correction, half) =>
      `Die Temperaturkorrektur, ${correction}, ist größer als die halbe Spanne zwischen den Grenzmaßen (${half}). Messen Sie näher bei 20 °C.`,
    apart: {
      warmer: (kelvin) => `Die Bohrung war ${kelvin} K wärmer als ${apartAdvice}`,
      colder: (kelvin) => `Die Bohrung war ${kelvin} K kälter als ${apartAdvice}`,
    },
    evenLobes:
      'Zwei Messbolzen sehen nur Formen mit einer geraden Zahl von Bögen: Eine dreibogige Form bleibt unbemerkt. Sie können nicht sagen, welche der beiden Wände verschlissen ist; beide sind gleich gezeichnet.',
    twoAxes: (between) =>
      `Zwei Achsen können ein Oval übersehen, das zwischen ihnen liegt, und setzen ihm keine Obergrenze. Eine Ablesung bei ${between} würde es zeigen.`,
    oneAxis: 'Eine Achse zeigt nichts von einem Oval. Messen Sie eine zweite quer dazu.',
    gaps: (gaps) => `Hier hat niemand gemessen: ${gaps}.`,
    gap: (from, to) => `von ${from} bis ${to}`,
    moreGaps: (count) => (count === 1 ? 'in einer weiteren Lücke' : `in ${count} weiteren Lücken`),
    notRead: (places) => `Noch nicht gemessen: ${places}.`,
    outOfReach: (places) => `Für das Messgerät nicht erreichbar, dort hat also niemand gemessen: ${places}.`,
    places: (shown, more) => (more > 0 ? `${shown.join('; ')}; und ${more} weitere` : shown.join('; ')),
    lengthNotKnown: (depth) =>
      `Die Länge der Bohrung ist nicht bekannt: Sie ist bis ${depth} gezeichnet, 10 mm über die tiefste Ebene oder Spur hinaus.`,
    differenceOfDiameters:
      'Unrundheit und Konizität sind hier Unterschiede von Durchmessern. Rundheit und Zylindrizität auf einer Zeichnung sind Unterschiede von Radien: halb so viel bei einem einfachen Oval oder einem einfachen Kegel.',
    threeContacts:
      'Drei Messbolzen messen das Mittel einer Ebene: Ein Oval bleibt unbemerkt, die Unrundheit sagt hier also nichts, und „innerhalb“ gilt nur für das Mittel.',
    threeContactsBounded:
      'Drei Messbolzen messen das Mittel einer Ebene. Ablesungen mit zwei Messbolzen von derselben Gelegenheit zeigen, dass das Oval auf jeder Ebene zu klein ist, um das Urteil zu ändern.',
    uncertainty: 'Der wahre Durchmesser liegt in 95 von 100 solchen Fällen innerhalb von ± um seine Zahl.',
  },
  cautions: {
    title: 'Bevor Sie entscheiden',
    manual:
      'Das Werkstatthandbuch für diesen Motor hat das letzte Wort, und was den Ausschlag gibt, sollte sich eine Fachkraft für Motoreninstandsetzung ansehen.',
    surface:
      'Zahlen allein entscheiden nicht: Ein Kratzer oder ein Grat, an dem der Fingernagel hängen bleibt, Narben im Ringlauf oder ein Riss können eine maßhaltige Bohrung unbrauchbar machen.',
    surfacePlated:
      'Zahlen allein entscheiden nicht: Blankes Aluminium, Abplatzungen, ein Kratzer, an dem der Fingernagel hängen bleibt, oder Narben im Ringlauf können eine maßhaltige Bohrung unbrauchbar machen.',
    warm: 'Messen Sie nie ein Teil, das vom Lauf, vom Waschen oder vom Honen noch warm ist.',
    walls: {
      'plated-aluminium':
        'Eine beschichtete Wand lässt sich nicht auf Übermaß aufbohren oder honen: Sie wird neu beschichtet oder ersetzt.',
      'aluminium-silicon':
        'Diese Wand braucht ihre eigene Endbearbeitung: Gewöhnliches Honen verdirbt sie. Überlassen Sie das einem Betrieb, der diese Art bearbeitet.',
    },
    provisional:
      'Entscheiden Sie über keinen Motor nach einem vorläufigen Urteil: Erfassen Sie, was fehlt, und sehen Sie dann noch einmal nach.',
  },
}

const apartAdvice =
  'Ring oder Bügelmessschraube. Über 3 K hat ein Teil selten überall dieselbe Temperatur: Lassen Sie beide nebeneinander liegen und messen Sie noch einmal.'

function temperatureKeepsOpen(place: string, doubt: string, without: string, proven: string): string {
  return `Allein die Unsicherheit der Temperaturen hält das Urteil offen: Ohne sie wären es bei ${place} statt ${doubt} nur ${without}, und dieselben Ablesungen würden „${proven}“ nachweisen. Lassen Sie Bohrung und Ring oder Bügelmessschraube bis zum Temperaturausgleich nebeneinander liegen, messen Sie beide mit einem Thermometer, und messen Sie dann noch einmal.`
}

/** The first few, and how many more there are. */
function listed(names: readonly string[]): string {
  const most = 6
  const shown = names.slice(0, most).join(', ')
  return names.length > most ? `${shown} und ${names.length - most} weitere` : shown
}
