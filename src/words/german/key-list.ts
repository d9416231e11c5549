import type { keyList as english } from '../english/key-list'
import type { Texts } from '../texts'

export const keyList: Texts<typeof english> = {
  keyList: {
    menu: 'Tasten',
    title: 'Tasten',
    groups: [
      {
        name: 'Überall',
        keys: [
          ['Strg Z', 'Rückgängig'],
          ['Strg Y oder Umschalt Strg Z', 'Wiederherstellen'],
          ['?', 'Diese Liste'],
          ['eine Zahl, dann Eingabe', 'Die nächste Ablesung, auch von einem Messgerät, das selbst tippt'],
        ],
      },
      {
        name: 'Das Feld für die nächste Ablesung',
        keys: [
          ['Eingabe', 'Übernehmen und weiter'],
          ['Esc', 'Verlassen'],
        ],
      },
      {
        name: 'Die Ablesungen',
        keys: [
          ['Pfeile, Pos1, Ende', 'Von Zelle zu Zelle; mit Umschalt mehrere wählen'],
          ['Strg Pos1, Strg Ende', 'Erste und letzte Zelle'],
          ['Eingabe, F2', 'Berichtigen, was dort steht'],
          ['Entf', 'Löschen'],
          ['Tab, dann Eingabe', 'Die Rückfrage dazu, wo eine angezeigt ist'],
          ['Strg C, Strg X, Strg V', 'Zu und aus einer Tabellenkalkulation'],
        ],
      },
      {
        name: 'Das Bild',
        keys: [
          ['Pfeile', 'Drehen und kippen'],
          ['Umschalt und Pfeile', 'Verschieben'],
          ['+ und −', 'Näher und weiter weg'],
          ['Pos1', 'Zurück nach vorn'],
          ['Esc', 'Zurück zur Wand, während andere Wände gezeichnet werden'],
        ],
      },
      {
        name: 'Zeigen',
        keys: [
          ['Pfeile, Bild auf, Bild ab, Leertaste', 'Von einem Satz zum nächsten und zurück'],
          ['Pos1, Ende', 'Erster und letzter'],
          ['Esc', 'Zurück zum Gesagten; dann zum Messen'],
        ],
      },
      {
        name: 'Die flache Karte und die Diagramme',
        keys: [['Pfeile', 'Von Ablesung zu Ablesung']],
      },
    ],
  },
}
