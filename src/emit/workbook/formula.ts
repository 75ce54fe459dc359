import type { CellName, Expression } from '../../report/cells.ts'
import { type Address, a1, addressOf, columnLetters, fixedA1, quotedSheet } from './addresses.ts'

/** Longest formula text. Source: Microsoft, "Excel specifications and limits". */
const longestFormula = 8_192
/** Most arguments of one function. Source: Microsoft, "Excel specifications and limits". */
const mostArguments = 255
/** Longest text constant within a formula. Source: Microsoft, "Excel specifications and limits". */
const longestConstant = 255

/** Where the formula stands, and the addresses it may use. */
export interface Standing {
  readonly sheet: string
  readonly row: number
  readonly book: ReadonlyMap<CellName, Address>
}

/** A piece of formula with how tightly it binds: 1 compares, 2 joins, 3 adds, 4 multiplies, 5 stands alone. */
interface Piece {
  readonly text: string
  readonly binds: 1 | 2 | 3 | 4 | 5
}

/**
 * The expression as spreadsheet formula text without the leading `=`, using SUM, ROUND, MAX, MIN, AND, OR and IF
 * alone: functions of every spreadsheet since 2007. ROUND there rounds half away from zero, as `round` asks.
 * Gives: `null` where the text would be longer than a cell can hold; the cell then keeps its value alone.
 */
export function formulaText(expression: Expression, standing: Standing): string | null {
  const { text } = piece(expression, standing)
  return text.length > longestFormula ? null : text
}

function piece(e: Expression, at: Standing): Piece {
  switch (e.op) {
    case 'ref':
      return alone(reference(addressOf(at.book, e.name), at))
    case 'number':
      return numberPiece(e.value)
    case 'text':
      return textPiece(e.value)
    case 'sum':
      return alone(sumText(e.names, at))
    case 'round':
      return alone(`ROUND(${piece(e.of, at).text},${e.digits})`)
    case 'choose':
      return alone(`IF(${[e.when, e.yes, e.no].map((part) => piece(part, at).text).join(',')})`)
    case 'max':
    case 'min':
    case 'and':
    case 'or':
      return alone(
        call(
          e.op.toUpperCase(),
          e.of.map((part) => piece(part, at).text),
        ),
      )
    case 'join':
      return joined(e.of.map((part) => piece(part, at)))
    default:
      return operated(e.op, piece(e.left, at), piece(e.right, at))
  }
}

function alone(text: string): Piece {
  return { text, binds: 5 }
}

function operated(op: string, left: Piece, right: Piece): Piece {
  const binds = op === '*' || op === '/' ? 4 : op === '+' || op === '-' ? 3 : 1
  return { text: `${guarded(left, binds)}${op}${guarded(right, binds + 1)}`, binds }
}

function guarded(part: Piece, least: number): string {
  return part.binds >= least ? part.text : `(${part.text})`
}

function joined(parts: readonly Piece[]): Piece {
  if (parts.length === 0) return alone('""')
  if (parts.length === 1) return { text: `${guarded(parts[0]!, 2)}&""`, binds: 2 }
  return { text: parts.map((part) => guarded(part, 2)).join('&'), binds: 2 }
}

function numberPiece(value: number): Piece {
  if (!Number.isFinite(value)) throw new Error(`a formula holds ${value}, which no spreadsheet can compute`)
  const text = String(value === 0 ? 0 : value).toUpperCase()
  return alone(value < 0 ? `(${text})` : text)
}

/** Long text goes in pieces, and so does text like `_x0041_`, which readers of the file would decode. */
function textPiece(value: string): Piece {
  const parts = value
    .split(/(?<=_)(?=x[0-9A-Fa-f]{4}_)/)
    .flatMap((part) => chunks([...part], longestConstant / 2).map((letters) => letters.join('')))
    .map((part) => `"${part.replace(/"/g, '""')}"`)
  if (parts.length === 0) return alone('""')
  return parts.length === 1 ? alone(parts[0]!) : { text: parts.join('&'), binds: 2 }
}

/** Calls with more arguments than a function takes are nested, which is safe for each function used here. */
function call(name: string, parts: readonly string[]): string {
  if (parts.length <= mostArguments) return `${name}(${parts.join(',')})`
  return call(
    name,
    chunks(parts, mostArguments).map((some) => call(name, some)),
  )
}

function chunks<T>(all: readonly T[], size: number): T[][] {
  const step = Math.floor(size)
  const out: T[][] = []
  for (let from = 0; from < all.length; from += step) out.push(all.slice(from, from + step))
  return out
}

/** Cells of the same row stay relative, so that the formula follows its row when rows are sorted. */
function reference(to: Address, at: Standing): string {
  if (to.sheet !== at.sheet) return `${quotedSheet(to.sheet)}!${fixedA1(to.row, to.column)}`
  return to.row === at.row ? a1(to.row, to.column) : fixedA1(to.row, to.column)
}

function sumText(names: readonly CellName[], at: Standing): string {
  if (names.length === 0) return '0'
  const cells = names.map((name) => addressOf(at.book, name)).sort(byPlace)
  return call(
    'SUM',
    runs(cells).map((run) => rangeText(run, at)),
  )
}

function byPlace(a: Address, b: Address): number {
  return a.order - b.order || a.column - b.column || a.row - b.row
}

/** Neighbours down one column, taken together; a cell named twice starts a run of its own and counts twice. */
function runs(cells: readonly Address[]): Address[][] {
  const out: Address[][] = []
  for (const cell of cells) {
    const run = out.at(-1)
    const last = run?.at(-1)
    const follows =
      last && last.order === cell.order && last.column === cell.column && last.row + 1 === cell.row
    if (run && follows) run.push(cell)
    else out.push([cell])
  }
  return out
}

function rangeText(run: readonly Address[], at: Standing): string {
  const first = run[0]!
  if (run.length === 1) return reference(first, at)
  const letters = columnLetters(first.column)
  const range = `$${letters}$${first.row}:$${letters}$${run.at(-1)!.row}`
  return first.sheet === at.sheet ? range : `${quotedSheet(first.sheet)}!${range}`
}
