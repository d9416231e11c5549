import type { ReactNode } from 'react'
import type { Size } from './use-size'

/** How the flat views stand on a sheet of paper, CSS pixels: the map as wide as the picture, the others side by side. */
export const paperBoxes = {
  map: { width: 592, height: 190 },
  section: { width: 286, height: 200 },
  profile: { width: 294, height: 200 },
  hours: { width: 592, height: 240 },
} as const satisfies Record<string, Size>

/** About as wide as a letter of a label is on paper. */
export const paperLetter = 6.2

/** Map, section and profile together: paper has no tabs. */
export function PaperCharts(props: {
  readonly map: ReactNode
  readonly section: ReactNode
  readonly profile: ReactNode
}) {
  return (
    <>
      {props.map}
      {props.section || props.profile ? (
        <div className="paper-charts">
          <div className="flat-chart is-side-below">{props.section}</div>
          <div className="flat-chart is-side-below">{props.profile}</div>
        </div>
      ) : null}
    </>
  )
}
