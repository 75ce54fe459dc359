import type { Alignment, Style } from 'exceljs'
import type { Role } from '../../report/cells.ts'
import { markLooks } from './marks.ts'
import { formatCode, formatOf } from './number-formats.ts'
import { colours, edge } from './palette.ts'
import type { PlacedCell, PlacedRow } from './placing.ts'
import { type Look, looks, roleOfStand, ruleOfStand } from './roles.ts'

/** The look of a cell before its mark: by its role, else by what its row is; an input looks like one. */
export function lookOf(row: PlacedRow, placed: PlacedCell): Look {
  const { role, accepts } = placed.cell
  if (row.stand === 'head' && placed.chart) return chartHead
  return looks[role ?? (accepts ? 'input' : roleOfStand[row.stand])]
}

/** Heads of a chart's columns are small, so that the columns can be narrow. */
const chartHead: Look = { ...looks.head, font: { ...looks.head.font, size: 8 } }

/** Whether a person may type here. */
export function isInput({ cell }: PlacedCell): boolean {
  return cell.accepts !== undefined || cell.role === 'input' || cell.role === 'tick'
}

/** The style of a cell in a row of so many lines of text. */
export type StyleBook = (row: PlacedRow, placed: PlacedCell, lines: number) => Partial<Style>

/**
 * Gives each cell its style. Equal cells share one frozen style, because the writer shares styles by reference
 * and a changed one would paint other cells.
 */
export function styleBook(): StyleBook {
  const styles = new Map<string, Partial<Style>>()
  const byFacts = new Map<string, Partial<Style>>()
  return (row, placed, lines) => {
    const facts = factsOf(row, placed, lines)
    const seen = byFacts.get(facts)
    if (seen) return seen
    const style = styleOf(row, placed, lines)
    const key = JSON.stringify(style)
    const known = styles.get(key) ?? Object.freeze(style)
    styles.set(key, known)
    byFacts.set(facts, known)
    return known
  }
}

/** All that a style is made of, short: cells alike in this have the same style. */
function factsOf(row: PlacedRow, placed: PlacedCell, lines: number): string {
  const { cell } = placed
  const format = formatOf(cell.value)
  return [
    row.stand,
    row.filtered,
    lines > 1,
    cell.role,
    cell.accepts !== undefined,
    cell.mark,
    placed.chart,
    cell.indent,
    cell.link !== undefined || cell.url !== undefined,
    cell.value.type,
    format ? formatCode(format) : '',
    format?.as,
    sideOf(placed),
    wraps(placed, lookOf(row, placed)),
  ].join('|')
}

function styleOf(row: PlacedRow, placed: PlacedCell, lines: number): Partial<Style> {
  const look = lookOf(row, placed)
  const mark = placed.cell.mark ? markLooks[placed.cell.mark] : null
  const format = formatOf(placed.cell.value)
  const fill = mark?.fill ?? look.fill
  return {
    font: mark?.font ?? linkFont(look, placed),
    border: { ...ruleOfStand[row.stand], ...chartGrid(placed), ...look.border, ...mark?.border },
    alignment: alignmentOf(placed, look, verticalOf(row, placed.cell.role, lines)),
    protection: { locked: !isInput(placed) },
    ...(fill ? { fill } : {}),
    ...(format ? { numFmt: formatCode(format) } : {}),
  }
}

function linkFont(look: Look, { cell }: PlacedCell): Look['font'] {
  return cell.link !== undefined || cell.url !== undefined ? { ...look.font, underline: true } : look.font
}

/** Marked cells stand side by side; a pale line between them keeps days countable. */
function chartGrid({ cell }: PlacedCell): Partial<Style['border']> {
  return cell.mark ? { right: edge('hair', colours.line), left: edge('hair', colours.line) } : {}
}

/**
 * Ruled rows are centred, so that no text touches a rule, and reminders in their fill; running text starts beside its
 * label's first line; heads stand on their rule, unless filter arrows need that place.
 */
function verticalOf(row: PlacedRow, role: Role | undefined, lines: number): 'top' | 'middle' | 'bottom' {
  if (row.stand === 'head') return row.filtered ? 'top' : 'bottom'
  if (role === 'head') return 'bottom'
  return row.stand === 'free' && role !== 'caution' && lines > 1 ? 'top' : 'middle'
}

function alignmentOf(
  placed: PlacedCell,
  look: Look,
  vertical: 'top' | 'middle' | 'bottom',
): Partial<Alignment> {
  const { cell } = placed
  if (cell.mark) return { horizontal: 'center', vertical: 'middle' }
  const horizontal = sideOf(placed)
  const wrapText = wraps(placed, look)
  if (horizontal === 'center') return { horizontal, vertical, wrapText }
  const indent = indentSteps(placed, look)
  return { horizontal, vertical, wrapText, ...(indent > 0 ? { indent } : {}) }
}

/**
 * Steps that a cell's text stands in from its side: what the report asks, one for text at the right, where numbers keep
 * room by their format, and one for text behind a frame.
 */
export function indentSteps(placed: PlacedCell, look: Look): number {
  const asked = placed.cell.indent ?? 0
  if (sideOf(placed) === 'right') return asked + (isNumber(placed) ? 0 : 1)
  return asked + (look.border?.left ? 1 : 0)
}

function isNumber({ cell }: PlacedCell): boolean {
  const { value } = cell
  return value.type === 'number' && value.format.as !== 'day' && value.format.as !== 'instant'
}

/** Numbers stand at the right, one step in, so that they never touch the next column's text. */
function sideOf(placed: PlacedCell): 'left' | 'right' | 'center' {
  const { cell, align } = placed
  if (align) return align
  if (cell.role === 'tick') return 'center'
  return isNumber(placed) ? 'right' : 'left'
}

/** Only text wraps: a number that wraps or shrinks would be misread. */
export function wraps({ cell, span }: PlacedCell, look: Look): boolean {
  if (cell.value.type !== 'text' && cell.value.type !== 'unknown') return false
  return look.wraps || span > 1
}
