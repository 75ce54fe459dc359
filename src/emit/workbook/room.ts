import { formatOf, shown } from './number-formats.ts'
import type { PlacedCell, PlacedRow, PlacedSheet } from './placing.ts'
import type { Look } from './roles.ts'
import { indentSteps, lookOf, wraps } from './styles.ts'
import { textWidth, wrappedLines } from './text-width.ts'

/** Points of one character of column width: 7 pixels of the default font at 96 to the inch. */
const pointsPerCharacter = 5.25
/** Room that a cell keeps free at its sides, in points, and that one indent step takes. */
const sidePoints = 5
const chartSidePoints = 3
const indentPoints = 7.5
/** Source: Microsoft, "Excel specifications and limits". */
const tallestRow = 409
const widestColumn = 255
const gapHeight = 6
const arrowHeight = 13

/** Points across a column of a width in characters. */
export function columnPoints(width: number): number {
  return width * pointsPerCharacter
}

/**
 * Widths of the sheet's columns in characters: as the report asks, wider only where a number or a word of a head
 * would not fit, because such a number shows as `###` and a broken head is misread.
 */
export function columnWidths(placed: PlacedSheet): number[] {
  const widths = Array.from({ length: placed.columns }, (_, at) =>
    clamp((placed.sheet.widths[at] ?? 10) + 0.71),
  )
  for (const row of placed.rows) {
    for (const cell of row.cells) {
      const at = cell.column - 1
      if (cell.span === 1) widths[at] = Math.max(widths[at]!, leastWidth(row, cell))
    }
  }
  return widths
}

function clamp(width: number): number {
  return Math.min(widestColumn, Math.max(1, width))
}

function leastWidth(row: PlacedRow, placed: PlacedCell): number {
  if (placed.cell.mark) return 0
  const look = lookOf(row, placed)
  const { font } = look
  const text = formatOf(placed.cell.value)
    ? shown(placed.cell)
    : row.stand === 'head'
      ? longestWord(placed)
      : ''
  if (text === '') return 0
  const side = placed.chart ? chartSidePoints : sidePoints
  const points = textWidth(text, font.size!, font.bold === true) + side + indentOf(placed, look)
  return Math.ceil((points / pointsPerCharacter) * 10) / 10
}

function longestWord({ cell }: PlacedCell): string {
  return shown(cell)
    .split(/\s/)
    .reduce((longest, word) => (word.length > longest.length ? word : longest), '')
}

/** Room taken by indent, or by the gap that a number's format keeps at its right. */
function indentOf(placed: PlacedCell, look: Look): number {
  return (indentSteps(placed, look) + (formatOf(placed.cell.value) ? 1 : 0)) * indentPoints
}

/** Height of a row in points, and lines of text of its longest cell. */
export interface RowSize {
  readonly height: number
  readonly lines: number
}

/**
 * Size of a row, for the cell that needs most lines. Readers do not grow rows by themselves, least of all
 * under merged cells, so too little would cut text.
 * Gives: at most the tallest row the format knows; text beyond that is cut by the reader.
 */
export function rowSize(row: PlacedRow, widths: readonly number[]): RowSize {
  if (row.stand === 'gap') return { height: gapHeight, lines: 1 }
  let [least, most] = [15, 1]
  for (const placed of row.cells) {
    const look = lookOf(row, placed)
    const lines = wraps(placed, look) ? linesOf(placed, look, widths) : 1
    least = Math.max(least, cellHeight(placed, look, lines))
    most = Math.max(most, lines)
  }
  const height = Math.ceil((least + (row.filtered ? arrowHeight : 0)) * 4) / 4
  return { height: Math.min(tallestRow, height), lines: most }
}

function cellHeight({ cell }: PlacedCell, look: Look, lines: number): number {
  const size = cell.mark ? 9 : look.font.size!
  return lines * size * 1.28 + (cell.role === 'heading' ? 6 : 4)
}

function linesOf(placed: PlacedCell, look: Look, widths: readonly number[]): number {
  const size = look.font.size!
  const side = placed.chart ? chartSidePoints : sidePoints
  const across = widths
    .slice(placed.column - 1, placed.column - 1 + placed.span)
    .reduce((sum, width) => sum + width, 0)
  const room = Math.max(size, columnPoints(across) - side - indentOf(placed, look))
  return wrappedLines(shown(placed.cell), room, size, look.font.bold === true)
}
