import { describe, expect, it } from 'vitest'
import { instantOf, minutesPerDay } from '../../src/base/clock.ts'
import { seededRandom } from '../../src/base/random.ts'
import { chanceBy, pert } from '../../src/graph/pert.ts'
import type { Results } from '../../src/model/results.ts'
import { drawBetaPert, drawFailures } from '../../src/planning/risk/beta-pert.ts'
import { drawAll } from '../../src/planning/risk/draws.ts'
import { layOutSamples } from '../../src/planning/risk/lay-out-samples.ts'
import { quantile, rankCorrelation } from '../../src/planning/risk/statistics.ts'
import { planned } from './calendar-bench.ts'

/** A project of waits that need nobody and nothing: activity, optimistic, likely, pessimistic days, what it waits for. */
function waits(rows: string): Results {
  const entries = rows
    .trim()
    .split('\n')
    .map((row) => row.trim().split(' '))
    .map(([id, low, likely, high, after]) => {
      const first = after === undefined ? '' : `, after: [${after.split(',').map((one) => `w${one}`)}]`
      return `  w${id}: {time: ${low}..${likely}..${high} d, attention: none${first}}`
    })
  const head = 'device: {name: waits, qty: 1, currency: EUR, start: 2026-03-02}'
  return planned(`${head}\nwork:\n${entries.join('\n')}\n`, { samples: 0 })
}

/** Days from the start to the finish of every sample, through the plan's own scheduler. */
function daysOf(results: Results, samples: number, seed = 1): Float64Array {
  const { finishes } = layOutSamples(results, { samples, seed })
  const start = instantOf(results.project.device.start, 0)
  return finishes.map((at) => (at - start) / minutesPerDay)
}

const mean = (values: ArrayLike<number>): number =>
  Array.from(values).reduce((sum, one) => sum + one, 0) / values.length
const variance = (values: ArrayLike<number>): number => {
  const middle = mean(values)
  return Array.from(values).reduce((sum, one) => sum + (one - middle) ** 2, 0) / (values.length - 1)
}

const construction = `
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
  N 5 5.5 9 K,L`

const chain = `
  A 1 2 3
  B 2 3.5 8 A
  C 6 9 18 B
  E 1 4.5 5 C
  F 4 4 10 E
  J 3 9 9 F
  L 1 5.5 7 J
  N 5 5.5 9 L`

const lecture = `
  a 2 5 8
  b 1 4 7
  c 0 0 0 a
  d 2 4 6 a
  e 5 7 12 a
  f 3 5 10 b,c
  g 3 6 9 b,c
  h 4 6 10 d,f
  i 2 5 8 d,f
  j 2 4 6 g,h`

const mill = `
  A 1 2 3
  B 2 3 4
  C 1 2 3 A
  D 2 4 6 A,B
  E 1 4 7 C
  F 1 2 9 C
  G 3 4 11 D,E
  H 1 2 3 F,G`

describe('one beta-PERT draw', () => {
  // Source: mean (a + 4m + b)/6 and variance (mean - a)(b - mean)/7 follow from the moments of the beta distribution.
  it.each([
    [0, 0, 1],
    [1, 6, 7],
    [2, 3, 5],
    [10, 25, 40],
  ])('of %f..%f..%f has the mean and variance of its beta distribution', (low, likely, high) => {
    const random = seededRandom(11)
    const count = 40_000
    const values = Array.from({ length: count }, () => drawBetaPert({ low, likely, high }, random))
    const middle = (low + 4 * likely + high) / 6
    const spread = ((middle - low) * (high - middle)) / 7
    expect(Math.abs(mean(values) - middle)).toBeLessThan(4 * Math.sqrt(spread / count))
    // The standard error of a variance is at most that of a normal one, times 1.2 for these shapes.
    expect(Math.abs(variance(values) / spread - 1)).toBeLessThan(4 * 1.2 * Math.sqrt(2 / count))
    expect(values.every((one) => low <= one && one <= high)).toBe(true)
  })

  // Source: scipy.stats.beta.ppf, scipy 1.17.1.
  it.each([
    [2, 3, 5, [2.4590830810294375, 3.127437521012363, 3.9333700928617414]],
    [1, 6, 7, [3.888390743510258, 5.488276137152338, 6.54404200158994]],
  ] as const)(
    'of %f..%f..%f lies below its 10, 50 and 90 %% points so often',
    (low, likely, high, points) => {
      const random = seededRandom(5)
      const count = 40_000
      const values = Array.from({ length: count }, () => drawBetaPert({ low, likely, high }, random))
      for (const [at, share] of [0.1, 0.5, 0.9].entries()) {
        const below = values.filter((one) => one <= points[at]!).length / count
        expect(Math.abs(below - share)).toBeLessThan(4 * Math.sqrt((share * (1 - share)) / count))
      }
    },
  )

  // Source: geometric distribution: mean p/(1 - p), variance p/(1 - p)^2.
  it('of a test that fails 40 times in 100 fails two thirds of a time on average', () => {
    const random = seededRandom(3)
    const values = Array.from({ length: 40_000 }, () => drawFailures(0.4, 100, random))
    expect(Math.abs(mean(values) - 2 / 3)).toBeLessThan(4 * Math.sqrt(0.4 / 0.36 / 40_000))
  })
})

