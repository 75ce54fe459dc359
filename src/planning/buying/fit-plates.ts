import type { Effort } from './fit-bars.ts'
import { type Box, lyingIn, type Sawable } from './guillotine.ts'
import { type FilledPlate, goesOnto, type PlateProblem } from './plate-problem.ts'

interface Search extends Sawable {
  /** For each size of plate and each set, the rectangle that goes onto it. */
  readonly onto: readonly (readonly (Box | null)[])[]
  readonly free: number[]
  readonly failed: Set<string>
  readonly filled: { plate: number; box: Box }[]
  readonly effort: Effort
}

/**
 * All pieces onto the plates by cuts straight through, `impossible` where that cannot be, `undecided` where the effort
 * ran out.
 * Method: the first piece left goes onto each size of plate in turn, with every set of others to which no further piece
 * can be added; states that failed once are not tried again. Needs: `known` holds every rectangle of the problem.
 */
export function fitPlates(
  problem: PlateProblem,
  known: Sawable,
  effort: Effort,
): FilledPlate[] | 'impossible' | 'undecided' {
  const onto = problem.plates.map((plate) =>
    known.boxes.map((boxes) => boxes.find((box) => goesOnto(box, plate)) ?? null),
  )
  const free = problem.plates.map(({ count }) => count)
  const search: Search = { ...known, onto, free, failed: new Set(), filled: [], effort }
  const all = known.sets.length - 1
  if (descend(search, all))
    return search.filled.map(({ plate, box }) => ({ plate, pieces: lyingIn(box, problem.kerf) }))
  return effort.left > 0 ? 'impossible' : 'undecided'
}

function descend(search: Search, left: number): boolean {
  if (left === 0) return true
  const { onto, free, failed, filled, effort } = search
  const state = `${left};${free.join()}`
  if (failed.has(state)) return false
  for (const [plate, boxes] of onto.entries()) {
    if (free[plate] === 0) continue
    free[plate] = free[plate]! - 1
    for (const set of fullSets(search, left, boxes)) {
      filled.push({ plate, box: boxes[set]! })
      if (descend(search, left - set)) return true
      filled.pop()
    }
    free[plate] = free[plate]! + 1
  }
  if (effort.left > 0) failed.add(state)
  return false
}

/** Sets of the pieces left, with the first kind among them, that go onto a plate and to which none can be added. */
function fullSets({ sets, strides, effort }: Search, left: number, boxes: readonly (Box | null)[]): number[] {
  const here = sets[left]!
  const first = here.findIndex((count) => count > 0)
  const found: number[] = []
  for (let set = left; set > 0; set -= 1) {
    effort.left -= 1
    if (effort.left <= 0) return found
    const taken = sets[set]!
    if (!boxes[set] || taken[first] === 0 || taken.some((count, k) => count > here[k]!)) continue
    if (!taken.some((count, k) => count < here[k]! && boxes[set + strides[k]!])) found.push(set)
  }
  return found
}
