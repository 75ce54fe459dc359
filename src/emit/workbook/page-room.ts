import type { PlacedSheet } from './placing.ts'
import { columnPoints, rowSize } from './room.ts'

const inch = 72
/** ISO 216 A4, 210 mm x 297 mm, in points. */
const paper = { short: (210 / 25.4) * inch, long: (297 / 25.4) * inch } as const
/** Margins of every printed page, in inches. */
export const margins = { left: 0.5, right: 0.5, top: 0.55, bottom: 0.7, header: 0.3, footer: 0.3 } as const
/** Share of a page that is filled on purpose: printers and fonts differ a little. */
const filling = 0.97

/** How much a page takes of a sheet that is fitted to one page across, in points of the sheet itself. */
export interface Room {
  readonly full: number
  /** The head row that every later page begins with, and its height; no row where there is none. */
  readonly titles: { readonly row: number; readonly height: number }
}

/** Room of a printed page of the sheet, with columns of widths in characters. */
export function pageRoom(placed: PlacedSheet, widths: readonly number[]): Room {
  const upright = placed.sheet.orientation === 'portrait'
  const down = (upright ? paper.long : paper.short) - (margins.top + margins.bottom) * inch
  const row = titleRow(placed)
  const height = row ? rowSize(placed.rows[row - 1]!, widths).height : 0
  return {
    full: (down / pageScale(placed, widths)) * filling,
    titles: { row: row ?? Number.POSITIVE_INFINITY, height },
  }
}

/** How much smaller than itself a sheet is printed to fit across its page; 1 where it fits. */
export function pageScale({ sheet }: PlacedSheet, widths: readonly number[]): number {
  const upright = sheet.orientation === 'portrait'
  const across = (upright ? paper.short : paper.long) - (margins.left + margins.right) * inch
  const wide = widths.reduce((sum, width) => sum + columnPoints(width), 0)
  return Math.min(1, across / wide)
}

/** The head row printed on every page; none where another table follows and would get the wrong heads. */
export function titleRow({ sheet, starts }: PlacedSheet): number | null {
  const named = sheet.freeze?.block
  const at = sheet.blocks.findIndex((block) => block.id === named)
  if (named === undefined || at < 0 || sheet.blocks[at]!.kind !== 'table') return null
  const follows = sheet.blocks.slice(at + 1).some((block) => block.kind === 'table')
  return follows ? null : (starts.get(named) ?? null)
}
