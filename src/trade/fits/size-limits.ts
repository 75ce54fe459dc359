import { plain, signed, tidyMm } from '../tolerances/tidy.ts'
import { holeDeviation, shaftDeviation } from './fundamental-deviation.ts'
import type { SizeText, ToleranceClass } from './size-text.ts'
import { toleranceGradeUm } from './tolerance-grade.ts'

/** Limits of a size; deviations in micrometres, half ones of js not rounded. */
export interface Limits {
  readonly nominalMm: number
  readonly upperUm: number
  readonly lowerUm: number
  readonly minMm: number
  readonly maxMm: number
  readonly worked: readonly string[]
}

/** No limits: the size is above 120 mm, or it has no tolerance of its own. */
export interface NoLimits {
  readonly fault: 'outside the tables' | 'no tolerance' | 'two parts'
}

/** Limits of a hole or a shaft of a tolerance class. Source: ISO 286-1 and -2. */
export function classLimits(nominalMm: number, chosen: ToleranceClass): Limits | NoLimits {
  const { letter, grade, gender } = chosen
  const hole = gender === 'hole'
  const base = (hole ? holeDeviation : shaftDeviation)(letter, { nominalMm, grade })
  const width = toleranceGradeUm(grade, nominalMm)
  if (base === null || width === null) return { fault: 'outside the tables' }
  const upperUm = base.of === 'upper' ? base.um : base.of === 'lower' ? base.um + width : width / 2
  const name = hole ? letter.toUpperCase() : letter
  const [up, down] = hole ? ['ES', 'EI'] : ['es', 'ei']
  return limitsOf(
    nominalMm,
    [tidyUm(upperUm), tidyUm(upperUm - width)],
    [
      `IT${grade} at ${plain(nominalMm)} mm = ${width} um`,
      base.of === 'middle'
        ? `${up}, ${down} = +/- IT${grade} / 2`
        : `${base.of === 'upper' ? up : down} of ${name} = ${signed(base.um)} um${base.rule ? ` (${base.rule})` : ''}`,
    ],
  )
}

/** Limits of a size as written, its own tolerance only. Needs: one part, not a fit. */
export function sizeLimits(size: SizeText): Limits | NoLimits {
  if (size.kind === 'class') return classLimits(size.nominalMm, size.class)
  if (size.kind === 'fit') return { fault: 'two parts' }
  if (size.kind === 'plain') return { fault: 'no tolerance' }
  if (size.kind === 'deviations')
    return limitsOf(size.nominalMm, [tidyUm(size.upperMm * 1000), tidyUm(size.lowerMm * 1000)], [])
  const middle = tidyMm((size.minMm + size.maxMm) / 2)
  return limitsOf(middle, [tidyUm((size.maxMm - middle) * 1000), tidyUm((size.minMm - middle) * 1000)], [])
}

function limitsOf(
  nominalMm: number,
  [upperUm, lowerUm]: readonly [number, number],
  steps: readonly string[],
): Limits {
  const [minMm, maxMm] = [tidyMm(nominalMm + lowerUm / 1000), tidyMm(nominalMm + upperUm / 1000)]
  const range = `${plain(minMm, 6)} to ${plain(maxMm, 6)} mm`
  const sum = `${plain(nominalMm, 6)} ${signed(upperUm)}/${signed(lowerUm)} um: ${range}`
  return { nominalMm, upperUm, lowerUm, minMm, maxMm, worked: [...steps, sum] }
}

const tidyUm = (um: number): number => Math.round(um * 1e4) / 1e4 + 0
