import type { PageSetup, Worksheet } from 'exceljs'
import type { Sheet } from '../../report/cells.ts'
import type { PlacedRow, PlacedSheet } from './placing.ts'
import { columnPoints } from './room.ts'

const inch = 72
/** ISO 216 A4, 210 mm x 297 mm, in points. */
const paper = { short: (210 / 25.4) * inch, long: (297 / 25.4) * inch } as const
const margins = { left: 0.5, right: 0.5, top: 0.55, bottom: 0.7, header: 0.3, footer: 0.3 } as const
/** Share of a page that is filled on purpose: printers and fonts differ a little. */
const filling = 0.94
/** Most row breaks of a sheet. Source: MS-XLSB, `BrtBeginRwBrk`. */
const mostBreaks = 1_023
/** A frozen head deeper than this leaves a small screen nothing to scroll. */
const deepestFreeze = 260

/** Sets paper, fit to one page across, print titles, foot, frozen heads and page breaks of a sheet. */
export function setPages(
  ws: Worksheet,
  placed: PlacedSheet,
  heights: readonly number[],
  widths: readonly number[],
): void {
  Object.assign(ws.pageSetup, pageSetup(placed))
  ws.headerFooter.oddFooter = footText(placed.sheet)
  ws.views = [viewOf(placed, heights)]
  const breaks = placed.filter ? writtenBreaks(placed.rows) : pageBreaks(placed, heights, widths)
  for (const before of breaks.slice(0, mostBreaks)) ws.getRow(before - 1).addPageBreak()
}

function pageSetup(placed: PlacedSheet): Partial<PageSetup> {
  const titles = titleRow(placed)
  return {
    paperSize: 9,
    orientation: placed.sheet.orientation,
    fitToPage: true,
    fitToWidth: 1,
    fitToHeight: 0,
    margins,
    ...(titles ? { printTitlesRow: `${titles}:${titles}` } : {}),
  }
}

/** The head row printed on every page; none where another table follows and would get the wrong heads. */
function titleRow({ sheet, starts }: PlacedSheet): number | null {
  const named = sheet.freeze?.block
  const at = sheet.blocks.findIndex((block) => block.id === named)
  if (named === undefined || at < 0 || sheet.blocks[at]!.kind !== 'table') return null
  const follows = sheet.blocks.slice(at + 1).some((block) => block.kind === 'table')
  return follows ? null : (starts.get(named) ?? null)
}

/** Source: header and footer codes, ISO/IEC 29500-1 section 18.3.1.46; 255 characters at most. */
function footText(sheet: Sheet): string {
  const style = '&"Calibri,Regular"&8 '
  const left = sheet.foot.replace(/\s+/g, ' ').slice(0, 90).replace(/&/g, '&&')
  return `&L${style}${left}&C${style}&A&R${style}&P / &N`
}

function viewOf({ sheet, starts }: PlacedSheet, heights: readonly number[]): Worksheet['views'][number] {
  const plain = { showGridLines: false, zoomScale: 100 } as const
  const top = sheet.freeze ? starts.get(sheet.freeze.block) : undefined
  if (!sheet.freeze || top === undefined) return { state: 'normal', ...plain }
  const deep = heights.slice(0, top).reduce((sum, height) => sum + height, 0)
  const ySplit = deep > deepestFreeze ? 0 : top
  const xSplit = sheet.freeze.columns
  if (ySplit === 0 && xSplit === 0) return { state: 'normal', ...plain }
  return { state: 'frozen', xSplit, ySplit, ...plain }
}

function writtenBreaks(rows: readonly PlacedRow[]): number[] {
  return rows.filter((row) => row.pageBreak && row.number > 1).map((row) => row.number)
}

/**
 * Rows before which a printed page ends: where the report says so, and where the next rows that belong together would
 * not fit. The format itself cannot keep rows together.
 */
export function pageBreaks(
  placed: PlacedSheet,
  heights: readonly number[],
  widths: readonly number[],
): number[] {
  const { full, titles } = capacity(placed, heights, widths)
  const breaks: number[] = []
  let used = 0
  for (const group of groups(placed.rows)) {
    const first = group[0]!
    const high = group.reduce((sum, row) => sum + heights[row.number - 1]!, 0)
    const over = used > 0 && used + high > full
    if (first.number > 1 && (first.pageBreak || over)) {
      breaks.push(first.number)
      used = first.number > titles.row ? titles.height : 0
    }
    used += high
  }
  return breaks
}

function capacity(placed: PlacedSheet, heights: readonly number[], widths: readonly number[]) {
  const upright = placed.sheet.orientation === 'portrait'
  const across = (upright ? paper.short : paper.long) - (margins.left + margins.right) * inch
  const down = (upright ? paper.long : paper.short) - (margins.top + margins.bottom) * inch
  const wide = widths.reduce((sum, width) => sum + columnPoints(width), 0)
  const scale = Math.min(1, across / wide)
  const row = titleRow(placed)
  const height = row ? heights[row - 1]! : 0
  return { full: (down / scale) * filling, titles: { row: row ?? Number.POSITIVE_INFINITY, height } }
}

/** Rows that stay together: a row, and after a row that keeps with the next, the next one too. */
function groups(rows: readonly PlacedRow[]): PlacedRow[][] {
  const out: PlacedRow[][] = []
  let open = false
  for (const row of rows) {
    const last = out.at(-1)
    if (open && last && !row.pageBreak) last.push(row)
    else out.push([row])
    open = keepsWithNext(row, open)
  }
  return out
}

function keepsWithNext(row: PlacedRow, open: boolean): boolean {
  if (row.stand === 'gap') return open
  return (
    row.keep ||
    row.stand === 'head' ||
    row.cells.some(({ cell }) => cell.role === 'heading' || cell.role === 'title')
  )
}
