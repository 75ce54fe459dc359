import { type Instant, minutesPerDay } from '../../base/clock.ts'
import { listSpans } from '../../base/spans.ts'
import type { TonightAction } from '../../model/risk.ts'
import type { Session } from '../../model/schedule.ts'
import { sessionsOf } from '../calendar/open-hours.ts'
import type { Sampled, SampleSource } from './lay-out-samples.ts'
import { thinned } from './statistics.ts'

/** Most actions tried. */
const mostActions = 10

/** Samples that an action is tried on: a quarter of all, but no more than fifty. */
const triedOf = (samples: number): number => Math.min(50, Math.ceil(samples / 4))

/**
 * What is worth doing in the first session: every task of it that can begin then, with the mean of the days by which the
 * finish comes later where just that task waits for the person's next session and the rest goes on as planned; most days
 * first. Samples are those of the whole plan, thinned evenly by finish. Cost: at most 10 x 50 passes.
 */
export function tonightByValue(
  source: SampleSource,
  { finishes, policy }: Sampled,
): readonly TonightAction[] {
  const [session] = source.sessions
  if (!session) return []
  const later = nextSession(source, session, policy.horizon)
  if (later === null) return []
  const index = new Map(source.network.tasks.map(({ id }, at) => [id, at]))
  const picked = thinned(finishes, triedOf(finishes.length)).filter((k) => Number.isFinite(finishes[k]))
  if (picked.length === 0) return []
  const begun = session.work.filter(({ task, open }) => source.schedule.tasks.get(task)!.start === open)
  const tasks = [...new Set(begun.map(({ task }) => task))].slice(0, mostActions)
  return tasks
    .map((task) => {
      const days = picked.flatMap((k) => {
        const laid = policy.layOut(k, { task: index.get(task)!, until: later })
        return laid ? [(laid.found.end - finishes[k]!) / minutesPerDay] : []
      })
      const mean = days.reduce((sum, one) => sum + one, 0) / Math.max(1, days.length)
      return {
        task,
        person: session.person,
        until: later,
        days: mean,
        share: days.filter((one) => one > 0).length / Math.max(1, days.length),
      }
    })
    .filter(({ days }) => days > 0)
    .sort((a, b) => b.days - a.days || (a.task < b.task ? -1 : 1))
}

/** Opening of the person's next session, whether or not anything is planned in it; `null` where there is none. */
function nextSession({ project }: SampleSource, { person, close }: Session, to: Instant): Instant | null {
  const next = listSpans(sessionsOf(project.people.get(person)!, close, to)).find(({ open }) => open > close)
  return next?.open ?? null
}
