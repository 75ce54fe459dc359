import { plain, tidyMm } from '../tolerances/tidy.ts'
import { basicProfile } from './basic-profile.ts'
import type { SizeLimits, ThreadLimits } from './limits-of-size.ts'
import type { Thread, UnifiedThreadClass } from './thread.ts'

/** Limits of a unified thread in inches, to 0.0001 (hole sizes from #6 up to 0.001, as charts print them). */
export interface InchLimits {
  readonly majorIn: readonly [min: number | null, max: number | null]
  readonly pitchIn: readonly [min: number, max: number]
  readonly minorIn: readonly [min: number | null, max: number | null]
  readonly worked: readonly string[]
}

type Limits = Pick<ThreadLimits, 'major' | 'pitch' | 'minor' | 'from' | 'worked'>

/** Tolerance factors by closeness: of pitch diameter outside and inside, and of the major diameter outside. */
const factors = {
  1: { outside: 1.5, inside: 1.95, major: 0.09, allowance: 0.3 },
  2: { outside: 1, inside: 1.3, major: 0.06, allowance: 0.3 },
  3: { outside: 0.75, inside: 0.975, major: 0.06, allowance: 0 },
} as const

/**
 * Limits of a unified thread in inches.
 * Source: ASME B1.1 formulas, from memory: Td2 = 0.0015 D^(1/3) + 0.0015 Le^(1/2) + 0.015 p^(2/3) with Le = D;
 * allowance
 * 0.3 Td2; major 0.060 p^(2/3). They reproduce the printed 2A and 2B columns from #0 to 1/4.
 */
export function inchLimits(majorIn: number, threadsPerInch: number, chosen: UnifiedThreadClass): InchLimits {
  const p = 1 / threadsPerInch
  const factor = factors[chosen.closeness]
  const basic = basicProfile({ majorMm: majorIn, pitchMm: p })
  const width = 0.0015 * Math.cbrt(majorIn) + 0.0015 * Math.sqrt(majorIn) + 0.015 * p ** (2 / 3)
  const pitchBasic = basic.pitchDiameterMm
  const sizes = `(D ${plain(majorIn, 4)}, p 1/${threadsPerInch})`
  const head = `0.0015 D^(1/3) + 0.0015 D^(1/2) + 0.015 p^(2/3) = ${plain(width, 5)} in = Td2 of 2A ${sizes}`
  if (chosen.gender === 'external') {
    const allowance = round(factor.allowance * width, 4)
    const top = majorIn - allowance
    return {
      majorIn: [round(top - factor.major * p ** (2 / 3), 4), round(top, 4)],
      pitchIn: [round(pitchBasic - allowance - factor.outside * width, 4), round(pitchBasic - allowance, 4)],
      minorIn: [null, round(basic.minorDiameterMm - allowance, 4)],
      worked: [head, `allowance = ${factor.allowance} Td2 = ${allowance} in`],
    }
  }
  const digits = majorIn >= 0.138 ? 3 : 4
  const minor = basic.minorDiameterMm
  const minorWidth = holeTolerance(majorIn, p, chosen.closeness)
  return {
    majorIn: [round(majorIn, 4), null],
    pitchIn: [round(pitchBasic, 4), round(pitchBasic + factor.inside * width, 4)],
    minorIn: [round(minor, digits), round(minor + minorWidth, digits)],
    worked: [head, `minor tolerance = ${plain(minorWidth, 4)} in`],
  }
}

/**
 * Tolerance of the hole a nut thread is cut in, inches. Source: ASME B1.1 formulas for classes 1B, 2B and 3B, from
 * memory;
 * 2B reproduces the printed column from #0 to 1/4.
 */
function holeTolerance(majorIn: number, p: number, closeness: 1 | 2 | 3): number {
  const small = 0.05 * p ** (2 / 3) + (0.03 * p) / majorIn - 0.002
  const least = closeness === 3 ? closeLeast(p) : 0.25 * p - 0.4 * p * p
  if (closeness !== 3 && majorIn >= 0.25) return p > 0.25 ? 0.15 * p : least
  return Math.min(Math.max(small, least), 0.394 * p)
}

const closeLeast = (p: number): number => (p <= 1 / 12.5 ? 0.23 * p - 1.5 * p * p : 0.12 * p)

/** Limits of a unified thread in millimetres; `null` where its tolerances leave no thread. */
export function unifiedLimits(thread: Thread, chosen: UnifiedThreadClass): Limits | null {
  if (thread.threadsPerInch === null) return null
  const inch = inchLimits(thread.majorMm / 25.4, thread.threadsPerInch, chosen)
  return {
    major: inMm(inch.majorIn),
    pitch: inMm(inch.pitchIn),
    minor: inMm(inch.minorIn),
    from: 'formula',
    worked: inch.worked,
  }
}

const inMm = ([min, max]: readonly [number | null, number | null]): SizeLimits => ({
  minMm: min === null ? null : tidyMm(min * 25.4),
  maxMm: max === null ? null : tidyMm(max * 25.4),
})

const round = (value: number, digits: number): number => Number((value + 1e-12).toFixed(digits))
