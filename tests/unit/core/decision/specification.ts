import type { DecisionFacts } from '../../../../src/core/decision/decision-facts'
import type { Outcome } from '../../../../src/core/decision/decision-rules'

/** An iron bore inside all of its limits, its piston fitting, its wear on the way to the limit. */
export const wellWorn: DecisionFacts = {
  surface: 'nothing-against',
  readings: 'sound',
  stations: 'all-read',
  size: 'inside',
  ovality: 'inside',
  taper: 'inside',
  plating: 'not-known',
  grounds: 'repeated',
  clearance: 'inside',
  otherPiston: 'none-listed',
  ringGap: 'inside',
  outlook: 'ahead',
  wall: 'other',
  honing: 'room',
  oversize: 'none-given',
}

const plated = { wall: 'plated', honing: 'not-allowed', oversize: 'not-allowed', plating: 'left' } as const
const boreable = { oversize: 'cleans-up' } as const
const lastSize = { oversize: 'none-cleans-up', honing: 'no-room' } as const
const fixed = { honing: 'not-allowed', oversize: 'not-allowed' } as const

type Case = readonly [
  what: string,
  facts: Partial<DecisionFacts>,
  outcome: Outcome | 'undecided',
  rule: string,
]

const clean = 'clean-and-measure-again'
const again = 'measure-again-better'
const replace = 'replace-or-sleeve'
const bore = 'bore-oversize'

