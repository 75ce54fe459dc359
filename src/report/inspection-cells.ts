import type { InspectionLine } from '../model/results.ts'
import type { Cell } from './cells.ts'
import type { More } from './make-cells.ts'
import { blank, number } from './make-cells.ts'

/** Decimals that a limit needs to be shown whole, at most 6. */
function digitsOf(value: number): number {
  const [, decimals = ''] = value.toFixed(6).replace(/0+$/, '').split('.')
  return decimals.length
}

/** A limit with as many decimals as both limits of its line need; empty where the requirement gives none in figures. */
export function limitCell(
  { lower, upper }: InspectionLine,
  which: 'lower' | 'upper',
  unit: string | null,
  more: More = {},
): Cell {
  const value = which === 'lower' ? lower : upper
  if (value === null) return blank(more)
  const digits = Math.max(digitsOf(lower ?? 0), digitsOf(upper ?? 0))
  return number(value, digits, unit, more)
}

/** What is asked for, with what its limits are of where the requirement does not tell. */
export function sayRequirement({ requirement, limitsOf }: InspectionLine): string {
  return limitsOf === null ? requirement : `${requirement} (${limitsOf})`
}

/** Limits in words: `7.95 to 8.05 mm`; empty where there are none in figures. */
export function sayLimits({ lower, upper, unit }: InspectionLine): string {
  const behind = unit === null ? '' : ` ${unit}`
  const digits = Math.max(digitsOf(lower ?? 0), digitsOf(upper ?? 0))
  const said = (value: number): string => value.toFixed(digits)
  if (lower !== null && upper !== null) return `${said(lower)} to ${said(upper)}${behind}`
  if (lower !== null) return `at least ${said(lower)}${behind}`
  return upper === null ? '' : `at most ${said(upper)}${behind}`
}
