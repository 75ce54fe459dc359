import type { Cell, Format, Value } from '../../report/cells.ts'

/** Days between the spreadsheet's day 0 and 1970-01-01. Source: 1970-01-01 has serial 25569 in the 1900 system. */
const serialOf1970 = 25_569

/**
 * Room at the right of a number, as wide as one indent step, so that it never touches the next column's text.
 * An indent would say the same, but LibreOffice 7.4 drops it where neighbours differ in number format alone (measured).
 */
const gap = '_w'

/**
 * The format code that shows a number as `format` asks. Codes are few, name no locale, and put units in quotes.
 * `count`, `number`, `money`, `price`, `minutes` and `hours` take the number as it is; `percent` takes a ratio;
 * `day` and `instant` take days and minutes since 1970.
 */
export function formatCode(format: Format): string {
  switch (format.as) {
    case 'count':
      return `#,##0${gap}`
    case 'number':
      return withUnit(decimals(format.digits), format.unit)
    case 'money':
      return withUnit(decimals(format.digits), format.currency)
    case 'price':
      return withUnit(priceDecimals(format), format.currency)
    case 'percent':
      return `${decimals(format.digits)}%${gap}`
    case 'day':
      return '[$-409]ddd\\ yyyy\\-mm\\-dd'
    case 'instant':
      return `[$-409]ddd\\ ${format.short ? '' : 'yyyy\\-'}mm\\-dd\\ hh:mm`
    case 'minutes':
      return withUnit('#,##0', 'min')
    case 'hours':
      return withUnit('#,##0.0', 'h')
  }
}

function decimals(digits: number): string {
  return digits > 0 ? `#,##0.${'0'.repeat(digits)}` : '#,##0'
}

/** Digits beyond the least take a blank of a digit's width where they are not needed, so points line up. */
function priceDecimals(format: Format & { as: 'price' }): string {
  const least = Math.min(format.least ?? 2, format.digits)
  if (least === 0) return decimals(format.digits)
  return `#,##0.${'0'.repeat(least)}${'?'.repeat(format.digits - least)}`
}

function withUnit(code: string, unit: string | undefined): string {
  if (!unit) return code + gap
  return `${code}\\ "${unit.replace(/"/g, '″')}"${gap}`
}

/** The format of a cell's number, `null` where its value is no number. */
export function formatOf(value: Value): Format | null {
  if (value.type === 'number') return value.format
  if (value.type === 'day') return { as: 'day' }
  if (value.type === 'instant') return { as: 'instant', ...(value.short ? { short: true } : {}) }
  return null
}

/** A cell's value as the file holds it: text, a number or nothing. Days and instants become serial numbers. */
export function stored(value: Value): string | number | null {
  switch (value.type) {
    case 'text':
    case 'unknown':
      return value.text
    case 'day':
      return serial(value.day, 'day')
    case 'instant':
      return serial(value.instant, 'instant')
    case 'number':
      return serial(value.value, value.format.as)
    case 'empty':
      return null
  }
}

function serial(value: number, as: Format['as']): number {
  if (!Number.isFinite(value)) throw new Error(`a cell holds ${value}, which no workbook can hold`)
  if (as === 'day') return serialOf1970 + value
  if (as === 'instant') return serialOf1970 + value / 1440
  return value === 0 ? 0 : value
}

/** About what a spreadsheet shows for a cell: good enough to measure its width. */
export function shown(cell: Cell): string {
  const { value } = cell
  if (value.type === 'text' || value.type === 'unknown') return value.text
  if (value.type === 'empty') return ''
  const format = formatOf(value)!
  if (format.as === 'day') return 'Wed 2026-02-28'
  if (format.as === 'instant') return format.short ? 'Wed 02-28 20:00' : 'Wed 2026-02-28 20:00'
  return shownNumber(value.type === 'number' ? value.value : 0, format)
}

function shownNumber(value: number, format: Format): string {
  if (format.as === 'percent') return `${grouped(value * 100, format.digits)}%`
  if (format.as === 'hours') return `${grouped(value, 1)} h`
  if (format.as === 'minutes') return `${grouped(value, 0)} min`
  if (format.as === 'money' || format.as === 'price')
    return `${grouped(value, format.digits)} ${format.currency}`
  if (format.as === 'number') return `${grouped(value, format.digits)}${format.unit ? ` ${format.unit}` : ''}`
  return grouped(value, 0)
}

function grouped(value: number, digits: number): string {
  const [whole, part] = value.toFixed(digits).split('.') as [string, string?]
  const groups = whole.replace(/\B(?=(\d{3})+(?!\d))/g, ',')
  return part ? `${groups}.${part}` : groups
}