/** Argued from common practice (no published source): look first, measure again before metal is cut. */
export const specification: readonly (readonly [about: string, cases: readonly Case[]])[] = [
  [
    'nothing stops it',
    [
      ['all inside', {}, 'run-on', 'run-on'],
      ['all inside, plated', plated, 'run-on', 'run-on'],
      ['cross-hatch is still seen', { surface: 'cross-hatch' }, 'run-on', 'run-on'],
      ['no limits of shape', { ovality: 'no-limit', taper: 'no-limit' }, 'run-on', 'run-on'],
      ['no piston was measured', { clearance: 'not-judged' }, 'run-on', 'run-on'],
      ['no hours are known', { outlook: 'not-known' }, 'run-on', 'run-on'],
      ['the wall is not known', { wall: 'not-known', ...fixed }, 'run-on', 'run-on'],
      ['another piston would fit too', { otherPiston: 'fits' }, 'run-on', 'run-on'],
      ['the ring gap is over: that is for the rings', { ringGap: 'above' }, 'run-on', 'run-on'],
      ['no limit of size, but the piston fits', { size: 'no-limit' }, 'run-on', 'run-on'],
    ],
  ],
  [
    'the surface comes first',
    [
      ['aluminium shows through plating', { ...plated, surface: 'ended' }, 're-plate', 'spoilt-plating'],
      ['a mark in plating catches a nail', { ...plated, surface: 'marked' }, 're-plate', 'spoilt-plating'],
      [
        'aluminium shows, whatever the readings',
        { ...plated, surface: 'ended', readings: 'slip-asked' },
        're-plate',
        'spoilt-plating',
      ],
      [
        'aluminium shows, and nobody measured',
        { ...plated, surface: 'ended', readings: 'none', size: 'no-limit' },
        're-plate',
        'spoilt-plating',
      ],
      ['the wall flakes and cannot be bored', { ...fixed, surface: 'ended' }, replace, 'spoilt-for-good'],
      [
        'the wall flakes, and no oversize is given, though it could be honed',
        { surface: 'ended' },
        replace,
        'spoilt-for-good',
      ],
      ['a mark, and neither hone nor boring', { ...fixed, surface: 'marked' }, replace, 'marked-for-good'],
      ['a mark in iron, inside with room to hone', { surface: 'marked' }, 'hone', 'mark-to-hone-out'],
      [
        'the same with an oversize to be had: the hone comes first',
        { surface: 'marked', ...boreable },
        'hone',
        'mark-to-hone-out',
      ],
      [
        'a mark, and out-of-round too close to call: a trial hone all the same',
        { surface: 'marked', ovality: 'too-close' },
        'hone',
        'mark-to-hone-out',
      ],
      [
        'a mark without room to hone, an oversize cleans up',
        { surface: 'marked', honing: 'no-room', ...boreable },
        bore,
        'spoilt-to-bore',
      ],
      [
        'a mark, and the taper is over: honing cures no taper',
        { surface: 'marked', taper: 'above', ...boreable },
        bore,
        'spoilt-to-bore',
      ],
      ['flaking iron, an oversize cleans up', { surface: 'ended', ...boreable }, bore, 'spoilt-to-bore'],
      ['a mark, no room, no oversize left', { surface: 'marked', ...lastSize }, replace, 'spoilt-wall'],
      [
        'a mark, size too close to call, no oversize',
        { surface: 'marked', size: 'too-close', honing: 'no-room' },
        replace,
        'spoilt-wall',
      ],
      ['metal or rust on the wall: clean first', { surface: 'covered' }, clean, 'covered'],
      [
        'metal on the wall, and nobody measured',
        { surface: 'covered', readings: 'none', size: 'no-limit' },
        clean,
        'covered',
      ],
      [
        'metal on the wall, and a question about a reading: it may be the metal',
        { surface: 'covered', readings: 'slip-asked' },
        clean,
        'covered',
      ],
      [
        'metal on the wall, and the taper seems over: clean first',
        { surface: 'covered', taper: 'above' },
        clean,
        'covered',
      ],
      ['a mark that nobody tried with a nail', { surface: 'look-closer' }, clean, 'look-closer'],
      [
        'an untried mark in a bore over its limit: the limit decides',
        { surface: 'look-closer', size: 'above', ...boreable },
        bore,
        'out-to-bore',
      ],
      [
        'an untried mark, and the piston is too loose: look before a piston is bought',
        { surface: 'look-closer', clearance: 'too-loose', otherPiston: 'fits' },
        clean,
        'look-closer',
      ],
    ],
  ],
  [
    'all of the plan must be read before a bore runs on, and where the rings run',
    [
      ['all inside so far', { stations: 'some-unread' }, 'undecided', 'not-all-read'],
      ['only wall that the rings never touch', { stations: 'land-alone' }, 'undecided', 'not-all-read'],
      [
        'too close to call so far',
        { stations: 'some-unread', size: 'too-close' },
        'undecided',
        'not-all-read',
      ],
      [
        'another piston would fit, so far',
        { stations: 'some-unread', clearance: 'too-loose', otherPiston: 'fits' },
        'undecided',
        'not-all-read',
      ],
      [
        'over its limit already: the rest takes nothing back',
        { stations: 'some-unread', size: 'above', ...boreable },
        bore,
        'out-to-bore',
      ],
      [
        'aluminium shows, whatever is read',
        { ...plated, stations: 'some-unread', surface: 'ended' },
        're-plate',
        'spoilt-plating',
      ],
      ['the wall is covered', { stations: 'some-unread', surface: 'covered' }, clean, 'covered'],
      [
        'under the smallest new size already',
        { stations: 'some-unread', size: 'under-new' },
        clean,
        'under-new',
      ],
    ],
  ],
  [
    'the readings must be sound',
    [
      ['nothing read', { readings: 'none', size: 'no-limit' }, 'undecided', 'no-readings'],
      ['repeats that spread', { readings: 'unsteady' }, clean, 'unsteady'],
      ['an open question that may be a slip', { readings: 'slip-asked' }, again, 'slip-or-setting'],
      ['a gauge that was not set', { readings: 'not-set' }, again, 'slip-or-setting'],
      [
        'a slip may be why it is over its limit',
        { readings: 'slip-asked', size: 'above' },
        again,
        'slip-or-setting',
      ],
      [
        'a mark in iron whose readings are in question: its size chooses the remedy',
        { readings: 'slip-asked', surface: 'marked', ...boreable },
        again,
        'slip-or-setting',
      ],
      [
        'unsteady, and too close to call besides',
        { readings: 'unsteady', size: 'too-close' },
        clean,
        'unsteady',
      ],
    ],
  ],
  [
    'over a limit',
    [
      ['size over, plated', { ...plated, size: 'above' }, 're-plate', 'out-plated'],
      ['out-of-round over, plated', { ...plated, ovality: 'above' }, 're-plate', 'out-plated'],
      ['taper over, plated', { ...plated, taper: 'above' }, 're-plate', 'out-plated'],
      [
        'one wall may be through the plating',
        { ...plated, plating: 'may-be-through' },
        're-plate',
        'out-plated',
      ],
      ['size over, an oversize cleans up', { size: 'above', ...boreable }, bore, 'out-to-bore'],
      ['out-of-round over, an oversize cleans up', { ovality: 'above', ...boreable }, bore, 'out-to-bore'],
      ['taper over, an oversize cleans up', { taper: 'above', ...boreable }, bore, 'out-to-bore'],
      ['taper over, no oversize given', { taper: 'above' }, replace, 'out'],
      ['size over, the last oversize is too small', { size: 'above', ...lastSize }, replace, 'out'],
      ['size over, the material forbids boring', { size: 'above', ...fixed }, replace, 'out'],
      [
        'size over in a wall that is not known',
        { size: 'above', wall: 'not-known', ...fixed },
        replace,
        'out',
      ],
      [
        'over by one reading that nobody repeated',
        { size: 'above', grounds: 'one-reading', ...boreable },
        again,
        'out-on-weak-grounds',
      ],
      [
        'the same, plated',
        { ...plated, taper: 'above', grounds: 'one-reading' },
        again,
        'out-on-weak-grounds',
      ],
      [
        'over, with assumed values for what was not recorded',
        { size: 'above', grounds: 'assumed', ...boreable },
        again,
        'out-on-weak-grounds',
      ],
      [
        'over its limit and too close to another: the limit decides',
        { taper: 'above', ovality: 'too-close', ...boreable },
        bore,
        'out-to-bore',
      ],
      [
        'over its limit, and the piston is loose as well',
        { size: 'above', clearance: 'too-loose', otherPiston: 'fits', ...boreable },
        bore,
        'out-to-bore',
      ],
    ],
  ],
  [
    'too close to call',
    [
      ['size', { size: 'too-close' }, again, 'too-close'],
      ['out-of-round', { ovality: 'too-close' }, again, 'too-close'],
      ['taper', { taper: 'too-close' }, again, 'too-close'],
      ['a limit of taper that waits for the travel', { taper: 'open' }, again, 'too-close'],
      ['out-of-round on one axis alone', { ovality: 'open' }, again, 'too-close'],
      ['only the mean of each level is inside', { size: 'mean-only' }, again, 'too-close'],
      [
        'out-of-round, while the piston is too loose: the bore is settled first',
        { ...plated, ovality: 'too-close', clearance: 'too-loose', otherPiston: 'fits' },
        again,
        'too-close',
      ],
    ],
  ],
  [
    'smaller than it should be',
    [
      ['under the smallest new size beside a wear limit', { size: 'under-new' }, clean, 'under-new'],
      ['under its band, with room to hone', { size: 'below' }, 'hone', 'below-to-hone'],
      ['under its band, plated', { ...plated, size: 'below' }, clean, 'below'],
      ['out of its grade and inside another', { size: 'other-grade' }, 'next-piston', 'other-grade'],
    ],
  ],
  [
    'the piston',
    [
      [
        'too loose, the next fits',
        { clearance: 'too-loose', otherPiston: 'fits' },
        'next-piston',
        'other-piston-fits',
      ],
      [
        'too tight, another fits',
        { clearance: 'too-tight', otherPiston: 'fits' },
        'next-piston',
        'other-piston-fits',
      ],
      [
        'too close to call, and a next that fits is to be had',
        { clearance: 'too-close', otherPiston: 'fits' },
        'next-piston',
        'other-piston-fits',
      ],
      [
        'too close to call with both: the next all the same',
        { clearance: 'too-close', otherPiston: 'too-close' },
        'next-piston',
        'piston-too-close',
      ],
      ['too close to call, no other listed', { clearance: 'too-close' }, again, 'piston-not-told'],
      [
        'too close to call, and none of the others fits',
        { clearance: 'too-close', otherPiston: 'none-fits' },
        again,
        'piston-not-told',
      ],
      ['too loose, no other listed', { clearance: 'too-loose' }, 'next-piston', 'piston-to-find'],
      [
        'too loose, the next too close to call',
        { clearance: 'too-loose', otherPiston: 'too-close' },
        'next-piston',
        'piston-to-find',
      ],
      ['too tight in a bore with room to hone', { clearance: 'too-tight' }, 'hone', 'too-tight-to-hone'],
      ['too tight in plating', { ...plated, clearance: 'too-tight' }, 'next-piston', 'piston-to-find'],
      [
        'too tight in plating, none of the others fits',
        { ...plated, clearance: 'too-tight', otherPiston: 'none-fits' },
        'next-piston',
        'too-tight',
      ],
      [
        'too loose in plating, none of the others fits',
        { ...plated, clearance: 'too-loose', otherPiston: 'none-fits' },
        're-plate',
        'too-loose-plated',
      ],
      [
        'too loose, none fits, an oversize cleans up',
        { clearance: 'too-loose', otherPiston: 'none-fits', ...boreable },
        bore,
        'too-loose-to-bore',
      ],
      [
        'too loose, none fits, no oversize',
        { clearance: 'too-loose', otherPiston: 'none-fits' },
        replace,
        'too-loose',
      ],
    ],
  ],
  [
    'the outlook',
    [
      ['the bore has shrunk: dirt, or a slip', { outlook: 'shrunk' }, clean, 'shrunk'],
      ['at its limit as far as the line can tell', { outlook: 'now' }, again, 'at-limit'],
      [
        'the piston is too loose in a bore near its limit',
        { outlook: 'now', clearance: 'too-loose', otherPiston: 'fits' },
        'next-piston',
        'other-piston-fits',
      ],
    ],
  ],
  [
    'nothing to judge by',
    [
      [
        'neither a limit of size nor a clearance',
        { size: 'no-limit', clearance: 'not-judged' },
        'undecided',
        'no-limits',
      ],
      [
        'no limit of size, and the taper over its own',
        { size: 'no-limit', clearance: 'not-judged', taper: 'above' },
        replace,
        'out',
      ],
      [
        'no limit of size, and a mark in plating',
        { ...plated, size: 'no-limit', surface: 'marked' },
        're-plate',
        'spoilt-plating',
      ],
    ],
  ],
]
