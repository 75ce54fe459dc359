/** Most schedules tried for a plan where nobody says, and the tasks placed in all of them together. */
const usual = 400
const placed = 120_000
/** Fewest: the rules of thumb, each forward and backward. */
const least = 12

/** How many schedules are tried for a plan of so many tasks where nobody says: fewer where each takes longer. */
export function effortFor(tasks: number): number {
  return Math.max(least, Math.min(usual, Math.floor(placed / Math.max(1, tasks))))
}
