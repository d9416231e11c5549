/**
 * A spreadsheet takes a cell that begins with one of these signs for a formula and works it out: a name written by
 * somebody else must not do that. An apostrophe in front makes it a text, and is taken off again when it is read.
 */
const startsFormula = /^'*[=+\-@\t\r\uff1d\uff0b\uff0d\uff20]/

/** A text as it may stand in a cell that a spreadsheet opens. */
export function textForCell(text: string): string {
  return startsFormula.test(text) ? `'${text}` : text
}

/** The text that a cell stands for. */
export function textFromCell(cell: string): string {
  return cell.startsWith("'") && startsFormula.test(cell) ? cell.slice(1) : cell
}
