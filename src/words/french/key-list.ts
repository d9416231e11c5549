import type { keyList as english } from '../english/key-list'
import type { Texts } from '../texts'

/** Every key that does something, by where the focus is, in French. */
export const keyList: Texts<typeof english> = {
  keyList: {
    menu: 'Touches',
    title: 'Touches',
    groups: [
      {
        name: 'Partout',
        keys: [
          ['Ctrl Z', 'Annuler'],
          ['Ctrl Y, ou Maj Ctrl Z', 'Rétablir'],
          ['?', 'Cette liste'],
          ['un nombre, puis Entrée', 'La lecture suivante, aussi d’un appareil qui tape'],
        ],
      },
      {
        name: 'Le champ de la lecture suivante',
        keys: [
          ['Entrée', 'Le prendre et continuer'],
          ['Échap', 'Le quitter'],
        ],
      },
      {
        name: 'Les lectures',
        keys: [
          ['flèches, Origine, Fin', 'De case en case ; avec Maj en choisir plusieurs'],
          ['Ctrl Origine, Ctrl Fin', 'Première et dernière case'],
          ['Entrée, F2', 'Corriger ce qui s’y trouve'],
          ['Suppr', 'La vider'],
          ['Tab, puis Entrée', 'La question à son sujet, là où il y en a une'],
          ['Ctrl C, Ctrl X, Ctrl V', 'Vers un tableur et depuis lui'],
        ],
      },
      {
        name: 'L’image',
        keys: [
          ['flèches', 'Tourner et incliner'],
          ['Maj et flèches', 'Déplacer'],
          ['+ et −', 'Plus près et plus loin'],
          ['Origine', 'Retour à l’avant'],
          ['Échap', 'Retour à la paroi, pendant que d’autres parois se dessinent'],
        ],
      },
      {
        name: 'Montrer',
        keys: [
          ['flèches, Page précédente, Page suivante, Espace', 'D’une phrase à l’autre, et retour'],
          ['Origine, Fin', 'Première et dernière'],
          ['Échap', 'Retour à ce qui est dit ; puis à la page Mesurer'],
        ],
      },
      {
        name: 'La carte à plat et les graphiques',
        keys: [['flèches', 'De lecture en lecture']],
      },
    ],
  },
}
