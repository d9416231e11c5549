/** Photographs of surface findings: adding, showing, and what can go wrong. */
export const photographs = {
  photographs: {
    title: 'Photographs',
    add: 'Add a photograph',
    camera: 'Take a photograph',
    drop: 'or drop one here',
    kept: 'Made smaller (1600 pixels at most) and kept in this browser. What the camera wrote beside the picture, its place for one, is left out.',
    reading: 'Reading the picture…',
    shown: (name: string) => `Show ${name}`,
    large: (name: string, finding: string) => `${finding}: ${name}`,
    remove: (name: string) => `Remove ${name}`,
    removeShort: 'Remove',
    notHere: 'photograph not in this browser',
    unreadable: (name: string) => `${name} could not be read as a picture. Choose a JPEG, PNG or WebP file.`,
    notKept: (name: string, why: string) => `${name} is not kept. ${why}`,
    unnamed: 'photograph',
    leftOut: {
      notHere: (count: number) =>
        count === 1
          ? 'One photograph is not in it: it is not in this browser.'
          : `${count} photographs are not in it: they are not in this browser.`,
      noRoom: (count: number) =>
        count === 1
          ? 'One photograph is not in it: the file would be larger than Borewall reads.'
          : `${count} photographs are not in it: the file would be larger than Borewall reads.`,
    },
    damaged: (count: number) =>
      count === 1
        ? 'One photograph in this file is damaged and was left out.'
        : `${count} photographs in this file are damaged and were left out.`,
  },
}
