import type { plan as english } from '../english/plan'
import type { Texts } from '../texts'

/** Where a bore can and should be measured, and how often, in German. */
export const plan: Texts<typeof english> = {
  plan: {
    title: 'Messplan',
    lead: 'Was möchten Sie wissen? {question}',
    question: 'Was die Ablesungen zeigen sollen',
    questions: {
      size: 'das Maß, gegen Grenzmaße',
      'out-of-round': 'die Unrundheit',
      bolts: 'eine viereckige Form, von Schrauben',
      'along-depth': 'Konizität und Form entlang der Tiefe',
      wear: 'den Verschleiß, gegen den Rand ohne Ringlauf',
    },
    unknown: {
      'no-length':
        'Ein Messplan braucht die Länge der Bohrung: Tragen Sie sie im Satz über die Bohrung ein. Ringlauf, Schlitze und Gürtel machen ihn besser.',
      'too-short': 'Die Bohrung ist zu kurz: Ein Messbolzen dieser Breite kann nicht darin stehen.',
      'all-barred':
        'Nirgends in dieser Bohrung treffen alle Messbolzen auf Metall: Schlitze oder Gürtel sind jeder Achse im Weg.',
      'three-contacts-see-no-oval':
        'Drei Messbolzen lesen das Mittel einer Ebene und sehen kein Oval. Diese Frage braucht ein Messgerät mit zweien.',
      'radial-probe':
        'Ein Taster an einer Spindel liest ringsum. Dieser Messplan ist für Messgeräte, die quer in der Bohrung stehen.',
    },
    axes: {
      size: 'Zwei im rechten Winkel verlangen die Handbücher. Ein Oval, das zwischen ihnen liegt, würde sich nicht zeigen; für die Unrundheit braucht es drei.',
      'out-of-round':
        'Drei sind das Wenigste, was Größe und Richtung eines Ovals ergibt. Eine viereckige Form sähe dann immer noch wie ein Oval aus.',
      bolts:
        'Sechs finden eine viereckige Form, wie sie auch liegt, neben einem Oval, und eine Achse bleibt übrig. Vier würden sie in einer Richtung verfehlen.',
      'along-depth': 'Die Konizität wird Achse für Achse beurteilt, auf zweien im rechten Winkel.',
      wear: 'Zwei im rechten Winkel, denn der Verschleiß ist quer und längs selten gleich.',
    },
    axesAre: (axes, why) => `Achsen ${axes}: ${why}`,
    oneAxisIs: (axis) =>
      `Achse ${axis}: Drei Messbolzen lesen das Mittel einer Ebene auf einmal. Ablesungen mit zwei Messbolzen würden zeigen, ob sie oval ist.`,
    keeps: 'So viele lassen die bestehen, die das Handbuch nennt oder die schon abgelesen sind.',
    turned: (angle) => `Um ${angle} von vorn gedreht, damit Schlitze mehr Ebenen vollständig lassen.`,
    heads: { depth: 'Tiefe', axes: 'Achsen', why: 'Warum' },
    all: 'alle',
    only: (axes) => `nur ${axes}`,
    reasons: {
      'upper-land': 'Rand über dem Ringlauf: behält das ursprüngliche Maß und zeigt eine falsche Einstellung',
      'lower-land': 'Rand unter dem Ringlauf: behält das ursprüngliche Maß',
      'top-of-travel': 'knapp unter dem oberen Ende des Ringlaufs, wo der Verschleiß meist am größten ist',
      'bottom-of-travel': 'knapp über dem unteren Ende des Ringlaufs',
      'near-top': 'nahe am oberen Ende',
      'near-bottom': 'nahe am unteren Ende',
      middle: 'Mitte',
      'upper-quarter': 'ein Viertel des Weges nach unten: wie die Wand dazwischen verläuft',
      'lower-quarter': 'drei Viertel des Weges nach unten: wie die Wand dazwischen verläuft',
      read: 'schon abgelesen',
      'read-before': 'bei der Messung davor abgelesen: Verschleiß zählt an derselben Stelle',
    },
    portReasons: {
      'above-ports': (names) => `knapp darüber (${names}), wo die Wand noch ganz ist`,
      'below-ports': (names) => `knapp darunter (${names}), wo die Wand wieder ganz ist`,
      'beside-ports': (names) => `daneben (${names}), was dort zu erreichen ist`,
    },
    others: (first, more) => `${first} und ${more} weitere`,
    inTheWay: (names) => `den übrigen im Weg: ${names}`,
    tooFewForOval: 'zu wenige für ein Oval',
    barred: (from, to, names) =>
      `Zwischen ${from} und ${to} hat keine Achse unter jedem Messbolzen Metall: ${names}.`,
    barredMiddle: (from, to, names) =>
      `Die Mitte dieser Bohrung lässt sich nicht messen: Zwischen ${from} und ${to} hat keine Achse unter jedem Messbolzen Metall (${names}). Die Ebenen darüber und darunter sagen nichts über sie.`,
    noTravel:
      'Der Ringlauf ist nicht erfasst, deshalb lässt sich keine Ebene in einen Rand ohne Ringlauf legen: Tragen Sie ihn im Satz über die Bohrung ein.',
    shortLand: {
      upper: (height) => `Der Rand über dem Ringlauf, ${height} hoch, ist zu kurz für einen Messbolzen.`,
      lower: (height) => `Der Rand unter dem Ringlauf, ${height} hoch, ist zu kurz für einen Messbolzen.`,
    },
    measurable: 'Alles, was sich messen lässt',
    band: (from, to, axes) => `${from} bis ${to}: ${axes}`,
    everyAxis: 'jede Achse',
    noAxis: (names) => `keine Achse (${names})`,
    range: (from, to) => `${from} bis ${to}`,
    take: 'Diesen Messplan nehmen',
    taken: 'Das Raster darunter hat diese Ebenen und Achsen.',
    takenKeeps: 'Ebenen und Achsen mit Ablesungen bleiben.',
    change: 'Messplan',
    repeats: {
      sentence: 'Gesucht ist {quantity}, auf ± {wanted} µm genau:',
      label: 'Gewünschte Unsicherheit, ± µm',
      quantities: {
        size: 'ein Durchmesser',
        'out-of-round': 'der Unterschied zweier Durchmesser einer Ebene',
        bolts: 'der Unterschied zweier Durchmesser einer Ebene',
        'along-depth': 'der Unterschied zweier Ebenenmittel',
        wear: 'der Verschleiß an einer Messstelle',
      },
      notAbove: 'Geben Sie eine Unsicherheit über 0 an.',
      once: (doubt) => `Eine Ablesung je Messstelle genügt (${doubt}).`,
      several: (count, doubt, once) =>
        `${count} Ablesungen je Messstelle (${doubt}; aus einer allein ${once}).`,
      ask: (count) => (count === 1 ? 'Eine Ablesung verlangen' : `${count} Ablesungen verlangen`),
      tooMany: (count, once) =>
        `Dafür bräuchte es ${count} Ablesungen je Messstelle, mehr, als irgendwer nimmt (aus einer allein ${once}).`,
      never: (least) =>
        `Das erreicht hier keine Anzahl von Ablesungen. Was sie nicht kleiner machen, lässt ${least} übrig.`,
      slope: 'Wo die Wand eine Stufe hat, etwa an einem Grat, kommt die Unsicherheit der Tiefe noch dazu.',
      remedies: {
        'set-by-ring': 'Mit einem Ring eingestellt',
        'record-what-is-missing': 'Angenommenes gemessen und aufgeschrieben',
        'know-the-temperatures': 'Temperaturen doppelt so genau bekannt',
        'finer-gauge': 'Ein Messgerät mit Messuhr, auf 0,001 mm abgelesen',
        'all-together': 'All das zusammen',
      },
      suffices: (what, count) =>
        count === 1
          ? `${what}: Eine Ablesung würde genügen.`
          : `${what}: ${count} Ablesungen würden genügen.`,
      atBest: (what, least) => `${what}: bestenfalls ${least}.`,
      nothing:
        'Nichts, was von diesem Messgerät und dieser Einstellung bekannt ist, würde daran viel ändern.',
    },
  },
}
