import { describe, expect, it } from 'vitest'
import { namedFit } from '../../src/trade/fits/fit.ts'
import {
  deltaUm,
  deviationByFormulaUm,
  type ShaftLetter,
  shaftDeviation,
} from '../../src/trade/fits/fundamental-deviation.ts'
import { readSize } from '../../src/trade/fits/read-size.ts'
import { type Limits, sizeLimits } from '../../src/trade/fits/size-limits.ts'
import { gradeByFormulaUm, stepMeanMm, toleranceGradeUm } from '../../src/trade/fits/tolerance-grade.ts'

function limits(text: string): Limits {
  const read = readSize(text)
  if ('fault' in read) throw new Error(JSON.stringify(read))
  const found = sizeLimits(read)
  if ('fault' in found) throw new Error(found.fault)
  return found
}

function namedFitOf(text: string) {
  const read = readSize(text)
  if ('fault' in read || read.kind !== 'fit') throw new Error(JSON.stringify(read))
  const found = namedFit(read)
  if ('fault' in found) throw new Error(found.fault)
  return found
}

const deviations = (text: string): [number, number] => {
  const { upperUm, lowerUm } = limits(text)
  return [upperUm, lowerUm]
}

describe('standard tolerances', () => {
  // Source: tool makers' reproductions of ISO 286-1 and an open transcription of IS 919-2, IT4 to IT11.
  it.each([
    [3, [3, 4, 6, 10, 14, 25, 40, 60]],
    [6, [4, 5, 8, 12, 18, 30, 48, 75]],
    [10, [4, 6, 9, 15, 22, 36, 58, 90]],
    [18, [5, 8, 11, 18, 27, 43, 70, 110]],
    [30, [6, 9, 13, 21, 33, 52, 84, 130]],
    [50, [7, 11, 16, 25, 39, 62, 100, 160]],
    [80, [8, 13, 19, 30, 46, 74, 120, 190]],
    [120, [10, 15, 22, 35, 54, 87, 140, 220]],
  ])('to %s mm run %j from IT4 to IT11', (size, widths) => {
    expect(widths.map((_, at) => toleranceGradeUm(at + 4, size))).toEqual(widths)
  })

  // Source: computed from i = 0.45 D^(1/3) + 0.001 D (ISO 286-1); D and i as printed with it.
  it.each([
    [3, 1.732, [3.8, 5.4, 8.7, 13.6, 21.7, 34.7, 54.2]],
    [6, 4.243, [5.1, 7.3, 11.7, 18.3, 29.3, 46.9, 73.3]],
    [10, 7.746, [6.3, 9.0, 14.4, 22.5, 35.9, 57.5, 89.8]],
    [18, 13.416, [7.6, 10.8, 17.3, 27.1, 43.3, 69.3, 108.3]],
    [30, 23.238, [9.2, 13.1, 20.9, 32.7, 52.3, 83.7, 130.7]],
    [50, 38.73, [10.9, 15.6, 25.0, 39.0, 62.4, 99.9, 156.1]],
    [80, 63.246, [13.0, 18.6, 29.7, 46.4, 74.2, 118.8, 185.6]],
    [120, 97.98, [15.2, 21.7, 34.8, 54.3, 86.9, 139.0, 217.3]],
  ])('to %s mm, mean %s, come from the formula as %j from IT5 to IT11', (size, mean, widths) => {
    expect(stepMeanMm(size)).toBeCloseTo(mean, 3)
    for (const [at, width] of widths.entries()) {
      expect(Math.abs(gradeByFormulaUm(at + 5, size)! - width)).toBeLessThan(0.06)
      const table = toleranceGradeUm(at + 5, size)!
      const allowed = size === 3 ? 0.15 * table : at <= 4 ? 1 : 0.05 * table
      expect(Math.abs(table - width)).toBeLessThanOrEqual(allowed)
    }
  })

  it('belong to the step whose upper end they are (F-11)', () => {
    expect([18, 18.001, 30, 30.001, 50].map((size) => toleranceGradeUm(7, size))).toEqual([
      18, 21, 21, 25, 25,
    ])
  })

  // Source: ISO 286-1 table, from memory.
  it.each([
    [1, [0.8, 1, 1, 1.2, 1.5, 1.5, 2, 2.5]],
    [2, [1.2, 1.5, 1.5, 2, 2.5, 2.5, 3, 4]],
    [3, [2, 2.5, 2.5, 3, 4, 4, 5, 6]],
  ])('IT%s is %j by size', (grade, widths) => {
    expect([3, 6, 10, 18, 30, 50, 80, 120].map((size) => toleranceGradeUm(grade, size))).toEqual(widths)
  })

  it('from IT12 on are ten times those five grades below', () => {
    // Source: ISO 286-1 table of 18 to 30 mm, from memory.
    const widths = [210, 330, 520, 840, 1300, 2100, 3300]
    expect(widths.map((_, at) => toleranceGradeUm(at + 12, 25))).toEqual(widths)
  })
})

