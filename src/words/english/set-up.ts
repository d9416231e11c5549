import type { Clamping, Entry, GaugeKind, Marking, StandardKind } from '../../core/measured'

/** The set-up sentences and what belongs to them. Names in braces are the fields: see `slots`. */
export const setUp = {
  setUp: {
    title: 'Set-up',
    /** Before the sentence where the job lists several set-ups. */
    which: '{setUp}:',
    /** Where sizes are written down from a gauge set to a size. A figure stands with its unit. */
    sizes:
      '{gauge}, read to {step} {dialUnit}, set to {size} {sizeUnit} by {standard}. Written down: {entry}. Zero {zeroOpen} before, {zeroClose} after. Bore {boreTemperature}, {reference} {referenceTemperature}, {thermometers}.',
    /** Where the dial of a gauge set to a size is written down. */
    deviations:
      '{gauge}, read to {step} {dialUnit}, set to {size} {sizeUnit} by {standard}. Written down: {entry}; {direction} is larger ({directionTest}). Zero {zeroOpen} before, {zeroClose} after. Bore {boreTemperature}, {reference} {referenceTemperature}, {thermometers}.',
    /** Where the gauge was zeroed in the bore. */
    reverse:
      '{gauge}, read to {step} {dialUnit}. Written down: {entry}; {direction} is larger ({directionTest}). Over its contacts the micrometer read {overContacts} {sizeUnit} with the dial at {dialOverContacts}. Back at its zero in the bore the dial showed {zeroOpen} before, {zeroClose} after. Bore {boreTemperature}, {reference} {referenceTemperature}, {thermometers}.',
    /** Where an internal instrument was read. */
    direct:
      '{gauge}, read to {step} {dialUnit}, in a bore of about {size}. Written down: {entry}. Bore {boreTemperature}, {reference} {referenceTemperature}, {thermometers}.',
    /** Where it is checked in a ring or on a standard of its own, and can drift from it. */
    directChecked:
      '{gauge}, read to {step} {dialUnit}. Against a {standard} at {size} it read {micrometerError} too much before and {zeroClose} too much after. Written down: {entry}. Bore {boreTemperature}, {reference} {referenceTemperature}, {thermometers}.',
    /** Added where a micrometer was used. */
    micrometerCheck: 'On its own standard the micrometer reads {micrometerError} too much.',
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
      setUp: 'Setting that this survey was measured with',
      dialUnit: 'What the gauge is marked in',
      sizeUnit: 'What the ring or micrometer is marked in',
      directionTest: 'Find out which way the needle goes',
      overContacts: 'Micrometer over the contacts of the gauge, mm',
      dialOverContacts: 'Dial while the micrometer held the gauge, µm, clockwise positive',
      roughSize: 'Size of the bore, roughly, mm',
      reference: 'What the temperature beside the bore is of',
    },
    /** The same for instruments marked in inches. */
    inchLabels: {
      step: 'Step that is read, 0.0001 in',
      size: 'Setting size, in',
      zeroOpen: 'Zero before measuring, 0.0001 in, clockwise positive',
      zeroClose: 'Zero after measuring, 0.0001 in, clockwise positive',
      micrometerError: 'What the micrometer reads too much on its own standard, 0.0001 in',
      overContacts: 'Micrometer over the contacts of the gauge, in',
      dialOverContacts: 'Dial while the micrometer held the gauge, 0.0001 in, clockwise positive',
      roughSize: 'Size of the bore, roughly, in',
    },
    units: {
      size: { mm: 'mm', inch: 'in' },
      dial: { mm: 'µm', inch: '× 0.0001 in' },
    } satisfies Record<'size' | 'dial', Record<Marking, string>>,
    withUnit: (figure: string, unit: string) => `${figure} ${unit}`,
    /** In the place of a figure that was not recorded: what is taken instead. */
    notRecorded: (taken: string) => `not recorded (${taken})`,
    taken: {
      zero: '0 taken',
      size: (size: string) => `${size} taken`,
      drift: (halfWidth: string) => `± ${halfWidth} taken`,
      temperature: '20 ± 5 taken',
      sameTemperature: (celsius: string) => `${celsius} ± 1 taken`,
      micrometer: (halfWidth: string) => `0 ± ${halfWidth} taken`,
      clockwise: 'clockwise taken',
      nothing: 'nothing taken',
    },
    noSizesYet:
      'These readings have no size yet: first write down what the micrometer read over the contacts.',
    references: { ring: 'ring', micrometer: 'micrometer' } satisfies Record<StandardKind, string>,
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
    thermometers: {
      one: 'by one thermometer',
      two: 'by two thermometers',
      soaked: 'lain side by side until equal',
    },
    directionTest: {
      open: 'test it',
      title: 'Which way does the needle go?',
      close: (by: string) =>
        `Hold the gauge between the faces of the micrometer. Close the micrometer by ${by} and watch the needle: which way did it go?`,
      push: 'Leave the gauge in its ring. Push one contact in by a hair and watch the needle: which way did it go?',
      why: 'That made the size smaller, so a larger bore sends the needle the other way. Dials differ in this, and one taken for granted mirrors every figure.',
      by: { mm: '0.01 mm', inch: '0.0005 in' } satisfies Record<Marking, string>,
      went: { clockwise: 'It went clockwise', anticlockwise: 'It went anticlockwise' },
      stayed: 'It did not move',
      stayedHelp:
        'Then nothing is recorded. See that the gauge is held between the faces, not the body, and that the needle is not at the end of its travel; then try again.',
    },
    more: {
      title: 'More',
      survey:
        'Bore by caliper {caliper}. Measured {clamping}, by {measuredBy}, {rested} hours after it last ran, was washed or honed. After its setting the contact of the gauge was {contact}.',
      surveyPlate:
        'Bore by caliper {caliper}. Measured {clamping} tightened to {torque} N·m, by {measuredBy}, {rested} hours after it last ran, was washed or honed. After its setting the contact of the gauge was {contact}.',
      setUp:
        'The gauge was last calibrated {calibrated}; one turn of its needle is {turn}. Since its setting it may have warmed by {warmed} K. At the closing zero the {reference} was at {referenceClose}.',
      setUpDirect: 'The gauge was last calibrated {calibrated}.',
      labels: {
        caliper: 'The bore by caliper',
        clamping: 'What was bolted to the bore',
        torque: 'Torque of the plate’s bolts, N·m',
        measuredBy: 'Who measured',
        rested: 'Hours since it last ran, was washed or honed',
        contact: 'The contact of the gauge after its setting',
        calibrated: 'Day of the last calibration, year-month-day',
        turn: 'One turn of the needle',
        warmed: 'How much the gauge may have warmed since its setting, K',
        reference: 'What the temperature beside the bore is of',
        referenceClose: 'Temperature of the ring or micrometer at the closing zero, °C',
      },
      caliperHelp:
        'A caliper is rough, but it shows a sleeve misread by a turn or a needle that went round once.',
      clampings: {
        bare: 'bare',
        'torque-plate': 'with a torque plate',
        assembled: 'assembled',
      } satisfies Record<Clamping, string>,
      contacts: { kept: 'not changed', changed: 'changed' },
      turnTaken: (typical: string) => `${typical} taken`,
      warmedNone: 'none taken',
      referenceCloseTaken: 'as at the opening',
    },
    /** What is left to do when every station is read. */
    closing: {
      deviation: 'Now put the gauge back on its setting: the dial shows {zeroClose}.',
      reverse: 'Now put the gauge back where you zeroed it in the bore: the dial shows {zeroClose}.',
      direct: 'Now read the {standard} again: it reads {zeroClose} too much.',
      overContacts:
        'Now measure the gauge over its contacts: the micrometer reads {overContacts} with the dial at {dialOverContacts}.',
      labels: {
        zeroClose: 'Closing zero',
        overContacts: 'Over the contacts',
        dialOverContacts: 'Dial meanwhile',
        standard: 'What it was checked in',
      },
    },
    typicalTitle: 'Typical figures',
    typical:
      'Typical figures for this kind of gauge, from memory of the trade; change what you know better. All are standard uncertainties but the drift, which is a half-width.',
    typicalSentence:
      'Repeats scatter by {repeatability} µm, known from {repeatabilityFreedom} degrees of freedom. Setting good to {setting} µm, dial or scale to {scale} µm, rocking to {rocking} µm; drift without a closing zero ± {drift} µm. The {standardKind} itself is good to {standardDoubt} µm, a thermometer to {thermometerDoubt} K. Contacts reach {contact} mm either side (feet of a centraliser: {feet} mm from one); depth is held to {depthDoubt} mm.',
    typicalLabels: {
      repeatability: 'Standard deviation of repeats, µm',
      repeatabilityFreedom: 'Degrees of freedom it rests on',
      setting: 'Standard uncertainty of the setting, µm',
      scale: 'Standard uncertainty of dial or scale, µm',
      rocking: 'Standard uncertainty from a tilt that rocking left, µm',
      drift: 'Half-width of the drift without a closing zero, µm',
      standardKind: 'What the gauge was set by',
      standardDoubt: 'Standard uncertainty of the ring or micrometer itself, µm',
      thermometerDoubt: 'Standard uncertainty of a thermometer, K',
      contact: 'Half-width of a contact on the wall, mm',
      feet: 'From a contact to each foot of the centraliser, mm along the wall',
      depthDoubt: 'Standard uncertainty of the depth, mm',
    },
    noFigure: 'none',
    temperatureEffect: {
      short: (effect: string) => `Each corrected by ${effect} for warmth.`,
      none: 'At these temperatures nothing is corrected.',
      sum: (effect: string) => `At these temperatures each reading is corrected by ${effect}.`,
      parts: (bore: string, boreC: string, standard: string, reference: string, referenceC: string) =>
        `The bore at ${boreC} makes ${bore} of it, the ${reference} at ${referenceC} ${standard}.`,
      doubt: (doubt: string) => `This is good to ${doubt}.`,
      notRecorded: 'Not both temperatures were recorded: what is missing is taken, and its doubt counted.',
    },
    survey: 'Measured {date} at {hours} hours run.',
    surveyOfSeveral: 'Survey {which}, measured {date} at {hours} hours run.',
    surveyNumber: (number: number, all: number) => `${number} of ${all}`,
    surveyLabels: {
      which: 'Which survey is shown',
      date: 'Date measured, year-month-day',
      hours: 'Hours run',
    },
  },
}
