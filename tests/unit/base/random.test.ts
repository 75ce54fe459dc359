import { describe, expect, it } from 'vitest'
import { resumeRandom, seededRandom } from '../../../src/base/random.ts'

describe('resumeRandom', () => {
  it('gives the outputs of the reference implementation from state 1 2 3 4', () => {
    // Source: xoshiro128starstar.c version 1.1, outputs as quoted in the tests of the Rust crate rand_xoshiro.
    const expected = [11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849]
    const random = resumeRandom([1, 2, 3, 4])
    expect(expected.map(() => random.next() * 2 ** 32)).toEqual(expected)
  })

  it('goes on from a saved state', () => {
    const random = seededRandom(7)
    for (let i = 0; i < 10; i++) random.next()
    const later = resumeRandom(random.state())
    expect([later.next(), later.next()]).toEqual([random.next(), random.next()])
  })
})

describe('seededRandom', () => {
  it('gives the same numbers for the same seed and others for another', () => {
    const numbers = (seed: number) => {
      const random = seededRandom(seed)
      return Array.from({ length: 20 }, () => random.next())
    }
    expect(numbers(42)).toEqual(numbers(42))
    expect(numbers(42)).not.toEqual(numbers(43))
    for (const number of numbers(0)) expect(number >= 0 && number < 1).toBe(true)
  })

  it('fills ten bins evenly: chi-square of 100000 draws below the 99.9 % point', () => {
    const random = seededRandom(1)
    const bins = new Array<number>(10).fill(0)
    for (let i = 0; i < 100_000; i++) bins[Math.floor(random.next() * 10)]! += 1
    const chiSquare = bins.reduce((sum, count) => sum + (count - 10_000) ** 2 / 10_000, 0)
    // Source: chi-square table, 9 degrees of freedom, 0.999: 27.877 (from memory).
    expect(chiSquare).toBeLessThan(27.877)
  })
})
