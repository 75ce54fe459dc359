import type { BarProblem, FilledBar, PieceKind } from './fit-bars.ts'

interface Open {
  readonly bar: number
  readonly take: number[]
  /** Length and cut of all its pieces, and the widest cut. */
  used: number
  widest: number
}

/** How a piece picks among the bars with room: the first, or the one that it leaves the fullest. */
export type Picking = 'first' | 'fullest'

/**
 * Pieces into bars by rule of thumb, longest first; a bar is opened only where no open one has room.
 * Method: first fit or best fit decreasing (textbook). `opens` says which size of bar to open for a kind; `null`: none
 * is left. Gives: `null` where a piece finds no bar. Cost: O(pieces x bars).
 */
export function ruleOfThumb(
  problem: BarProblem,
  picking: Picking,
  opens: (kind: number, opened: readonly number[]) => number | null,
): FilledBar[] | null {
  const { kinds, counts, bars } = problem
  const open: Open[] = []
  const opened = bars.map(() => 0)
  for (const [kind, count] of counts.entries()) {
    for (let piece = 0; piece < count; piece += 1) {
      let found = pick(problem, open, kind, picking)
      if (!found) {
        const bar = opens(kind, opened)
        if (bar === null) return null
        opened[bar] = opened[bar]! + 1
        found = { bar, take: kinds.map(() => 0), used: 0, widest: 0 }
        open.push(found)
      }
      put(found, kind, kinds[kind]!)
    }
  }
  return open.map(({ bar, take }) => ({ bar, take }))
}

function put(bar: Open, kind: number, { length, kerf }: PieceKind): void {
  bar.take[kind] = bar.take[kind]! + 1
  bar.used += length + kerf
  bar.widest = Math.max(bar.widest, kerf)
}

function pick(
  { kinds, bars, grip }: BarProblem,
  open: readonly Open[],
  kind: number,
  by: Picking,
): Open | null {
  const { length, kerf } = kinds[kind]!
  let best: Open | null = null
  let least = Number.POSITIVE_INFINITY
  for (const each of open) {
    const endCut = grip === 0 ? Math.max(each.widest, kerf) : 0
    const rest = bars[each.bar]!.size - grip - each.used - length - kerf + endCut
    if (rest < 0 || rest >= least) continue
    if (by === 'first') return each
    best = each
    least = rest
  }
  return best
}
