import { sizeStep, stepMeanMm, toleranceGradeUm } from './tolerance-grade.ts'

/** Positions held here, of shafts; holes have the same letters in capitals. */
export const shaftLetters = ['d', 'e', 'f', 'g', 'h', 'js', 'k', 'm', 'n', 'p', 'r', 's'] as const

/** Position of a tolerance beside the nominal size, as of a shaft. */
export type ShaftLetter = (typeof shaftLetters)[number]

/** es of d to g, and ei of m to p, by size step. Source: ISO 286-1, read in a textbook and three reproductions. */
const byStep = {
  d: [-20, -30, -40, -50, -65, -80, -100, -120],
  e: [-14, -20, -25, -32, -40, -50, -60, -72],
  f: [-6, -10, -13, -16, -20, -25, -30, -36],
  g: [-2, -4, -5, -6, -7, -9, -10, -12],
  h: [0, 0, 0, 0, 0, 0, 0, 0],
  k: [0, 1, 1, 1, 2, 2, 2, 3],
  m: [2, 4, 6, 7, 8, 9, 11, 13],
  n: [4, 8, 10, 12, 15, 17, 20, 23],
  p: [6, 12, 15, 18, 22, 26, 32, 37],
} as const

/** ei of r and s, whose steps are halved at 65 and 100 mm. Source: as above. */
const fineEnds = [3, 6, 10, 18, 30, 50, 65, 80, 100, 120] as const
const byFineStep = {
  r: [10, 15, 19, 23, 28, 34, 41, 43, 51, 54],
  s: [14, 19, 23, 28, 35, 43, 53, 59, 71, 79],
} as const

/** Which deviation a position fixes, and its value in micrometres. */
export interface FundamentalDeviation {
  readonly of: 'upper' | 'lower' | 'middle'
  readonly um: number
  /** How a hole's value comes from the shaft's; `null` for shafts. */
  readonly rule: string | null
}

/** Needs: a size above 0 and up to 120 mm, a grade from 1 to 18; otherwise `null`. */
type Asked = { readonly nominalMm: number; readonly grade: number }

/**
 * Fundamental deviation of a shaft: es of d to h, ei of k to s, the middle of js.
 * Source: ISO 286-1; k is 0 finer than IT4 and coarser than IT7; k above 80 mm from memory.
 */
export function shaftDeviation(
  letter: ShaftLetter,
  { nominalMm, grade }: Asked,
): FundamentalDeviation | null {
  const step = sizeStep(nominalMm)
  if (step < 0 || toleranceGradeUm(grade, nominalMm) === null) return null
  if (letter === 'js') return { of: 'middle', um: 0, rule: null }
  if (letter === 'r' || letter === 's') {
    const fine = fineEnds.findIndex((end) => nominalMm <= end)
    return { of: 'lower', um: byFineStep[letter][fine]!, rule: null }
  }
  if (letter === 'k' && (grade < 4 || grade > 7)) return { of: 'lower', um: 0, rule: null }
  return { of: 'defgh'.includes(letter) ? 'upper' : 'lower', um: byStep[letter][step]!, rule: null }
}

/**
 * Fundamental deviation of a hole: EI of D to H, ES of K to S, the middle of JS.
 * Source: ISO 286-1: EI = -es; over 3 mm K, M, N to IT8 and P to S to IT7 get delta = ITn - IT(n-1); N above IT8 is 0.
 */
export function holeDeviation(letter: ShaftLetter, asked: Asked): FundamentalDeviation | null {
  const shaft = shaftDeviation(letter, { ...asked, grade: letter === 'k' ? 6 : asked.grade })
  if (shaft === null || toleranceGradeUm(asked.grade, asked.nominalMm) === null) return null
  if (shaft.of === 'middle') return shaft
  if (shaft.of === 'upper') return { of: 'lower', um: -shaft.um + 0, rule: 'EI = -es' }
  const { nominalMm, grade } = asked
  const inner = letter === 'k' || letter === 'm' || letter === 'n'
  if (inner && grade > 8 && letter !== 'm' && !(letter === 'n' && nominalMm <= 3))
    return { of: 'upper', um: 0, rule: 'ES = 0 above IT8' }
  const delta = nominalMm > 3 && grade <= (inner ? 8 : 7) ? deltaUm(asked) : 0
  const rule = delta === 0 ? 'ES = -ei' : `ES = -ei + delta, delta = IT${grade} - IT${grade - 1} = ${delta}`
  return { of: 'upper', um: -shaft.um + delta + 0, rule }
}

/** What holes gain so that H7/p6 and P7/h6 fit alike; 0 where there is no finer grade. */
export function deltaUm({ nominalMm, grade }: Asked): number {
  const [own, finer] = [toleranceGradeUm(grade, nominalMm), toleranceGradeUm(grade - 1, nominalMm)]
  return own === null || finer === null || nominalMm <= 3 ? 0 : Math.round((own - finer) * 10) / 10
}

/**
 * A deviation by the formula behind the table, before rounding: a test of the table. `null` for p and s, whose formulas
 * leave a whole number open, and for js.
 * Source: ISO 286-1 formulas, read in a textbook.
 */
export function deviationByFormulaUm(letter: ShaftLetter, nominalMm: number): number | null {
  const mean = stepMeanMm(nominalMm)
  if (mean === null) return null
  const it = (grade: number): number => toleranceGradeUm(grade, nominalMm)!
  const formulas: Partial<Record<ShaftLetter, number>> = {
    d: -16 * mean ** 0.44,
    e: -11 * mean ** 0.41,
    f: -5.5 * mean ** 0.41,
    g: -2.5 * mean ** 0.34,
    h: 0,
    k: 0.6 * Math.cbrt(mean),
    m: it(7) - it(6),
    n: 5 * mean ** 0.34,
  }
  return formulas[letter] ?? null
}
