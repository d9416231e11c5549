import type { simulation as english } from '../english/simulation'
import type { Texts } from '../texts'

/** Checking the linear figures by drawing every error, in German. */
export const simulation: Texts<typeof english> = {
  simulation: {
    start: 'Durch Simulation prüfen',
    lead: 'Zieht jeden Fehler viele Male neu und sieht nach, ob die ± der Durchmesser halten.',
    running: (done, all) => `${done} von ${all} Ziehungen`,
    cancel: 'Anhalten',
    agrees: (trials, apart, place) =>
      `${trials} Ziehungen aller Fehler bestätigen die ± der Durchmesser: Ihre Enden liegen höchstens ${apart} auseinander, und zwar bei: ${place}.`,
    differs: (trials, apart, place) =>
      `${trials} Ziehungen aller Fehler bestätigen die ± der Durchmesser nicht: Ihre Enden liegen ${apart} auseinander bei: ${place}. Verlassen Sie sich dort auf das simulierte Intervall:`,
    interval: (low, high) => `${low} bis ${high}`,
    micronInterval: (low, high) => `${low} bis ${high}`,
    inside: (linear, simulated) =>
      `Dort innerhalb der Grenzmaße: ${linear}, nach den Ziehungen ${simulated}.`,
    figuresAgree: (kinds) =>
      `Das gilt auch für die ± und die Bereiche dessen, was sich aus mehreren Messstellen ergibt: ${kinds}.`,
    kinds: {
      'level-mean': 'Mittel der Ebenen',
      'fitted-oval': 'eingepasste Ovale',
      ovality: 'Unrundheit',
      taper: 'Konizität',
      'mean-difference': 'mittlere Unterschiede',
      'largest-difference': 'größte Unterschiede',
    },
    names: {
      'level-mean': (place) => `Mittel bei ${place}`,
      'fitted-oval': (place) => `Eingepasstes Oval bei ${place}`,
      ovality: (rule) => `Unrundheit, ${rule}`,
      taper: (rule) => `Konizität, ${rule}`,
      'mean-difference': (bore) => `Mittlerer Unterschied zu ${bore}`,
      'largest-difference': (bore) => `Größter Unterschied zu ${bore}`,
    },
    figureDiffers: (bore, name, stated, simulated) =>
      `${name} (${bore}): angegeben ${stated}, nach den Ziehungen ${simulated}. Verlassen Sie sich dort auf die Ziehungen.`,
    failed:
      'Die Simulation hat wegen eines eigenen Fehlers angehalten. Die Zahlen darüber gelten, wie sie sind.',
    stale: 'Die Ablesungen haben sich seither geändert.',
  },
}
