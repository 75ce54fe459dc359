/** Makers of finished cells, so that every sheet says the same thing the same way. */
import type { Day, Instant, Minutes } from '../base/clock.ts'
import type { Cents } from '../base/money.ts'
import { minorDigits } from '../base/money.ts'
import type { Cell, Expression, Format, Role, Row, Value } from './cells.ts'

/** What a maker may add to a cell. */
export type More = Omit<Cell, 'value'>

/** Words. */
export function text(words: string, more: More = {}): Cell {
  return { value: words === '' ? { type: 'empty' } : { type: 'text', text: words }, ...more }
}

/** An empty cell, covering `span` columns. */
export function blank(more: More = {}): Cell {
  return { value: { type: 'empty' }, ...more }
}

/** A whole number of things. */
export function count(value: number, more: More = {}): Cell {
  return { value: { type: 'number', value, format: { as: 'count' } }, align: 'right', ...more }
}

/** A number with digits and a unit. */
export function number(value: number, digits: number, unit: string | null, more: More = {}): Cell {
  const format: Format = unit === null ? { as: 'number', digits } : { as: 'number', digits, unit }
  return { value: { type: 'number', value, format }, align: 'right', ...more }
}

/** Money from minor units; an unknown amount says so and is never zero. */
export function money(cents: Cents | null, currency: string, more: More = {}): Cell {
  if (cents === null) return { value: { type: 'unknown', text: 'unknown' }, align: 'right', ...more }
  return { value: moneyValue(cents, currency), align: 'right', ...more }
}

/** The value of a money cell. */
export function moneyValue(cents: Cents, currency: string): Value {
  const digits = minorDigits(currency)
  return { type: 'number', value: cents / 10 ** digits, format: { as: 'money', currency, digits } }
}

/** A day. */
export function day(value: Day, more: More = {}): Cell {
  return { value: { type: 'day', day: value }, ...more }
}

/** A day and time. */
export function instant(value: Instant, more: More = {}): Cell {
  return { value: { type: 'instant', instant: value }, ...more }
}

/** A day and time without the year, as `sayShort` writes it. */
export function shortInstant(value: Instant, more: More = {}): Cell {
  return { value: { type: 'instant', instant: value, short: true }, ...more }
}

/** Minutes of work. */
export function minutes(value: Minutes, more: More = {}): Cell {
  return { value: { type: 'number', value, format: { as: 'minutes' } }, align: 'right', ...more }
}

/** Minutes shown in hours, for times far longer than a person works at one go. */
export function hours(value: Minutes, more: More = {}): Cell {
  return { value: { type: 'number', value: value / 60, format: { as: 'hours' } }, align: 'right', ...more }
}

/** A box to tick. */
export function tick(more: More = {}): Cell {
  return {
    value: { type: 'text', text: '☐' },
    role: 'tick',
    align: 'center',
    accepts: { kind: 'list', values: ['☐', '☑'] },
    ...more,
  }
}

/** A place to write a value by hand or in the sheet. */
export function writeHere(more: More = {}): Cell {
  return { value: { type: 'empty' }, role: 'input', accepts: { kind: 'any' }, ...more }
}

/** A row of one sentence over `span` columns. */
export function line(words: string, span: number, role: Role = 'body'): Row {
  return { cells: [text(words, { span, role })] }
}

/** Minutes as a person says them: `45 min`, `3 h`, `2 h 30 min`. */
export function sayMinutes(value: Minutes): string {
  const [hours, rest] = [Math.floor(value / 60), value % 60]
  if (hours === 0) return `${rest} min`
  return rest === 0 ? `${hours} h` : `${hours} h ${rest} min`
}

/** A reference to a named cell. */
export function ref(name: string): Expression {
  return { op: 'ref', name }
}

/** A constant number in an expression. */
export function constant(value: number): Expression {
  return { op: 'number', value }
}

/** Left times right. */
export function times(left: Expression, right: Expression): Expression {
  return { op: '*', left, right }
}

/** Left less right. */
export function less(left: Expression, right: Expression): Expression {
  return { op: '-', left, right }
}

/** Rounded half away from zero. */
export function rounded(of: Expression, digits: number): Expression {
  return { op: 'round', of, digits }
}
