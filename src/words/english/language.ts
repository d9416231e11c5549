/** The language itself: how the machine knows it, what it puts before decimals, and the choice of another. */
export const language = {
  language: {
    /** A BCP 47 tag, for dates, sorting, and a voice. */
    locale: 'en-GB',
    decimalMark: '.',
    menu: 'Language',
    title: 'Language',
    lead: 'Kept on this machine only. The page loads anew for it; everything entered stays.',
    unreviewed: 'not yet read over by a person who speaks it',
    waiting:
      'Some of what was typed is not taken yet and would be lost. Take it or empty its field, then choose the language again.',
    notSaved:
      'The job could not be saved, and the page must load anew for another language. Save it to a file first.',
    notKept: 'This browser keeps nothing on this machine, so the choice of a language would be lost at once.',
  },
  /** The unit that the lengths of a job are written in. */
  lengths: {
    mm: 'Write lengths in mm',
    inch: 'Write lengths in inches',
    change: 'unit of lengths',
  },
}