describe('fundamental deviations of shafts', () => {
  // Source: Narayana, Machine Drawing, table 15.1, and JIS B 0401 in a tooling reference; k above 80 mm from memory.
  it.each([
    [3, [-20, -14, -6, -2, 0, 0, 2, 4, 6, 10, 14]],
    [6, [-30, -20, -10, -4, 0, 1, 4, 8, 12, 15, 19]],
    [10, [-40, -25, -13, -5, 0, 1, 6, 10, 15, 19, 23]],
    [18, [-50, -32, -16, -6, 0, 1, 7, 12, 18, 23, 28]],
    [30, [-65, -40, -20, -7, 0, 2, 8, 15, 22, 28, 35]],
    [50, [-80, -50, -25, -9, 0, 2, 9, 17, 26, 34, 43]],
    [65, [-100, -60, -30, -10, 0, 2, 11, 20, 32, 41, 53]],
    [80, [-100, -60, -30, -10, 0, 2, 11, 20, 32, 43, 59]],
    [100, [-120, -72, -36, -12, 0, 3, 13, 23, 37, 51, 71]],
    [120, [-120, -72, -36, -12, 0, 3, 13, 23, 37, 54, 79]],
  ])('to %s mm are %j from d to s', (size, values) => {
    const letters: ShaftLetter[] = ['d', 'e', 'f', 'g', 'h', 'k', 'm', 'n', 'p', 'r', 's']
    expect(letters.map((letter) => shaftDeviation(letter, { nominalMm: size, grade: 6 })?.um)).toEqual(values)
  })

  it('follow the formulas of the standard to 1 um over 3 mm (k to its own rounding)', () => {
    // Source: the formulas of ISO 286-1 printed in the same textbook.
    for (const size of [6, 10, 18, 30, 50, 80, 120])
      for (const letter of ['e', 'f', 'g', 'h', 'm', 'n', 'k'] as const) {
        const table = shaftDeviation(letter, { nominalMm: size, grade: 6 })!.um
        expect(Math.abs(table - deviationByFormulaUm(letter, size)!)).toBeLessThanOrEqual(1)
      }
  })

  it('of r are the mean of those of p and s', () => {
    // Source: r = sqrt(p s), the same textbook.
    for (const size of [6, 10, 18, 30, 50, 65, 80, 100, 120]) {
      const of = (letter: ShaftLetter): number => shaftDeviation(letter, { nominalMm: size, grade: 6 })!.um
      expect(Math.abs(of('r') - Math.sqrt(of('p') * of('s')))).toBeLessThanOrEqual(1)
    }
  })
})

describe('the delta rule', () => {
  // Source: computed from the grades.
  it.each([
    [3, [0, 0, 0, 0]],
    [6, [1, 3, 4, 6]],
    [10, [2, 3, 6, 7]],
    [18, [3, 3, 7, 9]],
    [30, [3, 4, 8, 12]],
    [50, [4, 5, 9, 14]],
    [80, [5, 6, 11, 16]],
    [120, [5, 7, 13, 19]],
  ])('to %s mm adds %j from IT5 to IT8', (size, deltas) => {
    expect([5, 6, 7, 8].map((grade) => deltaUm({ nominalMm: size, grade }))).toEqual(deltas)
  })

  it('holds to IT7 for P and no further (F-13)', () => {
    expect(deviations('40 P7')).toEqual([-17, -42])
    expect(deviations('40 P8')).toEqual([-26, -65])
  })

  it('makes H7/p6 and P7/h6 overlap alike', () => {
    for (const size of [5, 8, 12, 25, 40, 60, 100]) {
      const [a, b] = [namedFitOf(`${size} H7/p6`), namedFitOf(`${size} P7/h6`)]
      expect(a.smallestClearanceUm).toBe(b.smallestClearanceUm)
      expect(a.largestClearanceUm).toBe(b.largestClearanceUm)
    }
  })
})

