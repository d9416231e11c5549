/** As much as stands in one piece in a column, letters: a sixth of a sheet. */
const most = 900

/**
 * A text in pieces that a column can be broken between, none longer than `longest` letters: broken at the last space
 * there is in one, else between two letters. Joined by nothing, the pieces are the text.
 */
export function textPieces(text: string, longest = most): readonly string[] {
  const pieces: string[] = []
  let rest = [...text]
  while (rest.length > longest) {
    const space = rest.lastIndexOf(' ', longest - 1)
    const end = space > 0 ? space + 1 : longest
    pieces.push(rest.slice(0, end).join(''))
    rest = rest.slice(end)
  }
  return [...pieces, rest.join('')]
}
