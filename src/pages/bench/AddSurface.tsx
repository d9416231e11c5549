import { words } from '../../words/words'

/** Begins a surface finding whose place is typed; on the flat map it is drawn instead. */
export function AddSurface(props: {
  readonly onAdd: () => void
  /** There is little room. */
  readonly short?: true
}) {
  const { onAdd, short } = props
  const said = words.surface
  return (
    <button
      type="button"
      className="quiet add-surface"
      aria-label={said.add}
      title={said.orDrag}
      onClick={onAdd}
    >
      {short ? said.title : said.add}
    </button>
  )
}
