import type { scanTable as english } from '../english/scan-table'
import type { Texts } from '../texts'

/** A file of radii before it is taken: what it holds, and what is wrong in it, in German. */
export const scanTable: Texts<typeof english> = {
  reading: 'Die Abtastung wird gelesen …',
  progress: (percent) => `${percent} % der Datei`,
  lead: 'Prüfen Sie, was in der Datei steht. Übernommen wird erst, wenn Sie es sagen.',
  notRead: {
    empty: 'In dieser Datei steht nichts.',
    'no-text':
      'Das ist keine Textdatei. Speichern Sie die Abtastung als CSV oder als Text mit Tabulatoren und öffnen Sie dann diese Datei.',
    'too-large':
      'In dieser Datei stehen mehr als eine Million Radien. Lassen Sie jede zweite Ebene oder jeden zweiten Winkel weg.',
    'commas-only':
      'Die Kommas darin könnten Zellen trennen oder Dezimalkommas sein. Sagen Sie, welches Zeichen die Zellen trennt.',
    'no-heads':
      'Keine Zeile benennt, was in den Spalten steht. Nehmen Sie entweder eine Liste mit den Spaltennamen „depth mm, angle °, radius µm“, eine Zeile für jeden Radius, oder eine Tabelle mit „depth mm / radius µm“ in der ersten Zelle, den Winkeln quer und einer Zeile für jede Tiefe.',
    diameters:
      'Die Spaltennamen sprechen von Durchmessern. Eine Abtastung besteht aus Radien: wie weit eine Wand von der Achse des Tasters liegt.',
    'no-values': 'Kein Radius in dieser Datei ließ sich lesen.',
    'too-few-angles': 'In dieser Datei stehen weniger als drei Winkel: Durch sie geht kein bestimmter Kreis.',
    'too-many-places':
      'Tiefen und Winkel ergeben mehr als eine Million Stellen. Lassen Sie von einem davon etwas weg.',
    'angles-differ': (line, depth) =>
      `Die Ebenen wurden nicht bei denselben Winkeln gemessen: In Zeile ${line} steht ein Winkel, der der Ebene bei ${depth} fehlt. Bringen Sie zuerst alle Ebenen auf dieselben Winkel.`,
  },
  open: {
    'value-unit': 'Die Spaltennamen sagen nicht, in welcher Einheit die Radien sind. Sagen Sie es.',
    'depth-unit': 'Die Spaltennamen sagen nicht, in welcher Einheit die Tiefen sind. Sagen Sie es.',
    decimal:
      'In manchen Zahlen steht ein Komma, in manchen ein Punkt. Sagen Sie, welches das Dezimalzeichen ist.',
  },
  problems: {
    letters: (text) =>
      `In „${text}“ stehen Buchstaben. Ein Radius ist eine Zahl; lassen Sie die Zelle leer, wo ein Schlitz ist.`,
    'other-sign': (text) => `„${text}“ ist keine Zahl.`,
    'inner-space': (text) => `In „${text}“ steht ein Leerzeichen.`,
    'sign-place': (text) => `In „${text}“ steht ein Vorzeichen, wo keines hingehört.`,
    'both-marks': (text) =>
      `In „${text}“ stehen Komma und Punkt. Schreiben Sie die Zahl ohne Tausenderzeichen.`,
    'several-marks': (text) => `In „${text}“ steht mehr als ein Dezimalzeichen.`,
    'too-long': (text) => `„${text}“ ist länger als jede Zahl eines Tasters.`,
    'too-large': (text) => `„${text}“ ist größer als alles, was hier gemessen wird.`,
    'other-mark': (text) => `„${text}“ hat ein anderes Dezimalzeichen als der Rest der Datei.`,
    'mark-open': (text) => `„${text}“: Noch hat niemand gesagt, ob Komma oder Punkt das Dezimalzeichen ist.`,
    'no-depth': () => 'Es steht keine Tiefe da.',
    'no-angle': () => 'Es steht kein Winkel da.',
    'radius-too-large': (text) => `„${text}“ ist ein Radius von mehr als 2 m. Stimmt die Einheit?`,
    'cells-missing': (text, other) =>
      `Diese Zeile hat ${text} Zellen, die Kopfzeile ${other}. Schreiben Sie leere Zellen, wo ein Schlitz ist.`,
    'cells-left-over': (text, other) => `Diese Zeile hat ${text} Zellen, die Kopfzeile ${other}.`,
    'read-twice': (_text, other) =>
      `Die Stelle steht auch in Zeile ${other}, mit einer anderen Zahl. Genommen wird die in Zeile ${other}.`,
    'quote-left-open': () => 'Ein Anführungszeichen in dieser Zeile wird nie geschlossen.',
  },
  place: (line, column) => `Zeile ${line}, Spalte ${column}`,
  line: (line) => `Zeile ${line}`,
  moreProblems: (count) => `und ${count} weitere`,
  problemsTitle: (count) => `Nicht lesbar: ${count}`,
  problem: 'eine Stelle',
  manyProblems: (count) => `${count} Stellen`,
  problemsKept:
    'Alles andere wurde gelesen. Diese Stellen bleiben leer, wenn Sie die Abtastung so übernehmen.',
  labels: {
    separator: 'Zellen sind getrennt durch',
    decimal: 'Dezimalzeichen',
    depthUnit: 'Einheit der Tiefen',
    valueUnit: 'Einheit der Radien',
    sign: 'Eine größere Zahl liegt',
    turn: 'Winkel laufen, von der Zylinderoberkante gesehen,',
    name: 'Name',
    date: 'Datum',
    hours: 'Betriebsstunden',
    cleaning: 'Aufgenommen',
  },
  units: { mm: 'mm', um: 'µm', inch: 'Zoll', 'ten-thousandth': '0,0001 in' },
  signs: { outward: 'weiter von der Achse weg', inward: 'näher an der Achse' },
  turns: { clockwise: 'im Uhrzeigersinn', 'counter-clockwise': 'gegen den Uhrzeigersinn' },
  cleaning: { before: 'vor dem Reinigen', after: 'nach dem Reinigen' },
  cleaningOpen: 'nicht gesagt',
  choose: 'Bitte angeben',
  rows: {
    levels: 'Ebenen',
    angles: 'Winkel',
    values: 'Radien',
    missing: 'Leere Stellen',
    range: 'Bereich',
    layout: 'Anordnung',
  },
  layouts: {
    list: 'eine Liste, eine Zeile für jeden Radius',
    table: 'eine Tabelle, Tiefe nach unten und Winkel nach rechts',
  },
  levels: (count, from, to) => `${count}, von ${from} bis ${to}`,
  angles: (count, step) => `${count}, im Abstand von ${step}`,
  anglesUneven: (count, least, most) => `${count}, im Abstand von ${least} bis ${most}`,
  missing: (count, share) => `${count} (${share} %): gelten als Schlitze oder nicht gemessen`,
  range: (least, most) => `${least} bis ${most}`,
  closing: (count, farthest) =>
    `Abschließende Ablesungen nach einer ganzen Umdrehung, weggelassen: ${count}. Sie weichen höchstens ${farthest} von der ersten ab: So weit hat sich der Taster oder das Teil bewegt.`,
  repeated: (count) => `Stellen, die mit derselben Zahl zweimal in der Datei stehen: ${count}.`,
  map: 'Die Abtastung, wie sie in der Datei steht, abgewickelt: Winkel nach rechts, Tiefe nach unten. Dunkel ist näher an der Achse, hell weiter weg; schraffiert ist leer.',
  noSize:
    'Eine Abtastung zeigt Form und kein Maß: Der Taster zählt von seiner eigenen Null aus. Ablesungen eines Innenmessgeräts an denselben Stellen geben ihr eines.',
  take: (bore) => `Abtastung in Bohrung ${bore} übernehmen`,
  takeWith: (count, bore) => `In Bohrung ${bore} übernehmen, leer bleiben: ${count}`,
  newJob: 'Einen neuen Auftrag damit beginnen',
  taken: (bore) => `In Bohrung ${bore} übernommen.`,
  asReadings: 'Das sind Ablesungen quer durch die Bohrung',
  refusedJob: 'Die Abtastung lässt sich nicht in diesen Auftrag übernehmen:',
  notKept: (why) => `Die Abtastung ist nicht gespeichert. ${why}`,
  change: (name) => `Abtastung ${name}`,
}
