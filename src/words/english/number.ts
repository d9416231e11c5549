/** How a typed number was refused, and how chances are said. */
export const number = {
  number: {
    refused: {
      empty: 'Enter a number.',
      letters: 'Enter the number alone, without unit or letters: 54.032 or 54,032.',
      'other-sign': 'There is a sign in it that belongs to no number. Enter it like 54.032 or 54,032.',
      'inner-space': 'There is a space inside the number. Take it out.',
      'sign-place': 'Put one sign, + or −, in front of the number.',
      'both-marks':
        'Comma and point together can be read two ways. Use one of them, and only for the decimals: 54.032 or 54,032.',
      'several-marks': 'There is more than one comma or point. Use one, and only for the decimals.',
      'too-long': 'That has more digits than any gauge reads. Round it.',
      'too-large': 'That number is too large for anything measured here.',
    },
    outOfRange: (found: string, least: string, most: string) => `${found} is outside ${least} to ${most}.`,
    /** One end of a range, typed past the other. */
    waits: {
      low: (low: string, high: string) =>
        `${low} is more than ${high}, the other end. It waits here and counts once that is typed too.`,
      high: (high: string, low: string) =>
        `${high} is less than ${low}, the other end. It waits here and counts once that is typed too.`,
      same: 'Both ends are one place now. It waits here and counts once the other is typed too.',
      alone: 'It waits here and counts once the other end is typed too.',
      fits: 'It is not counted yet. Press Enter here to count it.',
    },
    wholeOnly: 'Enter a whole number.',
    chances: (of: number, all: number) => (of === 1 ? `1 chance in ${all}` : `${of} chances in ${all}`),
    moreThan: (of: number, all: number) => `more than ${of} chances in ${all}`,
    fewerThan: (all: number) => `less than 1 chance in ${all}`,
    aboutEven: 'about even',
    months: [
      'January',
      'February',
      'March',
      'April',
      'May',
      'June',
      'July',
      'August',
      'September',
      'October',
      'November',
      'December',
    ],
    day: (day: number, month: string, year: number) => `${day} ${month} ${year}`,
    range: (value: string, low: string, high: string) => `${value} (${low} to ${high})`,
  },
}
