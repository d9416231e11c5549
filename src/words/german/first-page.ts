import type { firstPage as english } from '../english/first-page'
import type { Texts } from '../texts'

export const firstPage: Texts<typeof english> = {
  firstPage: {
    heading: 'Eine Bohrung messen und sehen, was die Ablesungen nachweisen',
    lead: 'Geben Sie ein, was das Messgerät anzeigt. Borewall macht daraus wahre Durchmesser bei 20 °C, sagt, was innerhalb der Grenzmaße liegt, was außerhalb und was zu knapp für ein Urteil ist, und zeichnet die Wand.',
    start: 'Womit beginnen',
    measure: 'Eine Bohrung messen',
    measureHint: 'Beginnt einen leeren Auftrag.',
    open: 'Datei öffnen …',
    openHint: 'Ein Auftrag, der aus Borewall gespeichert wurde, oder eine Tabelle mit Ablesungen.',
    dropHint: 'Oder legen Sie sie irgendwo auf dieser Seite ab.',
    kept: 'Auftragsliste',
    keptHint: 'In diesem Browser ist etwas gespeichert, aber nicht der zuletzt geöffnete Auftrag.',
    manual:
      'Das Werkstatthandbuch für den Motor auf der Werkbank hat das letzte Wort, und was den Ausschlag gibt, sollte sich eine Fachkraft für Motoreninstandsetzung ansehen.',
  },
  examples: {
    title: 'Ein Beispiel ansehen',
    lead: 'Alle Zahlen sind erfunden. Jedes Beispiel öffnet sich als Kopie: Ändern Sie, was Sie mögen.',
    list: {
      A: {
        name: 'Ein gebrauchter Zweitaktzylinder neben einem neuen',
        shows:
          'Innerhalb der Verschleißgrenze; bei der Unrundheit ist es zu knapp für ein Urteil. Wegen der Schlitze lässt sich ein Teil der Wand nicht messen.',
      },
      B: {
        name: 'Ein Vierzylinderblock aus Grauguss',
        shows:
          'Vier Bohrungen, eine Einstellung des Messgeräts. Die dritte liegt über dem Grenzwert der Konizität, bei der vierten ist es zu knapp für ein Urteil.',
      },
      'B-as-typed': {
        name: 'Derselbe Block, wie er eingegeben wurde',
        shows:
          'Mit zwei Versehen unter den Ablesungen. Borewall fragt nach beiden, und einmal Antippen berichtigt jedes davon.',
      },
      C: {
        name: 'Eine Diesel-Laufbuchse bei vier Besuchen',
        shows:
          'Der dritte Besuch wurde warm gemessen und liegt überall 12 µm zu hoch; die beiden Temperaturen nehmen das heraus.',
      },
      D1: {
        name: 'Ein liegender Kompressor',
        shows:
          'Bauchig verschlissen und innerhalb der Grenzmaße. Das Urteil über die Konizität hängt von der Regel ab; von seinem Rost steht in der Notiz.',
      },
      D2: {
        name: 'Ein Hydraulikrohr',
        shows:
          'Jede Ablesung liegt deutlich innerhalb, und eine Riefe in der Wand macht es trotzdem unbrauchbar.',
      },
      E: {
        name: 'Ein Zweitaktzylinder mit Fressspuren, rundum abgetastet',
        shows:
          'Ein Taster hat die Wand bei jedem Grad gemessen: vier Anreibungen mit schmalen Riefen darin, und ein Steg, der vorsteht.',
      },
      'E-72': {
        name: 'Derselbe Zylinder, alle 5° abgetastet',
        shows:
          'Kein Innenmessgerät war darin: Die Abtastung zeigt die Form und kein Maß. Bei diesem Schritt werden die meisten Riefen verfehlt.',
      },
    },
    unknown: (name) =>
      `Es gibt kein Beispiel mit dem Namen „${name}“. Die vorhandenen stehen unter „Beispiele“.`,
    notLoaded:
      'Das Beispiel ließ sich nicht laden. Läuft Borewall auf diesem Gerät noch? Dann laden Sie die Seite neu und versuchen Sie es noch einmal.',
  },
  note: {
    title: 'Notiz',
    menu: 'Notiz …',
    about: 'Zu diesem Beispiel',
    lead: 'Mit dem Auftrag gespeichert und mit den Befunden gedruckt: ein Platz für Rost, Riefen und alles, was keine Zahl zeigt.',
  },
}