describe('a plan without resources', () => {
  // Every wait is rounded up to a whole minute: half a minute each on average, a few thousandths of a day in all.
  const rounding = 0.006
  const samples = 4000

  // Source: Hillier & Lieberman, construction example (estimates from memory): mean 44, variance 9 by the textbook
  // formula; 9.2857 is the sum of (mean - a)(b - mean)/7 along the chain.
  it('in one chain has the analytic mean, the variance of its betas, and nearly the analytic chance', () => {
    const days = daysOf(waits(chain), samples)
    const rows = chain
      .trim()
      .split('\n')
      .map((row) => row.trim().split(' ').slice(1, 4).map(Number))
    const estimates = rows.map(([low, likely, high]) => ({ low: low!, likely: likely!, high: high! }))
    const links = rows.slice(1).map((_, at) => ({ from: at, to: at + 1, type: 'FS' as const, lag: 0 }))
    const analytic = pert(estimates, links)!
    expect(analytic.mean).toBe(44)
    expect(Math.abs(mean(days) - analytic.mean)).toBeLessThan(4 * Math.sqrt(9.2857 / samples) + rounding)
    expect(Math.abs(variance(days) / 9.285714 - 1)).toBeLessThan(4 * Math.sqrt(2 / samples))
    // The normal curve of the textbook and the sum of eight betas differ by less than a hundredth here.
    const share = days.filter((one) => one <= 47).length / samples
    expect(Math.abs(share - chanceBy(analytic, 47))).toBeLessThan(
      4 * Math.sqrt((0.84 * 0.16) / samples) + 0.01,
    )
  })

  // Source: own simulation with numpy 2.4.6, two million draws a network by numpy's own beta generator.
  it.each([
    [
      'construction',
      construction,
      44.32472,
      2.93394,
      [
        [40, 0.062603],
        [44, 0.474449],
        [47, 0.816463],
      ],
    ],
    [
      'lecture',
      lecture,
      21.177145,
      2.040856,
      [
        [20, 0.291394],
        [22, 0.661936],
        [25, 0.965398],
      ],
    ],
    [
      'paper mill',
      mill,
      15.23536,
      1.712583,
      [
        [14, 0.250364],
        [15, 0.476685],
        [16, 0.690011],
      ],
    ],
  ] as const)(
    'the %s network finishes as an independent simulation has it',
    (_, rows, middle, sd, chances) => {
      const days = daysOf(waits(rows), samples)
      expect(Math.abs(mean(days) - middle)).toBeLessThan((4 * sd) / Math.sqrt(samples) + rounding)
      expect(Math.abs(Math.sqrt(variance(days)) / sd - 1)).toBeLessThan(4 / Math.sqrt(2 * samples))
      for (const [by, chance] of chances) {
        const share = days.filter((one) => one <= by).length / samples
        expect(Math.abs(share - chance)).toBeLessThan(
          4 * Math.sqrt((chance * (1 - chance)) / samples) + 0.002,
        )
      }
    },
  )

  // Source: of two numbers with the distribution 1 - (1 - x)^5 the larger has the mean 1/3 - 1/11 (integral of 1 - F^2).
  it('waits for the longer of two: 24.24 days of 0..0..100 d twice over', () => {
    const days = daysOf(waits('A 0 0 100\n B 0 0 100'), samples)
    const own = Math.sqrt(variance(days) / samples)
    expect(Math.abs(mean(days) - 100 * (1 / 3 - 1 / 11))).toBeLessThan(4 * own + rounding)
  })

  it('has the mean of the later chain raised above the analytic one, never below it', () => {
    for (const rows of [construction, lecture, mill]) {
      const results = waits(rows)
      const planFinish =
        (results.schedule.finish - instantOf(results.project.device.start, 0)) / minutesPerDay
      const days = daysOf(results, samples)
      expect(mean(days)).toBeGreaterThan(planFinish - 4 * Math.sqrt(variance(days) / samples))
    }
  })
})

