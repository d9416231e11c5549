/** What the page says where it shows one or two of its parts at a time, and its pad of keys. */
export const phone = {
  phone: {
    parts: 'Parts of the page',
    findingsOpen: (name: string, questions: number) =>
      questions === 1 ? `${name}, one question open` : `${name}, ${questions} questions open`,
    toFindings: (verdict: string) => `${verdict} Show the findings.`,
    menu: 'Menu',
    leftHand: 'Keys for the left hand',
    rightHand: 'Keys for the right hand',
    pad: {
      label: 'Keys',
      delete: 'Delete the last digit',
      sign: 'Change the sign',
      point: 'Comma or point',
    },
    repeats: 'Readings of this station, to be corrected',
    repeatNumber: (number: number, figure: string) => `Reading ${number}: ${figure}. Correct it.`,
    leaveIt: 'Leave it',
    unreachable: {
      asked: (place: string) => `What keeps you from ${place}?`,
      only: 'Only this place',
      onlyMeans:
        'It is written down as out of reach and drawn hatched. Enter a port that is in the way in Set-up.',
      belt: (depth: string) => `No axis at ${depth}: a belt`,
      beltMeans: (from: string, to: string) =>
        `A belt from ${from} to ${to}: wall that nobody measured. Change it in Set-up.`,
      beltName: 'out of reach',
    },
    skipped: (places: string) => `Passed over: ${places}.`,
    outOfReach: (places: string) => `Out of reach: ${places}.`,
    measureSkipped: 'Measure them now',
    measureHere: 'Measure here',
    ports: 'Where the ports are',
    plan: 'Levels, axes and readings',
    planHint: 'Tap a place to measure it or to correct it. Clear a depth or an angle to take it out.',
    send: 'Send',
  },
}
