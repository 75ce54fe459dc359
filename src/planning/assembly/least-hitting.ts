/** Most branches gone into. */
const mostBranches = 20_000

/**
 * The fewest numbers such that each of the sets has one of them; `null` where the branches ran out first.
 * Method: branch on the members of a smallest set not yet hit, bounded by the fewest found. Cost: exponential in how
 * many are needed, bounded by `mostBranches`.
 */
export function leastHitting(sets: readonly (readonly number[])[]): readonly number[] | null {
  let best: readonly number[] = [...new Set(sets.flat())]
  let branches = 0
  const branch = (taken: readonly number[], open: readonly (readonly number[])[]): boolean => {
    if (open.length === 0) {
      best = taken
      return true
    }
    if (taken.length + 1 + (disjoint(open) - 1) >= best.length) return true
    if (++branches > mostBranches) return false
    const smallest = open.reduce((a, b) => (b.length < a.length ? b : a))
    return smallest.every((one) =>
      branch(
        [...taken, one],
        open.filter((set) => !set.includes(one)),
      ),
    )
  }
  return branch([], sets) ? best : null
}

/** Sets that share no member, taken as they come: each needs a number of its own. */
function disjoint(sets: readonly (readonly number[])[]): number {
  const used = new Set<number>()
  let count = 0
  for (const set of sets) {
    if (set.some((one) => used.has(one))) continue
    count++
    for (const one of set) used.add(one)
  }
  return count
}
