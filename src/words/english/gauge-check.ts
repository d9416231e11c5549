/** What reading one place again and again shows of a gauge. */
export const gaugeCheck = {
  gaugeCheck: {
    title: 'How well it repeats',
    heading: 'Checks of gauges',
    help: 'Read one place again and again, ten times or more: a station, or the ring. Take the gauge out each time, and leave everything else as it is. Type the readings in the order in which they were taken, with spaces between.',
    field: (gauge: string) => `Readings of a check: ${gauge}`,
    again: (gauge: string, number: number) => `Readings of check ${number}: ${gauge}`,
    date: (gauge: string, number: number) => `Day of check ${number}, year-month-day: ${gauge}`,
    writtenAs: (gauge: string) => `What the readings of the check are: ${gauge}`,
    written: {
      sizesMm: (unit: string) => `sizes in ${unit}`,
      dialUm: (unit: string) => `dial readings in ${unit}`,
    },
    studies: 'Several people, several parts',
    studiesLoading: 'One moment …',
    another: 'Another check, {writtenAs}:',
    refused: (piece: string, why: string) => `“${piece}”: ${why}`,
    add: 'Keep this check',
    remove: (gauge: string, number: number) => `Take out check ${number} of ${gauge}`,
    checked: 'Checked {date}, {unit}:',
    of: (gauge: string, day: string | undefined) => (day === undefined ? gauge : `${gauge}, ${day}`),
    one: 'One reading does not show how a gauge repeats: two are needed, ten or more tell something.',
    scatter: (readings: number, deviation: string, freedom: number, low: string, high: string) =>
      `${readings} readings scatter by a standard deviation of ${deviation}, known from ${freedom} degrees of freedom: it lies between ${low} and ${high} in 95 of 100 such checks.`,
    belowStep: (readings: number, deviation: string, step: string, counted: string) =>
      `${readings} readings scatter by a standard deviation of ${deviation}, less than the step of ${step} can show; ${counted} counts instead.`,
    drift: {
      none: (drift: string, doubt: string) =>
        `From the first to the last they drift by ${drift} ± ${doubt}: none that stands out.`,
      standsOut: (drift: string, doubt: string) =>
        `From the first to the last they drift by ${drift} ± ${doubt}. That stands out: let gauge and part come to one temperature, see that every screw is tight, and check again.`,
    },
    share: (six: string, share: string, band: string) =>
      `Six standard deviations of one reading, ${six}, are ${share} of the ${band} from the smallest to the largest new size.`,
    good: (bore: string, repeats: number, doubt: string) =>
      `With this scatter a station of bore ${bore}, read ${repeats === 1 ? 'once' : `${repeats} times`}, is good to ${doubt}, with everything else in its set-up.`,
    answer: {
      band: (margin: string, band: string) =>
        `That can answer whether a bore is inside the ${band}: readings ${margin} or more inside both limits are proven.`,
      never: (band: string, needed: string) =>
        `That cannot answer whether a bore is inside the ${band}: it takes ${needed}.`,
      wear: (margin: string) =>
        `That answers whether it is inside the wear limit, but for readings within ${margin} of the limit: they stay too close to call.`,
      'one-limit': (margin: string) =>
        `That answers whether it is inside the limit, but for readings within ${margin} of it: they stay too close to call.`,
      nothing: 'No limits are entered, so there is no question yet that it could answer.',
    },
    notUsed: 'No bore of this engine was measured with it, so there is no question yet that it could answer.',
    use: (deviation: string, freedom: number) =>
      `Take ${deviation} and ${freedom} degrees of freedom for this gauge`,
    inUse:
      'These are the gauge’s own figures now. A survey with repeats enough of its own goes by those instead.',
  },
}
