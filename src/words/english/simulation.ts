/** Checking the linear figures by drawing every error. */
export const simulation = {
  simulation: {
    start: 'Check by simulation',
    lead: 'Draws every error anew, many times over, and looks whether the ± of the diameters hold.',
    running: (done: string, all: string) => `${done} of ${all} draws`,
    cancel: 'Stop',
    agrees: (trials: string, apart: string, place: string) =>
      `${trials} draws of every error agree with the ± of the diameters: their ends differ by ${apart} at most, at ${place}.`,
    differs: (trials: string, apart: string, place: string) =>
      `${trials} draws of every error do not agree with the ± of the diameters: their ends differ by ${apart} at ${place}. Trust the simulated interval there:`,
    interval: (low: string, high: string) => `${low} to ${high}`,
    micronInterval: (low: string, high: string) => `${low} to ${high}`,
    inside: (linear: string, simulated: string) =>
      `Inside the limits there: ${linear}, by the draws ${simulated}.`,
    figuresAgree: (kinds: string) =>
      `So do the ± and the ranges of what is made of several stations: ${kinds}.`,
    kinds: {
      'level-mean': 'level means',
      'fitted-oval': 'fitted ovals',
      ovality: 'out-of-round',
      taper: 'taper',
      'mean-difference': 'mean differences',
      'largest-difference': 'largest differences',
    },
    names: {
      'level-mean': (place: string) => `Mean at ${place}`,
      'fitted-oval': (place: string) => `Fitted oval at ${place}`,
      ovality: (rule: string) => `Out-of-round, ${rule}`,
      taper: (rule: string) => `Taper, ${rule}`,
      'mean-difference': (bore: string) => `Mean difference from ${bore}`,
      'largest-difference': (bore: string) => `Largest difference from ${bore}`,
    },
    figureDiffers: (bore: string, name: string, stated: string, simulated: string) =>
      `${name} (${bore}): stated ${stated}, by the draws ${simulated}. Trust the draws there.`,
    failed: 'The simulation stopped because of a fault of its own. The figures above stand as they are.',
    stale: 'The readings have changed since.',
  },
} as const
