import type { paste as english } from '../english/paste'
import type { Texts } from '../texts'

/** What is said of a block of readings that was pasted from a spreadsheet, in French. */
export const paste: Texts<typeof english> = {
  paste: {
    title: 'Ce qui a été collé',
    taken: (readings, stations) =>
      `Pris : ${readingsOf(readings)} à ${stations < 2 ? `${stations} point` : `${stations} points`}.`,
    replaced: (stations) =>
      stations === 1
        ? 'À l’un d’eux, elles ont pris la place d’anciennes.'
        : `À ${stations} d’entre eux, elles ont pris la place d’anciennes.`,
    byHeads: (heads) => `Placées d’après les têtes du bloc : ${heads}.`,
    heads: { depths: 'profondeurs', axes: 'axes', bores: 'alésages' },
    nothing: 'Rien n’a été pris.',
    refused: (cells) =>
      cells === 1
        ? 'Une cellule a été refusée : corrigez-la ici et pressez Entrée, ou copiez-la ailleurs.'
        : `${cells} cellules ont été refusées : corrigez-les ici et pressez Entrée, ou copiez-les ailleurs.`,
    takenTitle: 'Ce qui a été pris',
    takenAt: (where, text) => `${where} : ${text}`,
    takenInPlace: (where, text, before) => `${where} : ${text}, à la place de ${readingsOf(before)}`,
    cell: (row, column) => `ligne ${row}, colonne ${column}`,
    cellAt: (cell, where) => `${where} (${cell})`,
    mend: (where) => `Refusé : ${where}`,
    copyRest: 'Copier ce qui a été refusé',
    copied: 'Copié.',
    'not-copied': 'Ce navigateur ne l’a pas copié. Sélectionnez-le et copiez-le à la main.',
    noStation: {
      'no-level': (head) =>
        head === ''
          ? 'Il n’y a pas de profondeur à côté.'
          : `Ce relevé n’a pas de niveau à « ${head} ». Ajoutez-le d’abord.`,
      'no-axis': (head) =>
        head === ''
          ? 'Il n’y a pas d’axe au-dessus.'
          : `Ce relevé n’a pas d’axe à « ${head} ». Ajoutez-le d’abord.`,
      'no-bore': (head) =>
        head === ''
          ? 'Il n’y a pas d’alésage au-dessus.'
          : `Ce dossier n’a pas d’alésage du nom de « ${head} ».`,
      'past-the-grid': () =>
        'Elle est au-delà du bout de la grille. Collez depuis une case plus haut ou plus à gauche.',
    },
    unreadable: {
      empty: 'Il n’y avait pas de texte à coller.',
      'too-large': 'C’est plus que n’en contient un relevé. Copiez seulement les lectures.',
      'commas-only':
        'Les virgules seules ne montrent pas où finit une cellule et où commencent les décimales. Copiez les cellules depuis le tableur lui-même, ou séparez-les par des tabulations ou des points-virgules.',
      'quote-left-open':
        'Un guillemet est ouvert et non fermé. Fermez-le ou retirez-le, puis collez de nouveau.',
    },
    notLoaded:
      'La partie de la page qui lit les tableaux n’a pas pu être chargée. Borewall tourne-t-il encore ? Alors collez de nouveau.',
  },
}

function readingsOf(count: number): string {
  return count < 2 ? `${count} lecture` : `${count} lectures`
}
