import type { SourceFile } from './source-files'

const join = (...pieces: readonly string[]) => pieces.join('')

/** Working pages and places that a reader of this repository does not have, in pieces so as not to match here. */
const elsewhere = [
  ...['DESIGN', 'METROLOGY', 'LAYOUT', 'STYLE', 'STACK', 'TRADE', 'REFERENCE'].map((page) =>
    join(page, '.md'),
  ),
  join('..', '/', 'shared'),
  join('shared', '/', 'demo'),
  join('/', 'work', '/'),
]

/** Ways round the checks, and things left for later. */
const shortcuts = [
  join('@ts-', 'ignore'),
  join('@ts-', 'nocheck'),
  join('@ts-', 'expect-error'),
  join('biome-', 'ignore'),
  join('as unknown', ' as'),
  join('TO', 'DO'),
  join('FIX', 'ME'),
  join('console.', 'log'),
]

/** Each mention of something outside the repository. */
export function mentionsOfElsewhere(file: SourceFile): string[] {
  return mentions(file, elsewhere)
}

/** Each way round the compiler or the linter, and each note of work not done. */
export function shortcutsIn(file: SourceFile): string[] {
  return mentions(file, shortcuts)
}

function mentions({ path, text }: SourceFile, words: readonly string[]): string[] {
  return text
    .split('\n')
    .flatMap((line, index) =>
      words.filter((word) => line.includes(word)).map((word) => `${path}:${index + 1} has ${word}`),
    )
}
