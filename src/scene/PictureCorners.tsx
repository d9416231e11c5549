import type { Ref } from 'react'
import type { LimitPair } from '../core/findings'
import type { RampSpan } from '../core/surface/ramp-span'
import { keyTexts, keyTicks } from './key-ticks'
import type { MarksPresent } from './marks-present'
import type { PictureLabels } from './picture-labels'
import { type Theme, wallPalette } from './wall-palette'

/** Height of the colour key and of its lines, CSS pixels; its style sheet has the same. */
const keyBox = { height: 76, lineHeight: 15 }

interface ScaleCornerProps {
  readonly exaggeration: number
  readonly labels: PictureLabels
  /** The bar and its text, set after each frame. */
  readonly bar: Ref<HTMLDivElement>
  readonly barText: Ref<HTMLParagraphElement>
}

/** Top left: how much the form is exaggerated, and how long a change of the diameter is drawn. */
export function ScaleCorner({ exaggeration, labels, bar, barText }: ScaleCornerProps) {
  return (
    <div className="picture-corner picture-scale">
      <p>{labels.formDrawn(exaggeration)}</p>
      <div className="picture-scale-bar" ref={bar} />
      <p className="picture-scale-line" ref={barText} />
    </div>
  )
}

interface PairKeyProps {
  readonly middleMm: number
  readonly pair: LimitPair | undefined
  readonly span: RampSpan
  readonly theme: Theme
  readonly labels: PictureLabels
}

/**
 * Top right: the limits drawn, in the colours of their rings, with the colours of the wall between them. The
 * largest new size has a tick alone: its ring is labelled.
 */
export function PairKey({ middleMm, pair, span, theme, labels }: PairKeyProps) {
  const palette = wallPalette(theme)
  const ticks = keyTicks(middleMm, pair, span)
  const colours = {
    max: palette.maxRing,
    min: palette.minRing,
    'new-max': palette.newMaxRing,
    middle: undefined,
  }
  return (
    <div className="picture-corner picture-key">
      <ul>
        {keyTexts(ticks, keyBox, pair, labels).map(({ which, text, share }) => (
          <li
            key={which}
            className={`picture-key-${which}`}
            style={{ top: `${share * 100}%`, color: colours[which] }}
          >
            {text}
          </li>
        ))}
      </ul>
      <span className="picture-ramp">
        {[...palette.ramp].reverse().map((colour) => (
          <span key={colour} style={{ background: colour }} />
        ))}
        {ticks.map(({ which, share }) => (
          <i
            key={which}
            className={`picture-key-${which}`}
            style={{ top: `${share * 100}%`, background: colours[which] }}
          />
        ))}
      </span>
    </div>
  )
}

interface MarkLegendProps {
  readonly present: MarksPresent
  readonly hasNext: boolean
  readonly hasScanMarks: boolean
  readonly labels: PictureLabels
}

/** Bottom right: what squares, hatch, dots and outlines mean, where there are any. */
export function MarkLegend({ present, hasNext, hasScanMarks, labels }: MarkLegendProps) {
  return (
    <div className="picture-corner picture-legend">
      {hasNext && (
        <p className="picture-next">
          <svg viewBox="0 0 22 12" aria-hidden="true">
            <path d="M6 1h10v10H6z" />
          </svg>
          {labels.next}
        </p>
      )}
      {present.hatched && (
        <p>
          <svg viewBox="0 0 22 12" aria-hidden="true">
            <path d="M-2 6 4 0M-2 12 10 0M4 12 16 0M10 12 22 0M16 12 24 4" />
          </svg>
          {labels.notMeasured}
        </p>
      )}
      {present.doubtful && (
        <p>
          <svg viewBox="0 0 22 12" aria-hidden="true">
            {[2, 8, 14, 20].flatMap((x) => [
              <circle key={x} cx={x} cy="3" r="1.1" />,
              <circle key={-x} cx={x - 3} cy="8.5" r="1.1" />,
            ])}
          </svg>
          {labels.tooClose}
        </p>
      )}
      {present.outlined && (
        <p>
          <svg viewBox="0 0 22 12" aria-hidden="true" className="picture-legend-outline">
            <rect x="1" y="1" width="20" height="10" rx="2.5" />
            <rect x="4" y="4" width="14" height="4" rx="1" />
          </svg>
          {labels.surfaceFinding}
        </p>
      )}
      {hasScanMarks && (
        <p>
          <svg viewBox="0 0 22 12" aria-hidden="true" className="picture-legend-scan-mark">
            <rect x="2" y="1.5" width="18" height="9" rx="2" />
          </svg>
          {labels.scanMark}
        </p>
      )}
    </div>
  )
}
