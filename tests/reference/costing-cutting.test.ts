import Fraction from 'fraction.js'
import { describe, expect, it } from 'vitest'
import { cutBars } from '../../src/planning/buying/cut-bars.ts'

const none = new Fraction(0)
const pieces = (sizes: readonly (readonly [length: number, count: number])[]) =>
  sizes.flatMap(([length, count]) =>
    Array.from({ length: count }, () => ({
      part: `${length}`,
      length: new Fraction(length),
      width: none,
      kerf: none,
    })),
  )

/** Most bars that first fit, longest first, takes for an optimum. Source: Dosa 2007, 11/9 OPT + 6/9, from memory. */
const mostBars = (optimum: number): number => Math.floor((11 * optimum + 6) / 9)

describe('cutting bars without a saw cut, against published minima', () => {
  // Bin packing example of a public guide, from memory; longest first reaches its optimum.
  it('eleven weights fill four bins of 100', () => {
    const sizes = [48, 30, 19, 36, 36, 27, 42, 42, 36, 24, 30].map((size) => [size, 1] as const)
    expect(cutBars(pieces(sizes), new Fraction(100), none).units).toHaveLength(4)
  })

  // Hildebrand and others, "Open Optimization", cutting-pipe example: minimum 14 pipes of 19 m (re-solved).
  it('12 of 4 m, 15 of 5 m and 22 of 6 m take no fewer than the 14 pipes of 19 m, and no more than the rule allows', () => {
    const found = cutBars(
      pieces([
        [4, 12],
        [5, 15],
        [6, 22],
      ]),
      new Fraction(19),
      none,
    ).units.length
    expect(found).toBeGreaterThanOrEqual(14)
    expect(found).toBeLessThanOrEqual(mostBars(14))
  })

  // Encyclopedia example "Cutting stock problem": 13 widths from a 5,600 roll, minimum 73.
  it('13 widths take no fewer than 73 rolls of 5,600, and no more than the rule allows', () => {
    const widths = [
      [1380, 22],
      [1520, 25],
      [1560, 12],
      [1710, 14],
      [1820, 18],
      [1880, 18],
      [1930, 20],
      [2000, 10],
      [2050, 12],
      [2100, 14],
      [2140, 16],
      [2150, 18],
      [2200, 20],
    ] as const
    const found = cutBars(pieces(widths), new Fraction(5600), none).units.length
    expect(found).toBeGreaterThanOrEqual(73)
    expect(found).toBeLessThanOrEqual(mostBars(73))
  })
})
