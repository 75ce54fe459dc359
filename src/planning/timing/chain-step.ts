import type { Instant } from '../../base/clock.ts'
import { minutesBetween } from '../../base/spans.ts'
import type { ChainReason, ChainStep, HeldFor, HoursOf } from '../../model/schedule.ts'
import type { TaskNetwork } from '../../model/tasks.ts'
import type { DrivingStep, HoldUp, Schedule } from '../schedule/index.ts'
import type { OpenTimes, Translated } from './to-problem.ts'

/** An element of the driving chain in the names of the plan. */
export function chainStep(
  network: TaskNetwork,
  translated: Translated,
  schedule: Schedule,
  { task, start, finish, because }: DrivingStep,
): ChainStep {
  const name = (at: number): string => network.tasks[at]!.id
  const reason = (up: HoldUp): ChainReason => ({
    ...heldFor(translated, schedule, up, name),
    task: name(up.of),
    at: up.at,
    until: up.until,
  })
  return { task: name(task), start, finish, because: because.map(reason) }
}

function heldFor(
  { problem, resources, hours }: Translated,
  schedule: Schedule,
  { what, of, at }: HoldUp,
  name: (task: number) => string,
): HeldFor {
  switch (what.kind) {
    case 'release':
      return { kind: 'start' }
    case 'link':
      return { kind: 'link', from: name(what.from) }
    case 'resource':
      return {
        kind: 'resource',
        resource: resources[what.resource]!,
        from: what.from === null ? null : name(what.from),
      }
    case 'closed':
      return { kind: 'hours', closed: closedFrom(hours[what.calendar]!, what.since, at) }
    case 'short': {
      const { duration, least, pausable } = problem.tasks[of]!.modes[schedule.placements[of]!.mode]!
      const asks = pausable ? Math.min(least, duration) : duration
      return { kind: 'no room', asks, pause: pausable, whose: hours[what.calendar]!.map(whose) }
    }
    default:
      return { kind: 'idle' }
  }
}

const whose = ({ kind, names }: OpenTimes): HoursOf => ({ kind, names })

/** Those that were closed all the time; where each was open at some time, but never with the others, all of them. */
function closedFrom(hours: readonly OpenTimes[], since: Instant, until: Instant): readonly HoursOf[] {
  const closed = hours.filter(({ spans }) => minutesBetween(spans, since, until) === 0)
  return (closed.length > 0 ? closed : hours).map(whose)
}
