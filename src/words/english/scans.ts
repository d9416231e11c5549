/** Scans of radii: keeping them with a bore, looking at them. */
export const scans = {
  scans: {
    title: 'Scans',
    importTitle: (file: string) => `A scan from ${file}`,
    asScan: 'These are radii of a scan',
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
    pastEnd: (scanned: string, length: string) =>
      `The scan goes down to ${scanned}, past the ${length} that the bore is said to be long.`,
    picture: 'The bore as a probe scanned it, in three dimensions',
    nothing: 'Point at the wall to read it.',
    at: (depth: string, angle: string) => `${depth} · ${angle}`,
    noRadius: 'no radius: a port, or not measured',
    port: (name: string) => `port “${name}”`,
    radius: (radius: string) => `radius ${radius} from the middle`,
    over: (over: string) => `${over} from the smooth form`,
    twiceRadius: (size: string) => `twice the radius ${size}`,
    radii: (count: string) => `${count} radii`,
    twiceRadii: (count: string) => `${count} radii, doubled,`,
    levelText: (radii: string, place: string, least: string, most: string) =>
      `${radii} at ${place}, from ${least} to ${most}.`,
    oneWall: 'A probe reads one wall: what is opposite is read by itself.',
    list: {
      levels: (levels: string, angles: string) => `${levels} levels × ${angles} angles`,
      missing: (count: string) => (count === '1' ? '1 place empty' : `${count} places empty`),
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
}
