import type { Instant, Minutes } from '../../base/clock.ts'
import { minutesBetween } from '../../base/spans.ts'
import type { PlanSchedule, ScheduledTask } from '../../model/schedule.ts'
import type { TaskNetwork } from '../../model/tasks.ts'
import {
  type CriticalPath,
  criticalPath,
  drivingChain,
  latestAlone,
  latestStarts,
  type ScheduleOutcome,
  startFor,
} from '../schedule/index.ts'
import { latestShifted } from '../schedule/lag.ts'
import { chainStep } from './chain-step.ts'
import type { Translated } from './to-problem.ts'

/** Most critical chains that are listed; they are all counted. */
const mostChains = 20

type Found = Extract<ScheduleOutcome, { kind: 'found' }>

/** A schedule in the words of the plan: who does what when, float, latest dates, what drives the finish. */
export function fromSchedule(
  network: TaskNetwork,
  translated: Translated,
  { schedule, bound, stats }: Found,
): PlanSchedule {
  const { problem } = translated
  const plain = criticalPath(problem, { mostChains, modes: schedule.placements.map(({ mode }) => mode) })
  // The schedule itself keeps every link, so the relaxed problem has times too.
  if (!plain) throw new Error('a problem with a schedule has no critical path')
  const latest = latestStarts(problem, schedule)
  const alone = latestAlone(problem, schedule)
  const free = freeFloats(translated, plain)
  const tasks = network.tasks.map((task, at): readonly [string, ScheduledTask] => {
    const placed = schedule.placements[at]!
    const row = plain.rows[at]!
    return [
      task.id,
      {
        id: task.id,
        start: placed.start,
        finish: placed.finish,
        pieces: placed.pieces,
        people: translated.people[at]![placed.mode]!,
        latestStart: latest.start[at]!,
        latestFinish: latest.finish[at]!,
        latestAlone: Math.max(alone[at]!, latest.start[at]!),
        earlyStart: row.earlyStart,
        earlyFinish: row.earlyFinish,
        lateStart: row.lateStart,
        lateFinish: row.lateFinish,
        float: row.float,
        freeFloat: Math.min(free[at]!, row.float),
        critical: row.critical,
      },
    ]
  })
  return {
    finish: schedule.finish,
    tasks: new Map(tasks),
    drivingChain: drivingChain(problem, schedule).map((step) =>
      chainStep(network, translated, schedule, step),
    ),
    criticalChains: plain.chains.map((chain) => chain.map((at) => network.tasks[at]!.id)),
    criticalChainCount: plain.chainCount,
    lowerBound: bound,
    schedulesTried: stats.schedulesTried,
  }
}

/** Open minutes a task can slip from its early start without moving any other task's early start, nor the finish. */
function freeFloats({ problem }: Translated, plain: CriticalPath): readonly Minutes[] {
  const bound: Instant[] = problem.tasks.map(() => plain.finish)
  for (const link of problem.links) {
    const next = plain.rows[link.to]!.earlyStart
    const latest =
      typeof link.lag === 'number'
        ? next - link.lag
        : latestShifted(problem.dayCalendars[link.lag.calendar]!.days, next, link.lag.days)
    bound[link.from] = Math.min(bound[link.from]!, latest)
  }
  return problem.tasks.map((task, at) => {
    const row = plain.rows[at]!
    const mode = task.modes[row.mode]!
    const slipped = startFor(mode, problem.calendars, bound[at]!)
    if (!slipped || slipped.start <= row.earlyStart) return 0
    if (mode.calendar === null) return slipped.start - row.earlyStart
    return minutesBetween(problem.calendars[mode.calendar]!.spans, row.earlyStart, slipped.start)
  })
}
