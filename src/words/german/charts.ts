import type { charts as english } from '../english/charts'
import type { Texts } from '../texts'

export const charts: Texts<typeof english> = {
  charts: {
    views: {
      label: 'Flache Ansichten der Wand',
      map: 'Karte',
      section: 'Schnitt',
      profile: 'Profil',
      hours: 'Stunden',
    },
    between: 'Was zwischen den Ablesungen gezeichnet ist, ist nicht gemessen.',
    save: 'Als SVG speichern',
    saveTitle: 'Diese Ansicht als Zeichnung speichern, die in jeder Größe scharf bleibt',
    saved: (name) => `Gespeichert als ${name}`,
    notSaved: 'Das Speichern ging nicht. Versuchen Sie es noch einmal, oder machen Sie ein Bildschirmfoto.',
    noReadings: 'Diese Ansicht erscheint mit der ersten Ablesung.',
    reading: (place, size) => `${place}: ${size}`,
    uncounted: (reading) => `${reading}, in keinem Urteil`,
    above: (reading) => `${reading}, über dem Grenzmaß`,
    below: (reading) => `${reading}, unter dem Grenzmaß`,
  },
  section: {
    title: (depth) => `Schnitt in ${depth} Tiefe`,
    list: (depth) =>
      `Ablesungen in ${depth} Tiefe. Pfeil links und rechts gehen rundum, auf und ab zu einer anderen Ebene.`,
    above: 'Ebene darüber',
    below: 'Ebene darunter',
    at: (depth) => `${depth} tief`,
    mean: (size) => `Mittel ${size}.`,
    ovalAcross: (oval, axis, doubt) => `Oval ${oval}, lange Achse ${axis} ± ${doubt}.`,
    ovalNone: (most) => `Kein Oval tritt hervor; höchstens ${most}.`,
    ovalThree: 'Drei Achsen können ein Oval nicht von einer vierbogigen Form unterscheiden.',
    ovalAtLeast: (least) => `Oval von ${least} oder mehr; zwei Achsen lassen offen, wie viel mehr.`,
    ovalTwoUnseen:
      'Zwei Achsen zeigen kein sicheres Oval und können eines übersehen, das zwischen ihnen liegt.',
    oneAxis: 'Eine Achse zeigt nichts von einem Oval.',
    land: 'Rand ohne Ringlauf: Hier laufen die Ringe nicht.',
    notRead: 'Auf dieser Ebene hat niemand gemessen.',
    twoContacts:
      'Auf beiden Seiten gleich gezeichnet: Zwei Messbolzen können nicht sagen, welche Wand verschlissen ist.',
    threeContacts:
      'Drei Messbolzen messen das Mittel einer Ebene: ein runder Ring, unter jedem Messbolzen gemessen, und kein Oval.',
  },
  profile: {
    title: (axis) => `Profil entlang ${axis}`,
    list: (axis) =>
      `Ablesungen entlang ${axis}. Pfeil auf und ab gehen die Tiefe entlang, links und rechts zu einer anderen Achse.`,
    before: 'Achse davor',
    after: 'Achse danach',
    at: (axis) => `Achse ${axis}`,
    largest: (size, depth) => `Größter ${size} bei ${depth}.`,
    smallest: (size, depth) => `Kleinster ${size} bei ${depth}.`,
    alone: (size, depth) => `Eine Ablesung, ${size} bei ${depth}.`,
    notRead: 'Entlang dieser Achse hat niemand gemessen.',
    travel: (from, to) =>
      `Die Ringe laufen von ${from} bis ${to}; die Wand außerhalb davon ist Rand ohne Ringlauf.`,
    ringTravel: 'Ringlauf',
    doubt: 'Balken und Schattierung: ± U (95 %). Unterbrochen, wo niemand gemessen hat.',
    round: 'Drei Messbolzen messen das Mittel einer Ebene: Jede Achse zeigt dieses Mittel.',
  },
  savedChart: {
    fileParts: { map: 'Karte', section: 'Schnitt', profile: 'Profil', hours: 'Stunden' },
    map: 'Die Wand abgewickelt, Winkel quer, Tiefe nach unten.',
    drawn: (title, factor) => `${title}. ${factor}.`,
    lines: (step) => `Linien alle ${step} im Durchmesser.`,
    hours: 'Betriebsstunden quer, Maß nach oben in mm.',
    across: 'Maß quer in mm, Tiefe nach unten in mm.',
    marks:
      'Schraffiert: niemand hat gemessen. Gepunktet: zu knapp für ein Urteil. Scheiben: Ablesungen; Balken: ihr ± U (95 %).',
    mapMarks: 'Schraffiert: niemand hat gemessen. Gepunktet: zu knapp für ein Urteil. Scheiben: Ablesungen.',
  },
}
