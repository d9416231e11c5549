import type { UndecidedReason } from '../../core/decision/decision'
import type { DecisionCaution } from '../../core/decision/decision-cautions'
import type { DecisionHint } from '../../core/decision/decision-hints'
import type { Outcome } from '../../core/decision/decision-rules'
import type { Better } from '../../core/decision/measure-again'

/** What to do with a bore, why, how sure that is, and what would change it. Never that a bore is safe. */
export const decision = {
  title: 'What to do',
  why: 'Why, and what would change it',
  undecided: {
    'for-comparison': 'No decision: a bore to compare with.',
    'earlier-survey': 'No decision by an earlier survey: the latest decides.',
    'no-readings': 'No decision yet: no size is measured.',
    'some-unread': 'No decision yet: stations of the plan are not read.',
    'land-alone': 'No decision yet: nothing is read where the rings run.',
    'no-limits': 'No decision yet: neither a limit of size nor a clearance is entered.',
  } satisfies Record<UndecidedReason, string>,
  outcomes: {
    'run-on': {
      plain: 'Run on, and check again when the manual says.',
      at: (hours: string) => `Run on, and check again by ${hours} h run.`,
      on: (hours: string, day: string) => `Run on, and check again by ${hours} h run, about ${day}.`,
    },
    'clean-and-measure-again': 'Clean the wall and measure again.',
    'measure-again-better': {
      all: 'Measure again, better.',
      at: (places: string) => `Measure again, better: ${places}.`,
    },
    'next-piston': {
      plain: 'Find another piston: none on the list is known to fit.',
      named: (piston: string) => `Take the next piston: ${piston}.`,
      grade: (grade: string) => `Take the next piston: one for grade ${grade}.`,
    },
    hone: {
      plain: 'Hone within the limits.',
      atMost: (microns: string) => `Hone within the limits: at most ${microns} on the diameter.`,
    },
    'bore-oversize': {
      plain: 'Bore to the next oversize.',
      to: (oversize: string) => `Bore to the next oversize, ${oversize}.`,
    },
    're-plate': 'Have the wall plated anew, or replace the cylinder.',
    'replace-or-sleeve': { plain: 'Replace it, or have it sleeved.', liner: 'Replace the liner.' },
  },
  /** Within a sentence. */
  short: {
    'run-on': 'run on',
    'clean-and-measure-again': 'clean and measure again',
    'measure-again-better': 'measure again, better',
    'next-piston': 'take the next piston',
    hone: 'hone within the limits',
    'bore-oversize': 'bore to the next oversize',
    're-plate': 'have it plated anew',
    'replace-or-sleeve': 'replace it or have it sleeved',
  } satisfies Record<Outcome, string>,
  better: (ways: readonly string[]) => `Better means: ${ways.join('; ')}.`,
  betters: {
    'slip-asked': 'answer the open question about the readings, or read there again',
    'contact-changed': 'set the gauge anew, since a contact was changed after its setting',
    'no-setting-size': 'write down the size that the gauge was set to',
    'no-direction-test': 'find out which way the needle goes for a larger bore, and write it down',
    'repeats-spread': 'wipe wall and contacts and rock the gauge until the repeats agree',
    'drift-with-order': 'let part and gauge come to one temperature, since the readings drifted',
    'zero-moved': 'set the gauge anew, since its zero moved by more than the limits can bear',
    clean: 'clean the wall down to the metal and wipe it dry',
    'try-nail': 'draw a fingernail across the marks and write down whether it catches',
    'enter-ring-travel': 'enter where the rings run, which tells whether the pits are in their path',
    'set-by-ring': 'set the gauge by a ring instead of the micrometer',
    'record-what-is-missing':
      'record what is missing (zeros, temperatures, the check of the micrometer, the kind of wall)',
    'repeat-three-times': 'three readings at each of these stations, the gauge taken out between them',
    'repeat-five-times':
      'five readings or more at each of these stations, in turn, the gauge taken out between them',
    'finer-gauge':
      'a finer gauge, since however often this one reads there, its dial and its depth leave more than that',
    'two-contacts': 'two contacts in place of three, which read only the mean of a level',
    'more-axes': 'two more axes at 45°',
    'enter-travel': 'enter the travel, which a limit of taper waits for',
    'measure-piston': 'measure the piston again with the micrometer that sets the gauge',
  } satisfies Record<Better, string>,
  needs: {
    size: (doubt: string) => `A size good to ${doubt} would settle it, if it stays the same.`,
    shape: (doubt: string) => `A difference good to ${doubt} would settle it, if it stays the same.`,
  },
  sure: {
    same: (count: string) =>
      `How sure: of the true sizes that these readings allow, ${count} in 100 lead to the same.`,
    all: 'How sure: all true sizes that these readings allow lead to the same.',
    besides: (others: string) => `The others: ${others}.`,
    ifKnown: (shares: string) => `Were the sizes known exactly: ${shares}.`,
    share: (outcome: string, count: string) => `${outcome}, ${count} in 100`,
    almostAll: 'more than 99',
    hardlyAny: 'fewer than 1',
  },
  reasonsTitle: 'Why',
  at: (figure: string, place: string) => `${figure} at ${place}`,
  toRow: 'Show the figures behind this',
  listOf: (title: string) => `${title}:`,
  scannedUncleaned: 'stuck metal, since a scan was taken before it was cleaned off and none after',
  worn: (share: string) => `Used of the allowed wear: ${share}.`,
  clearance: {
    one: (figure: string, doubt: string) => `${figure} ${doubt}`,
    range: (least: string, most: string) => (least === most ? most : `${least} to ${most}`),
  },
  reasons: {
    surface: {
      ended: (what: string) => `On the wall: ${what}. That ends a bore whatever its size.`,
      marked: (what: string) => `On the wall: ${what}. That can end a bore whatever its size.`,
      covered: (what: string) =>
        `On the wall: ${what}. It hides what lies beneath, and sizes read over it are not the wall's.`,
      'look-closer': (what: string) => `On the wall: ${what}. Whether it counts was not told yet.`,
      'cross-hatch': (what: string) => `On the wall: ${what}. That speaks for it.`,
    },
    readings: {
      unsteady: 'The readings are not steady enough to build on.',
      'slip-asked': 'A question about the readings is open: one of them may be a slip.',
      'not-set': 'The gauge was not set, or nobody knows how: every size may be off.',
    },
    grounds: {
      'one-reading': 'What is over its limit rests on one reading that nobody repeated.',
      assumed: 'What is over its limit rests on values assumed for what was not recorded.',
    },
    size: {
      inside: (figure: string) => `The largest diameter, ${figure}, is inside its limit.`,
      above: (figure: string) => `The largest diameter, ${figure}, is over its limit.`,
      below: (figure: string) => `The smallest diameter, ${figure}, is under its limit.`,
      'other-grade': (figure: string) =>
        `The largest diameter, ${figure}: the bore has left its grade and is inside another.`,
      'under-new': (figure: string) =>
        `The smallest diameter, ${figure}, is under the smallest new size, which wear cannot do: metal on the wall, a slip, or limits of another size.`,
      'too-close': (figure: string) =>
        `The size is too close to its limit to call; the largest is ${figure}.`,
      'mean-only': (figure: string) => `Only the means of the levels are inside; the largest is ${figure}.`,
    },
    ovality: {
      inside: (figure: string, limit: string) => `Out-of-round, ${figure}, is inside its limit of ${limit}.`,
      above: (figure: string, limit: string) => `Out-of-round, ${figure}, is over its limit of ${limit}.`,
      'too-close': (figure: string, limit: string) =>
        `Out-of-round, ${figure}, is too close to its limit of ${limit} to call.`,
      open: () => 'Out-of-round could not be judged against its limit.',
    },
    taper: {
      inside: (figure: string, limit: string) => `Taper, ${figure}, is inside its limit of ${limit}.`,
      above: (figure: string, limit: string) => `Taper, ${figure}, is over its limit of ${limit}.`,
      'too-close': (figure: string, limit: string) =>
        `Taper, ${figure}, is too close to its limit of ${limit} to call.`,
      open: () => 'Taper could not be judged against all of its limits.',
    },
    plating: {
      'may-be-through': (share: string) =>
        `Of the plating ${share} is gone if one wall took all of the wear, which two contacts cannot tell.`,
    },
    clearance: {
      inside: (piston: string, figure: string) =>
        `The clearance of ${piston}, ${figure}, is inside the manual's.`,
      'too-loose': (piston: string, figure: string) => `The clearance of ${piston}, ${figure}, is too large.`,
      'too-tight': (piston: string, figure: string) => `The clearance of ${piston}, ${figure}, is too small.`,
      'too-close': (piston: string, figure: string) =>
        `The clearance of ${piston}, ${figure}, is too close to the manual's limits to call.`,
    },
    otherPiston: {
      fits: (piston: string, figure: string) => `With ${piston} it is ${figure}, inside the manual's.`,
      'too-close': (piston: string, figure: string) =>
        `With ${piston} it is ${figure}, too close to the manual's limits to call.`,
      'none-fits': () => 'None of the other pistons on the list fits.',
      'none-listed': () => 'No other piston is on the list.',
    },
    outlook: {
      ahead: (hours: string) =>
        `If it wears on as it has, it meets its limit at ${hours} h run at the earliest.`,
      now: 'By the line through the surveys it is at its limit now, as far as they can tell.',
      shrunk: 'It has become smaller than before, beyond its doubt: dirt, or a slip.',
    },
    ringGap: {
      inside: 'The ring gap is inside its limits.',
      'too-close': 'The ring gap is too close to its limit to call.',
      above: 'The ring gap is over its limit.',
      below: 'The ring gap is under its smallest.',
    },
    wall: {
      plated: 'The wall is plated: it is neither bored nor honed to a larger size.',
      other: 'The wall is not plated.',
      'not-known': 'The kind of wall is not recorded.',
    },
    honing: {
      room: (microns: string) => `There is room to hone: ${microns} on the diameter to the limit.`,
      'no-room': 'There is no room to hone within the limit.',
      'not-allowed': 'The wall may not be honed.',
    },
    oversize: {
      'cleans-up': (oversize: string) => `An oversize cleans it up: ${oversize}.`,
      'none-cleans-up': 'No oversize of the manual is large enough to clean it up.',
      'none-given': 'No oversize is entered.',
      'not-allowed': 'The wall may not be bored, as far as is recorded.',
    },
  },
  changesTitle: 'What would change it',
  change: (condition: string, outcome: string) => `${condition}: ${outcome}.`,
  changes: {
    readings: { sound: 'If the readings prove right' },
    surface: {
      'nothing-against': {
        marked: 'If the mark can be taken out',
        other: 'If nothing on the wall counts against it',
      },
      marked: 'If a mark in the path of the rings catches a fingernail',
    },
    grounds: { repeated: 'If it is still over when it is measured again with all recorded' },
    size: {
      inside: 'If the size proves inside',
      above: { inside: 'Once its size is over the limit', other: 'If the size proves over' },
    },
    ovality: { inside: 'If out-of-round proves inside', above: 'If out-of-round proves over' },
    taper: { inside: 'If taper proves inside', above: 'If taper proves over' },
    plating: { left: 'If a scan shows that both walls wore alike' },
    clearance: {
      inside: 'If the clearance proves inside',
      'too-loose': 'If the clearance proves too large',
    },
    otherPiston: { fits: 'If a piston that fits is to be had' },
    honing: {
      room: 'If the limit leaves room to hone',
      'no-room': 'If honing to the limit does not do it',
    },
    oversize: {
      'cleans-up': 'If the manual has an oversize that cleans it up',
      'none-cleans-up': 'If no oversize cleans it up',
    },
  },
  hintsTitle: 'What it rests on that is no proof',
  readOnce: {
    all: (places: string) =>
      `Every station was read only once. It hangs on ${places}: read there twice more before you act on it.`,
    some: (places: string) => `Read only once: ${places}. Read there twice more before you act on it.`,
  },
  hints: {
    provisional: 'Not everything was recorded; assumed values stand in for the rest.',
    'two-axes': 'Two axes can miss an oval that lies between them.',
    'no-size-limit': 'No limit of size is entered.',
    'new-sizes-only':
      'Only new sizes are entered. A wear limit, where the manual has one, would be judged instead.',
    'one-survey': 'The rate rests on one survey and on what it was when new; running-in is in it.',
    'rate-changed': 'The rate has changed between surveys: why, is worth more than the hours.',
    'slope-uncertain': 'The growth does not stand out from its doubt.',
    'no-outlook': 'No hours can be named: they need the hours run and a limit of size.',
    'clearance-not-judged': 'The clearance of the piston was not judged.',
    'piston-by-grade': 'The piston was not measured: its size is that of its grade.',
    'piston-not-firm': 'Not everything was recorded when the piston was measured.',
    'other-piston-too-close':
      'Whether the next piston fits is too close to call: measure it before it is fitted.',
    'no-piston-listed': 'No piston on the list is known to fit: the clearance says which size to ask for.',
    'wall-by-kind': 'What this wall allows is what is usual for its kind, not what the manual says.',
    'wall-not-known': 'The kind of wall is not recorded, and it decides what can be done.',
    'honing-allowance':
      'That honing takes off 10 µm at least on the diameter is a figure of the trade, from no published source.',
    'clean-up-by-trade':
      'What boring takes off until the wall is clean is a figure of the trade, not the manual’s.',
    'oversize-too-close':
      'Whether this oversize cleans it up is too close to call: the machinist finds out with the first cut.',
    'one-side-took-it':
      'That one wall took all of the wear is the worst case; a scan of the whole turn would tell.',
  } satisfies Record<Exclude<DecisionHint['code'], 'read-once'>, string>,
  cautionsTitle: 'Heed',
  cautions: {
    'last-word':
      'This follows rules of the trade, and calls nothing safe. The service manual and a qualified machinist have the last word.',
    'stones-on-plating': 'No stones on plating: wash it, and leave anything more to a plater.',
    'honing-keeps-form': 'Honing cures neither taper nor out-of-round.',
    'mark-depth':
      'It is a trial: where the mark stays when the limit is reached, honing was no cure. Measure the depth of the mark first, and ask for twice that on the diameter.',
    glaze:
      'The wall is glazed or its cross-hatch is gone: ask the manual what new rings need. By itself that tells nothing of wear.',
    'ring-gap-large': 'The ring gap is over its limit: fit new rings, and measure the gap again.',
    'ring-gap-small': 'The ring gap is under its smallest: ends that meet break rings and score walls.',
    'rings-with-piston': 'New pistons get new rings; measure both before they go in.',
    'past-window-of-new':
      'With this piston the clearance is not that of a new pair, though inside the limit for service.',
    'torque-plate': 'It was not measured bare: have it cut and measured as it was measured here.',
  } satisfies Record<DecisionCaution, string>,
  block: {
    title: 'What to do with the engine',
    alike: {
      to: (count: number, oversize: string) =>
        `Bore all ${count} cylinders to ${oversize}, since all go to one size.`,
      plain: (count: number) => `Bore all ${count} cylinders to the next oversize, since all go to one size.`,
    },
    all: (count: number, what: string) => `All ${count} bores: ${what}.`,
    some: (names: readonly string[], what: string) => `${bores(names)}: ${what}.`,
    asked: (names: readonly string[]) => `${bores(names)} ${names.length === 1 ? 'asks' : 'ask'} for it.`,
    check: (hours: string) => `Check again by ${hours} h run.`,
    undecided: (names: readonly string[]) => `${bores(names)}: not decided yet.`,
  },
  byItself: (bore: string, text: string) =>
    `Bore ${bore} by itself: ${text.charAt(0).toLowerCase()}${text.slice(1)}`,
} as const

function bores(names: readonly string[]): string {
  const last = names[names.length - 1] ?? ''
  return names.length === 1 ? `Bore ${last}` : `Bores ${names.slice(0, -1).join(', ')} and ${last}`
}