describe('holes from F7 to JS7', () => {
  // Source: DIN ISO 286 extract (F7, G6, G7, H7 to H11); F8, H6 and JS7 computed.
  const classes = ['F7', 'F8', 'G6', 'G7', 'H6', 'H7', 'H8', 'H9', 'H11', 'JS7']

  it.each([
    [
      3,
      [
        [16, 6],
        [20, 6],
        [8, 2],
        [12, 2],
        [6, 0],
        [10, 0],
        [14, 0],
        [25, 0],
        [60, 0],
        [5, -5],
      ],
    ],
    [
      6,
      [
        [22, 10],
        [28, 10],
        [12, 4],
        [16, 4],
        [8, 0],
        [12, 0],
        [18, 0],
        [30, 0],
        [75, 0],
        [6, -6],
      ],
    ],
    [
      10,
      [
        [28, 13],
        [35, 13],
        [14, 5],
        [20, 5],
        [9, 0],
        [15, 0],
        [22, 0],
        [36, 0],
        [90, 0],
        [7.5, -7.5],
      ],
    ],
    [
      18,
      [
        [34, 16],
        [43, 16],
        [17, 6],
        [24, 6],
        [11, 0],
        [18, 0],
        [27, 0],
        [43, 0],
        [110, 0],
        [9, -9],
      ],
    ],
    [
      30,
      [
        [41, 20],
        [53, 20],
        [20, 7],
        [28, 7],
        [13, 0],
        [21, 0],
        [33, 0],
        [52, 0],
        [130, 0],
        [10.5, -10.5],
      ],
    ],
    [
      50,
      [
        [50, 25],
        [64, 25],
        [25, 9],
        [34, 9],
        [16, 0],
        [25, 0],
        [39, 0],
        [62, 0],
        [160, 0],
        [12.5, -12.5],
      ],
    ],
    [
      80,
      [
        [60, 30],
        [76, 30],
        [29, 10],
        [40, 10],
        [19, 0],
        [30, 0],
        [46, 0],
        [74, 0],
        [190, 0],
        [15, -15],
      ],
    ],
    [
      120,
      [
        [71, 36],
        [90, 36],
        [34, 12],
        [47, 12],
        [22, 0],
        [35, 0],
        [54, 0],
        [87, 0],
        [220, 0],
        [17.5, -17.5],
      ],
    ],
  ])('to %s mm are %j', (size, wanted) => {
    expect(classes.map((name) => deviations(`${size} ${name}`))).toEqual(wanted)
  })
})

describe('holes from K6 to P7', () => {
  // Source: metric tolerance tables of a mould base catalogue (K6 to N8) and the DIN ISO 286 extract (N9); P7 computed.
  const classes = ['K6', 'K7', 'K8', 'M6', 'M7', 'M8', 'N6', 'N7', 'N8', 'N9', 'P7']

  it.each([
    [
      3,
      [
        [0, -6],
        [0, -10],
        [0, -14],
        [-2, -8],
        [-2, -12],
        [-2, -16],
        [-4, -10],
        [-4, -14],
        [-4, -18],
        [-4, -29],
        [-6, -16],
      ],
    ],
    [
      6,
      [
        [2, -6],
        [3, -9],
        [5, -13],
        [-1, -9],
        [0, -12],
        [2, -16],
        [-5, -13],
        [-4, -16],
        [-2, -20],
        [0, -30],
        [-8, -20],
      ],
    ],
    [
      10,
      [
        [2, -7],
        [5, -10],
        [6, -16],
        [-3, -12],
        [0, -15],
        [1, -21],
        [-7, -16],
        [-4, -19],
        [-3, -25],
        [0, -36],
        [-9, -24],
      ],
    ],
    [
      18,
      [
        [2, -9],
        [6, -12],
        [8, -19],
        [-4, -15],
        [0, -18],
        [2, -25],
        [-9, -20],
        [-5, -23],
        [-3, -30],
        [0, -43],
        [-11, -29],
      ],
    ],
    [
      30,
      [
        [2, -11],
        [6, -15],
        [10, -23],
        [-4, -17],
        [0, -21],
        [4, -29],
        [-11, -24],
        [-7, -28],
        [-3, -36],
        [0, -52],
        [-14, -35],
      ],
    ],
    [
      50,
      [
        [3, -13],
        [7, -18],
        [12, -27],
        [-4, -20],
        [0, -25],
        [5, -34],
        [-12, -28],
        [-8, -33],
        [-3, -42],
        [0, -62],
        [-17, -42],
      ],
    ],
    [
      80,
      [
        [4, -15],
        [9, -21],
        [14, -32],
        [-5, -24],
        [0, -30],
        [5, -41],
        [-14, -33],
        [-9, -39],
        [-4, -50],
        [0, -74],
        [-21, -51],
      ],
    ],
    [
      120,
      [
        [4, -18],
        [10, -25],
        [16, -38],
        [-6, -28],
        [0, -35],
        [6, -48],
        [-16, -38],
        [-10, -45],
        [-4, -58],
        [0, -87],
        [-24, -59],
      ],
    ],
  ])('to %s mm are %j', (size, wanted) => {
    expect(classes.map((name) => deviations(`${size} ${name}`))).toEqual(wanted)
  })
})

