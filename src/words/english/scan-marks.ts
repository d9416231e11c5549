import type { MarkFate } from '../../core/scan/cleaned-marks'
import type { MarkShape, MarkSign } from '../../core/scan/scan-marks'

/** What stands out in a scan: its marks, how they lie, and what became of them when the bore was cleaned. */
export const scanMarks = {
  title: 'Marks in the scan',
  inScan: (bore: string, scan: string) => `Bore ${bore}, scan ${scan}`,
  notLooked: 'Its radii are not in this file, or no axis can be fitted to them.',
  working: 'Looking for what stands out…',
  none: (least: string) =>
    `Nothing stands out of the smooth form. A mark of three angles by three levels would have shown from about ${least} on.`,
  lead: (least: string) =>
    `What stands out of the smooth form on the radius, beyond noise; small marks show from about ${least} on.`,
  lone: (count: number) =>
    count === 1
      ? 'One value stands out alone: as a rule dirt on the wall or on the probe.'
      : `${count} values stand out alone: as a rule dirt on the wall or on the probe.`,
  numbered: (number: number, shape: string) => `${number} ${shape}`,
  shapes: { streak: 'streak along the stroke', band: 'band around', patch: 'patch' } satisfies Record<
    MarkShape,
    string
  >,
  line: 'narrow line',
  within: (number: number) => `along mark ${number}`,
  signs: { smaller: 'reads smaller', larger: 'reads larger' } satisfies Record<MarkSign, string>,
  height: (sign: string, height: string, doubt: string) => `${sign} by ${height} ${doubt} on the radius`,
  size: (across: string, along: string) => `${across} wide, ${along} long`,
  onBridge: (from: string, to: string) => `on the wall between two ports, ${from} to ${to}`,
  onBridgeNamed: (one: string, other: string) => `on the wall between “${one}” and “${other}”`,
  besideOpening: 'along the edge of a port, where a chamfer shows too',
  text: (title: string, place: string, parts: readonly string[]) =>
    `${title}: ${[place, ...parts].join('; ')}`,
  record: 'Record it',
  recordTitle: (title: string) => `Record ${title} as a surface finding`,
  recorded: 'recorded',
  change: 'mark of the scan recorded',
  note: (height: string) => `In the scan it ${height}.`,
  more: (count: number) => `Show the ${count} others`,
  patterns: {
    title: 'How they lie: something to check',
    lead: 'A pattern is no proof of a cause. Usual causes are named so that they can be looked at.',
    fourCorners: (at: string, pin: string) =>
      `Four corners, at ${at}: either side of the pin bosses, if the pin lies along about ${pin}.`,
    bothSides: (one: string, other: string) => `On both sides, about ${one} and ${other}.`,
    oneSide: (at: string) => `On one side, about ${at}.`,
    allRound: 'All round the bore.',
    proudBridge: (where: string) => `The wall between ${where} stands proud.`,
    relievedBridge: (where: string) => `The wall between ${where} lies back.`,
    portsNamed: (one: string, other: string) => `“${one}” and “${other}”`,
    portsAt: (from: string, to: string) => `the two ports from ${from} to ${to}`,
    band: 'A band around the bore.',
    causes: {
      'four-corners':
        'Usual with four corners: too little piston clearance, warmed up too fast, overheated, pin bosses that grew. Check the clearance, the cooling and how it was run in.',
      'both-sides':
        'Usual with both sides: too little clearance, above all soon after a rebuild, or a bore pulled out of round by its bolts. Check the clearance and the bore as it is bolted up.',
      'one-side':
        'Usual with one side: on the thrust side, oil lost in one place, blocked fins or missing cooling; on the exhaust side alone, too lean, too hot, or carbon; low on the inlet side, dust past the filter; long thin lines, fuel that washed the oil off. Check which side this is.',
      'all-round': 'Usual with marks all round: no oil, or fuel without oil. Check how it is oiled.',
      'bridge-smaller':
        'Usual with a bridge that stands proud: it swells as it heats, it was never relieved, or the mixture was too lean. See what the manual says of relieving it.',
      'bridge-larger':
        'A bridge that lies back may be relieved on purpose, or worn. See what the manual says of it.',
      band: 'Usual with a band: a step where the rings turn, rust where a ring stood or water lay, or a ring that stuck. Look at its depth.',
    },
  },
  sign: {
    plated:
      'On a plated wall what reads smaller may be metal of the piston stuck on it, and what reads larger within it a score. Have it cleaned, then scan again before anything is decided.',
    other:
      'What reads smaller stands on the wall or was never worn; what reads larger was worn or scored. Have stuck metal cleaned off, then scan again before anything is decided.',
    care: 'What takes aluminium off attacks an aluminium cylinder too, and burns skin and eyes. Cleaning is for somebody who knows the wall: go by the service manual.',
  },
  cleaned: {
    title: 'Before and after cleaning',
    against: (before: string, after: string) => `“${before}” against “${after}”.`,
    turned: (degrees: string) =>
      `The ports of the second scan lie ${degrees} further clockwise, so nothing is compared. Give both scans the same 0°.`,
    taken: 'Nothing in the wall shows whether both scans began at the same 0°: that is taken for granted.',
    fates: {
      gone: 'went away: it was stuck on, or loose',
      less: 'is less than it was: some of it was stuck on',
      'as-before': 'stayed as it was',
      more: 'is more than it was',
      'turned-larger': 'reads larger now: there is a groove beneath what was stuck on',
      'turned-smaller': 'reads smaller now: something is on the wall',
      'not-seen': 'cannot be compared: the second scan has no value there',
    } satisfies Record<MarkFate, string>,
    /** Larger than before cleaning and larger after it. */
    groove: 'stayed: a groove, or wear',
    figures: (before: string, after: string) => `${before} before, ${after} after`,
    line: (title: string, place: string, fate: string, figures: string) =>
      `${title}, ${place}: ${fate} (${figures}).`,
    fresh: (titles: string) => `Only in the second scan: ${titles}.`,
  },
}
