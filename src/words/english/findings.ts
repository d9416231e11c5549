import type { LimitShare, ShapeReason } from '../../core/findings'
import type { WallKind } from '../../core/measured'

/** Rows of findings, what the method cannot see, cautions. */
export const findings = {
  findings: {
    title: 'Findings',
    largest: 'Largest diameter',
    smallest: 'Smallest diameter',
    ovality: 'Out-of-round',
    taper: 'Taper',
    fittedOval: 'Oval as fitted',
    fittedAcross: (axis: string, doubt: string, axes: number) =>
      `largest across ${axis} ± ${doubt}, from ${axes} axes`,
    fittedNoDirection: (most: string) => `no direction stands out; at most ${most}`,
    fittedThree: 'three axes cannot tell it from a four-lobed form',
    ovalAtLeast: 'True oval',
    ovalAtLeastFigure: (least: string) => `${least} or more`,
    ovalAtLeastDetail: 'two axes leave open how much more',
    depthForm: 'Form along the depth',
    depthForms: {
      straight: 'straight',
      tapered: 'tapered',
      barrel: 'barrel',
      waisted: 'waisted',
      'bell-mouthed': 'bell-mouthed',
      stepped: 'stepped',
    },
    depthStraight: 'as far as these readings show',
    depthEnds: (difference: string) => `top less bottom ${difference}`,
    depthMiddle: (depth: string, difference: string) =>
      `${depth} ${difference} off the line between the ends`,
    depthBell: {
      top: (difference: string) => `top ${difference} wider`,
      bottom: (difference: string) => `bottom ${difference} wider`,
    },
    depthStep: (depth: string, land: string, difference: string) =>
      `${depth} less the land at ${land} ${difference}`,
    grades: {
      name: 'Size grades',
      inside: (grades: readonly string[]) => `inside ${listed(grades)}`,
      insideNone: 'out of all',
      undecided: 'none proven',
      tooClose: (grades: readonly string[]) => `too close to call: ${listed(grades)}`,
      tooNarrow: (grades: readonly string[]) => `too narrow for this gauge: ${listed(grades)}`,
      above: (grades: readonly string[]) => `over: ${listed(grades)}`,
      below: (grades: readonly string[]) => `under: ${listed(grades)}`,
      rule: (stations: number) =>
        stations === 1 ? 'by the one station' : `inside where all ${stations} stations are`,
      information: 'for information: the wear limit alone is judged',
    },
    byRule: (rule: string) => `by ${rule}`,
    widestMean: 'Mean of the widest level',
    difference: (bore: string) => `Largest difference from ${bore}`,
    meanDifference: (bore: string) => `Mean difference from ${bore}`,
    limits: {
      wear: (size: string) => `wear limit ${size}`,
      max: (size: string) => `largest new size ${size}`,
      min: (size: string) => `smallest new size ${size}`,
      gradeMax: (grade: string, size: string) => `largest of grade ${grade} ${size}`,
      gradeMin: (grade: string, size: string) => `smallest of grade ${grade} ${size}`,
      minNotJudged: (size: string) => `smallest new size ${size}, not judged beside a wear limit`,
      shape: (microns: string) => `limit ${microns}`,
      share: {
        bore: (microns: string, share: string, size: string) => `limit ${microns} = ${share} of ${size}`,
        travel: (microns: string, share: string, travel: string) =>
          `limit ${microns} = ${share} of ${travel} travel`,
      } satisfies Record<LimitShare['of'], (...texts: [string, string, string]) => string>,
      smallestOf: (limit: string, count: number) => `${limit}, the smallest of ${count} given`,
      noTravel: 'a limit goes by the travel: enter it among the limits',
      none: 'no limit entered',
    },
    chance: {
      inside: (chances: string) => `${chances} that it is inside`,
      above: (chances: string) => `${chances} that it is over`,
      below: (chances: string) => `${chances} that it is under`,
      even: 'about even whether it is inside',
    },
    leans: { inside: 'leans inside', above: 'leans over' },
    /** Where a figure of shape lies. */
    between: (larger: string, smaller: string) => `larger at ${larger}; smaller at ${smaller}`,
    meanOf: (axes: number) => (axes === 1 ? 'one axis' : `mean of ${axes} axes`),
    stationsBoth: (count: number) => (count === 1 ? 'one station both have' : `${count} stations both have`),
    largestRead: 'the largest read, not a bound',
    asMade: (microns: string) => `two new bores may differ by ${microns} as made`,
    madeSo: {
      beyond: 'more than how two new bores may differ, so it is not how they were made alone',
      within: 'no more than how two new bores may differ: they may have been made so',
    },
    clampingsApart: (one: string, other: string) =>
      `one measured ${one}, the other ${other}: bolts bend a bore, so this is not wear`,
    otherRules: 'By other rules',
    notYet: 'not yet',
    why: {
      'no-readings': 'no readings outside a land yet',
      'one-axis-at-every-level': 'needs a second axis at one level',
      'one-level-on-every-axis': 'needs a second level on one axis',
      'axes-not-named': 'name the axes X and Y of the manual among the limits',
      'named-axis-not-measured': 'needs readings on the axes X and Y that the limits name',
      'no-common-axis': 'needs one axis read both at the top and at the bottom',
      'three-contacts-see-no-oval': 'three contacts read the mean of a level and see no oval',
    } satisfies Record<ShapeReason, string>,
    point: (name: string) => `Show ${name} on the wall`,
    barLabel: (low: string, high: string, limit: string) => `from ${low} to ${high}, limit ${limit}`,
  },
  notes: {
    title: 'What these readings cannot show',
    cannotProve: (doubt: string, needed: string) =>
      `This gauge can prove nothing inside this band: it is good to ${doubt}. What could is ${needed}, and that only in the middle of the band.`,
    lessThanAnyGauge: 'less than any bore gauge reaches',
    belowNew: (place: string) =>
      `At ${place} the bore is smaller than the smallest new size, beyond doubt. Check the reading, the grade and the limit; on a plated wall it may be metal of the piston stuck on.`,
    blocked: (place: string, by: string) =>
      `The reading at ${place} stands at ${by}: kept, but in no verdict until you say that both contacts stood on metal.`,
    soakedApart: (bore: string, standard: string, reference: string) =>
      `The bore is recorded at ${bore} and the ${standard} at ${reference}, though they lay side by side until equal. Both cannot be; the difference goes into every size as it is recorded.`,
    temperatureDecides: {
      inside: (place: string, doubt: string, without: string) =>
        `${temperatureKeepsOpen(place, doubt, without)} prove it inside.${sideBySide}`,
      above: (place: string, doubt: string, without: string) =>
        `${temperatureKeepsOpen(place, doubt, without)} prove it over.${sideBySide}`,
      below: (place: string, doubt: string, without: string) =>
        `${temperatureKeepsOpen(place, doubt, without)} prove it under.${sideBySide}`,
    },
    largeCorrection: (correction: string, half: string) =>
      `The correction for temperature, ${correction}, is more than half of the width between the limits (${half}). Measure nearer to 20 °C.`,
    apart: {
      warmer: (kelvin: string) => `The bore was ${kelvin} K warmer than ${apartAdvice}`,
      colder: (kelvin: string) => `The bore was ${kelvin} K colder than ${apartAdvice}`,
    },
    evenLobes:
      'Two contacts see even lobes only: a three-cornered form goes unseen. They cannot tell which of the two walls wore; both are drawn alike.',
    twoAxes: (between: string) =>
      `Two axes can miss an oval that lies between them, and set no upper limit to it. A reading at ${between} would show it.`,
    oneAxis: 'One axis shows nothing of an oval. Measure a second one across it.',
    gaps: (gaps: string) => `Nobody measured ${gaps}.`,
    gap: (from: string, to: string) => `from ${from} to ${to}`,
    moreGaps: (count: number) => (count === 1 ? 'in one more gap' : `in ${count} more gaps`),
    notRead: (places: string) => `Not read yet: ${places}.`,
    outOfReach: (places: string) => `Out of reach of the gauge, so nobody measured there: ${places}.`,
    places: (shown: readonly string[], more: number) =>
      more > 0 ? `${shown.join('; ')}; and ${more} more` : shown.join('; '),
    lengthNotKnown: (depth: string) =>
      `The length of the bore is not known: it is drawn to ${depth}, 10 mm past the deepest level or mark.`,
    differenceOfDiameters:
      'Out-of-round and taper are differences of diameters here. Roundness and cylindricity on a drawing are differences of radii: half as much for a plain oval or a plain cone.',
    threeContacts:
      'Three contacts read the mean of a level: an oval goes unseen, so out-of-round says nothing here, and inside the limit is about the mean only.',
    threeContactsBounded:
      'Three contacts read the mean of a level. Readings of two contacts from the same occasion show that the oval at each level is too small to change the verdict.',
    uncertainty: 'The true diameter lies within ± of its figure in 95 of 100 such cases.',
  },
  cautions: {
    title: 'Before you decide',
    manual:
      'The service manual for this engine has the last word, and a qualified machinist should see whatever decides it.',
    surface:
      'Figures alone do not decide: a scratch or ridge that catches a fingernail, pits in the ring path or a crack can end a bore that is in size.',
    surfacePlated:
      'Figures alone do not decide: bare aluminium, flaking, a scratch that catches a fingernail or pits in the ring path can end a bore that is in size.',
    warm: 'Never measure a part that is still warm from running, washing or honing.',
    walls: {
      'plated-aluminium':
        'A plated wall cannot be bored or honed to an oversize: it is plated anew or replaced.',
      'aluminium-silicon':
        'This wall needs its own finishing: ordinary honing ruins it. Leave it to a shop that does this kind.',
    } as Partial<Record<WallKind, string>>,
    provisional: 'Do not decide an engine on a provisional verdict: record what is missing, then look again.',
  },
}

const sideBySide =
  ' Let bore and ring or micrometer lie side by side until equal, read both with one thermometer, and measure again.'
const apartAdvice =
  'the ring or micrometer. Beyond 3 K a part seldom has one temperature throughout: let both lie side by side and measure again.'

function temperatureKeepsOpen(place: string, doubt: string, without: string): string {
  return `The doubt of the temperatures alone keeps this open: without it ${doubt} at ${place} would be ${without}, and the same readings would`
}

/** The first few, and how many more there are. */
function listed(names: readonly string[]): string {
  const most = 6
  const shown = names.slice(0, most).join(', ')
  return names.length > most ? `${shown} and ${names.length - most} more` : shown
}
