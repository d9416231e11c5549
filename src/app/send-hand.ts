import { wallPalette } from '../scene/wall-palette'

/** The palette of the wall on paper, whatever the page looks like. */
export const paperPalette = wallPalette('light')

/** Type and colours of everything written on a picture that is sent: white paper. */
export const paperHand = {
  fontFamily: '"Source Sans 3 Variable", "Source Sans 3", system-ui, sans-serif',
  paper: '#ffffff',
  ink: '#20231f',
  softInk: '#5d6159',
  rule: '#d6d2c6',
  tight: paperPalette.tight,
  loose: paperPalette.loose,
  unmeasured: paperPalette.wallPaper,
} as const

/** A canvas writes in whatever type is there: the page's own must have come. */
export async function typeLoaded(): Promise<void> {
  await document.fonts.load(`400 14px ${paperHand.fontFamily}`)
}

export type Pen = CanvasRenderingContext2D

export interface Box {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

/** Sets the type that is written and measured in next. */
export function setType(pen: Pen, px: number, weight = 400): void {
  pen.font = `${weight} ${px}px ${paperHand.fontFamily}`
}

/** Breaks a text into lines no wider than `width` in the type that is set; a word too wide is cut in pieces. */
export function linesWithin(pen: Pick<Pen, 'measureText'>, text: string, width: number): string[] {
  const fits = (line: string) => pen.measureText(line).width <= width
  const lines: string[] = []
  let line = ''
  for (const word of text.split(/\s+/).filter((one) => one !== '')) {
    const longer = line === '' ? word : `${line} ${word}`
    if (fits(longer)) {
      line = longer
      continue
    }
    if (line !== '') lines.push(line)
    const pieces = piecesOf(word, fits)
    lines.push(...pieces.slice(0, -1))
    line = pieces.at(-1) ?? ''
  }
  return line === '' ? lines : [...lines, line]
}

function piecesOf(word: string, fits: (text: string) => boolean): string[] {
  const pieces: string[] = []
  let piece = ''
  for (const letter of word) {
    if (piece !== '' && !fits(piece + letter)) {
      pieces.push(piece)
      piece = ''
    }
    piece += letter
  }
  return [...pieces, piece]
}
