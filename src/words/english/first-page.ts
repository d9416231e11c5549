/** The page of a browser that has no job yet, and the examples. */
export const firstPage = {
  firstPage: {
    heading: 'Measure a bore, and see what the readings prove',
    lead: 'Type what a bore gauge reads. Borewall brings it to true diameters at 20 °C, says what is inside its limits, what is outside and what is too close to call, and draws the wall.',
    start: 'What to begin with',
    measure: 'Measure a bore',
    measureHint: 'Starts an empty job.',
    open: 'Open a file…',
    openHint: 'A job that was saved from Borewall, or a table of readings.',
    dropHint: 'Or drop it anywhere on this page.',
    kept: 'Kept jobs',
    keptHint: 'Something is kept in this browser, though not the job that was open last.',
    manual:
      'The service manual for the engine on the bench has the last word, and a qualified machinist should see whatever decides it.',
  },
  examples: {
    title: 'Look at an example',
    lead: 'All figures are invented. Each opens as a copy: change what you like.',
    list: {
      A: {
        name: 'A used two-stroke cylinder beside a new one',
        shows:
          'Inside its wear limit; out-of-round is too close to call. Ports keep part of the wall from being measured.',
      },
      B: {
        name: 'A four-cylinder iron block',
        shows:
          'Four bores, one setting of the gauge. The third is over its taper, the fourth too close to call.',
      },
      'B-as-typed': {
        name: 'The same block as it was typed',
        shows:
          'With two slips among the readings. Borewall asks about both, and a touch puts each of them right.',
      },
      C: {
        name: 'A diesel liner on four visits',
        shows:
          'The third visit was measured warm and reads 12 µm large everywhere; the two temperatures take it out.',
      },
      D1: {
        name: 'A compressor lying on its side',
        shows:
          'Worn like a barrel, and inside its limits. Its taper hangs on the rule; its rust is told of in the note.',
      },
      D2: {
        name: 'A hydraulic tube',
        shows: 'Every reading is well inside, and a score in the wall ends it all the same.',
      },
      E: {
        name: 'A scuffed two-stroke cylinder, scanned all round',
        shows:
          'A probe read its wall at every degree: four smears with narrow scores in them, and a bridge that stands proud.',
      },
      'E-72': {
        name: 'The same cylinder, scanned every 5°',
        shows:
          'No bore gauge was in it: the scan shows form and no size. At this step most of the scores are missed.',
      },
    },
    unknown: (name: string) => `There is no example called “${name}”. Those there are stand under Examples.`,
    notLoaded:
      'The example could not be loaded. Is Borewall still running on this machine? Then reload the page and try again.',
  },
  note: {
    title: 'Note',
    menu: 'Note…',
    about: 'About this example',
    lead: 'Kept with the job, and printed with its findings: a place for rust, scores and whatever no figure shows.',
  },
}
