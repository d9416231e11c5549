/** The page that is handed over as a file: what stands on it beside sentences and figures that the app has elsewhere. */
export const handOver = {
  /** Beneath the title. */
  whole: 'This file is complete. It needs no network, and it sends nothing anywhere.',
  made: (app: string, day: string) => `Made with ${app} on ${day}.`,
  back: (app: string) =>
    `${app} opens this file as it opens a job: choose it, or drop it on the page. All readings are in it.`,
  customer: (customer: string) => `For ${customer}`,
  parts: {
    drawings: (bore: string) => `${bore}: the drawings`,
    figures: 'The figures',
    readings: 'The readings as they were written down',
    photographs: 'Photographs of the wall',
  },
  pictures: {
    now: (bore: string) => `${bore}, as it is now`,
    beside: (other: string) => `To compare with: ${other}`,
    alt: (bore: string, verdict: string) => `Picture of the wall. ${bore}: ${verdict}`,
    altBeside: (other: string) => `Picture of the wall. ${other}`,
    marks: 'What the colours and marks mean',
  },
  turning: {
    turnLeft: 'Turn left',
    turnRight: 'Turn right',
    closer: 'Closer',
    further: 'Further away',
    above: 'From above',
    whole: 'From the front',
    byFinger: 'Turn it with one finger',
    fingerDone: 'Let the finger scroll again',
    keys: 'Drag it to turn it. Arrow keys turn it, plus and minus come closer and go further away.',
  },
  drawings: {
    map: 'The wall unrolled, seen from inside. The angle goes across, the depth down.',
    section: (depth: string, factor: string) => `Across the bore at ${depth}. ${factor}.`,
    profile: (axis: string) => `Along the bore on ${axis}.`,
    scan: 'Unrolled, without its smooth form: blue stands in, amber stands back. Outlined is what stands out, by its number in the list.',
  },
  readings: {
    lead: 'Each reading as it was written down, before it was brought to 20 °C.',
    sizes: 'Sizes in mm',
    dial: 'What the dial showed, µm',
    none: '–',
    depth: 'Depth',
  },
  photograph: (number: number, finding: string) => `${number}: ${finding}`,
}
