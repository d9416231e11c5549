/** Other walls that fit the same readings, on request, in the picture. */
export const doubt = {
  doubt: {
    show: 'Show the doubt',
    help: 'Draws other walls that fit the same readings, one after another. Escape ends it.',
    hide: 'Back to the wall',
    next: 'Another wall',
    title: 'Other walls that fit the same readings',
    lead: 'Drawn at random, one after another: measured places hold still within their doubt, unmeasured ones move.',
    eyeOnly: 'For the eye only: no figure comes from it.',
    model: (spread: string, depth: string, around: string) =>
      `About the wall between the readings, spread ${spread}; two places go together by ρ(depth apart / ${depth}) · ρ(turn apart / ${around}), ρ(r) = (1 + √3·r)·e^(−√3·r).`,
    none: {
      'too-few-readings': 'Other walls can be drawn from three readings on.',
      'two-readings-at-one-place':
        'Two readings stand at one place, told from either end of its axis. Other walls are drawn when one of them is cleared.',
      'wall-meets-axis':
        'At this exaggeration other walls would be drawn through the axis. Choose a smaller one beside the picture.',
    },
  },
}
