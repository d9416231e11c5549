/** What several people reading several parts show of a gauge in their hands. */
export const crossedStudy = {
  heading: 'Crossed studies of gauges',
  help: 'Let each of two or three people read each of five to ten parts (bores, or places marked in them) two or three times, in mixed order, none seeing what another read. One line for each person and part: person, part, then the readings. A table can be pasted as it stands in a spreadsheet, also with a line for each reading: person, part, which reading, reading.',
  another: 'Another study, {writtenAs}:',
  writtenAs: (gauge: string) => `What the readings of the study are: ${gauge}`,
  field: (gauge: string) => `Table of a study: ${gauge}`,
  again: (gauge: string, number: number) => `Table of study ${number}: ${gauge}`,
  date: (gauge: string, number: number) => `Day of study ${number}, year-month-day: ${gauge}`,
  made: 'Made {date}, {unit}:',
  add: 'Keep this study',
  remove: (gauge: string, number: number) => `Take out study ${number} of ${gauge}`,
  between: '; ',
  refused: {
    line: (line: number, why: string) => `Line ${line}: ${why}`,
    short: 'It takes a person, a part and at least one reading.',
    unnamed: 'The person or the part has no name.',
    piece: (piece: string, why: string) => `“${piece}”: ${why}`,
    empty: 'Enter a person, a part and readings on each line.',
    'too-large': 'That is more than a study holds.',
    'commas-only':
      'The commas can be read two ways. Put semicolons or tabs between the cells, or points before the decimals.',
    'quote-left-open': 'A quotation mark is left open.',
  },
  wanting: {
    'no-readings': 'There are no readings in it.',
    'one-part': 'It takes two parts at the least, five or more tell something.',
    'one-trial': 'Each part was read once. It takes two readings of each part by each person, or more.',
    'too-many': (readings: number, most: number) =>
      `It has ${readings} readings. A study of up to ${most} can be worked out.`,
    uneven: (person: string, part: string, found: number, usual: number) =>
      `${person}, part ${part}: ${found === 0 ? 'no reading' : count(found, 'reading')}, where most have ${usual}. Nothing is worked out before each person has read each part as often.`,
    others: (others: number) =>
      others === 1 ? 'So it is at one more place.' : `So it is at ${others} more places.`,
  },
  read: (people: number, parts: number, trials: number) =>
    `${people === 1 ? 'One person' : `${people} people`} read ${parts} parts ${times(trials)} each.`,
  heads: { part: 'Spread', deviation: 'standard deviation', between: 'lies between', share: 'share' },
  rows: {
    gauge: 'the gauge: repeats by one person',
    people: 'the people: one reads higher than another',
    peopleByPart: 'people by part: not so on every part',
    gaugeAndPeople: 'gauge and people together',
    parts: 'the parts',
    all: 'all readings',
  },
  interval: (low: string, high: string) => `${low} to ${high}`,
  rowText: (name: string, amount: string, interval: string, share: string) =>
    `${name}: ${amount}, between ${interval}, ${share}`,
  doubt:
    'Each lies within its interval in 95 of 100 such studies, by the analysis of variance; few people leave that of the people wide. Shares are of the standard deviation of all readings: squared, those of gauge and people together and of the parts make up the whole.',
  pooled: (chance: string) =>
    `Whether one person reads higher than another does not depend on the part, as far as this shows: as much would come by accident in ${chance} of such studies. From 25 % on that is counted with the gauge.`,
  apart: (chance: string) =>
    `Whether one person reads higher than another depends on the part: as much would come by accident in ${chance} of such studies. Under 25 % that stands by itself.`,
  underOne: 'under 1 %',
  tells: (count: number, low: number, high: number) =>
    `In these hands the gauge tells ${count} sizes of such parts apart (from ${low} to ${high}, by the ends of the intervals). Five or more is what is usually asked for.`,
  tellsNone: (low: number, high: number) =>
    `In these hands the gauge cannot tell such parts apart (between ${low} and ${high} sizes, by the ends of the intervals). Five or more is what is usually asked for.`,
  byRanges: (figures: { gauge: string; people: string; both: string; share: string; parts: string }) =>
    `By averages and ranges, the older way: the gauge ${figures.gauge}, the people ${figures.people}, both together ${figures.both} (${figures.share}), the parts ${figures.parts}.`,
  rangesTell: (count: number, differs: boolean) =>
    `By that way it tells ${count === 1 ? '1 size' : `${count} sizes`} apart${differs ? '. The two ways weigh the same readings differently and need not agree; neither is wrong' : ' too'}. It has no interval of its own: its figures are no better known than those above.`,
  share: (six: string, share: string, band: string) =>
    `Six standard deviations of a reading by any of these people, ${six}, are ${share} of the ${band} from the smallest to the largest new size.`,
  good: (bore: string, repeats: number, doubt: string) =>
    `In the hands of any of them a station of bore ${bore}, read ${times(repeats)}, is good to ${doubt}, with everything else in its set-up.`,
}

function times(count: number): string {
  if (count === 1) return 'once'
  return count === 2 ? 'twice' : `${count} times`
}

function count(found: number, what: string): string {
  return found === 1 ? `one ${what}` : `${found} ${what}s`
}
