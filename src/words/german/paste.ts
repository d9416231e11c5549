import type { paste as english } from '../english/paste'
import type { Texts } from '../texts'

export const paste: Texts<typeof english> = {
  paste: {
    title: 'Was eingefügt wurde',
    taken: (readings, stations) =>
      `${readingsOf(readings)} an ${stations === 1 ? '1 Messstelle' : `${stations} Messstellen`} übernommen.`,
    replaced: (stations) =>
      stations === 1
        ? 'An einer davon haben sie frühere ersetzt.'
        : `An ${stations} davon haben sie frühere ersetzt.`,
    byHeads: (heads) => `Zugeordnet nach den Köpfen des Blocks: ${heads}.`,
    heads: { depths: 'Tiefen', axes: 'Achsen', bores: 'Bohrungen' },
    nothing: 'Es wurde nichts übernommen.',
    refused: (cells) =>
      cells === 1
        ? 'Eine Zelle wurde abgelehnt: Berichtigen Sie sie hier und drücken Sie die Eingabetaste, oder kopieren Sie sie heraus.'
        : `${cells} Zellen wurden abgelehnt: Berichtigen Sie sie hier und drücken Sie die Eingabetaste, oder kopieren Sie sie heraus.`,
    takenTitle: 'Was übernommen wurde',
    takenAt: (where, text) => `${where}: ${text}`,
    takenInPlace: (where, text, before) => `${where}: ${text}, anstelle von ${readingsOf(before)}`,
    cell: (row, column) => `Zeile ${row}, Spalte ${column}`,
    cellAt: (cell, where) => `${where} (${cell})`,
    mend: (where) => `Abgelehnt: ${where}`,
    copyRest: 'Abgelehntes kopieren',
    copied: 'Kopiert.',
    'not-copied': 'Dieser Browser hat es nicht kopiert. Markieren Sie es, und kopieren Sie es von Hand.',
    noStation: {
      'no-level': (head) =>
        head === ''
          ? 'Es steht keine Tiefe daneben.'
          : `Diese Messung hat keine Ebene bei „${head}“. Fügen Sie sie zuerst hinzu.`,
      'no-axis': (head) =>
        head === ''
          ? 'Es steht keine Achse darüber.'
          : `Diese Messung hat keine Achse bei „${head}“. Fügen Sie sie zuerst hinzu.`,
      'no-bore': (head) =>
        head === ''
          ? 'Es steht keine Bohrung darüber.'
          : `Dieser Auftrag hat keine Bohrung mit dem Namen „${head}“.`,
      'past-the-grid': () =>
        'Sie liegt hinter dem Ende der Tabelle. Fügen Sie von einer Zelle weiter oben oder weiter links aus ein.',
    },
    unreadable: {
      empty: 'Es war kein Text zum Einfügen da.',
      'too-large': 'Das ist mehr, als in eine Messung passt. Kopieren Sie nur die Ablesungen.',
      'commas-only':
        'Kommas allein zeigen nicht, wo eine Zelle endet und wo die Dezimalstellen beginnen. Kopieren Sie die Zellen aus der Tabellenkalkulation selbst, oder trennen Sie sie mit Tabulatoren oder Semikolons.',
      'quote-left-open':
        'Ein Anführungszeichen ist geöffnet und nicht geschlossen. Schließen Sie es, oder nehmen Sie es heraus, und fügen Sie dann noch einmal ein.',
    },
    notLoaded:
      'Der Teil der Seite, der Tabellen liest, ließ sich nicht laden. Läuft Borewall noch? Dann fügen Sie noch einmal ein.',
  },
}

function readingsOf(count: number): string {
  return count === 1 ? '1 Ablesung' : `${count} Ablesungen`
}
