/** Bores and surveys side by side, their difference, and a bore through time. */
export const compare = {
  pages: {
    label: 'Pages',
    bench: 'Bench',
    compare: 'Compare',
    show: 'Show',
    report: 'Report',
    toBench: 'Back to the bench',
    explain: 'Explain to the owner',
  },
  compare: {
    title: 'Compared',
    lead: 'Two to eight, all drawn alike: one exaggeration, one view, one place pointed at.',
    nothing: 'Nothing to compare yet',
    nothingSaid:
      'Comparing takes two surveys with readings: measure this bore again, add another bore of the engine, or a new one to compare with.',
    tooFew: 'Choose at least two.',
    full: 'Eight at most: take one out first.',
    walls: 'Walls side by side',
    show: (name: string) => `Show ${name}`,
    ofSurvey: (bore: string, survey: string) => `${bore}, ${survey}`,
    hours: (hours: string) => `${hours} h`,
    survey: (number: number, all: number) => `survey ${number} of ${all}`,
    flat: 'This browser draws no 3D picture here. The maps show the same walls, unrolled.',
    less: {
      title: 'Difference',
      lead: 'One less another, at the stations both have.',
      one: 'This one',
      other: 'less this one',
      none: 'none',
      name: (one: string, other: string) => `${one} less ${other}`,
      drawn: (factor: string) => `difference drawn × ${factor}`,
      noStations:
        'These two have no station in common: levels within 1 mm on the same axis. There is no difference to read.',
      readOtherwise:
        'One was read by three contacts, which give the mean of a level, the other by two. Their difference would be of two things.',
      withinDoubt: 'within its doubt, may be none',
      standsOut: 'edge of where it stands out beyond its doubt',
      notBoth: 'not measured in both',
      none0: 'no difference',
      tighter: 'the first is tighter',
      looser: 'the first is wider',
      key: 'What the colours of the difference mean',
      table: 'Difference at each station, µm, with its doubt',
      level: 'Depth',
      stands: 'stands out',
      within: 'within its doubt',
      rows: {
        largest: 'Largest difference',
        mean: 'Mean difference',
        asMade: 'As made',
      },
      asMade: (microns: string) =>
        `Two new bores may differ by ${microns} as they were made: less than that need not be wear.`,
      warning: 'Not clamped alike',
    },
    time: {
      title: 'Through time',
      lead: 'One wall going from survey to survey, and on into the hours to come where a line says how it wears. Arrow keys step.',
      show: (bore: string) => `Show ${bore} going through its surveys`,
      slider: (bore: string) => `${bore} through its surveys`,
      name: (bore: string) => `${bore} through time`,
      at: (number: number, all: number, survey: string) => `Survey ${number} of ${all}: ${survey}`,
      between: (from: string, to: string) => `Between ${from} and ${to}: drawn only`,
      betweenHours: (hours: string) => `About ${hours} h, between surveys: drawn only`,
      betweenShort: 'drawn only',
      faded: 'faded: between surveys, nobody measured it',
      ahead: {
        at: (hours: string) => `At ${hours} h, ahead: sizes by their lines alone`,
        short: (hours: string) => `${hours} h, ahead`,
        line: (place: string, figure: string) => `${place}, first at its limit, by its line: ${figure}.`,
        lastTwo: (figure: string) => `By the last two surveys: ${figure}.`,
        before: (earliest: string, limit: string) =>
          `Before ${earliest} h, the earliest that it meets ${limit}.`,
        past: (earliest: string, limit: string) =>
          `From ${earliest} h on it may be over ${limit}: measure before that.`,
        sides: '19 chances in 20 to each side, if it wears on as it has.',
        faded: 'faded: the wall as it was last measured; nobody knows its form later',
      },
    },
    readOut: {
      difference: (depth: string, angle: string, figure: string) =>
        `${depth} · ${angle} · ${figure} · at a station both have`,
      drawn: (depth: string, angle: string, figure: string, distance: string) =>
        `${depth} · ${angle} · drawn ${figure}; nearest station both have ${distance} away`,
      notBoth: (depth: string, angle: string) => `${depth} · ${angle} · not measured in both`,
      ahead: (place: string, hours: string, figure: string) =>
        `${place} · at ${hours} h by its line ${figure}`,
      aheadUnknown: 'between stations nothing is known of hours to come',
      between: (depth: string, angle: string) => `${depth} · ${angle} · between surveys, drawn only`,
    },
  },
}
