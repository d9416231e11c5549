/** The head of a report, the code on it, and a job that comes in an address. */
export const letterhead = {
  dialog: {
    title: 'Letterhead',
    lead: 'Stands at the head of every report. Kept in this browser for all jobs; no job takes it along.',
    shopName: 'Name of the shop',
    address: 'Address',
    picture: 'Picture',
    pictureShown: 'The shop’s picture',
    choose: 'Choose a picture…',
    chooseOther: 'Another picture…',
    remove: 'Remove the picture',
    removed: 'The picture is removed.',
    putBack: 'Put it back',
    pictureKept: 'Made smaller (600 pixels at most) and kept in this browser.',
    reading: 'Reading the picture…',
    unreadable: (file: string) => `${file} could not be read as a picture. Choose a JPEG, PNG or WebP file.`,
    appAddress: 'Address of Borewall',
    appAddressHow:
      'Where your shop serves Borewall. With it each report carries a code that opens its job on the customer’s telephone.',
    thisPage: 'Use the address of this page',
    useMended: (address: string) => `Use ${address}`,
    saved: 'Kept in this browser.',
    notKept: (why: string) => `Not kept. ${why}`,
    notRead: (why: string) => `The letterhead could not be read. ${why}`,
    again: 'Try again',
    setAside:
      'What was kept here could not be read. It was set aside: save it to a file from the list of kept jobs, under “Set aside”.',
    setAsideName: 'Letterhead',
    newer:
      'A newer Borewall keeps a letterhead here; it is left as it is. Reload the page to get that Borewall.',
  },
  problems: {
    control: 'It holds a character that cannot be printed. Delete it and type it again.',
    shopNameTooLong: (most: number) => `At most ${most} letters. Shorten it.`,
    addressTooLong: (most: number, lines: number) =>
      `At most ${lines} lines and ${most} letters. Shorten it.`,
    appAddress: {
      'no-address': 'That is no address. It looks like https://shop.example/borewall/.',
      'no-scheme': 'It must begin with https:// or http://.',
      'other-scheme': 'It must begin with https:// or http://; a telephone cannot open any other.',
      password: 'It holds a name or a password, which would stand on every report. Leave that out.',
      fragment: 'Leave out what follows the #; the job goes there.',
      'too-long': 'At most 200 letters: a longer one leaves the code no room for the job.',
    },
  },
  /** An address that is right, and yet not everybody’s. */
  reach: {
    'this-machine': 'Only this machine can open that address; a customer’s telephone cannot.',
    'this-network': 'Only what is in the network of your shop can open that address.',
  },
  /** Beneath the code on a report. */
  code: {
    label: 'QR code that opens this job in Borewall',
    caption: 'Scan to open this job in Borewall. The readings are in the code; nothing is sent anywhere.',
    captionWithout: (what: string) =>
      `Scan to open this job in Borewall. The readings are in the code; nothing is sent anywhere. Not in it: ${what}.`,
    photographs: (count: number) => (count === 1 ? '1 photograph' : `${count} photographs`),
    scans: (count: number) => (count === 1 ? 'the radii of 1 scan' : `the radii of ${count} scans`),
    notes: (count: number) => (count === 1 ? '1 note' : `${count} notes`),
    list: (parts: readonly string[]) => parts.join(', '),
    none: {
      'no-address': 'No code: the letterhead has no address of Borewall yet.',
      'too-large':
        'No code: this job is larger than one that a telephone still reads off paper. Hand over a file.',
      'not-loaded': 'No code: a part of Borewall could not be loaded. Reload the page to try again.',
    },
  },
  /** A job that comes in an address, off the code of a report or as a link. */
  opening: {
    ask: (job: string, machine: string, bores: string, readings: string) =>
      `This address holds a job: ${job}${machine === '' ? '' : `, ${machine}`}, ${bores}, ${readings}. Photographs and the radii of scans do not travel in an address. Opened, it is kept in this browser beside the other jobs; none of them changes.`,
    untitled: 'without a name',
    bores: (count: number) => (count === 1 ? '1 bore' : `${count} bores`),
    readings: (count: number) => (count === 1 ? '1 reading' : `${count} readings`),
    open: 'Open the job',
    opened: (job: string) => `Opened ${job} from the address`,
    address: 'The address',
    notOpened: {
      damaged:
        'The job in this address is not whole, so it was not opened. A part of the address is missing or changed: scan the code again, or copy the whole link.',
      'too-large':
        'This address unpacks to more than any report carries, so it was not opened. Whoever gave it to you can send a file instead.',
      newer:
        'The job in this address was written by a newer Borewall. Reload the page to get it, then open the address again.',
    },
    unharmed: 'Nothing that is kept here was touched.',
  },
}
