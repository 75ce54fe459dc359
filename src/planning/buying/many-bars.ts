import type { BarShop } from './bar-shop.ts'
import type { Tried } from './choose-units.ts'
import { type BarProblem, barLeft, type Effort, type FilledBar } from './fit-bars.ts'
import { fullestWorth } from './fullest-worth.ts'
import { type PatternProgram, patternProgram } from './pattern-program.ts'
import { tryBars } from './try-bars.ts'

/** What patterns tell of many pieces: bars cut alike to begin with, and a proof of how few cannot do. */
export interface ManyBars {
  /** False only where the bars cannot hold the pieces. */
  readonly allows: (problem: BarProblem) => boolean
  /** The pieces into the bars, most of them by whole patterns; or `undecided`. */
  readonly attempt: (problem: BarProblem, effort: Effort) => Tried<readonly FilledBar[]>
}

/** Worths are counted in whole millionths, so that the proof is exact whatever was rounded on the way. */
const millionth = 1e6

/** Patterns for each stock of a shop, as far as the effort reaches. */
export function manyBars(shop: BarShop, effort: Effort): ManyBars {
  const weights = shop.kinds.map(({ length, kerf }) => length + kerf)
  const counts = shop.parts.map(({ length }) => length)
  const widest = shop.grip === 0 ? Math.max(0, ...shop.kinds.map(({ kerf }) => kerf)) : 0
  const room = (size: number): number => Math.max(0, size - shop.grip + widest)
  const programs = shop.forms.flatMap(({ holds }) => {
    const program = patternProgram(weights, counts, room(holds), effort)
    return program ? [{ bar: shop.sizes.indexOf(holds), program }] : []
  })
  const proofs = programs.flatMap(({ program }) => {
    const values = program.worths.map((worth) => Math.max(0, Math.floor(worth * millionth)))
    const most = shop.sizes.map(
      (size) => fullestWorth({ values, weights, counts }, room(size), 0, effort)?.value,
    )
    return most.every((value) => value !== undefined) ? [{ values, most: most as number[] }] : []
  })
  return {
    allows: ({ counts: needed, bars }) =>
      proofs.every(({ values, most }) => {
        const worth = values.reduce((sum, value, k) => sum + value * needed[k]!, 0)
        return worth <= bars.reduce((sum, { count }, b) => sum + most[b]! * count, 0)
      }),
    attempt: (problem, spent) => {
      for (const { bar, program } of programs) {
        const tried = byPatterns(problem, bar, program, spent)
        if (tried !== 'undecided') return tried
      }
      return 'undecided'
    },
  }
}

/** Every pattern as often as it is cut whole, and the rest of the pieces into the rest of the bars. */
function byPatterns(
  problem: BarProblem,
  bar: number,
  program: PatternProgram,
  effort: Effort,
): Tried<readonly FilledBar[]> {
  const { size, count } = problem.bars[bar]!
  const left = [...problem.counts]
  const filled: FilledBar[] = []
  for (const { take, times } of program.patterns) {
    if (barLeft(problem, size, take) < 0) continue
    for (let cut = 0; cut < Math.floor(times + 1e-6) && filled.length < count; cut += 1) {
      if (take.some((pieces, k) => pieces > left[k]!)) break
      for (const [k, pieces] of take.entries()) left[k] = left[k]! - pieces
      filled.push({ bar, take })
    }
  }
  if (filled.length === 0) return 'undecided'
  const bars = problem.bars.map((each, b) => (b === bar ? { ...each, count: count - filled.length } : each))
  const tried = tryBars({ ...problem, counts: left, bars }, effort)
  return typeof tried === 'string' ? 'undecided' : { packing: [...filled, ...tried.packing] }
}
