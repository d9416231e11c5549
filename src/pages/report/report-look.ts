import type { ReactNode } from 'react'
import type { PaintOf } from '../compare/paint-of'

export const paperNames = ['a4', 'letter'] as const
export type PaperName = (typeof paperNames)[number]

/** How closely a sheet is filled: the loosest at which a report finds room is taken. */
export const densities = ['roomy', 'plain', 'close', 'tight'] as const
export type Density = (typeof densities)[number]

/** What a sheet has within its margins of 8 mm, CSS pixels of 1/96 inch. */
export const sheetSizes: Readonly<Record<PaperName, { readonly width: number; readonly height: number }>> = {
  a4: { width: 733, height: 1062 },
  letter: { width: 755, height: 995 },
}

/** The foot of a sheet, and what a printer may break otherwise than the screen. */
const footHeight = 23

/** What the parts of a report may fill of a sheet, CSS pixels. */
export function roomOn(paper: PaperName): number {
  return sheetSizes[paper].height - footHeight
}

/** How wide pictures and how high charts stand on the sheet, CSS pixels. */
export const viewSizes: Readonly<Record<Density, ViewSizes>> = {
  roomy: { picture: 206, chart: 196, shares: [0.42, 0.27, 0.31] },
  plain: { picture: 188, chart: 168, shares: [0.42, 0.27, 0.31] },
  close: { picture: 186, chart: 160, shares: [0.44, 0.26, 0.3] },
  tight: { picture: 168, chart: 147, shares: [0.45, 0.25, 0.3] },
}

interface ViewSizes {
  readonly picture: number
  readonly chart: number
  /** Of map, section and profile in the width of the sheet. */
  readonly shares: readonly [number, number, number]
}

/** A picture of a bore: drawn, still being drawn, or not to be had in this browser. */
export type ReportPicture =
  | { readonly kind: 'drawn'; readonly url: string; readonly pixelsPerMm: number }
  | { readonly kind: 'waiting' | 'none' }

/** The room that a picture was drawn for; it may be shown smaller. */
export const pictureBox = { width: 212, height: 200 } as const

export type ReportPhoto =
  | { readonly kind: 'shown'; readonly url: string }
  | { readonly kind: 'waiting' | 'absent' }

/** The shop that the report comes from. */
export interface Letterhead {
  readonly shopName: string
  readonly addressLines: readonly string[]
  readonly pictureUrl?: string
}

/** How a report is drawn, beside what it says. */
export interface ReportLook {
  readonly paper: PaperName
  readonly paintOf: PaintOf
  /** By `pictureKey`. */
  readonly pictures: ReadonlyMap<string, ReportPicture>
  /** By the hash of the photograph. */
  readonly photos: ReadonlyMap<string, ReportPhoto>
  readonly letterhead?: Letterhead
  /** A code to be scanned, with its caption. */
  readonly code?: ReactNode
}

/** Names the picture of a survey of a bore. */
export function pictureKey(boreId: string, surveyId: string): string {
  return JSON.stringify([boreId, surveyId])
}
