/** Most schedules tried for a plan where nobody says, and the tasks placed in all of them together. */
const usual = 400
const placed = 120_000
/** Tasks past which even less is tried: there the schedule is not all that takes long. */
const many = 1_000
/** Fewest: the rules of thumb, each forward and backward. */
const least = 12

/** How many schedules are tried for a plan of so many tasks where nobody says: fewer where each takes longer. */
export function effortFor(tasks: number): number {
  const share = Math.min(1, many / Math.max(1, tasks))
  return Math.max(least, Math.min(usual, Math.floor((share * placed) / Math.max(1, tasks))))
}
