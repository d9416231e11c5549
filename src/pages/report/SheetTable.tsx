import { VerdictShape } from '../../charts/VerdictShape'
import { inShownUnit } from '../../words/length-unit'
import type { PaperTable } from '../../words/paper-table'
import { paperWords } from '../../words/paper-words'
import { words } from '../../words/words'

/** Level × axis: each diameter with its ± and the mark of how it stands. */
export function StationTable({ table }: { readonly table: PaperTable | undefined }) {
  if (!table) return <p className="sheet-line">{paperWords.noStations}</p>
  const { axes, rows, marks } = table
  return (
    <div className="sheet-stations">
      <table>
        <caption>{inShownUnit(words.report.table)}</caption>
        <thead>
          <tr>
            <th scope="col">{words.report.depthHead}</th>
            {axes.map((axis) => (
              <th key={axis} scope="col">
                {axis}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ level, cells }) => (
            <tr key={level}>
              <th scope="row">{level}</th>
              {cells.map(({ figure, standing, place }, index) => (
                <td key={axes[index]} className={place && place !== 'inside' ? 'is-out' : undefined}>
                  {figure.replaceAll(' ', '\u00a0')}
                  {place ? <VerdictShape place={place} /> : null}
                  {standing === undefined ? null : (
                    <span className={place ? 'only-heard' : 'sheet-standing'}> {standing}</span>
                  )}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      {marks.length > 0 ? (
        <p className="sheet-marks" aria-hidden="true">
          {marks.map(({ place, text }) => (
            <span key={place}>
              <VerdictShape place={place} /> {text}
            </span>
          ))}
        </p>
      ) : null}
    </div>
  )
}
