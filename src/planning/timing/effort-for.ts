/** Tasks up to which as many schedules are tried as usual, and the usual and the least number. */
const usualTasks = 500
const usual = 60
/** Every rule of thumb once, forward and backward. */
const least = 12

/** Most schedules tried for a plan of so many tasks where nobody says: fewer where each takes longer. */
export function effortFor(tasks: number): number {
  return Math.max(least, Math.min(usual, Math.floor((usual * usualTasks) / Math.max(1, tasks))))
}
