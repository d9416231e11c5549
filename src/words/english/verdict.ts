/** The verdict on a bore in sentences. `where` is one place, or how many stations and the worst of them. */
export const verdict = {
  verdict: {
    none: {
      'no-readings': 'No readings yet.',
      'no-size-over-contacts':
        'No sizes yet: the gauge was zeroed in the bore and must still be measured over its contacts.',
      'no-limits': 'No verdict on size: no limits are entered.',
      'all-blocked': 'No verdict: every reading stands at a port or a belt and waits for your word.',
    },
    where: {
      worst: (count: number, all: number, place: string) =>
        count === all
          ? `all ${all} stations, most of all at ${place}`
          : `${count} of ${all} stations, most of all at ${place}`,
    },
    inside: {
      wear: 'Inside the wear limit.',
      band: 'Inside the new limits.',
      grade: (grade: string) => `Inside the limits of grade ${grade}.`,
    },
    above: {
      wear: (where: string) => `Over the wear limit at ${where}.`,
      band: (where: string) => `Over the largest new size at ${where}.`,
      grade: (where: string, grade: string) => `Over the largest size of grade ${grade} at ${where}.`,
    },
    below: {
      band: (where: string) => `Under the smallest new size at ${where}.`,
      grade: (where: string, grade: string) => `Under the smallest size of grade ${grade} at ${where}.`,
    },
    tooClose: (where: string) => `Too close to call at ${where}.`,
    /** Some station is out by its own rule, which is not enough to prove it of the bore. */
    tooCloseAbove: {
      wear: (count: number, all: number) => `Too close to call: ${countOf(count, all)} over the wear limit.`,
      band: (count: number, all: number) =>
        `Too close to call: ${countOf(count, all)} over the largest new size.`,
      grade: (count: number, all: number, grade: string) =>
        `Too close to call: ${countOf(count, all)} over the largest size of grade ${grade}.`,
    },
    tooCloseBelow: {
      band: (count: number, all: number) =>
        `Too close to call: ${countOf(count, all)} under the smallest new size.`,
      grade: (count: number, all: number, grade: string) =>
        `Too close to call: ${countOf(count, all)} under the smallest size of grade ${grade}.`,
    },
    shape: {
      ovality: {
        above: 'Out-of-round is over its limit.',
        'too-close': 'Out-of-round is too close to call.',
        unknown: 'Out-of-round could not be judged.',
      },
      taper: {
        above: 'Taper is over its limit.',
        'too-close': 'Taper is too close to call.',
        unknown: 'Taper could not be judged.',
      },
      both: {
        above: 'Out-of-round and taper are over their limits.',
        'too-close': 'Out-of-round and taper are too close to call.',
        unknown: 'Out-of-round and taper could not be judged.',
      },
    },
    lean: {
      inside: (chances: string) => `${capital(chances)} that it is inside.`,
      above: (chances: string) => `${capital(chances)} that it is over.`,
      below: (chances: string) => `${capital(chances)} that it is under.`,
      even: 'About even whether it is inside or not.',
    },
    leanAt: {
      inside: (place: string, chances: string) => `At ${place}: ${chances} that it is inside.`,
      above: (place: string, chances: string) => `At ${place}: ${chances} that it is over.`,
      below: (place: string, chances: string) => `At ${place}: ${chances} that it is under.`,
      even: (place: string) => `At ${place}: about even whether it is inside or not.`,
    },
    /** A station is proven out by itself, the bore is not. */
    alone: (place: string, chances: string, stations: number) =>
      `Taken alone, ${place} is out, with ${chances}. The furthest of ${stations} readings is often the unluckiest, so it takes more to prove it of the bore.`,
    sure: {
      inside: (place: string, chances: string) =>
        `Nearest to being out is ${place}: ${chances} that it is inside.`,
      above: (place: string, chances: string) => `At ${place}: ${chances} that it is over.`,
      below: (place: string, chances: string) => `At ${place}: ${chances} that it is under.`,
    },
    settle: (doubt: string) => `A reading good to ${doubt} would settle it, if it stays the same.`,
    settleAt: (place: string, doubt: string) =>
      `At ${place} a reading good to ${doubt} would settle it, if it stays the same.`,
    settledByNone: 'It stands so near the limit that no bore gauge would settle it.',
    provisional: {
      'no-setting-size': 'Provisional: what size the gauge was set to was not recorded.',
      'no-opening-zero': 'Provisional: no opening zero was recorded.',
      'no-closing-zero': 'Provisional: no closing zero was recorded.',
      'no-bore-temperature': 'Provisional: the temperature of the bore was not recorded.',
      'no-reference-temperature': 'Provisional: the temperature of the ring or micrometer was not recorded.',
      'no-micrometer-check': 'Provisional: no check of the micrometer on its own standard was recorded.',
      'no-direction-test':
        'Provisional: no direction test was recorded, and clockwise is taken to be larger. If it is not, every figure is mirrored.',
      'no-wall-kind': 'Provisional: the kind of wall was not recorded.',
      'no-dial-over-contacts':
        'Provisional: no dial reading was recorded while the micrometer held the gauge, and 0 is taken.',
    },
    provisionalSeveral: (missing: readonly string[]) => `Provisional. Not recorded: ${missing.join(', ')}.`,
    missing: {
      'no-setting-size': 'size the gauge was set to',
      'no-opening-zero': 'opening zero',
      'no-closing-zero': 'closing zero',
      'no-bore-temperature': 'temperature of the bore',
      'no-reference-temperature': 'temperature of the ring or micrometer',
      'no-micrometer-check': 'check of the micrometer on its own standard',
      'no-direction-test': 'direction test (clockwise is taken to be larger)',
      'no-wall-kind': 'kind of wall',
      'no-dial-over-contacts': 'dial while the micrometer held the gauge (0 is taken)',
    },
    contactChanged:
      'Provisional: a contact of the gauge was changed after its setting, so every size may be off. Set it anew and measure again.',
    aboutMeanOnly:
      'Provisional: three contacts read the mean of a level, and the verdict is about that mean only.',
    assumed: 'Assumed values stand in, and their doubt is in every ±.',
    about: (stations: number) =>
      stations === 1
        ? 'This is about the one station measured, not about the rest of the wall.'
        : `This is about the ${stations} stations measured, not about the wall between them.`,
    comparison: (smallest: string, largest: string, stations: number) =>
      stations === 1
        ? `For comparison: ${smallest} at one station.`
        : `For comparison: ${smallest} to ${largest} at ${stations} stations.`,
    comparisonNone: 'For comparison: no readings yet.',
    comparisonBlocked: 'For comparison: every reading stands at a port or a belt and waits for your word.',
  },
}

function countOf(count: number, all: number): string {
  if (all === 1) return 'the one station is'
  return count === 1 ? `one of ${all} stations is` : `${count} of ${all} stations are`
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1)
}
