import { preferredNumber } from './preferred-number.ts'
import type { GradeAndPosition, ThreadGender } from './thread.ts'

/** A figure of the tolerance tables, in micrometres, and whether it stands there or was worked out. */
export interface TableFigure {
  readonly um: number
  readonly from: 'table' | 'formula'
}

interface PitchRow {
  readonly e: number | null
  readonly f: number | null
  readonly g: number
  /** Td of grade 6. */
  readonly major: number
  /** TD1 of grade 6; below 0.3 mm pitch only the finer grades counted from it exist. */
  readonly minor: number
}

const row = (e: number | null, f: number | null, g: number, major: number, minor: number): PitchRow => ({
  e,
  f,
  g,
  major,
  minor,
})

/**
 * By pitch in mm, in micrometres. Source: ISO 965-1 table values; g, Td and TD1 seen in reproductions or confirmed
 * by the
 * formulas of clause 13; e and f and the last rows from memory.
 */
const byPitch: ReadonlyMap<number, PitchRow> = new Map([
  [0.2, row(null, null, 17, 56, 60)],
  [0.25, row(null, null, 18, 67, 71)],
  [0.3, row(null, null, 18, 75, 85)],
  [0.35, row(null, 34, 19, 85, 100)],
  [0.4, row(null, 34, 19, 95, 112)],
  [0.45, row(null, 35, 20, 100, 125)],
  [0.5, row(50, 36, 20, 106, 140)],
  [0.6, row(53, 36, 21, 125, 160)],
  [0.7, row(56, 38, 22, 140, 180)],
  [0.75, row(56, 38, 22, 140, 190)],
  [0.8, row(60, 38, 24, 150, 200)],
  [1, row(60, 40, 26, 180, 236)],
  [1.25, row(63, 42, 28, 212, 265)],
  [1.5, row(67, 45, 32, 236, 300)],
  [1.75, row(71, 48, 34, 265, 335)],
  [2, row(71, 52, 38, 280, 375)],
  [2.5, row(80, 58, 42, 335, 450)],
  [3, row(85, 63, 48, 375, 500)],
  [3.5, row(90, 70, 53, 425, 560)],
])

/** Diameter steps of ISO 965-1, over and up to, in mm. */
const steps = [0.99, 1.4, 2.8, 5.6, 11.2, 22.4, 45, 90, 180, 355] as const

/** Td2 of grade 6 by step and pitch. Source: ISO 965-1, seen in reproductions or confirmed by clause 13. */
const pitchDiameter: readonly ReadonlyMap<number, number>[] = [
  new Map([
    [0.2, 48],
    [0.25, 53],
    [0.3, 56],
  ]),
  new Map([
    [0.2, 50],
    [0.25, 56],
    [0.35, 63],
    [0.4, 67],
    [0.45, 71],
  ]),
  new Map([
    [0.35, 67],
    [0.5, 75],
    [0.6, 85],
    [0.7, 90],
    [0.75, 90],
    [0.8, 95],
  ]),
  new Map([
    [0.75, 100],
    [1, 112],
    [1.25, 118],
    [1.5, 132],
  ]),
  new Map([
    [1, 118],
    [1.25, 132],
    [1.5, 140],
    [1.75, 150],
    [2, 160],
    [2.5, 170],
  ]),
  new Map([
    [1, 125],
    [1.5, 150],
    [2, 170],
    [3, 200],
    [3.5, 212],
  ]),
]

/** R40 steps from grade 6 of the screw: a grade is four steps, the nut's grade 6 is five steps wider. */
const externalSteps: Readonly<Record<number, number>> = { 3: -12, 4: -8, 5: -4, 6: 0, 7: 4, 8: 8, 9: 12 }
const internalSteps: Readonly<Record<number, number>> = { 4: -3, 5: 1, 6: 5, 7: 9, 8: 13 }

/** The diameter step, over and up to, that holds a diameter; `null` below 1 mm and above 355 mm. */
export function diameterStep(diameterMm: number): { readonly overMm: number; readonly toMm: number } | null {
  const at = stepOf(diameterMm)
  return at < 0 ? null : { overMm: steps[at]!, toMm: steps[at + 1]! }
}

function stepOf(diameterMm: number): number {
  return steps.findIndex((over, at) => {
    const to = steps[at + 1]
    return to !== undefined && diameterMm > over && diameterMm <= to
  })
}

/**
 * Distance of a tolerance position from the basic profile, always 0 or more: outward for nuts, inward for screws.
 * Source: ISO 965-1: g and G 15 + 11 P, f 30 + 11 P, e 50 + 11 P, h and H 0; the table goes before the formula.
 */
export function positionOffset(position: GradeAndPosition['position'], pitchMm: number): TableFigure {
  const letter = position.toLowerCase()
  if (letter === 'h') return { um: 0, from: 'table' }
  const column = letter === 'g' ? 'g' : letter === 'f' ? 'f' : 'e'
  const listed = byPitch.get(pitchMm)?.[column] ?? null
  if (listed !== null) return { um: listed, from: 'table' }
  return { um: Math.round({ e: 50, f: 30, g: 15 }[column] + 11 * pitchMm), from: 'formula' }
}

/**
 * Tolerance of the crest: d of a screw (grades 4, 6, 8), D1 of a nut (grades 4 to 8).
 * Source: ISO 965-1: Td(6) = 180 P^(2/3) - 3.15/sqrt(P); TD1(6) = 433 P - 190 P^1.22 to 0.8 mm, else 230 P^0.7.
 */
export function crestTolerance(gender: ThreadGender, grade: number, pitchMm: number): TableFigure {
  const listed = byPitch.get(pitchMm)?.[gender === 'internal' ? 'minor' : 'major']
  const six = listed ?? (gender === 'internal' ? minorByFormula(pitchMm) : majorByFormula(pitchMm))
  return { um: preferredNumber(six, externalSteps[grade] ?? 0), from: listed ? 'table' : 'formula' }
}

const majorByFormula = (pitchMm: number): number =>
  Math.max(1, 180 * pitchMm ** (2 / 3) - 3.15 / Math.sqrt(pitchMm))

const minorByFormula = (pitchMm: number): number =>
  pitchMm <= 0.8 ? 433 * pitchMm - 190 * pitchMm ** 1.22 : 230 * pitchMm ** 0.7

/**
 * Td2 of grade 6 before rounding, in micrometres: 90 P^0.4 d^0.1, d the geometric mean of the step. `null` outside
 * steps.
 */
export function pitchToleranceByFormula(diameterMm: number, pitchMm: number): number | null {
  const step = diameterStep(diameterMm)
  return step && 90 * pitchMm ** 0.4 * Math.sqrt(step.overMm * step.toMm) ** 0.1
}

/**
 * Tolerance of the pitch diameter: screws grades 3 to 9, nuts 4 to 8; `null` outside the steps.
 * Source: ISO 965-1, table before formula; factors 0.5 to 2 and 0.85 to 2.12 of grade 6 as whole steps of R40.
 */
export function pitchTolerance(
  { gender, grade }: { readonly gender: ThreadGender; readonly grade: number },
  diameterMm: number,
  pitchMm: number,
): TableFigure | null {
  const listed = pitchDiameter[stepOf(diameterMm)]?.get(pitchMm)
  const six = listed ?? pitchToleranceByFormula(diameterMm, pitchMm)
  if (six === null) return null
  const away = (gender === 'internal' ? internalSteps : externalSteps)[grade] ?? 0
  return { um: preferredNumber(six, away), from: listed ? 'table' : 'formula' }
}
