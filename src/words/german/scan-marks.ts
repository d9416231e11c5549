import type { scanMarks as english } from '../english/scan-marks'
import type { Texts } from '../texts'

/** What stands out in a scan, in German. */
export const scanMarks: Texts<typeof english> = {
  title: 'Auffälligkeiten in der Abtastung',
  inScan: (bore, scan) => `Bohrung ${bore}, Abtastung ${scan}`,
  notLooked: 'Ihre Radien sind nicht in dieser Datei, oder es lässt sich keine Achse in sie legen.',
  working: 'Es wird gesucht, was hervortritt …',
  none: (least) =>
    `Nichts tritt aus der glatten Form hervor. Eine Auffälligkeit von drei Winkeln mal drei Ebenen hätte sich ab etwa ${least} gezeigt.`,
  lead: (least) =>
    `Was im Radius aus der glatten Form hervortritt, über das Rauschen hinaus; kleine Auffälligkeiten zeigen sich ab etwa ${least}.`,
  lone: (count) =>
    count === 1
      ? 'Ein Wert tritt für sich allein hervor: in der Regel Schmutz an der Wand oder am Taster.'
      : `${count} Werte treten für sich allein hervor: in der Regel Schmutz an der Wand oder am Taster.`,
  numbered: (number, shape) => `${number} ${shape}`,
  shapes: { streak: 'Streifen in Hubrichtung', band: 'Band ringsum', patch: 'Fleck' },
  line: 'schmale Linie',
  within: (number) => `entlang Auffälligkeit ${number}`,
  signs: { smaller: 'kleiner', larger: 'größer' },
  height: (sign, height, doubt) => `im Radius um ${height} ${doubt} ${sign}`,
  size: (across, along) => `${across} breit, ${along} lang`,
  onBridge: (from, to) => `auf dem Steg zwischen zwei Schlitzen, ${from} bis ${to}`,
  onBridgeNamed: (one, other) => `auf dem Steg zwischen „${one}“ und „${other}“`,
  besideOpening: 'entlang der Kante eines Schlitzes, wo sich auch eine Fase zeigt',
  text: (title, place, parts) => `${title}: ${[place, ...parts].join('; ')}`,
  record: 'Erfassen',
  recordTitle: (title) => `Als Oberflächenbefund erfassen: ${title}`,
  recorded: 'erfasst',
  change: 'Auffälligkeit der Abtastung erfasst',
  note: (height) => `In der Abtastung ${height}.`,
  more: (count) => (count === 1 ? 'Die eine weitere zeigen' : `Die ${count} weiteren zeigen`),
  patterns: {
    title: 'Wie sie liegen: etwas zum Nachsehen',
    lead: 'Ein Muster ist kein Nachweis einer Ursache. Übliche Ursachen sind genannt, damit man nach ihnen sehen kann.',
    fourCorners: (at, pin) =>
      `Vier Ecken, bei ${at}: zu beiden Seiten der Bolzenaugen, wenn der Kolbenbolzen etwa bei ${pin} liegt.`,
    bothSides: (one, other) => `Auf beiden Seiten, etwa bei ${one} und ${other}.`,
    oneSide: (at) => `Auf einer Seite, etwa bei ${at}.`,
    allRound: 'Rings um die Bohrung.',
    proudBridge: (where) => `Vorstehender Steg: ${where}.`,
    relievedBridge: (where) => `Zurückliegender Steg: ${where}.`,
    portsNamed: (one, other) => `zwischen „${one}“ und „${other}“`,
    portsAt: (from, to) => `zwischen den zwei Schlitzen von ${from} bis ${to}`,
    band: 'Ein Band rings um die Bohrung.',
    causes: {
      'four-corners':
        'Üblich bei vier Ecken: zu wenig Laufspiel des Kolbens, zu schnell warmgelaufen, überhitzt, gewachsene Bolzenaugen. Prüfen Sie Laufspiel, Kühlung und wie eingefahren wurde.',
      'both-sides':
        'Üblich bei beiden Seiten: zu wenig Laufspiel, vor allem bald nach einer Überholung, oder eine Bohrung, die von ihren Schrauben unrund gezogen wird. Prüfen Sie das Laufspiel und die Bohrung in verschraubtem Zustand.',
      'one-side':
        'Üblich bei einer Seite: auf der Druckseite an einer Stelle weggebliebenes Öl, verstopfte Rippen oder fehlende Kühlung; nur auf der Auslassseite zu mager, zu heiß oder Ölkohle; unten auf der Einlassseite Staub am Filter vorbei; lange dünne Linien Kraftstoff, der das Öl abgewaschen hat. Prüfen Sie, welche Seite es ist.',
      'all-round':
        'Üblich bei Spuren ringsum: kein Öl, oder Kraftstoff ohne Öl. Prüfen Sie, wie geschmiert wird.',
      'bridge-smaller':
        'Üblich bei einem Steg, der vorsteht: Er dehnt sich beim Erwärmen nach innen, er wurde nie freigearbeitet, oder das Gemisch war zu mager. Sehen Sie nach, was das Handbuch über das Freiarbeiten sagt.',
      'bridge-larger':
        'Ein Steg, der zurückliegt, kann absichtlich freigearbeitet sein oder verschlissen. Sehen Sie nach, was das Handbuch dazu sagt.',
      band: 'Üblich bei einem Band: eine Stufe, wo die Ringe umkehren, Rost, wo ein Ring oder Wasser stand, oder ein Ring, der klemmte. Sehen Sie nach, wie tief es liegt.',
    },
  },
  sign: {
    plated:
      'Auf einer beschichteten Wand kann, was kleiner gemessen ist, angeriebenes Metall des Kolbens sein, und was darin größer gemessen ist, eine Riefe. Lassen Sie die Wand reinigen und tasten Sie sie dann noch einmal ab, bevor etwas entschieden wird.',
    other:
      'Was kleiner gemessen ist, sitzt auf der Wand oder ist nie verschlissen; was größer gemessen ist, ist verschlissen oder hat Riefen. Lassen Sie angeriebenes Metall entfernen und tasten Sie dann noch einmal ab, bevor etwas entschieden wird.',
    care: 'Was Aluminium abträgt, greift auch einen Aluminiumzylinder an und verätzt Haut und Augen. Das Reinigen ist Sache von jemandem, der die Wand kennt: Halten Sie sich an das Werkstatthandbuch.',
  },
  cleaned: {
    title: 'Vor und nach dem Reinigen',
    against: (before, after) => `„${before}“ gegen „${after}“.`,
    turned: (degrees) =>
      `Die Schlitze der zweiten Abtastung liegen ${degrees} weiter im Uhrzeigersinn, deshalb wird nichts verglichen. Geben Sie beiden Abtastungen dieselben 0°.`,
    taken: 'Nichts an der Wand zeigt, ob beide Abtastungen bei denselben 0° begannen: Das ist angenommen.',
    fates: {
      gone: 'ist weg: Es haftete an oder lag lose',
      less: 'ist weniger als zuvor: Ein Teil davon haftete an',
      'as-before': 'ist geblieben, wie es war',
      more: 'ist mehr als zuvor',
      'turned-larger': 'ist jetzt größer gemessen: Unter dem, was anhaftete, ist eine Riefe',
      'turned-smaller': 'ist jetzt kleiner gemessen: Etwas liegt auf der Wand',
      'not-seen': 'lässt sich nicht vergleichen: Die zweite Abtastung hat dort keinen Wert',
    },
    groove: 'ist geblieben: eine Riefe, oder Verschleiß',
    figures: (before, after) => `${before} davor, ${after} danach`,
    line: (title, place, fate, figures) => `${title}, ${place}: ${fate} (${figures}).`,
    fresh: (titles) => `Nur in der zweiten Abtastung: ${titles}.`,
  },
}
