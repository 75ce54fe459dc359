/** Upper ends of the size steps to 120 mm. */
const stepEnds = [3, 6, 10, 18, 30, 50, 80, 120] as const

/**
 * IT1 to IT11 by size step, micrometres.
 * Source: ISO 286-1; IT4 to IT11 read in reproductions, IT1 to IT3 from memory.
 */
const grades: readonly (readonly number[])[] = [
  [0.8, 1, 1, 1.2, 1.5, 1.5, 2, 2.5],
  [1.2, 1.5, 1.5, 2, 2.5, 2.5, 3, 4],
  [2, 2.5, 2.5, 3, 4, 4, 5, 6],
  [3, 4, 4, 5, 6, 7, 8, 10],
  [4, 5, 6, 8, 9, 11, 13, 15],
  [6, 8, 9, 11, 13, 16, 19, 22],
  [10, 12, 15, 18, 21, 25, 30, 35],
  [14, 18, 22, 27, 33, 39, 46, 54],
  [25, 30, 36, 43, 52, 62, 74, 87],
  [40, 48, 58, 70, 84, 100, 120, 140],
  [60, 75, 90, 110, 130, 160, 190, 220],
]

/** Largest size of the tables. */
export const largestSizeMm = 120

/** Place of the size step that holds a size, its upper end included; -1 where none does. */
export function sizeStep(nominalMm: number): number {
  return nominalMm > 0 ? stepEnds.findIndex((end) => nominalMm <= end) : -1
}

/**
 * Width of a standard tolerance grade, IT1 to IT18, in micrometres; `null` outside these grades and above 120 mm.
 * Source: ISO 286-1; from IT12 on ten times the grade five below.
 */
export function toleranceGradeUm(grade: number, nominalMm: number): number | null {
  const step = sizeStep(nominalMm)
  if (step < 0 || !Number.isInteger(grade) || grade < 1 || grade > 18) return null
  if (grade <= 11) return grades[grade - 1]![step]!
  const tens = Math.ceil((grade - 11) / 5)
  return grades[grade - 5 * tens - 1]![step]! * 10 ** tens
}

/** Factors of the tolerance unit from IT5 to IT11. */
const unitFactors: Readonly<Record<number, number>> = { 5: 7, 6: 10, 7: 16, 8: 25, 9: 40, 10: 64, 11: 100 }

/**
 * Width of IT5 to IT11 by the formula behind the table, before rounding: a test of the table, not a tolerance to use.
 * Source: ISO 286-1: i = 0.45 D^(1/3) + 0.001 D, D the geometric mean of the step; IT5 7 i to IT11 100 i.
 */
export function gradeByFormulaUm(grade: number, nominalMm: number): number | null {
  const mean = stepMeanMm(nominalMm)
  const factor = unitFactors[grade]
  if (mean === null || factor === undefined) return null
  return factor * (0.45 * Math.cbrt(mean) + 0.001 * mean)
}

/** Geometric mean of the step that holds a size; of the first step between 1 and 3. */
export function stepMeanMm(nominalMm: number): number | null {
  const step = sizeStep(nominalMm)
  return step < 0 ? null : Math.sqrt((step === 0 ? 1 : stepEnds[step - 1]!) * stepEnds[step]!)
}

/** The coarsest grade that lies within a tolerance: what the tolerance asks for. `null` where it is finer than IT1. */
export function gradeWithin(widthUm: number, nominalMm: number): number | null {
  const fitting = Array.from({ length: 18 }, (_, at) => at + 1).filter((grade) => {
    const width = toleranceGradeUm(grade, nominalMm)
    return width !== null && width <= widthUm + 1e-9
  })
  return fitting.at(-1) ?? null
}
