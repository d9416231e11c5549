/** The grid of readings, the field for the next one, and questions about readings. */
export const sheet = {
  grid: {
    title: 'Readings',
    depthHead: 'Depth',
    depthUnit: 'mm below the deck',
    axisHead: (degrees: string) => degrees,
    /** Axes that look at a named side: 0° and 90°. */
    axisSides: { frontRear: 'front–rear', rightLeft: 'right–left' },
    meanHead: 'Mean',
    ovalityHead: 'Out-of-round',
    station: (place: string) => `Station at ${place}`,
    stationRead: (place: string, figure: string, mark: string) => `${place}: ${figure}, ${mark}`,
    stationSizeless: (place: string, typed: string) => `${place}: ${typed} on the dial, no size yet`,
    stationEmpty: (place: string) => `${place}: no reading`,
    stationBlocked: (place: string, by: string) => `${place}: no reading, ${by} in the way`,
    withQuestion: (station: string) => `${station}, with a question`,
    questionAt: (place: string) => `Question about ${place}`,
    keys: 'Arrow keys go from cell to cell, with Shift they choose several. Delete clears them; copy, cut and paste go to and from a spreadsheet.',
    headIn: (head: string, unit: string) => `${head}, ${unit}`,
    stationOutOfReach: (place: string) => `${place}: no reading, out of reach`,
    outOfReach: 'out of reach',
    repeats: (count: number) => `${count} ×`,
    spread: (microns: string) => `spread ${microns}`,
    blockedBy: (by: string) => by,
    land: 'land',
    addLevel: 'Add a level',
    addAxis: 'Add an axis',
    newLevel: 'Depth of the new level, mm',
    newAxis: 'Direction of the new axis, degrees',
    editLevel: (depth: string) => `Change the level at ${depth}`,
    editAxis: (axis: string) => `Change the axis at ${axis}`,
    removeLevel: (depth: string) => `Remove the level at ${depth}`,
    removeAxis: (axis: string) => `Remove the axis at ${axis}`,
    removeLevelAsk: (depth: string, readings: number) =>
      readings === 1
        ? `The level at ${depth} holds a reading. Remove both? You can undo this.`
        : `The level at ${depth} holds ${readings} readings. Remove them with it? You can undo this.`,
    removeAxisAsk: (axis: string, readings: number) =>
      readings === 1
        ? `The axis at ${axis} holds a reading. Remove both? You can undo this.`
        : `The axis at ${axis} holds ${readings} readings. Remove them with it? You can undo this.`,
    remove: 'Remove',
    levelThere: (depth: string) => `There is a level at ${depth} already.`,
    axisThere: (axis: string) => `There is an axis at ${axis} already.`,
    axisTwice: (axis: string, same: string) =>
      `An axis at ${axis} is the one at ${same}: enter it below 180°.`,
    noLevels: 'Enter the depths at which you measure.',
    tooDeep: (length: string) => `The bore is ${length} long.`,
  },
  next: {
    label: 'Next reading',
    next: (place: string) => `Next: ${place}`,
    correcting: (place: string) => `Correcting ${place}`,
    repeat: (number: number, all: number) => `reading ${number} of ${all}`,
    inBore: (bore: string, place: string) => `${bore}, ${place}`,
    order: 'Read',
    orderLabel: 'Order of reading several bores',
    orders: { 'bore-by-bore': 'bore by bore', 'level-by-level': 'level by level' },
    repeatsPerStation: 'Readings per station',
    allRead: 'All stations in reach are read.',
    sizeField: 'Size, mm',
    deviationField: 'Dial deviation, µm',
    inchSizeField: 'Size, in',
    inchDeviationField: 'Dial deviation, 0.0001 in',
    take: 'Enter',
    back: 'Back',
    skip: 'Skip',
    cannotReach: "Can't reach",
    inReach: 'It is in reach',
    again: 'Again',
    clear: 'Clear',
    sign: '±',
    /** What the number just typed means, in both units. */
    same: (figure: string) => `= ${figure}`,
    noSizeYet: 'It has a size as soon as the gauge was measured over its contacts.',
    asDeviation: (microns: string) => `= ${microns} from the setting`,
    direction: {
      clockwise: 'Needle clockwise of zero: larger. Type it with +.',
      anticlockwise: 'Needle anticlockwise of zero: larger. Type the dial as it stands, clockwise +.',
      unknown: 'Which way is larger is not recorded: clockwise is taken, and the verdict stays provisional.',
    },
    farFromSetting: (found: string, setting: string) =>
      `${found} is far from the setting of ${setting}. Correct the number, or the size in the set-up above.`,
    farFromTaken: (found: string, taken: string) =>
      `${found} is far from ${taken}, which is only taken until the setting size is written down. Correct the number, or write that down in the set-up.`,
    settingFirst:
      'First write down in the set-up to what size the gauge was set: without it the dial gives no size.',
    severalHint: 'Several readings of one station: type them with spaces between.',
    noStation: 'Every station in reach is read. Choose the station that this number belongs to.',
    notTaken: (typed: string, place: string) =>
      place === '' ? `Not taken: ${typed}` : `Not taken at ${place}: ${typed}`,
    putBack: (typed: string) => `Put back ${typed}`,
    putBackShort: 'Put back',
    forget: (typed: string) => `Let it go: ${typed}`,
    forgetShort: 'Let it go',
    taken: (place: string, figure: string) => `${place}: ${figure} entered`,
    deepAcross: (depth: string, axis: string) => `${depth} deep, across ${axis}`,
  },
  questions: {
    title: 'Questions about readings',
    blocked: (place: string, by: string) =>
      `At ${place} a contact would stand in ${by}. Did both contacts stand on metal?`,
    belowNew: (place: string) =>
      `At ${place} the bore is smaller than the smallest new size. Is it the right reading, grade and limit?`,
    settingTaken: (size: string) =>
      `To what size was the gauge set? Until it is written down in the set-up, ${size} is taken, as in every new job.`,
    roughSizeTaken: (size: string) =>
      `How large is the bore, roughly? Until it is written down in the set-up, ${size} is taken, as in every new job.`,
    itIs: (size: string) => `It is ${size}`,
    soakedApart: (bore: string, standard: string, reference: string) =>
      `The bore at ${bore}, the ${standard} at ${reference}, and yet they lay side by side until equal? Which of it is right?`,
    bothAt: (temperature: string) => `Both ${temperature}`,
    notYetEqual: 'Not yet equal',
    farOff: (place: string, from: string) =>
      `The reading at ${place} is ${from} from the setting. Is it right?`,
    spread: (place: string, spread: string) =>
      `The repeats at ${place} differ by ${spread}. Wipe the wall and measure again, or take one out.`,
    itIsRight: 'It is right',
    takeItOut: 'Take it out',
    mend: 'Mend',
    confirmed: 'confirmed',
    keptOut: 'kept, in no verdict until you say that it is right',
  },
  /** One word for each verdict, and a longer one for ears. */
  marks: {
    inside: 'inside',
    above: 'over',
    below: 'under',
    'too-close': 'too close',
    blocked: 'port?',
    none: 'no limit',
  },
  marksSpoken: {
    inside: 'inside the limits',
    above: 'over the limit',
    below: 'under the limit',
    'too-close': 'too close to call',
    blocked: 'at a port, in no verdict',
    none: 'no verdict',
  },
}
