/** Scans of radii: reading a file of them, keeping them with a bore, looking at them. */
export const scans = {
  scans: {
    title: 'Scans',
    shown: 'Drawn from',
    readings: 'Readings',
    unnamed: (index: string) => `Scan ${index}`,
    local: 'Without the smooth form',
    localTitle:
      'Takes off the shape that runs smoothly around and along the bore, so that what is local stands out',
    status: {
      fetching: 'Fetching the scan…',
      fitting: 'Fitting the axis of the scan…',
      'not-here':
        'The radii of this scan are not in this browser. Open the file of the job that has them with it, or import the scan again.',
      'no-axis':
        'No axis can be fitted: no level of this scan has six radii without a gap of half a turn. Scan it all round.',
      failed: 'This browser could not fit the scan. Close other pages and open the job again.',
    },
    noSize: 'no size: 0 is the middle of the scan',
    noForm: '0 is the smooth form',
    onRadius: (micrometres: string) => `${micrometres} on radius`,
    noVerdict: 'Form about the fitted axis, on the radius. No size: no limits, no verdict.',
    localSaid: 'What stands out of the smooth form, on the radius. No limits here.',
    sized: 'Twice the radius about the fitted axis; readings give it its size.',
    picture: 'The bore as a probe scanned it, in three dimensions',
    nothing: 'Point at the wall to read it.',
    at: (depth: string, angle: string) => `${depth} · ${angle}`,
    noRadius: 'no radius: a port, or not measured',
    port: (name: string) => `port “${name}”`,
    radius: (radius: string) => `radius ${radius} from the middle`,
    over: (over: string) => `${over} from the smooth form`,
    twiceRadius: (size: string) => `twice the radius ${size}`,
    levelText: (depth: string, radii: string, least: string, most: string) =>
      `${radii} radii at ${depth}, from ${least} to ${most}.`,
    lineText: (angle: string, radii: string, least: string, most: string) =>
      `${radii} radii at ${angle}, from ${least} to ${most}.`,
    oneWall: 'A probe reads one wall: what is opposite is read by itself.',
    list: {
      levels: (levels: string, angles: string) => `${levels} levels × ${angles} angles`,
      missing: (count: string) => `${count} places empty`,
      look: (name: string) => `Look at ${name}`,
      remove: (name: string) => `Remove ${name}`,
      cleaning: (name: string) => `${name}: before or after cleaning`,
      tie: (name: string) => `${name}: size from`,
      noTie: 'no size',
      tieSurvey: (survey: string) => `size from ${survey}`,
      survey: (index: string) => `survey ${index}`,
      noTies: 'No station of it lies on metal in the scan, so the scan has no size.',
      tied: (count: string, doubt: string) => `Size from ${count} stations, ${doubt} on the radius.`,
      tiesDisagree: 'They differ by more than their doubt explains: is it the same bore, unchanged?',
    },
    changes: {
      taken: (name: string) => `scan ${name} taken`,
      removed: (name: string) => `scan ${name} removed`,
      cleaning: 'before or after cleaning',
      tie: 'what gives the scan its size',
    },
    leftOut: {
      notHere: (count: number) =>
        count === 1
          ? 'One scan is not in it: it is not in this browser.'
          : `${count} scans are not in it: they are not in this browser.`,
      noRoom: (count: number) =>
        count === 1
          ? 'One scan is not in it: the file would be larger than Borewall reads.'
          : `${count} scans are not in it: the file would be larger than Borewall reads.`,
    },
    damaged: (count: number) =>
      count === 1
        ? 'One scan in this file is damaged and was left out.'
        : `${count} scans in this file are damaged and were left out.`,
  },
  scanTable: {
    title: (file: string) => `A scan from ${file}`,
    reading: 'Reading the scan…',
    progress: (percent: string) => `${percent} % of the file`,
    lead: 'Check what the file holds. Nothing is taken before you say so.',
    notRead: {
      empty: 'There is nothing in this file.',
      'no-text': 'This is no text file. Save the scan as CSV or as text with tabs, then open that.',
      'too-large': 'This file holds more than a million radii. Leave out every other level or angle.',
      'commas-only':
        'The commas in it could part cells and could be decimal commas. Say which sign parts the cells.',
      'no-heads':
        'No row names what the columns hold. Either give a list with the heads “depth mm, angle °, radius µm”, one row for each radius, or a table with “depth mm / radius µm” in its first cell, the angles across and a row for each depth.',
      diameters:
        'The heads speak of diameters. A scan holds radii: how far one wall lies from the axis of the probe.',
      'no-values': 'No radius in this file could be read.',
      'too-few-angles': 'There are fewer than three angles in this file: no circle goes through them.',
      'too-many-places': 'Depths and angles make more than a million places. Leave out some of either.',
      'angles-differ': (line: string, depth: string) =>
        `The levels were not measured at the same angles: line ${line} has an angle that the level at ${depth} lacks. Bring all levels to one set of angles first.`,
    },
    open: {
      'value-unit': 'The heads do not say in which unit the radii are. Say which.',
      'depth-unit': 'The heads do not say in which unit the depths are. Say which.',
      decimal: 'Some figures have a comma and some a point. Say which sign parts decimals.',
    },
    problems: {
      letters: (text: string) =>
        `“${text}” holds letters. A radius is a number; leave the cell empty where there is a port.`,
      'other-sign': (text: string) => `“${text}” is no number.`,
      'inner-space': (text: string) => `“${text}” has a space within it.`,
      'sign-place': (text: string) => `“${text}” has a sign where none belongs.`,
      'both-marks': (text: string) => `“${text}” has a comma and a point. Write it without thousands marks.`,
      'several-marks': (text: string) => `“${text}” has more than one decimal sign.`,
      'too-long': (text: string) => `“${text}” is longer than any figure of a probe.`,
      'too-large': (text: string) => `“${text}” is larger than anything measured here.`,
      'other-mark': (text: string) => `“${text}” has another decimal sign than the rest of the file.`,
      'mark-open': (text: string) => `“${text}”: nobody has said yet whether comma or point parts decimals.`,
      'no-depth': () => 'There is no depth.',
      'no-angle': () => 'There is no angle.',
      'radius-too-large': (text: string) => `“${text}” is a radius of more than 2 m. Is the unit right?`,
      'cells-missing': (text: string, other: string) =>
        `This row has ${text} cells where the heads have ${other}. Write empty cells where there is a port.`,
      'cells-left-over': (text: string, other: string) =>
        `This row has ${text} cells where the heads have ${other}.`,
      'read-twice': (_text: string, other: string) =>
        `The place is also in line ${other}, with another figure. The one in line ${other} is taken.`,
      'quote-left-open': () => 'A quotation mark in this row is never closed.',
    },
    place: (line: string, column: string) => `Line ${line}, column ${column}`,
    line: (line: string) => `Line ${line}`,
    moreProblems: (count: string) => `and ${count} more`,
    problemsTitle: (count: string) => `Could not be read: ${count}`,
    problem: 'one place',
    manyProblems: (count: string) => `${count} places`,
    problemsKept: 'Everything else was read. These places stay empty if you take the scan as it is.',
    labels: {
      separator: 'Cells are parted by',
      decimal: 'Decimal sign',
      depthUnit: 'Depths are in',
      valueUnit: 'Radii are in',
      sign: 'A larger figure lies',
      turn: 'Angles, seen from the deck, run',
      name: 'Name',
      date: 'Date',
      hours: 'Hours run',
      cleaning: 'Taken',
    },
    units: { mm: 'mm', um: 'µm', inch: 'inch', 'ten-thousandth': '0.0001 in' },
    signs: { outward: 'further from the axis', inward: 'nearer to the axis' },
    turns: { clockwise: 'clockwise', 'counter-clockwise': 'counter-clockwise' },
    cleaning: { before: 'before cleaning', after: 'after cleaning' },
    cleaningOpen: 'not said',
    choose: 'Say which',
    rows: {
      levels: 'Levels',
      angles: 'Angles',
      values: 'Radii',
      missing: 'Empty places',
      range: 'Range',
      layout: 'Laid out as',
    },
    layouts: { list: 'a list, one row for each radius', table: 'a table, depth down and angle across' },
    levels: (count: string, from: string, to: string) => `${count}, from ${from} to ${to}`,
    angles: (count: string, step: string) => `${count}, ${step} apart`,
    anglesUneven: (count: string, least: string, most: string) => `${count}, ${least} to ${most} apart`,
    missing: (count: string, share: string) => `${count} (${share} %): taken as ports or not measured`,
    range: (least: string, most: string) => `${least} to ${most}`,
    closing: (count: string, farthest: string) =>
      `Closing readings a whole turn on, left out: ${count}. They differ from the first by ${farthest} at most: so far the probe or the part moved.`,
    repeated: (count: string) => `Places that stand in the file twice with the same figure: ${count}.`,
    map: 'The scan as it stands in the file, unrolled: angle across, depth down. Dark is nearer to the axis, light further away; hatched is empty.',
    noSize:
      'A scan shows form and no size: the probe counts from a zero of its own. Readings of a bore gauge at the same places give it one.',
    take: (bore: string) => `Take the scan into bore ${bore}`,
    takeWith: (count: string, bore: string) => `Take it into bore ${bore}, with ${count} left empty`,
    newJob: 'Start a new job with it',
    taken: (bore: string) => `Taken into bore ${bore}.`,
    asReadings: 'These are readings across the bore',
    asScan: 'These are radii of a scan',
    refusedJob: 'The scan cannot be taken into this job:',
    notKept: (why: string) => `The scan is not kept. ${why}`,
    change: (name: string) => `Scan ${name}`,
  },
}
