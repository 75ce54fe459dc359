import { describe, expect, it } from 'vitest'
import type { NetworkLink } from '../../src/graph/network.ts'
import { chanceBy, normalBelow, pert, pertMean, pertVariance } from '../../src/graph/pert.ts'

/** Activity, optimistic, likely, pessimistic, what it waits for. */
function read(rows: string) {
  const table = rows
    .trim()
    .split('\n')
    .map((row) => row.trim().split(' '))
  const ids = table.map((row) => row[0]!)
  const links = table.flatMap((row, to) =>
    (row[4] ?? '')
      .split(',')
      .filter((id) => id !== '')
      .map((id): NetworkLink => ({ from: ids.indexOf(id), to, type: 'FS', lag: 0 })),
  )
  const estimates = table.map((row) => ({
    low: Number(row[1]),
    likely: Number(row[2]),
    high: Number(row[3]),
  }))
  return { ids, links, estimates }
}

const construction = read(`
  A 1 2 3
  B 2 3.5 8 A
  C 6 9 18 B
  D 4 5.5 10 C
  E 1 4.5 5 C
  F 4 4 10 E
  G 5 6.5 11 D
  H 5 8 17 E,G
  I 3 7.5 9 C
  J 3 9 9 F,I
  K 4 4 4 J
  L 1 5.5 7 J
  M 1 2 3 H
  N 5 5.5 9 K,L`)

const lecture = read(`
  1-2 2 5 8
  1-3 1 4 7
  2-3 0 0 0 1-2
  2-4 2 4 6 1-2
  2-6 5 7 12 1-2
  3-4 3 5 10 1-3,2-3
  3-5 3 6 9 1-3,2-3
  4-5 4 6 10 2-4,3-4
  4-6 2 5 8 2-4,3-4
  5-6 2 4 6 3-5,4-5`)

const mill = read(`
  A 1 2 3
  B 2 3 4
  C 1 2 3 A
  D 2 4 6 A,B
  E 1 4 7 C
  F 1 2 9 C
  G 3 4 11 D,E
  H 1 2 3 F,G`)

describe('three-point projects', () => {
  // Source: Hillier & Lieberman, Introduction to Operations Research, construction example: 44 weeks, variance 9,
  // 0.84 for 47 weeks; the estimates from memory. The chance of 40 weeks was run again with scipy.stats.norm.
  it('a construction of 44 weeks has variance 9 and a chance of 0.8413 for 47 weeks', () => {
    const solved = pert(construction.estimates, construction.links)!
    expect(solved.mean).toBe(44)
    expect(solved.variance).toBeCloseTo(9, 12)
    expect(chanceBy(solved, 47)).toBeCloseTo(0.8413, 4)
    expect(chanceBy(solved, 40)).toBeCloseTo(0.0912, 4)
  })

  it('every activity of the construction has the tabulated mean', () => {
    expect(construction.estimates.map(pertMean)).toEqual([2, 4, 10, 6, 4, 5, 7, 9, 7, 8, 4, 5, 2, 6])
  })

  // Source: lecture notes L27 "Project Scheduling - PERT": means, variances and 20.83 days seen; the rest own.
  it('the lecture network has mean 20.83, variance 3.8056 and the tabulated variances', () => {
    const solved = pert(lecture.estimates, lecture.links)!
    expect(solved.mean).toBeCloseTo(20.8333, 4)
    expect(solved.variance).toBeCloseTo(3.8056, 4)
    expect(chanceBy(solved, 22)).toBeCloseTo(0.7251, 4)
    expect(chanceBy(solved, 25)).toBeCloseTo(0.9837, 4)
    const variances = [1, 1, 0, 0.4444, 1.3611, 1.3611, 1, 1, 1, 0.4444]
    for (const [i, estimate] of lecture.estimates.entries())
      expect(pertVariance(estimate)).toBeCloseTo(variances[i]!, 4)
  })

  // Source: Heizer & Render, Operations Management, Milwaukee Paper Manufacturing; estimates from memory. The book
  // prints 0.7157, its table value at z = 0.57; z is 0.5669.
  it('the paper mill has variance 112/36 and a chance of 0.7146 for 16 weeks', () => {
    const solved = pert(mill.estimates, mill.links)!
    expect(solved.mean).toBe(15)
    expect(solved.variance).toBeCloseTo(112 / 36, 12)
    expect(chanceBy(solved, 16)).toBeCloseTo(0.7146, 4)
  })
})

describe('normalBelow', () => {
  // Source: scipy.stats.norm.cdf, scipy 1.17.1.
  it.each([
    [-8, 6.22096057427174e-16],
    [-5, 2.866515718791933e-7],
    [-3, 0.0013498980316300933],
    [-4 / 3, 0.09121121972586788],
    [-0.5, 0.3085375387259869],
    [0, 0.5],
    [0.1, 0.539827837277029],
    [1, 0.8413447460685429],
    [1.96, 0.9750021048517795],
    [2.5, 0.9937903346742238],
    [4, 0.9999683287581669],
    [6, 0.9999999990134123],
  ])('of %f is %f within 1e-14', (z, chance) => {
    expect(Math.abs(normalBelow(z) - chance)).toBeLessThan(1e-14)
  })
})