describe('shafts from e8 to s6', () => {
  // Source: JIS B 0401 in a tooling reference to 80 mm; above it a table of ISO 286-2 for e8 to h9, the rest computed.
  const classes = ['e8', 'f7', 'g6', 'h6', 'h7', 'h9', 'js6', 'k6', 'm6', 'n6', 'p6', 'r6', 's6']

  it.each([
    [
      3,
      [
        [-14, -28],
        [-6, -16],
        [-2, -8],
        [0, -6],
        [0, -10],
        [0, -25],
        [3, -3],
        [6, 0],
        [8, 2],
        [10, 4],
        [12, 6],
        [16, 10],
        [20, 14],
      ],
    ],
    [
      6,
      [
        [-20, -38],
        [-10, -22],
        [-4, -12],
        [0, -8],
        [0, -12],
        [0, -30],
        [4, -4],
        [9, 1],
        [12, 4],
        [16, 8],
        [20, 12],
        [23, 15],
        [27, 19],
      ],
    ],
    [
      10,
      [
        [-25, -47],
        [-13, -28],
        [-5, -14],
        [0, -9],
        [0, -15],
        [0, -36],
        [4.5, -4.5],
        [10, 1],
        [15, 6],
        [19, 10],
        [24, 15],
        [28, 19],
        [32, 23],
      ],
    ],
    [
      18,
      [
        [-32, -59],
        [-16, -34],
        [-6, -17],
        [0, -11],
        [0, -18],
        [0, -43],
        [5.5, -5.5],
        [12, 1],
        [18, 7],
        [23, 12],
        [29, 18],
        [34, 23],
        [39, 28],
      ],
    ],
    [
      30,
      [
        [-40, -73],
        [-20, -41],
        [-7, -20],
        [0, -13],
        [0, -21],
        [0, -52],
        [6.5, -6.5],
        [15, 2],
        [21, 8],
        [28, 15],
        [35, 22],
        [41, 28],
        [48, 35],
      ],
    ],
    [
      50,
      [
        [-50, -89],
        [-25, -50],
        [-9, -25],
        [0, -16],
        [0, -25],
        [0, -62],
        [8, -8],
        [18, 2],
        [25, 9],
        [33, 17],
        [42, 26],
        [50, 34],
        [59, 43],
      ],
    ],
    [
      65,
      [
        [-60, -106],
        [-30, -60],
        [-10, -29],
        [0, -19],
        [0, -30],
        [0, -74],
        [9.5, -9.5],
        [21, 2],
        [30, 11],
        [39, 20],
        [51, 32],
        [60, 41],
        [72, 53],
      ],
    ],
    [
      80,
      [
        [-60, -106],
        [-30, -60],
        [-10, -29],
        [0, -19],
        [0, -30],
        [0, -74],
        [9.5, -9.5],
        [21, 2],
        [30, 11],
        [39, 20],
        [51, 32],
        [62, 43],
        [78, 59],
      ],
    ],
    [
      100,
      [
        [-72, -126],
        [-36, -71],
        [-12, -34],
        [0, -22],
        [0, -35],
        [0, -87],
        [11, -11],
        [25, 3],
        [35, 13],
        [45, 23],
        [59, 37],
        [73, 51],
        [93, 71],
      ],
    ],
    [
      120,
      [
        [-72, -126],
        [-36, -71],
        [-12, -34],
        [0, -22],
        [0, -35],
        [0, -87],
        [11, -11],
        [25, 3],
        [35, 13],
        [45, 23],
        [59, 37],
        [76, 54],
        [101, 79],
      ],
    ],
  ])('to %s mm are %j', (size, wanted) => {
    expect(classes.map((name) => deviations(`${size} ${name}`))).toEqual(wanted)
  })
})

