import { paperWords } from './paper-words'

/** So much of a name goes into the name of a file, letters. */
const longest = 60

/**
 * What a browser is told to call the PDF of a report: day, job and bore, so that a folder of them sorts by day.
 * Letters that no file system takes are left out. The day as in 2026-03-14.
 */
export function paperTitle(day: string, jobName: string, boreName: string | undefined): string {
  const { fileNames, fileName } = paperWords
  const what = boreName === undefined ? fileNames.engine : fileNames.bore(inFileName(boreName)).trim()
  return fileName(day, inFileName(jobName) || fileNames.untitled, what)
}

/** A name without what no file system takes, on one line. */
function inFileName(name: string): string {
  const kept = name
    .normalize('NFC')
    .replace(/[\p{C}"*/:<>?\\|]+/gu, ' ')
    .replace(/\s+/g, ' ')
    .trim()
  return [...kept]
    .slice(0, longest)
    .join('')
    .trim()
    .replace(/^\.+|\.+$/g, '')
}
