import type { model as english } from '../english/model'
import type { Texts } from '../texts'

export const model: Texts<typeof english> = {
  model: {
    title: 'Ein Modell zum Drucken',
    lead: (drawn) =>
      `Diese Wand als Rohr in der Hand. ${drawn}. Schlitze sind Taschen, keine Löcher, damit das Rohr ganz bleibt; eine Rille außen, von der Zylinderoberkante nach unten, kennzeichnet vorn.`,
    unmeasured:
      'Wo niemand gemessen hat, ist die Wand zwischen Ablesungen gezeichnet, nicht gemessen: Die farbige Datei zeigt es blasser und mit dunklen Linien, die Datei für einen Drucker kann es nicht. An einem Modell lässt sich nichts messen.',
    ways: {
      stl: 'Für einen Drucker speichern (STL)',
      glb: 'Farbig speichern (glTF)',
    },
    making: 'Das Modell wird gemacht …',
    saved: (name, size) => `Gespeichert als ${name}: ${size}.`,
    size: (height, across, scale) => `${height} hoch, ${across} breit, Maßstab ${scale}`,
    scale: (drawn) => `1:${drawn}`,
    none: {
      'wall-meets-axis':
        'Bei dieser Überhöhung würde die Wand durch die Mittelachse gezeichnet, und es bliebe kein Rohr zum Drucken. Wählen Sie neben dem Bild eine kleinere.',
    },
    failed: 'Das Modell ließ sich in diesem Browser nicht machen.',
    fileName: (name, factor, scale) => `${name} ueberhoeht x${factor} massstab ${scale}`,
    header: (factor, scale) =>
      `Bohrungswand, ueberhoeht x${factor}, Massstab ${scale}, mm. Nicht zum Messen.`,
    parts: {
      body: 'Körper, nicht die Wand',
      measured: 'Wand zwischen Ablesungen',
      unmeasured: 'Wand zwischen Ablesungen gezeichnet, nicht gemessen',
      'unmeasured-line': 'Linien, wo niemand gemessen hat',
    },
    notes: {
      drawn:
        'Unterschiede des Durchmessers sind um die Überhöhung größer gezeichnet. Daran lässt sich nichts messen.',
      ports: 'Schlitze sind Taschen mit scharfen Ecken, keine Löcher.',
      front: 'Die Rille außen, von der Zylinderoberkante nach unten, liegt bei 0°, vorn.',
    },
  },
}
