import type { Results } from '../model/results.ts'
import type { Session } from '../model/schedule.ts'
import type { PlacedTask } from './task-groups.ts'

/** What goes on by itself from each session on: runs that nobody's hands are at, cures and other waits. */
export function startedIn(results: Results): ReadonlyMap<Session, readonly PlacedTask[]> {
  const { network, schedule, sessions } = results
  const starters = startersOf(results)
  const out = new Map<Session, PlacedTask[]>()
  for (const task of network.tasks) {
    const at = schedule.tasks.get(task.id)
    if (!at || task.attention === 'hands' || at.people.length > 0) continue
    if (task.kind === 'delivery' || at.finish === at.start) continue
    const session = sessionOf(sessions, at.start, starters.get(task.id) ?? [])
    if (!session) continue
    const held = out.get(session)
    if (held) held.push({ task, at })
    else out.set(session, [{ task, at }])
  }
  for (const held of out.values()) held.sort((a, b) => a.at.start - b.at.start)
  return out
}

/** People of the task just before, by the task that goes on alone. */
function startersOf({ network, schedule }: Results): ReadonlyMap<string, readonly string[]> {
  const last = new Map<string, { readonly finish: number; readonly people: readonly string[] }>()
  for (const { from, to } of network.links) {
    const before = schedule.tasks.get(from)
    const known = last.get(to)
    if (before && before.people.length > 0 && (!known || before.finish > known.finish)) last.set(to, before)
  }
  return new Map([...last].map(([id, { people }]) => [id, people]))
}

/** The session of one of these people that was last open at the instant, else anybody's. */
function sessionOf(sessions: readonly Session[], start: number, people: readonly string[]): Session | null {
  const theirs = sessions.findLast(({ open, person }) => open <= start && people.includes(person))
  return theirs ?? sessions.findLast(({ open }) => open <= start) ?? null
}
