import type { PageSetup, Worksheet } from 'exceljs'
import type { Sheet } from '../../report/cells.ts'
import { margins, titleRow } from './page-room.ts'
import type { PlacedRow, PlacedSheet } from './placing.ts'

/** Most row breaks of a sheet. Source: MS-XLSB, `BrtBeginRwBrk`. */
const mostBreaks = 1_023
/** A frozen head deeper than this leaves a small screen nothing to scroll. */
const deepestFreeze = 260

/** Sets paper, fit to one page across, print titles, foot, frozen heads and page breaks of a sheet. */
export function setPages(ws: Worksheet, placed: PlacedSheet, heights: readonly number[]): void {
  Object.assign(ws.pageSetup, pageSetup(placed))
  ws.headerFooter.oddFooter = footText(placed.sheet)
  ws.views = [viewOf(placed, heights)]
  for (const before of pageStarts(placed.rows).slice(0, mostBreaks)) ws.getRow(before - 1).addPageBreak()
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

/** Source: header and footer codes, ISO/IEC 29500-1 section 18.3.1.46; 255 characters at most. */
function footText(sheet: Sheet): string {
  const style = '&"Calibri,Regular"&8 '
  const left = sheet.foot.replace(/\s+/g, ' ').slice(0, 90).replace(/&/g, '&&')
  return `&L${style}${left}&C${style}&A&R${style}page &P of &N`
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

/** Rows that begin a printed page, beyond the first. */
export function pageStarts(rows: readonly PlacedRow[]): number[] {
  return rows.filter((row) => row.pageBreak && row.number > 1).map((row) => row.number)
}
