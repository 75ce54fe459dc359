/** Tasks up to which a plan is laid out as often as usual, and the usual and the least number of times. */
const usualTasks = 400
const usual = 100
const least = 20

/** How often a plan of so many tasks is laid out where nobody says: fewer times where each takes longer. */
export function samplesFor(tasks: number): number {
  if (tasks === 0) return 0
  return Math.max(least, Math.min(usual, Math.floor((usual * usualTasks) / tasks)))
}

/** How often more a plan of so many tasks is laid out for one of the questions about it, for each sample: at least half. */
export function passesFor(usualPasses: number, tasks: number): number {
  return Math.max(0.5, usualPasses * Math.min(1, usualTasks / Math.max(1, tasks)))
}
