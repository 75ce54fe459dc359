import { toleranceGradeUm } from '../fits/tolerance-grade.ts'
import { notPositive, type OutOfDomain } from './domain.ts'
import { plain } from './tidy.ts'

/** What a process usually holds: by grade, where size counts, or by a width, where the machine counts. */
export type ProcessReach =
  | {
      readonly name: string
      readonly by: 'grade'
      /** Finest grade that care brings, and the one to expect. */
      readonly finest: number
      readonly usual: number
      readonly source: string
    }
  | {
      readonly name: string
      readonly by: 'width'
      /** Plus-minus: finest that care brings, and the one to expect. */
      readonly finestMm: number
      readonly usualMm: number
      readonly source: string
    }

const grade = (name: string, [finest, usual]: readonly [number, number], source: string): ProcessReach => ({
  ...{ name, by: 'grade', finest, usual, source },
})

const width = (
  name: string,
  [finestMm, usualMm]: readonly [number, number],
  source: string,
): ProcessReach => ({
  ...{ name, by: 'width', finestMm, usualMm, source },
})

const book = 'Narayana, Machine Drawing, figure 15.2'
const chart = 'public chart of grades by process, position of its bars from memory'
const bureau = 'tables of service bureaus'
const trade = 'common practice, no source'

/** What processes usually hold. Shops differ: measure yours, and put its own figure first. */
export const processReaches: readonly ProcessReach[] = [
  grade('lap', [4, 5], `${book}; ${chart}`),
  grade('hone', [4, 5], `${book}; ${chart}`),
  grade('grind round', [5, 6], `${book}; ${chart}`),
  grade('grind flat', [5, 8], chart),
  grade('ream', [6, 8], `${book}; ${chart}`),
  grade('turn', [7, 8], book),
  grade('bore', [8, 9], `${chart}; usual grade ${trade}`),
  grade('mill', [10, 10], book),
  grade('drill', [10, 11], `${book}; ${chart}`),
  grade('press form', [13, 13], book),
  grade('die cast', [14, 14], book),
  grade('mould', [14, 14], book),
  grade('sand cast', [16, 16], book),
  grade('flame cut', [16, 16], book),
  width('mill on a small machine', [0.05, 0.1], trade),
  width('filament print', [0.2, 0.5], bureau),
  width('vat print', [0.1, 0.25], bureau),
  width('laser cut', [0.1, 0.1], bureau),
  width('route a board outline', [0.1, 0.2], trade),
  width('place a board hole', [0.05, 0.1], trade),
  width('saw', [0.5, 1], trade),
]

/** How a tolerance stands to what a process holds. */
export interface ReachVerdict {
  readonly verdict: 'usual' | 'with care' | 'tighter than usual'
  /** Full widths, in micrometres. */
  readonly askedUm: number
  readonly finestUm: number
  readonly usualUm: number
  readonly source: string
  readonly worked: string
}

/** A size to be made: how large, and how wide its tolerance is in full. */
export interface AskedTolerance {
  readonly nominalMm: number
  readonly widthUm: number
}

/**
 * Whether a tolerance is wider than what the process holds as a rule, only with care, or not as a rule at all;
 * `null` where
 * the process goes by grades and the size is above the tables.
 * Source: the entry of the process.
 */
export function processReach(
  reach: ProcessReach,
  { nominalMm, widthUm }: AskedTolerance,
): ReachVerdict | OutOfDomain | null {
  const fault = notPositive({ nominalMm, widthUm })
  if (fault) return fault
  const band = bandOf(reach, nominalMm)
  if (band === null) return null
  const [finestUm, usualUm, says] = band
  const verdict =
    widthUm >= usualUm - 1e-9 ? 'usual' : widthUm >= finestUm - 1e-9 ? 'with care' : 'tighter than usual'
  return {
    ...{ verdict, askedUm: widthUm, finestUm, usualUm, source: reach.source },
    worked: `${reach.name} at ${plain(nominalMm)} mm usually holds ${says}; asked ${plain(widthUm)} um: ${verdict}`,
  }
}

function bandOf(reach: ProcessReach, nominalMm: number): readonly [number, number, string] | null {
  if (reach.by === 'width') {
    const [finest, usual] = [2000 * reach.finestMm, 2000 * reach.usualMm]
    return [finest, usual, `${plain(usual)} um (+/- ${reach.usualMm} mm), with care ${plain(finest)} um`]
  }
  const finest = toleranceGradeUm(reach.finest, nominalMm)
  const usual = toleranceGradeUm(reach.usual, nominalMm)
  if (finest === null || usual === null) return null
  return [finest, usual, `IT${reach.usual} = ${usual} um, with care IT${reach.finest} = ${finest} um`]
}

/** The reach of a process by its name, or `null`. */
export function reachNamed(name: string): ProcessReach | null {
  return processReaches.find((reach) => reach.name === name) ?? null
}
