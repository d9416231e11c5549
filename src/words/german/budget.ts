import type { budget as english } from '../english/budget'
import type { Texts } from '../texts'

export const budget: Texts<typeof english> = {
  budget: {
    title: 'Woraus die Unsicherheit besteht',
    of: (place, doubt) => `Bei ${place}, ${doubt} (95 %), aus diesen Standardunsicherheiten u.`,
    heads: { part: 'Teil', amount: 'u, µm', share: 'Anteil' },
    kinds: {
      'wall-expansion': 'wie stark die Wand mit der Wärme wächst',
      'standard-expansion': 'wie stark das Einstellnormal mit der Wärme wächst',
      'reference-temperature': 'Temperatur',
      'bore-thermometer': 'Thermometer an der Bohrung',
      'temperature-difference': 'Bohrung und Einstellnormal ungleich warm',
      standard: 'das Einstellnormal selbst',
      'standard-error': 'Bügelmessschraube nicht geprüft',
      setting: 'Einstellen des Messgeräts',
      'zero-reading': 'Ablesen der Null',
      'gauge-warmth': 'Erwärmung des Messgeräts seit der Einstellung',
      'drift-preset': 'Drift, keine Null am Ende',
      'drift-measured': 'Drift zwischen den Nullstellungen',
      repeatability: 'Wiederholungen',
      scale: 'Messuhr oder Skale',
      place: 'Tiefe des Messgeräts an einer Schräge',
      rocking: 'Schräglage, die beim Schwenken blieb',
      'piston-expansion': 'wie stark der Kolben mit der Wärme wächst',
      'piston-reading': 'Ablesen der Bügelmessschraube am Kolben',
      'piston-range': 'die Maße, die der Kolben haben kann',
    },
    assumed: 'angenommen',
    distributions: {
      normal: 'normalverteilt',
      rectangular: 'gleichverteilt',
      student: (freedom) => `normalverteilt, ${freedom} Freiheitsgrade`,
    },
    scopes: {
      job: 'ein Fehler für den ganzen Auftrag',
      standard: 'einer für alles, was mit diesem Einstellnormal eingestellt wurde',
      thermometer: 'einer für alles, was dieses Thermometer gemessen hat',
      'set-up': 'einer für diesen Messaufbau',
      bore: 'einer für diese Bohrung',
      piston: 'einer für diesen Kolben',
      station: 'nur von dieser Messstelle',
      repeat: 'nur von jeder einzelnen Ablesung',
    },
    inputs: {
      K: (u, sensitivity) => `${u} K × ${sensitivity}/K`,
      '1/K': (u, sensitivity) => `${u} Millionstel je K × ${sensitivity}·K`,
      mm: (u, sensitivity) => `${u} × ${sensitivity}`,
    },
    mostly: (part, share) => `Das meiste davon: ${part} (${share}).`,
    shared: (part, share) => `Der größte Teil: ${part} (${share}).`,
    improve: {
      'more-repeats': (before, after) => `Jede Messstelle noch zweimal gemessen: ${before} → ${after}.`,
      'set-by-ring': (before, after) => `Mit einem Ring eingestellt: ${before} → ${after}.`,
      'record-what-is-missing': (before, after) =>
        `Was angenommen ist, gemessen und aufgeschrieben: ${before} → ${after}.`,
      'know-the-temperatures': (before, after) =>
        `Temperaturen doppelt so genau bekannt: ${before} → ${after}.`,
    },
    nothing: 'Kein einzelner Schritt hier würde auch nur ein Zwanzigstel davon wegnehmen.',
  },
}
