/** The same finish in fewer evenings: sessions with little in them are kept free, one after the other, where nothing is lost. */
import { type Judge, sessionsUsed } from './besides.ts'
import { lessTied } from './breed.ts'
import type { Decoded, Decoder, Taken } from './decode.ts'
import type { Network } from './network.ts'
import { rankByStart } from './rank-by-start.ts'

/** A session that might be kept free, and the minutes worked in it. */
interface Candidate extends Taken {
  readonly minutes: number
  readonly key: string
}

/** Sessions used in which nothing uncertain begins: what must go out soon is not put off to save an evening. */
function candidates(network: Network, decoded: Decoded): Candidate[] {
  const { tasks, resources } = network.problem
  const begun = tasks.flatMap(({ uncertain }, task) => (uncertain ? [decoded.start[task]!] : []))
  return [...sessionsUsed(network, decoded)]
    .flatMap(([resource, used]) =>
      [...used].map(([session, minutes]): Candidate => {
        const spans = resources[resource]!.sessions!
        const [open, close] = [spans[2 * session]!, spans[2 * session + 1]!]
        return { resource, open, close, minutes, key: `${resource} ${session}` }
      }),
    )
    .filter(({ open, close }) => !begun.some((at) => at >= open && at < close))
    .sort((a, b) => a.minutes - b.minutes || a.open - b.open || a.resource - b.resource)
}

/**
 * The plan with as few sessions as trying shows, with no later finish, no more lateness and no more cost.
 * Method: the session with least work is taken away and the plan laid out again in its own order; where that is no
 * worse it stays so, and the next follows. Each session is tried once; each try is one schedule, at most `tries`.
 * Gives also what is kept free: who lays the plan out again keeps it so.
 */
export function fewerSessions(
  network: Network,
  { decode, judge }: { readonly decode: Decoder; readonly judge: Judge },
  plan: Decoded,
  tries: number,
): { readonly plan: Decoded; readonly closed: readonly Taken[]; readonly tried: number } {
  let current = plan
  let closed: readonly Taken[] = []
  const asked = new Set<string>()
  let tried = 0
  while (tried < tries) {
    const next = candidates(network, current).find(({ key }) => !asked.has(key))
    if (!next) break
    asked.add(next.key)
    tried++
    const more = [...closed, next]
    const outcome = decode(rankByStart(current), more)
    if (outcome.kind === 'stuck' || outcome.found.end > current.end) continue
    const [now, then] = [judge(current), judge(outcome.found)]
    if (then.late > now.late || !lessTied(then.ties, now.ties)) continue
    current = outcome.found
    closed = more
  }
  return { plan: current, closed, tried }
}
