import type { Flaw, Problem } from '../core/problem'
import { words } from './words'

/** What is wrong and how to mend it, in a sentence or two, without the place. */
export function problemText(problem: Flaw): string {
  // Each wording takes the flaw of its own code; the compiler cannot follow that through the table.
  const wording = words.problems[problem.code] as (flaw: Flaw) => string
  return wording(problem)
}

/** Where a problem is: the path in the job, and the line of the file where that is known. */
export function problemPlace({ path, line, column }: Problem): string {
  const { problemPlace: said } = words
  const inText =
    line === undefined ? undefined : column === undefined ? said.line(line) : said.lineColumn(line, column)
  if (path === '') return inText ?? said.wholeFile
  return inText === undefined ? path : said.pathAndLine(path, inText)
}
