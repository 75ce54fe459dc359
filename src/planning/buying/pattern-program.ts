import type { Effort } from './fit-bars.ts'
import { fullestWorth } from './fullest-worth.ts'

/** Patterns of pieces for one bar, how often each is cut if bars could be halved, and worths that prove it. */
export interface PatternProgram {
  readonly patterns: readonly { readonly take: readonly number[]; readonly times: number }[]
  /** For each kind, so that no pattern is worth much more than 1. */
  readonly worths: readonly number[]
}

/** Kinds of pieces for which the program is set up, and patterns tried. */
const most = { kinds: 120, turns: 600 } as const
const tiny = 1e-7

/**
 * The fewest bars of one size for so many pieces of each kind, if bars could be begun by halves.
 * Method: column generation (Gilmore and Gomory 1961): revised simplex over patterns, the next one by knapsack.
 * Gives: rounded figures, to be used where a fault of rounding cannot mislead; `null` where the effort ran out.
 * Cost: O(turns x kinds squared) and a knapsack for each turn.
 */
export function patternProgram(
  weights: readonly number[],
  counts: readonly number[],
  room: number,
  effort: Effort,
): PatternProgram | null {
  const size = counts.length
  if (size > most.kinds) return null
  const basis = weights.map((weight, k) => {
    const fits = Math.max(1, Math.min(counts[k]!, Math.floor(room / Math.max(weight, 1))))
    return counts.map((_, other) => (other === k ? fits : 0))
  })
  const costs = basis.map(() => 1)
  const inverse = basis.map((pattern, k) => pattern.map((fits) => (fits > 0 ? 1 / basis[k]![k]! : 0)))
  const times = counts.map((count, k) => count / basis[k]![k]!)
  for (let turn = 0; turn < most.turns; turn += 1) {
    const worths = counts.map((_, j) => inverse.reduce((sum, row, i) => sum + costs[i]! * row[j]!, 0))
    const entering = nextColumn(worths, weights, counts, room, effort)
    if (entering === 'effort') return null
    if (entering === null) {
      const patterns = basis.map((take, k) => ({ take, times: times[k]! })).filter((_, k) => costs[k] === 1)
      return { patterns, worths }
    }
    effort.left -= Math.ceil((size * size) / 4)
    const direction = inverse.map((row) => row.reduce((sum, value, j) => sum + value * entering.take[j]!, 0))
    const leaving = leavingRow(times, direction)
    if (leaving === null) return null
    pivot(inverse, times, direction, leaving)
    basis[leaving] = [...entering.take]
    costs[leaving] = entering.cost
  }
  return null
}

interface Column {
  readonly take: readonly number[]
  readonly cost: number
}

/** A pattern worth more than the bar it takes, or one piece more than needed; `null`: there is none. */
function nextColumn(
  worths: readonly number[],
  weights: readonly number[],
  counts: readonly number[],
  room: number,
  effort: Effort,
): Column | 'effort' | null {
  const below = worths.findIndex((worth) => worth < -tiny)
  if (below >= 0) return { take: worths.map((_, k) => (k === below ? -1 : 0)), cost: 0 }
  const best = fullestWorth({ values: worths, weights, counts }, room, tiny, effort)
  if (!best) return 'effort'
  return best.value > 1 + tiny ? { take: best.take, cost: 1 } : null
}

function leavingRow(times: readonly number[], direction: readonly number[]): number | null {
  let leaving: number | null = null
  let least = Number.POSITIVE_INFINITY
  for (const [k, step] of direction.entries()) {
    if (step <= tiny || times[k]! / step >= least) continue
    least = times[k]! / step
    leaving = k
  }
  return leaving
}

function pivot(inverse: number[][], times: number[], direction: readonly number[], leaving: number): void {
  const by = direction[leaving]!
  const row = inverse[leaving]!.map((value) => value / by)
  const moved = times[leaving]! / by
  for (const [k, step] of direction.entries()) {
    if (k === leaving || step === 0) continue
    inverse[k] = inverse[k]!.map((value, j) => value - step * row[j]!)
    times[k] = Math.max(0, times[k]! - step * moved)
  }
  inverse[leaving] = row
  times[leaving] = moved
}
