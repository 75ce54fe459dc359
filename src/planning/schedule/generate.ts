/** The face of the scheduler: a problem and an effort in, a schedule or an honest refusal out. */
import type { Problem, ScheduleOutcome } from './problem.ts'
import { type SearchOptions, serialGeneration } from './serial-generation.ts'

/** Anything that makes schedules: the same problem and options give the same answer. */
export type Generator = (problem: Problem, options: SearchOptions) => ScheduleOutcome

/**
 * A schedule for the problem, as good as the effort allows; or a proof that there is none; or that none was found.
 * Needs: indices in the problem are in range, calendars and timetables are sorted.
 */
export const scheduleProblem: Generator = serialGeneration
