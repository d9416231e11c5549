/** The findings as a page of text, and what its command says. */
export const report = {
  report: {
    title: (job: string) => `What the readings prove: ${job}`,
    untitled: 'a job without a name',
    invented: 'An example: all figures are invented.',
    machine: (machine: string) => `Machine: ${machine}`,
    note: (note: string) => `Note: ${note}`,
    bore: (name: string) => `Bore ${name}`,
    surveyOf: (bore: string, number: number, all: number) => `${bore}, survey ${number} of ${all}`,
    comparison: (name: string) => `Bore ${name}, for comparison`,
    measured: {
      on: (day: string) => `Measured on ${day}.`,
      undated: 'The day it was measured was not recorded.',
      hours: (hours: string) => `Hours run: ${hours}.`,
    },
    table: 'Diameters at 20 °C in mm, ± U (95 %)',
    depthHead: 'Depth',
    notMeasured: '–',
    noStations: 'No readings.',
    noBores: 'The job holds no bore with a survey.',
  },
  inspect: {
    usage: [
      'Usage: npm run inspect -- FILE [--json]',
      '',
      'Prints what the readings of a job file prove. With --json the same as one JSON',
      'object: lengths in mm, angles in degrees, probabilities from 0 to 1. Null stands',
      'where there is no such figure, and for infinite degrees of freedom.',
      '',
      'Exit status: 0 read and reported, 1 the file could not be read, 2 wrong usage.',
    ].join('\n'),
    oneFile: 'Name one job file.',
    unknownOption: (option: string) => `There is no option ${option}.`,
    cannotRead: (file: string) => `${file} could not be read:`,
    fileErrors: {
      'file-not-found':
        'There is no such file. Check the name; a relative one starts from the folder you are in.',
      'file-is-folder': 'This is a folder. Name the job file in it.',
      'file-not-allowed': 'You may not read this file. Check its permissions.',
      'file-unreadable': 'The file could not be read from the disk.',
    },
    ourMistake: 'Borewall made a mistake here; the file may be right. What happened:',
  },
}
