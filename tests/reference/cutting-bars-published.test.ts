import Fraction from 'fraction.js'
import { describe, expect, it } from 'vitest'
import type { BarStock } from '../../src/planning/buying/bar-stock.ts'
import { cutBars, planBars } from '../../src/planning/buying/cut-bars.ts'

const none = new Fraction(0)
const pieces = (sizes: readonly (readonly [length: number, count: number])[]) =>
  sizes.flatMap(([length, count]) =>
    Array.from({ length: count }, () => ({ part: `${length}`, length: new Fraction(length), kerf: none })),
  )
const bars = (sizes: readonly (readonly [length: number, count: number])[], length: number) =>
  cutBars(pieces(sizes), new Fraction(length), none)

describe('bars without a saw cut, against published minima', () => {
  // Gilmore and Gomory 1961, as worked in the open textbook MO-book, notebook Cutting stock.
  it('three stock lengths at 6, 7 and 10 meet 20 of 2, 10 of 3 and 20 of 4 for 170, proved', () => {
    const stock = (length: number, each: number): BarStock => ({
      id: `${length}`,
      length: new Fraction(length),
      have: none,
      price: (units) => ({ unpriced: 0, money: units * each }),
    })
    const plan = planBars(
      pieces([
        [2, 20],
        [3, 10],
        [4, 20],
      ]),
      [stock(5, 6), stock(6, 7), stock(9, 10)],
    )
    expect([plan.price.money, plan.proved]).toEqual([170, true])
  })

  // Hildebrand and others, "Open Optimization", cutting-pipe example; the 14 is re-solved, the 1,374 printed.
  it('12 of 4 m, 15 of 5 m and 22 of 6 m take 14 pipes of 19 m, and a hundred times as many take 1,374', () => {
    const sizes = (times: number) =>
      [
        [4, 12 * times],
        [5, 15 * times],
        [6, 22 * times],
      ] as const
    const [once, hundredfold] = [bars(sizes(1), 19), bars(sizes(100), 19)]
    expect([once.units.length, once.proved]).toEqual([14, true])
    expect([hundredfold.units.length, hundredfold.proved]).toEqual([1374, true])
  })

  // Encyclopedia example "Cutting stock problem".
  it('13 widths from rolls of 5,600 take 73, proved', () => {
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
    const { units, proved } = bars(widths, 5600)
    expect([units.length, proved]).toEqual([73, true])
  })

  // Bin packing example of a public guide, from memory.
  it('eleven weights fill four bins of 100, proved', () => {
    const { units, proved } = bars(
      [48, 30, 19, 36, 36, 27, 42, 42, 36, 24, 30].map((size) => [size, 1] as const),
      100,
    )
    expect([units.length, proved]).toEqual([4, true])
  })
})