describe('fits', () => {
  // Source: F-01 to F-10, limits from JIS B 0401, DIN ISO 286 and the mould base catalogue.
  it.each([
    ['25 H7/g6', [21, 0], [-7, -20], 41, 7, 'clearance'],
    ['25 H7/p6', [21, 0], [35, 22], -1, -35, 'interference'],
    ['10 H7/f7', [15, 0], [-13, -28], 43, 13, 'clearance'],
    ['6 H7/m6', [12, 0], [12, 4], 8, -12, 'transition'],
    ['20 H7/k6', [21, 0], [15, 2], 19, -15, 'transition'],
    ['30 H7/s6', [21, 0], [48, 35], -14, -48, 'interference'],
    ['12 N7/h6', [-5, -23], [0, -11], 6, -23, 'transition'],
    ['8 K7/h6', [5, -10], [0, -9], 14, -10, 'transition'],
    ['3 H7/g6', [10, 0], [-2, -8], 18, 2, 'clearance'],
  ] as const)('%s: hole %j, shaft %j, from %s to %s um, %s', (text, hole, shaft, most, least, kind) => {
    const found = namedFitOf(text)
    expect([found.hole.upperUm, found.hole.lowerUm]).toEqual(hole)
    expect([found.shaft.upperUm, found.shaft.lowerUm]).toEqual(shaft)
    expect(found).toMatchObject({ largestClearanceUm: most, smallestClearanceUm: least, kind })
  })

  it('64 H8/f7 by formula and by table is the solved textbook problem (F-06)', () => {
    // Source: a published solved problem; it prints i = 1.859, recomputed here as 1.856.
    expect(stepMeanMm(64)).toBeCloseTo(63.246, 3)
    expect(gradeByFormulaUm(8, 64)).toBeCloseTo(46.4, 1)
    expect(gradeByFormulaUm(7, 64)).toBeCloseTo(29.7, 1)
    expect(deviationByFormulaUm('f', 64)).toBeCloseTo(-30.1, 1)
    const found = namedFitOf('64 H8/f7')
    expect([found.hole.upperUm, found.hole.lowerUm]).toEqual([46, 0])
    expect([found.shaft.upperUm, found.shaft.lowerUm]).toEqual([-30, -60])
    expect(found.smallestClearanceUm).toBe(30)
  })

  it('25 js6 and 25 JS7 show half micrometres unrounded (F-12)', () => {
    expect(deviations('25 js6')).toEqual([6.5, -6.5])
    expect(deviations('25 JS7')).toEqual([10.5, -10.5])
  })

  it('25 H7/g6 has these limits of size (F-14)', () => {
    const { hole, shaft } = namedFitOf('25 H7/g6')
    expect([hole.maxMm, hole.minMm]).toEqual([25.021, 25])
    expect([shaft.maxMm, shaft.minMm]).toEqual([24.993, 24.98])
  })

  it('100 E8 ends at +126 um', () => {
    // Source: ISO 286-2:1988 Technical Corrigendum 1 (2006).
    expect(deviations('100 E8')[0]).toBe(126)
  })

  it('80 M9 and 80 K9 follow the rules above IT8', () => {
    // Source: ISO 286-1 rules as transcribed: no delta above IT8; K above IT8 has ES 0.
    expect(deviations('80 M9')[0]).toBe(-11)
    expect(deviations('80 K9')[0]).toBe(0)
    expect(deviations('80 k8')[1]).toBe(0)
  })
})
