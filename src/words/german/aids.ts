import type { aids as english } from '../english/aids'
import type { Texts } from '../texts'

export const aids: Texts<typeof english> = {
  aids: {
    menu: 'Stimme und Pedal',
    title: 'Stimme und Pedal',
    lead: 'Für Hände, die ein Messgerät halten. Nur auf diesem Gerät gespeichert.',
    voice: 'Jede Messstelle, jede übernommene Zahl und jede Rückfrage ansagen',
    noVoice: 'Dieser Browser hat keine Stimme.',
    try: 'Ausprobieren',
    trial: '25 mm tief, Achse 90°. 54,012.',
    pedal: 'Ein Pedal tippt eine Taste. Treten Sie es einmal für jede Sache, die es tun soll:',
    actions: {
      take: 'Zahl übernehmen und weiter',
      again: 'Zahl übernehmen und dieselbe Messstelle noch einmal messen',
      back: 'Zurück zur Messstelle davor',
      skip: 'Diese Messstelle übergehen',
    },
    press: (action) => `${action}: Treten Sie jetzt das Pedal, oder drücken Sie Esc, um es zu lassen`,
    set: (action, key) => `${action}: ${key}. Ändern.`,
    choose: (action) => `${action}: Pedal wählen`,
    none: 'kein Pedal',
    remove: (action) => `Kein Pedal mehr für: ${action}`,
    typesText: (key) =>
      `Die Taste ${key} wird zum Schreiben und Bewegen gebraucht. Stellen Sie das Pedal auf eine andere ein, etwa F13 oder Bild ab.`,
    taken: (key, action) => `${key} steht schon für: ${action}.`,
    next: (place) => `Als Nächstes: ${place}.`,
  },
  spoken: {
    point: 'Komma',
    minus: 'minus',
    plusMinus: 'plus minus',
    degrees: 'Grad',
    millimetres: 'Millimeter',
    microns: 'Mikrometer',
    inches: 'Zoll',
  },
}
