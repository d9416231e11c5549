import type { Entry, GaugeKind, OvalityRule, StandardKind, TaperRule, WallKind } from '../../core/measured'

/** The sentences that are filled in on the page. Names in braces are the fields: see `slots`. */
export const setUp = {
  setUp: {
    title: 'Set-up',
    /** Where sizes are written down. */
    sizes:
      '{gauge}, read to {step} µm, set to {size} mm by {standard}. Written down: {entry}. Zero {zeroOpen} µm before, {zeroClose} µm after. Bore {boreTemperature} °C, reference {referenceTemperature} °C, {thermometers}.',
    /** Where dial deviations are written down. */
    deviations:
      '{gauge}, read to {step} µm, set to {size} mm by {standard}. Written down: {entry}; {direction} is larger. Zero {zeroOpen} µm before, {zeroClose} µm after. Bore {boreTemperature} °C, reference {referenceTemperature} °C, {thermometers}.',
    /** Added where the gauge was set by a micrometer. */
    micrometerCheck: 'On its own standard the micrometer reads {micrometerError} µm too much.',
    labels: {
      gauge: 'Gauge',
      step: 'Step that is read, µm',
      size: 'Setting size, mm',
      standard: 'Set by',
      entry: 'Readings are written down as',
      direction: 'The needle goes this way when the bore is larger',
      zeroOpen: 'Zero before measuring, µm, clockwise positive',
      zeroClose: 'Zero after measuring, µm, clockwise positive',
      boreTemperature: 'Temperature of the bore, °C',
      referenceTemperature: 'Temperature of the ring or micrometer, °C',
      thermometers: 'How the temperatures were taken',
      micrometerError: 'What the micrometer reads too much on its own standard, µm',
    },
    gauges: {
      'dial-0.001-ring': 'Dial bore gauge 0.001, set in a ring',
      'dial-0.001-micrometer': 'Dial bore gauge 0.001, set by micrometer',
      'dial-0.01': 'Dial bore gauge 0.01',
      'dial-0.01-simple': 'Dial bore gauge 0.01, simple make',
      telescoping: 'Telescoping gauge and micrometer',
      'internal-micrometer-rods': 'Internal micrometer with rods',
      'three-contact-micrometer': 'Three-contact internal micrometer',
      'air-plug': 'Air plug',
      'radial-probe': 'Radial probe on a spindle',
    } satisfies Record<GaugeKind, string>,
    standards: { ring: 'setting ring', micrometer: 'micrometer' } satisfies Record<StandardKind, string>,
    entries: {
      size: 'sizes in mm',
      deviation: 'dial deviations',
      reverse: 'dial, zeroed in the bore',
      direct: 'sizes read directly',
    } satisfies Record<Entry, string>,
    directions: { clockwise: 'clockwise', anticlockwise: 'anticlockwise' },
    dialUnits: { microns: 'µm', marks: 'marks of the dial' },
    thermometers: {
      one: 'by one thermometer',
      two: 'by two thermometers',
      soaked: 'lain side by side until equal',
    },
    directionTest:
      'Push one contact in by a hair: the needle now shows a smaller bore. Never take the direction for granted.',
    closingZeroHint: 'Put the gauge back on its setting at the end and write down the dial.',
    typicalTitle: 'Typical figures',
    typical:
      'Typical figures for this kind of gauge, from memory of the trade; change what you know better. All are standard uncertainties but the drift, which is a half-width.',
    typicalSentence:
      'Repeats scatter by {repeatability} µm, known from {repeatabilityFreedom} degrees of freedom. Setting good to {setting} µm, dial or scale to {scale} µm; drift without a closing zero ± {drift} µm. The {standardKind} itself is good to {standardDoubt} µm, a thermometer to {thermometerDoubt} K. Contacts reach {contact} mm either side; depth is held to {depthDoubt} mm.',
    typicalLabels: {
      repeatability: 'Standard deviation of repeats, µm',
      repeatabilityFreedom: 'Degrees of freedom it rests on',
      setting: 'Standard uncertainty of the setting, µm',
      scale: 'Standard uncertainty of dial or scale, µm',
      drift: 'Half-width of the drift without a closing zero, µm',
      standardKind: 'What the gauge was set by',
      standardDoubt: 'Standard uncertainty of the ring or micrometer itself, µm',
      thermometerDoubt: 'Standard uncertainty of a thermometer, K',
      contact: 'Half-width of a contact on the wall, mm',
      depthDoubt: 'Standard uncertainty of the depth, mm',
    },
    noFigure: 'none',
    temperatureEffect: (effect: string) => `At these temperatures each reading is corrected by ${effect} µm.`,
    notUnderstood: 'not recorded, an assumed value with its doubt stands in',
    survey: 'Measured {date} at {hours} hours run.',
    surveyLabels: { date: 'Date measured, year-month-day', hours: 'Hours run' },
  },
  limits: {
    title: 'Limits',
    source: 'From the service manual for this engine. Borewall ships no limits.',
    band: 'New {newMin} to {newMax} mm; wear limit {wearLimit} mm.',
    ovality: 'Out-of-round up to {ovalityLimit} mm, judged as {ovalityRule}.',
    ovalityAxes: 'The manual calls the axis at {ovalityX}° X and the axis at {ovalityY}° Y.',
    taper: 'Taper up to {taperLimit} mm, judged as {taperRule}.',
    grade: 'Grade {gradeName}: {gradeMin} to {gradeMax}',
    boreGrade: 'This bore is stamped {grade}.',
    labels: {
      newMin: 'Smallest size when new, mm',
      newMax: 'Largest size when new, mm',
      wearLimit: 'Wear limit, largest size in service, mm',
      ovalityLimit: 'Out-of-round limit, mm',
      ovalityRule: 'Rule for out-of-round',
      ovalityX: 'Axis X of the manual, degrees',
      ovalityY: 'Axis Y of the manual, degrees',
      taperLimit: 'Taper limit, mm',
      taperRule: 'Rule for taper',
      gradeName: 'Name of the grade',
      gradeMin: 'Smallest size of the grade, mm',
      gradeMax: 'Largest size of the grade, mm',
      grade: 'Grade stamped on this bore',
    },
    none: 'none given',
    noGrade: 'no grade',
    addGrade: 'Add a grade',
    removeGrade: (name: string) => `Remove grade ${name}`,
    wearAlone: 'With a wear limit, it alone is judged; the new size is drawn.',
    rulesDiffer: 'The same readings can pass one rule and fail another. Choose the one your manual prints.',
    reversed: 'The smallest size is above the largest.',
  },
  /** Short names of the rules, printed beside each figure. */
  ovalityRules: {
    'largest-less-smallest-at-a-level': 'largest less smallest at one level',
    'across-less-along-at-a-level': 'X less Y at one level',
    pooled: 'largest on X less smallest on Y, all levels pooled',
  } satisfies Record<OvalityRule, string>,
  taperRules: {
    'between-levels-of-an-axis': 'largest less smallest along one axis',
    'top-less-bottom-of-an-axis': 'top less bottom on one axis',
    'largest-top-less-largest-bottom': 'largest at the top less largest at the bottom',
    'largest-top-less-smallest-bottom': 'largest at the top less smallest at the bottom',
    'level-means': 'mean at the top less mean at the bottom',
  } satisfies Record<TaperRule, string>,
  bore: {
    title: 'Bore',
    sentence: '{length} mm long, {wall}.',
    plated: '{length} mm long, {wall}, plating {plating} µm thick.',
    travel: 'The rings run from {travelFrom} to {travelTo} mm; the wall outside is land.',
    labels: {
      name: 'Name of the bore',
      length: 'Length of the bore, mm',
      wall: 'Kind of wall',
      plating: 'Plating on one wall, µm',
      travelFrom: 'Rings run from, mm below the deck',
      travelTo: 'Rings run to, mm below the deck',
    },
    walls: {
      'plated-aluminium': 'plated aluminium',
      'aluminium-silicon': 'aluminium-silicon without plating',
      'grey-iron': 'grey iron',
      steel: 'steel',
    } satisfies Record<WallKind, string>,
    lengthNotKnown: 'not known',
    ports: {
      title: 'Ports',
      lead: 'Openings in the wall. Depth below the deck; angle clockwise seen from the deck, 0° at the front.',
      none: 'No ports entered.',
      add: 'Add a port',
      newName: 'Port',
      remove: (name: string) => `Remove ${name}`,
      mirror: (name: string) => `Add the mirror image of ${name}`,
      mirrorShort: 'Mirror',
      mirrorSuffix: ' (mirrored)',
      name: 'Name',
      fromDepth: 'From, mm',
      toDepth: 'To, mm',
      fromAngle: 'From, °',
      toAngle: 'To, °',
      measuredBy: 'Ports are measured by',
      measured: 'Measured by {way}.',
      ways: { edges: 'both edges in degrees', arc: 'width in mm and middle' },
      width: 'Width, mm',
      middle: 'Middle, °',
      allBores: 'All bores of this job have these ports.',
    },
    belts: {
      title: 'Belts',
      lead: 'A band all round that nobody could measure: drawn as wall, hatched.',
      none: 'No belts entered.',
      add: 'Add a belt',
      newName: 'Belt',
      remove: (name: string) => `Remove ${name}`,
    },
  },
}

/** Fields of the set-up sentences. */
export type SetUpSlot = keyof typeof setUp.setUp.labels
/** Fields of the sentences about limits. */
export type LimitSlot = keyof typeof setUp.limits.labels
/** Fields of the sentences about a bore. */
export type BoreSlot = keyof typeof setUp.bore.labels
