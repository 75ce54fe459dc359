/**
 * A small evaluator of live expressions, apart from the compiler's exact arithmetic: plain binary numbers, and ROUND as
 * spreadsheet programs have it (15 digits, then half away from zero; see tests/workbook/decimal-round.ts).
 */
import type { Cell, CellName, Expression, Sheet } from '../../../src/report/cells.ts'

export type Held = number | string | boolean | null

/** All named and live cells of these sheets. */
export function cellsOf(sheets: readonly Sheet[]): Cell[] {
  return sheets.flatMap(({ blocks }) =>
    blocks.flatMap((block) => {
      const rows = block.kind === 'table' ? [...block.rows, ...block.totals] : block.rows
      return rows.flatMap(({ cells }) => cells)
    }),
  )
}

/** What a cell shows today, as a spreadsheet holds it. */
export function heldBy({ value }: Cell): Held {
  if (value.type === 'text' || value.type === 'unknown') return value.text
  if (value.type === 'number') return value.value
  if (value.type === 'day') return value.day
  return value.type === 'instant' ? value.instant : null
}

/** A model of sheets in which inputs may be changed and every live cell is computed anew. */
export class LiveModel {
  readonly cells: ReadonlyMap<CellName, Cell>
  private readonly typed = new Map<CellName, Held>()
  private readonly known = new Map<CellName, Held>()

  constructor(sheets: readonly Sheet[]) {
    const named = cellsOf(sheets).flatMap((cell) =>
      cell.name === undefined ? [] : [[cell.name, cell] as const],
    )
    this.cells = new Map(named)
    if (this.cells.size !== named.length) throw new Error('two cells have one name')
  }

  /** Types a value into an input. */
  type(name: CellName, value: Held): void {
    if (!this.cells.get(name)?.accepts) throw new Error(`${name} is no input`)
    this.typed.set(name, value)
    this.known.clear()
  }

  /** The value of a named cell now. */
  valueOf(name: CellName): Held {
    const cell = this.cells.get(name)
    if (!cell) throw new Error(`no cell is named ${name}`)
    if (this.typed.has(name)) return this.typed.get(name)!
    if (!this.known.has(name)) this.known.set(name, cell.live ? this.evaluate(cell.live) : heldBy(cell))
    return this.known.get(name)!
  }

  /** The value of an expression now. */
  evaluate(e: Expression): Held {
    switch (e.op) {
      case 'ref':
        return this.valueOf(e.name)
      case 'number':
      case 'text':
        return e.value
      case 'sum':
        return e.names.reduce((sum, name) => sum + onlyNumber(this.valueOf(name)), 0)
      case 'round':
        return roundDecimal(numberOf(this.evaluate(e.of)), e.digits)
      case 'max':
        return Math.max(...e.of.map((each) => numberOf(this.evaluate(each))))
      case 'min':
        return Math.min(...e.of.map((each) => numberOf(this.evaluate(each))))
      case 'and':
        return e.of.every((each) => this.evaluate(each) === true)
      case 'or':
        return e.of.some((each) => this.evaluate(each) === true)
      case 'choose':
        return this.evaluate(this.evaluate(e.when) === true ? e.yes : e.no) ?? 0
      case 'join':
        return e.of.map((each) => `${this.evaluate(each) ?? ''}`).join('')
      default:
        return operate(e.op, this.evaluate(e.left), this.evaluate(e.right))
    }
  }
}

function onlyNumber(held: Held): number {
  return typeof held === 'number' ? held : 0
}

function numberOf(held: Held): number {
  if (held === null) return 0
  if (typeof held !== 'number') throw new Error(`${held} is no number`)
  return held
}

function operate(op: string, left: Held, right: Held): Held {
  const order = compare(left, right)
  if (op === '=') return order === 0
  if (op === '<>') return order !== 0
  if (op === '<') return order < 0
  if (op === '<=') return order <= 0
  if (op === '>') return order > 0
  if (op === '>=') return order >= 0
  const [a, b] = [numberOf(left), numberOf(right)]
  if (op === '/' && b === 0) throw new Error('divided by zero')
  return op === '+' ? a + b : op === '-' ? a - b : op === '*' ? a * b : a / b
}

/** Numbers come before texts; an empty cell equals 0 and the empty text. */
function compare(left: Held, right: Held): number {
  if (left === null) return right === null ? 0 : compare(typeof right === 'string' ? '' : 0, right)
  if (right === null) return compare(left, typeof left === 'string' ? '' : 0)
  if (typeof left !== typeof right) return typeof left === 'number' ? -1 : 1
  return left === right ? 0 : left < right ? -1 : 1
}

/** ROUND: to 15 significant digits, then half away from zero. */
export function roundDecimal(value: number, digits: number): number {
  const [mantissa, exponent] = value.toPrecision(15).split('e') as [string, string?]
  const scaled = Number(`${mantissa}e${Number(exponent ?? 0) + digits}`)
  return Number(`${Math.sign(scaled) * Math.round(Math.abs(scaled))}e${-digits}`)
}

/** Live cells whose written value differs from the computed one, a line each. */
export function liveDifferences(sheets: readonly Sheet[]): string[] {
  const model = new LiveModel(sheets)
  return cellsOf(sheets).flatMap((cell) => {
    if (!cell.live) return []
    const [written, computed] = [heldBy(cell) ?? '', model.evaluate(cell.live) ?? '']
    const agree =
      typeof written === 'number' && typeof computed === 'number'
        ? Math.abs(written - computed) <= 1e-9 * Math.max(1, Math.abs(written)) * 1e-3
        : written === computed
    return agree
      ? []
      : [`${cell.name ?? JSON.stringify(cell.live)}: written ${written}, computed ${computed}`]
  })
}
