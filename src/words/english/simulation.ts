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
    interval: (low: string, high: string) => `${low} to ${high} mm`,
    inside: (linear: string, simulated: string) =>
      `Inside the limits there: ${linear}, by the draws ${simulated}.`,
    failed: 'The simulation stopped because of a fault of its own. The figures above stand as they are.',
    stale: 'The readings have changed since.',
  },
} as const
