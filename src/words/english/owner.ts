import type { UndecidedReason } from '../../core/decision/decision'
import type { Outcome } from '../../core/decision/decision-rules'
import type { BoreVerdict, SurfaceStop } from '../../core/findings'
import type { OutlookReason } from '../../core/outlook/outlook'

type NoVerdict = Extract<BoreVerdict, { readonly known: false }>['why']

/**
 * What the owner is told, who has never heard of ovality: plain words and short sentences. A trade term stands in
 * square brackets: it is shown in round ones where it comes first and left out after that. No text of the job goes in
 * here. Causes are things to check, never findings.
 */
export const owner = {
  topics: {
    seen: 'What you see',
    now: 'New, and now',
    shape: 'Where wide, where tight',
    used: 'What is used up',
    sure: 'How sure we are',
    advice: 'What we suggest',
    causes: 'Why, and how to slow it',
  },
  nothing: 'Nothing was measured in this bore yet, so there is nothing to tell.',
  /** Radii alone: a form without a size. */
  scanned: 'The shape of this bore was scanned but its size was not measured, so nobody can tell its wear.',
  seen: {
    /** A hair of the head is about 70 µm thick: common practice, no published source. */
    hair: {
      mm: 'A human hair is about 70 µm thick; a µm is a thousandth of a millimetre.',
      inch: 'A human hair is about 0.003 in thick.',
    },
    drawn: (factor: string) =>
      `You look down into the bore, and each change in its width is drawn ${factor} times too large.`,
    flat: 'You see the wall of the bore, cut open and laid out flat.',
    colours: 'Blue parts are tight and amber parts are wide.',
    hatched: 'Where the wall is hatched, nobody measured.',
  },
  now: {
    between: (least: string, most: string, now: string) =>
      `New, it was ${least} to ${most} wide; now it is ${now} where it is widest [diameter].`,
    least: (least: string, now: string) =>
      `New, it was ${least} wide or more; now it is ${now} where it is widest [diameter].`,
    alone: (now: string) => `Now it is ${now} wide where it is widest [diameter].`,
    notEntered: 'How wide it was when new is not written down here.',
    doubt: 'The figure after ± is how far off it may be.',
    isNew: 'It has not run yet.',
    grown: {
      whenNew: (figure: string) => `At the most worn place it has grown by ${figure} since it was new.`,
      since: (figure: string) =>
        `At the most worn place it has grown by ${figure} since it was first measured.`,
      land: (figure: string) =>
        `At the most worn place it has grown by ${figure}, going by the wall that no ring touches.`,
      bore: (figure: string) => `At the most worn place it is wider by ${figure} than the new one.`,
      'new-band': (figure: string) =>
        `At the most worn place it has grown by ${figure}: how wide it was made is not known closer than that.`,
    },
    grownNot: (figure: string) => `Nowhere is it sure that it has grown: ${figure} at the most worn place.`,
    slip: 'One of the readings looks like a slip, and these figures may change.',
    hairs: {
      half: 'That is less than half a hair.',
      one: 'That is less than one hair.',
      about: 'That is about one hair.',
      more: (count: number) =>
        count === 1 ? 'That is more than one hair.' : `That is more than ${count} hairs.`,
    },
  },
  shape: {
    places: (wide: string, tight: string) => `It is widest ${wide}, and tightest ${tight}.`,
    ovalOnly: (depth: string, wide: string, tight: string) =>
      `It is wider ${wide} than ${tight}, ${depth} down.`,
    even: 'It is round and even, as far as these readings can tell.',
    place: (depth: string, across: string) => `${depth} down, ${across}`,
    down: (depth: string) => `${depth} down`,
    across: {
      frontRear: 'from front to rear',
      frontRight: 'from front right to rear left',
      sides: 'from side to side',
      frontLeft: 'from front left to rear right',
    },
    oval: (figure: string, depth: string) => `It is oval [out-of-round] by ${figure}, ${depth} down.`,
    ovalOpen: 'No oval stands out from the doubt of the gauge.',
    longest: (across: string) => `The long way of the oval runs ${across}.`,
    taper: (figure: string) => `From one end to the other its width changes [taper] by ${figure}.`,
    taperOpen: 'No change from end to end stands out.',
    oneAxis: 'Whether it is oval was not measured.',
    interval: 'The figures in brackets are how small and how large it may be.',
  },
  used: {
    share: (low: string, high: string) => `Of the wear that its limit allows, ${low} to ${high} is used up.`,
    shareOne: (share: string) => `Of the wear that its limit allows, ${share} is used up.`,
    left: (low: string, high: string) => `So ${low} to ${high} is left.`,
    leftOne: (share: string) => `So ${share} is left.`,
    mayBeAll: 'So it may have none left.',
    over: (limit: string) => `It is wider than its limit of ${limit} [wear limit].`,
    overNew: (limit: string) => `It is wider than a new one may be, ${limit}.`,
    under: (limit: string) => `It is tighter than a new one may be, ${limit}.`,
    insideNew: (least: string, most: string) =>
      `It is still as wide as a new one may be: ${least} to ${most}.`,
    insideLimit: (limit: string) => `It is inside its limit of ${limit} [wear limit].`,
    tooClose: (limit: string) => `Whether it is past its limit of ${limit} is too close to call.`,
    tooCloseNew: 'Whether it is as wide as a new one may be is too close to call.',
    notSaid: 'How much of it is used up cannot be said.',
    plating: (both: string, one: string) =>
      `Of the hard coat [plating], ${both} is gone if both sides wore alike, ${one} if one side took it all.`,
    platingDoubt: (low: string, high: string) => `With the doubt it may be ${low} to ${high}.`,
    atLimit: 'It may be at its limit now.',
    earliest: (limit: string, hours: string) =>
      `If it wears on as it has, it may meet its limit of ${limit} after ${hours} h of running, and most likely later.`,
    shapeOver: {
      ovality: (figure: string, limit: string) =>
        `It is more oval [out-of-round] than its limit of ${limit} allows: ${figure}.`,
      taper: (figure: string, limit: string) =>
        `From end to end its width changes more [taper] than its limit of ${limit} allows: ${figure}.`,
    },
    stops: {
      'bare-aluminium': (where: string) =>
        `Bare metal shows through the hard coat at ${where}: that can end a bore of good size.`,
      flaking: (where: string) => `The hard coat flakes at ${where}: that can end a bore of good size.`,
      'catches-nail': (where: string, kind: string) =>
        `A ${kind} at ${where} catches a fingernail: that can end a bore of good size.`,
      'pits-in-ring-path': (where: string) =>
        `There are pits where the rings run, at ${where}: that can end a bore of good size.`,
      'pits-perhaps-in-ring-path': (where: string) =>
        `There are pits at ${where}: if the rings run there, that can end a bore of good size.`,
    } satisfies Record<SurfaceStop, (where: string, kind: string) => string>,
    none: {
      'no-readings': 'Nothing was measured yet.',
      'no-size-over-contacts': 'The gauge gave no sizes yet.',
      'no-limits': 'No limit is written down, so nobody can say how much of it is used up.',
      'all-blocked': 'All that was read lies at a port, so nothing is judged yet.',
    } satisfies Record<NoVerdict, string>,
  },
  sure: {
    inside: (chances: string) => `For its size: ${chances} that it is inside its limit, at the worst place.`,
    above: (chances: string) => `For its size: ${chances} that it is past its limit, at the worst place.`,
    below: (chances: string) => `For its size: ${chances} that it is too tight, at the worst place.`,
    tooClose: 'Whether its size is inside the limit is too close to call.',
    leans: {
      inside: (chances: string) => `The chance at the worst place: ${chances} that it is inside.`,
      above: (chances: string) => `The chance at the worst place: ${chances} that it is past its limit.`,
      below: (chances: string) => `The chance at the worst place: ${chances} that it is too tight.`,
      even: 'At the worst place it is about even.',
    },
    shapeTooClose: {
      ovality: (figure: string, limit: string) =>
        `Whether it is too oval is too close to call: ${figure}, and its limit is ${limit}.`,
      taper: (figure: string, limit: string) =>
        `Whether its width changes too much from end to end is too close to call: ${figure}, and its limit is ${limit}.`,
    },
    notJudged: 'No size is judged here.',
    doubt: (doubt: string) => `In 19 of 20 cases a width is good to ${doubt}.`,
    provisional: 'Not all was written down that this rests on, so it is no last word.',
    openQuestions: 'One of the readings looks like a slip, and has to be looked at first.',
    gap: (from: string, to: string) => `Nobody measured ${from} to ${to} down.`,
    widestGap: (from: string, to: string) =>
      `Between the places read nobody measured; the widest gap is ${from} to ${to} down.`,
    bothSides: 'The gauge spans from wall to wall, so it cannot tell which side wore.',
    twoAxes: 'It was read in two directions only; an oval between them would not show.',
    surfaceNote: 'A gauge sees no cracks and no scores; those are looked for by eye.',
  },
  advice: {
    outcomes: {
      'run-on': 'We suggest running it as it is, and measuring it again at the next service.',
      'clean-and-measure-again': 'We suggest a good clean, and then to measure it once more.',
      'measure-again-better': 'We suggest measuring it again, with more care, before you decide.',
      'next-piston': 'We suggest a piston that suits the bore as it is now.',
      hone: 'We suggest a light grind of the wall [honing], if that takes the marks out.',
      'bore-oversize': 'We suggest boring it out to the next size [oversize], with a piston to suit.',
      're-plate': 'We suggest a new hard coat on the wall [plating], or a new cylinder.',
      'replace-or-sleeve': 'We suggest a new cylinder, or a new wall pressed into it [sleeve].',
    } satisfies Record<Outcome, string>,
    runOnBy: (hours: string) =>
      `We suggest running it as it is, and measuring it again by ${hours} h of running.`,
    runOnDay: (day: string) => `At the hours it runs each week, that is on ${day}.`,
    boreTo: (oversize: string) =>
      `We suggest boring it out by ${oversize} [oversize], with a piston to suit.`,
    /** It is not asked for by this bore. */
    boreAlike: (oversize: string) =>
      `Another bore has to be bored out, and all go to one size: we suggest this one too, by ${oversize} [oversize].`,
    boreAlikeAny:
      'Another bore has to be bored out, and all go to one size: we suggest this one too [oversize].',
    alone: (suggestion: string) => `By itself: ${suggestion}`,
    undecided: {
      'for-comparison': 'This one is here to compare with, so there is nothing to suggest.',
      'earlier-survey': 'This is how it was, so there is nothing to suggest.',
      'no-readings': 'There is nothing to suggest before it is measured.',
      'some-unread': 'There is nothing to suggest before all of it is measured.',
      'land-alone': 'There is nothing to suggest before it is measured where the rings run.',
      'no-limits': 'There is nothing to suggest before its limits are written down.',
    } satisfies Record<UndecidedReason, string>,
    covered: 'Something lies on the wall and hides it; it has to come off first.',
    play: {
      'too-loose': 'The piston has more play in it [clearance] than it may have.',
      'too-tight': 'The piston has less play in it [clearance] than it must have.',
      'too-close': 'Whether the piston has the right play in it [clearance] is too close to call.',
      inside: 'The piston has the play in it [clearance] that it should have.',
    },
    /** What else could be done, and what it buys. */
    choices: {
      'run-on': (earliest: string, now: string) =>
        `Running on buys the hours from ${now} to ${earliest} h, and most likely more.`,
      'run-on-open': 'How many hours running on buys is not known.',
      'run-on-marked':
        'Running on with such a mark may spoil more; no figure tells for how long it would hold.',
      'run-on-over': 'Running on past its limit risks the whole machine.',
      'next-piston': 'A piston to suit takes up the play, and gives the wall no more hours.',
      hone: 'A light grind clears small marks; it takes wall away, and the wall stays as oval as it was.',
      'bore-oversize': 'To bore it out makes the whole wall new, and its hours start again.',
      're-plate': 'A new coat makes the wall new, and its hours start again.',
      'replace-or-sleeve': 'A new cylinder or sleeve is a new wall, and its hours start again.',
    },
    fromNew: (hours: string) =>
      `This wall would have ${hours} h from new, at the least, if it wears on as it has.`,
    ifInside: (then: string) => `If it turns out inside, ${then}.`,
    ifOver: (then: string) => `If it turns out over, ${then}.`,
    follows: {
      'run-on': 'it can run on',
      'clean-and-measure-again': 'it is cleaned and measured again',
      'measure-again-better': 'something else is still too close to call',
      'next-piston': 'it needs a piston to suit',
      hone: 'a light grind may do',
      'bore-oversize': 'it is bored out',
      're-plate': 'it needs a new hard coat [plating]',
      'replace-or-sleeve': 'it needs a new cylinder or a new wall [sleeve]',
    } satisfies Record<Outcome, string>,
    hours: {
      'no-limit': 'How many hours each choice buys is not known: there is no limit to count to.',
      'no-hours': 'How many hours each choice buys is not known: its hours of running were not written down.',
      'nothing-to-count-from':
        'How many hours each choice buys is not known: there is nothing to count from.',
      shrunk: 'How many hours each choice buys is not known: it reads smaller than before, which cannot be.',
    } satisfies Record<OutlookReason, string>,
    lastWord: 'The service manual and a skilled machinist have the last word.',
  },
  causes: {
    lead: 'The figures show what wore, not why: each of these is a thing to check.',
    none: 'No shape stands out that would point to a cause.',
    wideTop: 'Wider at the top: most often heat, pressure and a thin film of oil there.',
    wideBottom: 'Wider at the bottom: at times dirt in the oil, or a loose piston.',
    barrel: 'Widest in the middle: in pumps and compressors that is how most of them wear.',
    waisted: 'Tightest in the middle: look for metal stuck to the wall, or bolts that pull on it.',
    bell: 'Wider at one mouth: at times it was ground so, or the piston rocks there.',
    stepped: 'A step where the rings turn back: most walls get one in time.',
    oval: 'Oval: most often the piston leans on two sides; bolts and heat can do it too.',
    rust: 'Rust or pits: water that stood in it while it was not in use.',
    scratch: 'A scratch: something hard went past; look at the filter and the seals.',
    scuff: 'Scuffed wall: look for too little oil, too much heat, or hard work while cold.',
    flaking: 'A coat that comes off: look at the edges of the ports and at dirt in the air.',
    ridge: 'A ridge: look at where the rings turn back.',
    rateChanged: 'It did not wear at one rate: look for what changed, such as dust past the filter.',
    slow: 'To slow it: keep the filters clean, use the right oil, and warm it up before hard work.',
    slowRust: 'To slow it: oil the wall before it stands, and keep it dry.',
  },
  show: {
    bore: 'Bore',
    step: (number: number, all: number) => `${number} of ${all}`,
    steps: 'What is told',
    goTo: (number: number, topic: string) => `${number}: ${topic}`,
    next: 'Next',
    back: 'Back',
    leave: 'Close',
    fullScreen: 'Full screen',
    endFullScreen: 'End full screen',
    fullScreenRefused: 'The browser does not give this page the whole screen.',
    wall: 'The wall of the bore',
    otherWindow: 'Show on another screen',
    otherWindowBlocked: 'The browser opened no second window. Allow windows of this page, then try again.',
    follows: 'This window follows the bench.',
    turn: 'Turn it by hand',
    turnBack: 'Back to what is said',
    turning: 'Turn it with a finger or the mouse, or by the buttons.',
    behind: 'The figures behind it',
    flat: 'This browser draws no 3D picture here. The map shows the same wall, unrolled.',
    keys: 'Arrow keys, Page Up and Page Down, or Space go from one sentence to the next; Escape closes.',
  },
}
