/** Sending the findings: what is sent, in which ways, and what was done. */
export const send = {
  send: {
    open: 'Send',
    title: 'Send what the readings prove',
    lead: 'Nothing leaves this machine until you choose a way. The text is about every bore, the picture about the one on the bench.',
    text: 'Text',
    picture: 'Picture',
    pictureOf: (bore: string, verdict: string) => `Picture to send. ${bore}: ${verdict}`,
    drawing: 'Drawing the picture…',
    flat: 'This browser draws no 3D picture here, so the flat map is sent.',
    noPicture: {
      'no-readings': 'There is nothing to draw before the first reading. The text can be sent.',
      failed: 'The picture could not be drawn in this browser. The text can be sent all the same.',
    },
    ways: {
      share: 'Share text and picture…',
      'share-text': 'Share the text…',
      'copy-text': 'Copy the text',
      'copy-picture': 'Copy the picture',
      'save-text': 'Save the text',
      'save-picture': 'Save the picture',
    },
    saveForPrint: 'Save the picture to print',
    done: {
      share: 'Handed to the place you chose',
      copiedText: 'Text copied',
      copiedPicture: 'Picture copied',
      saved: (name: string) => `Saved as ${name}, where this browser puts its downloads`,
    },
    handOver: {
      title: 'One file for the owner',
      lead: 'A page that opens in any browser, without a network: what it means in plain words, the picture to turn, every figure and reading. Borewall opens it again as a job.',
      make: 'Save the file for the owner',
      making: 'Making the file…',
      failed: 'The file could not be made in this browser. Save the text and the picture instead.',
    },
    cancelled: 'Closed without sharing anything',
    failed: {
      share: 'The system did not take it to share. Save the text and the picture, and send the files.',
      'share-text': 'The system did not take it to share. Save the text and send the file.',
      'copy-text': 'This browser did not let the text be copied. Select it above and copy it, or save it.',
      'copy-picture': 'This browser did not let the picture be copied. Save it instead.',
      'save-text': 'The file could not be saved. Select the text above and copy it.',
      'save-picture': 'The file could not be saved. Try to copy the picture instead.',
    },
  },
  /** Written on the picture that is sent. */
  sentPicture: {
    bore: (name: string, survey: string) => `${name}. ${survey}`,
    questionsOpen: (count: number) =>
      count === 1 ? 'A question about a reading is open.' : `${count} questions about readings are open.`,
    betweenReadings:
      'Between the readings the wall is drawn for the eye; the verdict comes from the readings alone.',
    madeWith: (app: string) => `Drawn by ${app}.`,
  },
}
