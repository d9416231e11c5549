/** What form a scan proves, and what a file of radii says by itself. */
export const scanForm = {
  title: 'Form of the scan',
  aboutFile: (file: string) => `Scan in ${file}`,
  roundness: 'Roundness, worst level',
  roundnessDetail: (depth: string) =>
    `at ${depth}; a difference of radii by the minimum zone (ISO 12181), half of an out-of-round for a plain oval`,
  roundnessSquares: (depth: string) => `at ${depth}; a difference of radii about the least-squares circle`,
  noRoundness: 'No level has radii all round, so no roundness is given.',
  cylindricity: 'Cylindricity',
  cylindricityDetail: 'minimum zone (ISO 12180), of all levels about one straight axis',
  noCylindricity: 'Fewer than two levels have radii all round, so no cylindricity is given.',
  oval: 'Oval, widest level',
  ovalDetail: (depth: string, axis: string) =>
    `at ${depth}, largest across ${axis}; a difference of diameters`,
  ovalNone: (depth: string, most: string) => `at ${depth}; no direction stands out, at most ${most}`,
  twoContact: 'As two contacts would find it',
  twoContactDetail: (depth: string) =>
    `largest less smallest diameter at ${depth}, of axes with metal at both ends`,
  axis: 'Axis of the probe',
  axisFigure: (farthest: string) => `${farthest} off`,
  axisDetail: 'at the level where that is most; taken out of every figure here',
  range: (value: string, low: string, high: string) => `${value} (${low} to ${high})`,
  probeShows: (round: string, cylinder: string) =>
    `A probe that repeats like this one shows up to ${round} at a perfectly round level, and ${cylinder} on a perfect cylinder.`,
  nearGaps: (count: string) =>
    `The filter leans on one side at ${count} values, beside ports: take those with care.`,
  noSize: 'A scan shows form and no size: nothing here says whether the bore is inside its limits.',
  noDiameter:
    'Name the rough diameter of the bore (--diameter 60, in mm) to have it looked through for marks: their width in mm goes by it.',
  diameterRange: 'A diameter is a number from 1 to 2000, in mm.',
  diameterForScan: '--diameter goes with a file of radii.',
}
