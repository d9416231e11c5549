/** Something of a report with the room that it needs, pixels. */
export interface LaidPart {
  readonly id: string
  readonly height: number
  /** Right across the sheet, or in one of two columns. */
  readonly across: 'sheet' | 'column'
  /** A heading: what follows stands beneath it on the same sheet and in the same column. */
  readonly withNext?: boolean
}

/** A stretch of a sheet: a part right across it, or two columns of parts. */
export type Stretch =
  | { readonly kind: 'sheet'; readonly id: string }
  | { readonly kind: 'columns'; readonly columns: readonly (readonly string[])[] }

export type SheetPlan = readonly Stretch[]

/** Parts that stand together in a column. */
interface Chunk {
  readonly ids: readonly string[]
  readonly height: number
}

const columnCount = 2

/**
 * Which parts stand on which sheet, in their order. Parts in columns fill the left column, then the right, then go
 * on on the next sheet; where they end, both columns are about as long. A part that is higher than a sheet has one to
 * itself: whoever prints it breaks it between its lines.
 */
export function layOutSheets(parts: readonly LaidPart[], sheetHeight: number): readonly SheetPlan[] {
  const sheets = sheetsOf(sheetHeight)
  for (const run of runsOf(parts)) {
    if (run.kind === 'sheet') {
      if (run.height > sheets.room()) sheets.turnOver()
      sheets.put({ kind: 'sheet', id: run.id }, run.height)
    } else placeColumns(sheets, run.chunks, run.follows)
  }
  return sheets.all()
}

type Sheets = ReturnType<typeof sheetsOf>

/** Sheets that are filled one after the other. */
function sheetsOf(height: number) {
  const sheets: Stretch[][] = []
  let sheet: Stretch[] = []
  let left = height
  return {
    room: () => left,
    isBegun: () => sheet.length > 0,
    put(stretch: Stretch, used: number) {
      if (sheet.length === 0) sheets.push(sheet)
      sheet.push(stretch)
      left = Math.max(0, left - used)
    },
    /** To the next sheet, unless nothing stands on this one. */
    turnOver() {
      if (sheet.length === 0) return
      sheet = []
      left = height
    },
    all: (): readonly SheetPlan[] => sheets,
  }
}

function placeColumns(sheets: Sheets, all: readonly Chunk[], follows: number): void {
  let chunks = all
  while (chunks.length > 0) {
    const room = sheets.room()
    const even = evenColumns(chunks, room, follows)
    if (even) {
      sheets.put({ kind: 'columns', columns: even.columns }, even.height)
      return
    }
    const filled = fillColumns(heldBack(chunks, room), room)
    if (filled.taken === 0 && sheets.isBegun()) {
      sheets.turnOver()
      continue
    }
    const columns = filled.taken === 0 ? [chunks[0]?.ids ?? []] : filled.columns
    sheets.put({ kind: 'columns', columns }, room)
    chunks = chunks.slice(Math.max(1, filled.taken))
    if (chunks.length > 0) sheets.turnOver()
  }
}

/** Where all would have room but for what ends the report, some go along with that to its sheet. */
function heldBack(chunks: readonly Chunk[], room: number): readonly Chunk[] {
  const fitsAlone = chunks.length > 1 && fillColumns(chunks, room).taken === chunks.length
  return fitsAlone ? chunks.slice(0, -Math.ceil(chunks.length / 4)) : chunks
}

type Run =
  | { readonly kind: 'sheet'; readonly id: string; readonly height: number }
  | {
      readonly kind: 'columns'
      readonly chunks: readonly Chunk[]
      /** What the parts right across that come next need beneath them. */
      readonly follows: number
    }

function runsOf(parts: readonly LaidPart[]): Run[] {
  const runs: Run[] = []
  let at = 0
  while (at < parts.length) {
    const part = parts[at]
    if (!part) break
    if (part.across === 'sheet') {
      runs.push({ kind: 'sheet', id: part.id, height: part.height })
      at += 1
      continue
    }
    const end = parts.findIndex(({ across }, index) => index > at && across === 'sheet')
    const inColumns = parts.slice(at, end < 0 ? undefined : end)
    runs.push({ kind: 'columns', chunks: chunksOf(inColumns), follows: end < 0 ? 0 : endHeight(parts, end) })
    at += inColumns.length
  }
  return runs
}

/** Where only parts right across are left, they end the report and belong on the sheet of what they follow. */
function endHeight(parts: readonly LaidPart[], from: number): number {
  const rest = parts.slice(from)
  return rest.every(({ across }) => across === 'sheet')
    ? rest.reduce((sum, { height }) => sum + height, 0)
    : 0
}

function chunksOf(parts: readonly LaidPart[]): Chunk[] {
  const chunks: Chunk[] = []
  let ids: string[] = []
  let height = 0
  for (const part of parts) {
    ids.push(part.id)
    height += part.height
    if (part.withNext) continue
    chunks.push({ ids, height })
    ids = []
    height = 0
  }
  return ids.length > 0 ? [...chunks, { ids, height }] : chunks
}

/** The columns filled one after the other up to a height, and how many chunks found room. */
function fillColumns(chunks: readonly Chunk[], height: number) {
  const columns: string[][] = []
  let taken = 0
  for (let column = 0; column < columnCount; column++) {
    const ids: string[] = []
    let used = 0
    for (let chunk = chunks[taken]; chunk && used + chunk.height <= height; chunk = chunks[taken]) {
      ids.push(...chunk.ids)
      used += chunk.height
      taken += 1
    }
    columns.push(ids)
  }
  return { columns, taken }
}

/** All chunks in the lowest columns that hold them, where those and what follows find room. */
function evenColumns(chunks: readonly Chunk[], room: number, follows: number) {
  const total = chunks.reduce((sum, { height }) => sum + height, 0)
  const most = room - follows
  let low = Math.floor(total / columnCount)
  let high = Math.ceil(Math.min(total, most))
  if (high < 0 || fillColumns(chunks, Math.min(total, most)).taken < chunks.length) return undefined
  while (low < high) {
    const middle = Math.floor((low + high) / 2)
    if (fillColumns(chunks, middle).taken === chunks.length) high = middle
    else low = middle + 1
  }
  const height = Math.min(high, most)
  return { columns: fillColumns(chunks, height).columns, height }
}
