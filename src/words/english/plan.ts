import type { LevelReason } from '../../core/plan/level-targets'
import type { PlanQuestion } from '../../core/plan/plan-axes'
import type { RepeatsRemedy } from '../../core/plan/repeats-for'

/** Where a bore can and should be measured, and how often. */
export const plan = {
  plan: {
    title: 'Plan',
    lead: 'What do you want to know? {question}',
    question: 'What the readings are to tell',
    questions: {
      size: 'the size, against limits',
      'out-of-round': 'out-of-round',
      bolts: 'a four-cornered form, from bolts',
      'along-depth': 'taper and form along the depth',
      wear: 'wear, against the land',
    } satisfies Record<PlanQuestion, string>,
    unknown: {
      'no-length':
        'A plan needs the length of the bore: enter it in the sentence about the bore. Ring travel, ports and belts make it a better one.',
      'too-short': 'The bore is too short for a contact of this width to stand in it.',
      'all-barred':
        'Nowhere in this bore do all contacts find metal: ports or belts are in the way of every axis.',
      'three-contacts-see-no-oval':
        'Three contacts read the mean of a level and see no oval. This question takes a gauge with two.',
      'radial-probe':
        'A probe on a spindle reads all round. This plan is for gauges that stand across the bore.',
    },
    axes: {
      size: 'two at a right angle are what manuals ask for. An oval that lies between them would not show; out-of-round takes three.',
      'out-of-round':
        'three are the fewest that give an oval its size and direction. A four-cornered form would still look like an oval.',
      bolts:
        'six find a four-cornered form whichever way it lies, beside an oval, with one axis to spare. Four would miss it in one direction.',
      'along-depth': 'taper is judged axis by axis, on two at a right angle.',
      wear: 'two at a right angle, since wear is seldom alike across and along.',
    } satisfies Record<PlanQuestion, string>,
    axesAre: (axes: string, why: string) => `Axes ${axes}: ${why}`,
    oneAxisIs: (axis: string) =>
      `Axis ${axis}: three contacts read the mean of a level at once. Two-contact readings would show whether it is oval.`,
    keeps: 'So many keep those that the manual names or that are read already.',
    turned: (angle: string) => `Turned by ${angle} from the front, so that ports leave more levels complete.`,
    heads: { depth: 'Depth', axes: 'Axes', why: 'Why' },
    all: 'all',
    only: (axes: string) => `only ${axes}`,
    reasons: {
      'upper-land': 'land above ring travel: keeps the original size, and shows a wrong setting',
      'lower-land': 'land below ring travel: keeps the original size',
      'top-of-travel': 'just under the top of ring travel, where wear is usually greatest',
      'bottom-of-travel': 'just above the bottom of ring travel',
      'near-top': 'near the upper end',
      'near-bottom': 'near the lower end',
      middle: 'middle',
      'upper-quarter': 'a quarter of the way down: how the wall runs between',
      'lower-quarter': 'three quarters of the way down: how the wall runs between',
      read: 'read already',
      'read-before': 'read in the survey before: wear is taken at the same place',
    } satisfies Record<Exclude<LevelReason, { readonly names: readonly string[] }>['code'], string>,
    portReasons: {
      'above-ports': (names: string) => `just above ${names}, where the wall is still whole`,
      'below-ports': (names: string) => `just below ${names}, where the wall is whole again`,
      'beside-ports': (names: string) => `beside ${names}, what can be reached there`,
    },
    others: (first: string, more: number) => `${first} and ${more} more`,
    inTheWay: (names: string) => `${names} in the way of the others`,
    tooFewForOval: 'too few for an oval',
    barred: (from: string, to: string, names: string) =>
      `Between ${from} and ${to} no axis has metal under every contact: ${names}.`,
    barredMiddle: (from: string, to: string, names: string) =>
      `The middle of this bore cannot be measured: between ${from} and ${to} no axis has metal under every contact (${names}). The levels above and below say nothing about it.`,
    noTravel:
      'Ring travel is not recorded, so no level can be put into a land: enter it in the sentence about the bore.',
    shortLand: {
      upper: (height: string) => `The land above ring travel, ${height} high, is too short for a contact.`,
      lower: (height: string) => `The land below ring travel, ${height} high, is too short for a contact.`,
    },
    measurable: 'All that can be measured',
    band: (from: string, to: string, axes: string) => `${from} to ${to}: ${axes}`,
    everyAxis: 'every axis',
    noAxis: (names: string) => `no axis (${names})`,
    range: (from: string, to: string) => `${from} to ${to}`,
    take: 'Take this plan',
    taken: 'The grid below has these levels and axes.',
    takenKeeps: 'Levels and axes that hold readings stay.',
    change: 'plan',
    repeats: {
      sentence: 'To know {quantity} to ± {wanted} µm:',
      label: 'Wanted doubt, ± µm',
      quantities: {
        size: 'a diameter',
        'out-of-round': 'the difference of two diameters at a level',
        bolts: 'the difference of two diameters at a level',
        'along-depth': 'the difference of two level means',
        wear: 'wear at a station',
      } satisfies Record<PlanQuestion, string>,
      notAbove: 'Give a doubt above 0.',
      once: (doubt: string) => `One reading at each station will do (${doubt}).`,
      several: (count: number, doubt: string, once: string) =>
        `${count} readings at each station (${doubt}; from one, ${once}).`,
      ask: (count: number) => (count === 1 ? 'Ask for one reading' : `Ask for ${count} readings`),
      tooMany: (count: string, once: string) =>
        `That would take ${count} readings at each station, more than anyone takes (from one, ${once}).`,
      never: (least: string) =>
        `No number of readings reaches that here. What they do not shrink leaves ${least}.`,
      slope: 'Where the wall steps, as at a ridge, the doubt of the depth comes on top.',
      remedies: {
        'set-by-ring': 'Set by a ring',
        'record-what-is-missing': 'What is assumed measured and written down',
        'know-the-temperatures': 'Temperatures known twice as well',
        'finer-gauge': 'A dial gauge read to 0.001 mm',
        'all-together': 'All of this together',
      } satisfies Record<RepeatsRemedy['kind'], string>,
      suffices: (what: string, count: number) =>
        count === 1 ? `${what}: one reading would do.` : `${what}: ${count} readings would do.`,
      atBest: (what: string, least: string) => `${what}: ${least} at best.`,
      nothing: 'Nothing that is known of this gauge and setting would change that much.',
    },
  },
} as const
