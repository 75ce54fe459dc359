import Fraction from 'fraction.js'
import { dims } from '../base/dims.ts'
import type { Quantity } from '../base/quantity.ts'

/** Base units of mm, mm2, mm3 and g: powers of length or mass, the unit shown and how many of the base make one. */
const measures = {
  length: [{ length: 1 }, 'mm', 1],
  area: [{ length: 2 }, 'cm2', 100],
  volume: [{ length: 3 }, 'cm3', 1000],
  mass: [{ mass: 1 }, 'g', 1],
} as const

/**
 * A quantity that was worked out, from its number in mm, mm2, mm3 or g; shown with three digits.
 * Needs: a finite number below 1e20. Gives: the number exact to a millionth.
 */
export function workedQuantity(value: number, what: keyof typeof measures): Quantity {
  const [powers, unit, size] = measures[what]
  return {
    value: new Fraction(value.toFixed(6)),
    dims: dims(powers),
    unit,
    text: `${plainFigure(value / size)} ${unit}`,
  }
}

/** Three digits without an exponent. */
export function plainFigure(value: number): string {
  return Math.abs(value) >= 100 ? String(Math.round(value)) : String(Number(value.toPrecision(3)))
}
