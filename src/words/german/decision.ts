import type { decision as english } from '../english/decision'
import type { Texts } from '../texts'

/** What to do with a bore, why, how sure that is, and what would change it, in German. */
export const decision: Texts<typeof english> = {
  title: 'Was zu tun ist',
  why: 'Warum, und was es ändern würde',
  undecided: {
    'for-comparison': 'Keine Entscheidung: eine Bohrung zum Vergleich.',
    'earlier-survey': 'Keine Entscheidung nach einer früheren Messung: Die letzte entscheidet.',
    'no-readings': 'Noch keine Entscheidung: Es ist kein Maß gemessen.',
    'some-unread': 'Noch keine Entscheidung: Messstellen des Plans sind nicht abgelesen.',
    'land-alone': 'Noch keine Entscheidung: Wo die Ringe laufen, ist nichts abgelesen.',
    'no-limits': 'Noch keine Entscheidung: Weder ein Grenzmaß noch ein Laufspiel ist eingetragen.',
  },
  outcomes: {
    'run-on': {
      plain: 'Weiterlaufen lassen und wieder prüfen, sobald das Handbuch es verlangt.',
      at: (hours) => `Weiterlaufen lassen und spätestens bei ${hours} Betriebsstunden wieder prüfen.`,
      on: (hours, day) =>
        `Weiterlaufen lassen und spätestens bei ${hours} Betriebsstunden wieder prüfen, etwa am ${day}.`,
    },
    'clean-and-measure-again': 'Die Wand reinigen und noch einmal messen.',
    'measure-again-better': {
      all: 'Noch einmal messen, und besser.',
      at: (places) => `Noch einmal messen, und besser: ${places}.`,
    },
    'next-piston': {
      plain: 'Einen anderen Kolben suchen: Von denen auf der Liste ist keiner bekannt, der passt.',
      named: (piston) => `Den nächsten Kolben nehmen: ${piston}.`,
      grade: (grade) => `Den nächsten Kolben nehmen: einen für Größenklasse ${grade}.`,
    },
    hone: {
      plain: 'Innerhalb der Grenzmaße honen.',
      atMost: (microns) => `Innerhalb der Grenzmaße honen: höchstens ${microns} im Durchmesser.`,
    },
    'bore-oversize': {
      plain: 'Auf das nächste Übermaß aufbohren.',
      to: (oversize) => `Auf das nächste Übermaß aufbohren, ${oversize}.`,
    },
    're-plate': 'Die Wand neu beschichten lassen oder den Zylinder ersetzen.',
    'replace-or-sleeve': {
      plain: 'Ersetzen oder eine Laufbuchse einziehen lassen.',
      liner: 'Die Laufbuchse ersetzen.',
    },
  },
  short: {
    'run-on': 'weiterlaufen lassen',
    'clean-and-measure-again': 'reinigen und noch einmal messen',
    'measure-again-better': 'noch einmal messen, und besser',
    'next-piston': 'den nächsten Kolben nehmen',
    hone: 'innerhalb der Grenzmaße honen',
    'bore-oversize': 'auf das nächste Übermaß aufbohren',
    're-plate': 'neu beschichten lassen',
    'replace-or-sleeve': 'ersetzen oder eine Laufbuchse einziehen lassen',
  },
  better: (ways) => `Besser heißt: ${ways.join('; ')}.`,
  betters: {
    'slip-asked': 'die offene Rückfrage zu den Ablesungen beantworten oder dort noch einmal ablesen',
    'contact-changed':
      'das Messgerät neu einstellen, denn nach dem Einstellen wurde ein Messbolzen gewechselt',
    'no-setting-size': 'das Maß eintragen, auf das das Messgerät eingestellt war',
    'no-direction-test':
      'herausfinden und eintragen, in welche Richtung der Zeiger bei einer größeren Bohrung geht',
    'repeats-spread':
      'Wand und Messbolzen abwischen und das Messgerät schwenken, bis die Wiederholungen übereinstimmen',
    'drift-with-order':
      'Teil und Messgerät gleich warm werden lassen, denn die Ablesungen sind mit der Zeit gewandert',
    'zero-moved':
      'das Messgerät neu einstellen, denn seine Null ist weiter gewandert, als die Grenzmaße es vertragen',
    clean: 'die Wand bis auf das Metall reinigen und trocken wischen',
    'try-nail': 'den Fingernagel über die Spuren ziehen und eintragen, ob er hängen bleibt',
    'enter-ring-travel': 'eintragen, wo die Ringe laufen; das zeigt, ob die Löcher auf ihrem Weg liegen',
    'set-by-ring': 'das Messgerät mit einem Ring einstellen statt mit der Bügelmessschraube',
    'record-what-is-missing':
      'eintragen, was fehlt (Nullstellungen, Temperaturen, die Prüfung der Bügelmessschraube, die Art der Wand)',
    'repeat-three-times':
      'drei Ablesungen an jeder dieser Messstellen, das Messgerät dazwischen herausgenommen',
    'repeat-five-times':
      'fünf oder mehr Ablesungen an jeder dieser Messstellen, reihum, das Messgerät dazwischen herausgenommen',
    'finer-gauge':
      'ein feineres Messgerät, denn wie oft dieses dort auch abgelesen wird, seine Messuhr und seine Tiefe lassen mehr Unsicherheit übrig',
    'two-contacts': 'zwei Messbolzen statt dreien, die nur das Mittel einer Ebene lesen',
    'more-axes': 'zwei weitere Achsen um 45° versetzt',
    'enter-travel': 'den Hub eintragen, auf den ein Grenzwert der Konizität wartet',
    'measure-piston': 'den Kolben noch einmal messen, mit der Bügelmessschraube, die das Messgerät einstellt',
  },
  needs: {
    size: (doubt) => `Ein Maß mit einer Unsicherheit von ${doubt} würde es klären, wenn es gleich bleibt.`,
    shape: (doubt) =>
      `Ein Unterschied mit einer Unsicherheit von ${doubt} würde es klären, wenn er gleich bleibt.`,
  },
  sure: {
    same: (count) =>
      `Wie sicher: Von den wahren Maßen, die diese Ablesungen zulassen, führen ${count} von 100 zum selben Ergebnis.`,
    all: 'Wie sicher: Alle wahren Maße, die diese Ablesungen zulassen, führen zum selben Ergebnis.',
    besides: (others) => `Die übrigen: ${others}.`,
    ifKnown: (shares) => `Wären die Maße genau bekannt: ${shares}.`,
    share: (outcome, count) => `${outcome}, ${count} von 100`,
    almostAll: 'mehr als 99',
    hardlyAny: 'weniger als 1',
  },
  reasonsTitle: 'Warum',
  at: (figure, place) => `${figure} bei ${place}`,
  toRow: 'Die Zahlen dahinter zeigen',
  listOf: (title) => `${title}:`,
  scannedUncleaned: 'angeriebenes Metall, denn es gibt eine Abtastung von vor dem Reinigen und keine danach',
  worn: (share) => `Vom erlaubten Verschleiß verbraucht: ${share}.`,
  clearance: {
    one: (figure, doubt) => `${figure} ${doubt}`,
    range: (least, most) => (least === most ? most : `${least} bis ${most}`),
  },
  reasons: {
    surface: {
      ended: (what) => `An der Wand: ${what}. Das macht eine Bohrung unbrauchbar, welches Maß sie auch hat.`,
      marked: (what) =>
        `An der Wand: ${what}. Das kann eine Bohrung unbrauchbar machen, welches Maß sie auch hat.`,
      covered: (what) =>
        `An der Wand: ${what}. Das verdeckt, was darunter liegt; Maße, die darüber abgelesen sind, sind nicht die der Wand.`,
      'look-closer': (what) => `An der Wand: ${what}. Ob es zählt, ist noch nicht gesagt.`,
      'cross-hatch': (what) => `An der Wand: ${what}. Das spricht für sie.`,
    },
    readings: {
      unsteady: 'Die Ablesungen sind nicht beständig genug, um darauf zu bauen.',
      'slip-asked': 'Eine Rückfrage zu den Ablesungen ist offen: Eine davon kann ein Versehen sein.',
      'not-set': 'Das Messgerät wurde nicht eingestellt, oder niemand weiß, wie: Jedes Maß kann falsch sein.',
    },
    grounds: {
      'one-reading':
        'Was über seiner Grenze liegt, beruht auf einer einzigen Ablesung, die niemand wiederholt hat.',
      assumed: 'Was über seiner Grenze liegt, beruht auf Werten, die für nicht Erfasstes angenommen sind.',
    },
    size: {
      inside: (figure) => `Der größte Durchmesser, ${figure}, liegt innerhalb seines Grenzmaßes.`,
      above: (figure) => `Der größte Durchmesser, ${figure}, liegt über seinem Grenzmaß.`,
      below: (figure) => `Der kleinste Durchmesser, ${figure}, liegt unter seinem Grenzmaß.`,
      'other-grade': (figure) =>
        `Der größte Durchmesser, ${figure}: Die Bohrung hat ihre Größenklasse verlassen und liegt innerhalb einer anderen.`,
      'under-new': (figure) =>
        `Der kleinste Durchmesser, ${figure}, liegt unter dem kleinsten Neumaß. Durch Verschleiß geht das nicht: Metall an der Wand, ein Versehen oder Grenzmaße einer anderen Größe.`,
      'too-close': (figure) =>
        `Das Maß liegt zu knapp an seinem Grenzmaß für ein Urteil; das größte ist ${figure}.`,
      'mean-only': (figure) => `Nur die Mittel der Ebenen liegen innerhalb; das größte ist ${figure}.`,
    },
    ovality: {
      inside: (figure, limit) => `Die Unrundheit, ${figure}, liegt innerhalb ihres Grenzwerts von ${limit}.`,
      above: (figure, limit) => `Die Unrundheit, ${figure}, liegt über ihrem Grenzwert von ${limit}.`,
      'too-close': (figure, limit) =>
        `Die Unrundheit, ${figure}, liegt zu knapp an ihrem Grenzwert von ${limit} für ein Urteil.`,
      open: () => 'Die Unrundheit ließ sich nicht gegen ihren Grenzwert beurteilen.',
    },
    taper: {
      inside: (figure, limit) => `Die Konizität, ${figure}, liegt innerhalb ihres Grenzwerts von ${limit}.`,
      above: (figure, limit) => `Die Konizität, ${figure}, liegt über ihrem Grenzwert von ${limit}.`,
      'too-close': (figure, limit) =>
        `Die Konizität, ${figure}, liegt zu knapp an ihrem Grenzwert von ${limit} für ein Urteil.`,
      open: () => 'Die Konizität ließ sich nicht gegen alle ihre Grenzwerte beurteilen.',
    },
    plating: {
      'may-be-through': (share) =>
        `Von der Beschichtung sind ${share} weg, wenn eine Wand allen Verschleiß abbekommen hat; zwei Messbolzen können das nicht unterscheiden.`,
    },
    clearance: {
      inside: (piston, figure) =>
        `Das Laufspiel mit ${piston}, ${figure}, liegt innerhalb dessen, was das Handbuch vorgibt.`,
      'too-loose': (piston, figure) => `Das Laufspiel mit ${piston}, ${figure}, ist zu groß.`,
      'too-tight': (piston, figure) => `Das Laufspiel mit ${piston}, ${figure}, ist zu klein.`,
      'too-close': (piston, figure) =>
        `Das Laufspiel mit ${piston}, ${figure}, liegt zu knapp an den Grenzen des Handbuchs für ein Urteil.`,
    },
    otherPiston: {
      fits: (piston, figure) => `Mit ${piston} ist es ${figure}, innerhalb dessen, was das Handbuch vorgibt.`,
      'too-close': (piston, figure) =>
        `Mit ${piston} ist es ${figure}, zu knapp an den Grenzen des Handbuchs für ein Urteil.`,
      'none-fits': () => 'Von den anderen Kolben auf der Liste passt keiner.',
      'none-listed': () => 'Kein anderer Kolben steht auf der Liste.',
    },
    outlook: {
      ahead: (hours) =>
        `Verschleißt sie weiter wie bisher, erreicht sie ihre Grenze frühestens bei ${hours} Betriebsstunden.`,
      now: 'Nach der Geraden durch die Messungen ist sie jetzt an ihrer Grenze, soweit die Messungen das zeigen.',
      shrunk: 'Sie ist kleiner geworden als zuvor, um mehr als ihre Unsicherheit: Schmutz oder ein Versehen.',
    },
    ringGap: {
      inside: 'Das Stoßspiel liegt innerhalb seiner Grenzen.',
      'too-close': 'Das Stoßspiel liegt zu knapp an seiner Grenze für ein Urteil.',
      above: 'Das Stoßspiel liegt über seiner Grenze.',
      below: 'Das Stoßspiel liegt unter dem kleinsten erlaubten.',
    },
    wall: {
      plated: 'Die Wand ist beschichtet: Sie wird weder aufgebohrt noch auf ein größeres Maß gehont.',
      other: 'Die Wand ist nicht beschichtet.',
      'not-known': 'Die Art der Wand ist nicht erfasst.',
    },
    honing: {
      room: (microns) => `Zum Honen ist Platz: ${microns} im Durchmesser bis zum Grenzmaß.`,
      'no-room': 'Innerhalb des Grenzmaßes ist kein Platz zum Honen.',
      'not-allowed': 'Die Wand darf nicht gehont werden.',
    },
    oversize: {
      'cleans-up': (oversize) => `Mit einem Übermaß wird die Wand sauber: ${oversize}.`,
      'none-cleans-up': 'Kein Übermaß des Handbuchs ist groß genug, dass die Wand sauber wird.',
      'none-given': 'Es ist kein Übermaß eingetragen.',
      'not-allowed': 'Die Wand darf, soweit erfasst, nicht aufgebohrt werden.',
    },
  },
  changesTitle: 'Was es ändern würde',
  change: (condition, outcome) => `${condition}: ${outcome}.`,
  changes: {
    readings: { sound: 'Zeigt sich, dass die Ablesungen stimmen' },
    surface: {
      'nothing-against': {
        marked: 'Wenn sich die Spur entfernen lässt',
        other: 'Wenn nichts an der Wand dagegen spricht',
      },
      marked: 'Wenn an einer Spur im Ringlauf der Fingernagel hängen bleibt',
    },
    grounds: {
      repeated: 'Wenn es immer noch darüber liegt, nachdem noch einmal gemessen und alles erfasst ist',
    },
    size: {
      inside: 'Zeigt sich, dass das Maß innerhalb liegt',
      above: {
        inside: 'Sobald ihr Maß über der Grenze liegt',
        other: 'Zeigt sich, dass das Maß darüber liegt',
      },
    },
    ovality: {
      inside: 'Zeigt sich, dass die Unrundheit innerhalb liegt',
      above: 'Zeigt sich, dass die Unrundheit darüber liegt',
    },
    taper: {
      inside: 'Zeigt sich, dass die Konizität innerhalb liegt',
      above: 'Zeigt sich, dass die Konizität darüber liegt',
    },
    plating: { left: 'Wenn eine Abtastung zeigt, dass beide Wände gleich verschlissen sind' },
    clearance: {
      inside: 'Zeigt sich, dass das Laufspiel innerhalb liegt',
      'too-loose': 'Zeigt sich, dass das Laufspiel zu groß ist',
    },
    otherPiston: { fits: 'Wenn ein Kolben zu bekommen ist, der passt' },
    honing: {
      room: 'Wenn das Grenzmaß Platz zum Honen lässt',
      'no-room': 'Wenn Honen bis zum Grenzmaß nicht genügt',
    },
    oversize: {
      'cleans-up': 'Wenn das Handbuch ein Übermaß hat, mit dem die Wand sauber wird',
      'none-cleans-up': 'Wenn die Wand mit keinem Übermaß sauber wird',
    },
  },
  hintsTitle: 'Worauf es beruht, ohne dass es nachgewiesen ist',
  readOnce: {
    all: (places) =>
      `Jede Messstelle wurde nur einmal abgelesen. Es hängt an: ${places}. Lesen Sie dort noch zweimal ab, bevor Sie danach handeln.`,
    some: (places) =>
      `Nur einmal abgelesen: ${places}. Lesen Sie dort noch zweimal ab, bevor Sie danach handeln.`,
  },
  hints: {
    provisional: 'Nicht alles ist erfasst; für das Übrige stehen angenommene Werte.',
    'two-axes': 'Zwei Achsen können ein Oval verfehlen, das zwischen ihnen liegt.',
    'no-size-limit': 'Es ist kein Grenzmaß eingetragen.',
    'new-sizes-only':
      'Nur Neumaße sind eingetragen. Hat das Handbuch eine Verschleißgrenze, würde stattdessen nach ihr beurteilt.',
    'one-survey':
      'Die Verschleißrate beruht auf einer Messung und auf dem, was sie neu war; das Einlaufen steckt darin.',
    'rate-changed':
      'Die Verschleißrate hat sich zwischen den Messungen geändert: Zu wissen, warum, ist mehr wert als die Stunden.',
    'slope-uncertain': 'Der Zuwachs tritt nicht aus seiner Unsicherheit hervor.',
    'no-outlook':
      'Es lassen sich keine Stunden nennen: Dafür braucht es die Betriebsstunden und ein Grenzmaß.',
    'clearance-not-judged': 'Das Laufspiel des Kolbens wurde nicht beurteilt.',
    'piston-by-grade': 'Der Kolben wurde nicht gemessen: Sein Maß ist das seiner Größenklasse.',
    'piston-not-firm': 'Beim Messen des Kolbens wurde nicht alles erfasst.',
    'other-piston-too-close':
      'Ob der nächste Kolben passt, ist zu knapp für ein Urteil: Messen Sie ihn, bevor er eingebaut wird.',
    'no-piston-listed':
      'Kein Kolben auf der Liste ist bekannt, der passt: Das Laufspiel sagt, nach welchem Maß zu fragen ist.',
    'wall-by-kind':
      'Was diese Wand erlaubt, ist das, was bei ihrer Art üblich ist, nicht das, was das Handbuch sagt.',
    'wall-not-known': 'Die Art der Wand ist nicht erfasst, und sie entscheidet, was sich machen lässt.',
    'honing-allowance':
      'Dass Honen mindestens 10 µm im Durchmesser wegnimmt, ist eine Zahl des Handwerks, ohne veröffentlichte Quelle.',
    'clean-up-by-trade':
      'Was Aufbohren wegnimmt, bis die Wand sauber ist, ist eine Zahl des Handwerks, nicht die des Handbuchs.',
    'oversize-too-close':
      'Ob die Wand mit diesem Übermaß sauber wird, ist zu knapp für ein Urteil: Die Fachkraft sieht es beim ersten Schnitt.',
    'one-side-took-it':
      'Dass eine Wand allen Verschleiß abbekommen hat, ist der schlimmste Fall; eine Abtastung ringsum würde es zeigen.',
  },
  cautionsTitle: 'Zu beachten',
  cautions: {
    'last-word':
      'Das folgt Regeln des Handwerks und nennt nichts sicher. Das letzte Wort haben das Werkstatthandbuch und eine Fachkraft für Motoreninstandsetzung.',
    'stones-on-plating':
      'Keine Honsteine auf eine Beschichtung: Waschen Sie sie, und überlassen Sie alles Weitere einem Beschichter.',
    'honing-keeps-form': 'Honen beseitigt weder Konizität noch Unrundheit.',
    'mark-depth':
      'Das ist ein Versuch: Bleibt die Spur, wenn das Grenzmaß erreicht ist, war Honen kein Mittel. Messen Sie zuerst die Tiefe der Spur und rechnen Sie im Durchmesser mit dem Doppelten davon.',
    glaze:
      'Die Wand ist verglast oder ihr Kreuzschliff ist weg: Sehen Sie im Handbuch nach, was neue Ringe brauchen. Für sich sagt das nichts über Verschleiß.',
    'ring-gap-large':
      'Das Stoßspiel liegt über seiner Grenze: Setzen Sie neue Ringe ein und messen Sie es noch einmal.',
    'ring-gap-small':
      'Das Stoßspiel liegt unter dem kleinsten erlaubten: Enden, die aneinanderstoßen, brechen Ringe und zerkratzen die Wand.',
    'rings-with-piston': 'Neue Kolben bekommen neue Ringe; messen Sie beides, bevor es eingebaut wird.',
    'past-window-of-new':
      'Mit diesem Kolben ist das Laufspiel nicht das eines neuen Paars, aber innerhalb der Grenze für den Betrieb.',
    'torque-plate':
      'Es wurde nicht ohne Anbauteile gemessen: Lassen Sie es so bearbeiten und messen, wie hier gemessen wurde.',
  },
  block: {
    title: 'Was mit dem Motor zu tun ist',
    alike: {
      to: (count, oversize) =>
        `Alle ${count} Zylinder auf ${oversize} aufbohren, denn alle gehen auf ein Maß.`,
      plain: (count) =>
        `Alle ${count} Zylinder auf das nächste Übermaß aufbohren, denn alle gehen auf ein Maß.`,
    },
    all: (count, what) => `Alle ${count} Bohrungen: ${what}.`,
    some: (names, what) => `${bores(names)}: ${what}.`,
    asked: (names) => `${bores(names)} ${names.length === 1 ? 'macht' : 'machen'} es nötig.`,
    check: (hours) => `Spätestens bei ${hours} Betriebsstunden wieder prüfen.`,
    undecided: (names) => `${bores(names)}: noch nicht entschieden.`,
  },
  byItself: (bore, text) => `Bohrung ${bore} für sich: ${text.charAt(0).toLowerCase()}${text.slice(1)}`,
}

function bores(names: readonly string[]): string {
  const last = names[names.length - 1] ?? ''
  return names.length === 1 ? `Bohrung ${last}` : `Bohrungen ${names.slice(0, -1).join(', ')} und ${last}`
}
