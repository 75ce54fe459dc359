/** What set the finish of a schedule: task by task, each with what kept it from starting earlier. */
import type { Instant, Minutes } from '../../base/clock.ts'
import { type HoldUp, holdUpsOf, type Inquiry, inquiryInto } from './hold-ups.ts'
import type { Problem, Schedule } from './problem.ts'

/** One task of the driving chain. */
export interface DrivingStep {
  readonly task: number
  /** What kept it back, in order of time: its cause, then what kept it from there to its start, without a gap. */
  readonly because: readonly HoldUp[]
  readonly start: Instant
  readonly finish: Instant
  /** Where the task goes by timetable: it had to leave before this instant. */
  readonly leaveBefore: Instant | null
  /** Minutes before its start that nothing explains; 0 unless the schedule dawdles. */
  readonly idle: Minutes
}

function stepFor(inquiry: Inquiry, task: number): DrivingStep {
  const { start, finish, mode } = inquiry.schedule.placements[task]!
  const { timetable } = inquiry.network.clocks[task]![mode]!.mode
  const because = holdUpsOf(inquiry, task)
  const idle = because.at(-1)!.what.kind === 'idle' ? start - because.at(-2)!.until : 0
  const leaveBefore = timetable ? timetable.leaveBefore.find((leave) => leave > start)! : null
  return { task, because, start, finish, leaveBefore, idle }
}

/** The task to ask next: whoever the cause of a step waited for. */
function before({ because: [cause] }: DrivingStep, seen: ReadonlySet<number>): number | null {
  const from = cause && 'from' in cause.what ? cause.what.from : null
  return from === null || seen.has(from) ? null : from
}

/**
 * The driving chain of a schedule, from the first task to one that finishes last (the lowest numbered of several).
 * The cause of each step but the first names, as `from`, the step before it. Facts only.
 * Needs: a schedule that satisfies the problem. Cost: O(chain x (arcs of a task + stretches of its resources)).
 */
export function drivingChain(problem: Problem, schedule: Schedule): DrivingStep[] {
  const inquiry = inquiryInto(problem, schedule)
  const chain: DrivingStep[] = []
  let task: number | null = schedule.placements.findIndex(({ finish }) => finish === schedule.finish)
  if (task < 0) return []
  while (task !== null) {
    inquiry.seen.add(task)
    const step = stepFor(inquiry, task)
    chain.push(step)
    task = before(step, inquiry.seen)
  }
  return chain.reverse()
}
