/** A square picture in grey: what a printer or a camera makes of a drawing. */
export interface DrawnSvg {
  readonly sideMm: number
  readonly image: {
    readonly data: Uint8ClampedArray<ArrayBuffer>
    readonly width: number
    readonly height: number
    readonly colorSpace: 'srgb'
  }
}

const samples = 3

/** Draws the one black path of a square SVG on white at so many dots to the inch, each dot the mean of nine points. */
export function drawnSvg(markup: string, dotsPerInch: number): DrawnSvg {
  const [left = 0, top = 0, side = 0] = numbersIn(/viewBox="([^"]*)"/.exec(markup)?.[1])
  const sideMm = Number(/width:([\d.]+)mm/.exec(markup)?.[1])
  const outlines = (/<path d="([^"]*)"/.exec(markup)?.[1] ?? '')
    .split('Z')
    .filter((part) => part !== '')
    .map(numbersIn)
  const dots = Math.round((sideMm / 25.4) * dotsPerInch)
  const scale = side / (dots * samples)
  const ink = new Uint8Array(dots * dots)
  for (let row = 0; row < dots * samples; row += 1) {
    const crossings = outlines.flatMap((outline) => crossingsOf(outline, top + (row + 0.5) * scale))
    crossings.sort((a, b) => a - b)
    for (let pair = 0; pair + 1 < crossings.length; pair += 2) {
      const from = Math.ceil(((crossings[pair] ?? 0) - left) / scale - 0.5)
      const to = ((crossings[pair + 1] ?? 0) - left) / scale - 0.5
      for (let column = from; column < to; column += 1) {
        const dot = Math.floor(row / samples) * dots + Math.floor(column / samples)
        ink[dot] = (ink[dot] ?? 0) + 1
      }
    }
  }
  const data = new Uint8ClampedArray(dots * dots * 4).fill(255)
  for (const [dot, count] of ink.entries())
    data.fill(255 - (count * 255) / samples ** 2, dot * 4, dot * 4 + 3)
  return { sideMm, image: { data, width: dots, height: dots, colorSpace: 'srgb' } }
}

function numbersIn(text = ''): number[] {
  return (text.match(/-?[\d.]+/g) ?? []).map(Number)
}

/** Where the edges of an outline that run down or up meet a line across. */
function crossingsOf(outline: readonly number[], y: number): number[] {
  const found: number[] = []
  for (let at = 0; at < outline.length; at += 2) {
    const [x = 0, fromY = 0] = [outline[at], outline[at + 1]]
    const toY = outline[(at + 3) % outline.length] ?? 0
    if (fromY > y !== toY > y) found.push(x)
  }
  return found
}
