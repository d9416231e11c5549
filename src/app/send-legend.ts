import type { LimitPair } from '../core/findings'
import type { RampSpan } from '../core/surface/ramp-span'
import { scaleBar } from '../core/surface/scale-bar'
import { keyTexts, keyTicks } from '../scene/key-ticks'
import type { LegendMark } from '../scene/legend-marks'
import { roundStepUm } from '../words/length-unit'
import { inHundredthsOfMicrons } from '../words/numbers'
import { words } from '../words/words'
import { pictureLabels } from './picture-labels'
import { type Box, linesWithin, type Pen, paperHand, paperPalette, setType } from './send-hand'
import { drawGlyph } from './send-legend-glyphs'

/** What the legend of a picture explains. */
export interface Legend {
  readonly middleMm: number
  readonly pair: LimitPair | undefined
  readonly span: RampSpan
  readonly marks: readonly LegendMark[]
  readonly isoStepUm: number
  /** Of the 3D picture; a flat map exaggerates nothing. */
  readonly exaggeration: number | undefined
}

const typePx = 13
const lineHeight = 17
const glyph = { width: 28, height: 16, gap: 10 }
const entryGap = 5
const partGap = 14
const key = { width: 14, height: 96, lineHeight: 16, gap: 8, newMax: true }
/** Height that the scale takes, units. */
export const scaleHeight = 58
const longestBar = 120

/** Height that a legend takes in a column of this width; the scale may stand elsewhere. */
export function legendHeight(pen: Pen, legend: Legend, width: number, hasScale = true): number {
  const scale = hasScale && legend.exaggeration !== undefined ? scaleHeight + partGap : 0
  return scale + key.height + key.lineHeight + partGap + marksHeight(entriesOf(pen, legend, width))
}

/** Draws scale, colour key and marks one under the other; the scale bar for the picture as it was drawn. */
export function drawLegend(pen: Pen, box: Box, legend: Legend, pixelsPerMm: number | undefined): void {
  pen.save()
  setType(pen, typePx)
  pen.textBaseline = 'middle'
  pen.textAlign = 'left'
  let y = box.y
  if (legend.exaggeration !== undefined && pixelsPerMm !== undefined) {
    drawScale(pen, box.x, y, legend.exaggeration, pixelsPerMm)
    y += scaleHeight + partGap
  }
  drawKey(pen, box.x, y + key.lineHeight / 2, legend)
  y += key.height + key.lineHeight + partGap
  for (const { mark, lines } of entriesOf(pen, legend, box.width)) {
    const place = { x: box.x, y: y + (lineHeight - glyph.height) / 2, ...glyph }
    drawGlyph(pen, mark, place, legend.exaggeration === undefined)
    pen.fillStyle = paperHand.ink
    for (const [index, line] of lines.entries()) {
      pen.fillText(line, box.x + glyph.width + glyph.gap, y + (index + 0.5) * lineHeight)
    }
    y += lines.length * lineHeight + entryGap
  }
  pen.restore()
}

/** How much the form is exaggerated, and how long a change of the diameter is drawn. */
export function drawScale(pen: Pen, x: number, y: number, exaggeration: number, pixelsPerMm: number): void {
  const { micrometres, lengthPx } = scaleBar(exaggeration, pixelsPerMm, longestBar, roundStepUm())
  pen.fillStyle = paperHand.ink
  pen.fillText(pictureLabels.formDrawn(exaggeration), x, y + lineHeight / 2)
  const bar = y + 30
  pen.fillRect(x, bar, lengthPx, 1.5)
  for (const end of [x, x + lengthPx - 1.5]) pen.fillRect(end, bar - 4, 1.5, 9.5)
  pen.fillText(pictureLabels.onDiameter(micrometres), x, y + scaleHeight - lineHeight / 2)
}

/** The colours of the wall from loose above to tight below, with the limits drawn. */
function drawKey(pen: Pen, x: number, y: number, { middleMm, pair, span }: Legend): void {
  const colours = [...paperPalette.ramp].reverse()
  const step = key.height / colours.length
  for (const [index, colour] of colours.entries()) {
    pen.fillStyle = colour
    pen.fillRect(x + 4, y + index * step, key.width, step + 0.5)
  }
  const rings = {
    max: paperPalette.maxRing,
    min: paperPalette.minRing,
    'new-max': paperPalette.newMaxRing,
    middle: paperHand.softInk,
  }
  const ticks = keyTicks(middleMm, pair, span)
  for (const { which, share } of ticks) {
    pen.fillStyle = rings[which]
    pen.fillRect(x, y + share * key.height - 1, key.width + 8, 2)
  }
  for (const { which, share, text } of keyTexts(ticks, key, pair, pictureLabels)) {
    pen.fillStyle = rings[which]
    pen.fillText(text, x + key.width + 8 + key.gap, y + share * key.height)
  }
}

interface Entry {
  readonly mark: LegendMark
  readonly lines: readonly string[]
}

function entriesOf(pen: Pen, { marks, isoStepUm }: Legend, width: number): readonly Entry[] {
  setType(pen, typePx)
  return marks.map((mark) => ({
    mark,
    lines: linesWithin(pen, markText(mark, isoStepUm), width - glyph.width - glyph.gap),
  }))
}

function marksHeight(entries: readonly Entry[]): number {
  return entries.reduce((height, { lines }) => height + lines.length * lineHeight + entryGap, 0)
}

/** What a mark means, in words. */
export function markText(mark: LegendMark, isoStepUm: number): string {
  const { legend } = words
  const texts: Record<LegendMark, string> = {
    disc: legend.disc,
    'disc-open': legend.discOpen,
    hatch: legend.hatch,
    stipple: legend.stipple,
    dashed: legend.dashed,
    'firm-above': legend.firmAbove,
    'firm-below': legend.firmBelow,
    'iso-lines': legend.isoLines(inHundredthsOfMicrons(isoStepUm / 1000)),
    hole: legend.hole,
    surface: legend.surface,
  }
  return texts[mark]
}
