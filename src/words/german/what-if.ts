import type { whatIf as english } from '../english/what-if'
import type { Texts } from '../texts'

/** Sliders that try a decision out, in German. */
export const whatIf: Texts<typeof english> = {
  title: 'Was wäre, wenn',
  lead: 'Bewegen Sie einen Schieber, und die Entscheidung folgt ihm. Am Auftrag ändert das nichts.',
  asItIs: (headline) => `So, wie es ist: ${headline}`,
  thenIt: (headline) => `Dann: ${headline}`,
  labels: {
    plain: {
      hours: 'Von hier an weiterlaufen',
      temperature: 'Temperatur der Bohrung',
      limit: 'Größtes erlaubtes Maß',
      piston: 'Vorhandener Kolben, wie die Bügelmessschraube ihn zeigt',
      reading: 'Ablesung',
    },
    reading: (place) => `Durchmesser bei ${place}`,
  },
  station: 'Messstelle der Ablesung',
  hoursOn: (on, run) => `${on} h (${run} Betriebsstunden)`,
  looking: 'Es wird gesucht, wo sie umschlägt …',
  never: (from, to) => `Von ${from} bis ${to} schlägt sie nicht um.`,
  tips: (at, off, outcome) => `Schlägt um bei ${at}, ${off}: ${outcome}.`,
  off: {
    later: (hours) => `${hours} h später`,
    sooner: (hours) => `${hours} h früher`,
    warmer: (kelvin) => `${kelvin} K wärmer`,
    colder: (kelvin) => `${kelvin} K kälter`,
    more: (microns) => `${microns} mehr`,
    less: (microns) => `${microns} weniger`,
  },
  undecided: 'keine Entscheidung',
  onlyThis:
    'Ausprobiert wird nur diese Bohrung: Was alle Bohrungen gemeinsam betrifft, gilt hier für sie allein.',
  reset: 'So, wie es ist',
  closer: 'Genauer ausrechnen, wie sicher es ist',
  running: (done, all) => `${done} von ${all} Sätzen wahrer Maße`,
  cancel: 'Anhalten',
  failed: 'Das ließ sich hier nicht ausrechnen. Laden Sie die Seite neu und versuchen Sie es noch einmal.',
  closely: (trials) => `Aus ${trials} Sätzen wahrer Maße:`,
}
