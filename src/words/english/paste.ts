/** What is said of a block of readings that was pasted from a spreadsheet. */
export const paste = {
  paste: {
    title: 'What was pasted',
    taken: (readings: number, stations: number) =>
      `${counted(readings, 'reading')} taken at ${counted(stations, 'station')}.`,
    replaced: (stations: number) =>
      stations === 1
        ? 'At one of them they took the place of earlier ones.'
        : `At ${stations} of them they took the place of earlier ones.`,
    byHeads: (heads: string) => `Placed by the heads of the block: ${heads}.`,
    heads: { depths: 'depths', axes: 'axes', bores: 'bores' },
    nothing: 'Nothing was taken.',
    refused: (cells: number) =>
      cells === 1
        ? 'One cell was refused: mend it here and press Enter, or copy it away.'
        : `${cells} cells were refused: mend them here and press Enter, or copy them away.`,
    takenTitle: 'What was taken',
    takenAt: (where: string, text: string) => `${where}: ${text}`,
    takenInPlace: (where: string, text: string, before: number) =>
      `${where}: ${text}, in place of ${counted(before, 'reading')}`,
    cell: (row: number, column: number) => `row ${row}, column ${column}`,
    cellAt: (cell: string, where: string) => `${where} (${cell})`,
    mend: (where: string) => `Refused: ${where}`,
    copyRest: 'Copy what was refused',
    copied: 'Copied.',
    'not-copied': 'This browser did not copy it. Mark it and copy it by hand.',
    noStation: {
      'no-level': (head: string) =>
        head === '' ? 'There is no depth beside it.' : `This survey has no level at “${head}”. Add it first.`,
      'no-axis': (head: string) =>
        head === '' ? 'There is no axis above it.' : `This survey has no axis at “${head}”. Add it first.`,
      'no-bore': (head: string) =>
        head === '' ? 'There is no bore above it.' : `This job has no bore called “${head}”.`,
      'past-the-grid': () => 'It lies past the end of the grid. Paste from a cell further up or to the left.',
    },
    unreadable: {
      empty: 'There was no text to paste.',
      'too-large': 'That is more than any survey holds. Copy only the readings.',
      'commas-only':
        'Commas alone do not show where a cell ends and where the decimals begin. Copy the cells from the spreadsheet itself, or part them with tabs or semicolons.',
      'quote-left-open':
        'A quotation mark is opened and not closed. Close it or take it out, then paste again.',
    },
    notLoaded:
      'The part of the page that reads tables could not be loaded. Is Borewall still running? Then paste again.',
  },
}

function counted(count: number, name: string): string {
  return count === 1 ? `1 ${name}` : `${count} ${name}s`
}
