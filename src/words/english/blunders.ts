/** Questions about readings that may be blunders, and what could not have been seen. */
export const blunders = {
  blunders: {
    wholeTurn: (place: string, turns: string, more: boolean) =>
      `The reading at ${place} is ${turns} of the needle ${more ? 'larger' : 'smaller'} than its neighbours let expect. Did the needle go round once unnoticed?`,
    turns: (count: number) => (count === 1 ? 'one whole turn' : `${count} whole turns`),
    digits: (place: string, read: string, likelier: string) =>
      `At ${place} ${read} stands far off its neighbours. Was it ${likelier}?`,
    axesSwapped: (level: string, one: string, other: string) =>
      `At ${level} deep, ${one} and ${other} read the other way round than above and below. Were they written in each other's place?`,
    upsideDown:
      'The bottom of this bore reads larger than its top. Were the levels written from the wrong end?',
    upsideDownLand:
      'The wall that the rings never touch is not of its new size, but the level at the other end is. Were the levels written from the wrong end?',
    sign: (read: string, otherwise: string) =>
      `The unworn wall reads ${read}, out of its new size; with the sign turned over it would be ${otherwise}. Does the needle go the other way?`,
    sleeve: (by: string) =>
      `The unworn wall would be of its new size if the setting were ${by} off. Was the sleeve of the micrometer misread?`,
    turn: (by: string) =>
      `The unworn wall would be of its new size if the setting were ${by} off, one turn of the needle. Was the zero taken a turn out?`,
    sleeveByCaliper: (by: string) =>
      `The readings would agree with the caliper if the setting were ${by} off. Was the sleeve of the micrometer misread?`,
    turnByCaliper: (by: string) =>
      `The readings would agree with the caliper if the setting were ${by} off, one turn of the needle. Was the zero taken a turn out?`,
    oversize: (nearest: string) =>
      `The manual allows oversizes, and which this bore was finished to is not recorded. By its readings it is nearest to ${nearest}; a micrometer read half a millimetre off would look the same.`,
    caliper: (caliper: string, read: string) =>
      `The caliper says ${caliper}, the readings ${read} in the mean. Measure with the caliper again, and look at the setting.`,
    spread: (place: string, spread: string, usual: string) =>
      `The repeats at ${place} differ by ${spread}; this gauge leaves ${usual} at most. Wipe the wall and measure again, or take one out.`,
    drift: (by: string, doubt: string) =>
      `The readings change by ${by} ${doubt} in the order they were taken. A part that cools does that, or a gauge warmed by the hand. Let all lie side by side and measure again.`,
    unseen: {
      'setting-and-sign':
        'a setting wrong by half a millimetre or a sign turned over (a level on wall that the rings never touch, or a caliper, would show it)',
      'whole-turn': 'a whole turn of the needle at every station',
      digits: 'two digits changed over in one reading (reading each station twice would show it)',
      'levels-upside-down': 'levels written down from the wrong end',
      'axes-swapped': 'two axes written in each other’s place',
      'drift-with-order':
        'a slow drift while measuring, for the stations were read row by row (read the first one again at the end)',
    },
    unseenSentence: (list: readonly string[]) => `Not shown by these readings: ${list.join('; ')}.`,
    answered: 'question answered: it is right',
    changeNames: {
      'shift-repeats': 'reading put right',
      'swap-axes': 'axes changed over',
      'turn-levels-over': 'levels turned over',
      'turn-sign-over': 'sign turned over',
      'shift-setting': 'setting put right',
      'say-oversize': 'oversize of the bore',
    },
  },
} as const