describe('samples', () => {
  it('of the same seed are the same, and of another seed are not', () => {
    const results = waits(mill)
    expect([...daysOf(results, 50, 7)]).toEqual([...daysOf(results, 50, 7)])
    expect([...daysOf(results, 50, 7)]).not.toEqual([...daysOf(results, 50, 8)])
  })

  it('that are more begin with those that are fewer', () => {
    const results = waits(mill)
    expect([...daysOf(results, 80).slice(0, 30)]).toEqual([...daysOf(results, 30)])
  })

  // Source: the standard error of a mean falls with the root of the number: 16 times as many, a quarter.
  it('that are sixteen times as many have about a quarter of the error', () => {
    const results = waits(mill)
    const error = (samples: number): number => {
      const errors = Array.from({ length: 40 }, (_, seed) => mean(daysOf(results, samples, seed)) - 15.23536)
      return Math.sqrt(mean(errors.map((one) => one * one)))
    }
    const ratio = error(640) / error(40)
    expect(ratio).toBeGreaterThan(0.25 / 1.6)
    expect(ratio).toBeLessThan(0.25 * 1.6)
  })

  it('of one thing stay as they are when another is added', () => {
    const [few, more] = [waits('A 1 2 3'), waits('A 1 2 3\n B 1 5 9')]
    const drawn = (results: Results) =>
      drawAll(results, 20, 1).inputs.find(({ of }) => of === 'work wA')!.values
    expect([...drawn(more)]).toEqual([...drawn(few)])
  })
})

describe('parcels', () => {
  // Source: scipy.stats.beta.cdf(1/3), (2/3) with shapes 7/3 and 11/3, scipy 1.17.1.
  it('of lead 2..3..5 wd come after whole days: 3 or fewer in 0.4168, 4 or fewer in 0.9185 of all', () => {
    const results = planned(
      `device: {name: parcel, qty: 1, currency: EUR, start: 2026-03-02}
people: {ana: {hours: {mon-fri: "19:00-22:00"}}}
vendors: {shop: {transit: 2 wd}}
parts: {screw: {kind: bought, qty: 1, offers: [{vendor: shop, price: 1, lead: 2..3..5 wd}]}}
`,
      { samples: 0 },
    )
    const samples = 8000
    const { values } = drawAll(results, samples, 1).inputs.find(({ kind }) => kind === 'lead')!
    expect(values.every((one) => Number.isInteger(one) && one >= 2 && one <= 5)).toBe(true)
    for (const [days, chance] of [
      [3, 0.416789799290327],
      [4, 0.9185243957319017],
    ] as const) {
      const share = values.filter((one) => one <= days).length / samples
      expect(Math.abs(share - chance)).toBeLessThan(4 * Math.sqrt((chance * (1 - chance)) / samples))
    }
  })
})

describe('counting over samples', () => {
  // Source: scipy.stats.spearmanr, scipy 1.17.1.
  it('gives the rank correlation with ties shared', () => {
    expect(rankCorrelation([1, 2, 2, 4, 5, 7, 7, 7, 9], [3, 1, 4, 4, 9, 2, 6, 5, 8])).toBeCloseTo(
      0.5428143551777773,
      12,
    )
  })

  it('takes as the 80 % point of ten values the eighth', () => {
    expect(quantile([10, 9, 8, 7, 6, 5, 4, 3, 2, 1], 0.8)).toBe(8)
    expect(quantile([3], 0.5)).toBe(3)
  })
})
