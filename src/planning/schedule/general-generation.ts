/** Schedules of problems of any kind: bred, bounded, then with as few sessions as the finish allows. */
import { scheduleOf, whyStuck } from './decode.ts'
import { generalSearch } from './general-search.ts'
import { linkedBlocks } from './linked-blocks.ts'
import type { Network } from './network.ts'
import { capacityFreeBound } from './precedence.ts'
import type { ScheduleOutcome } from './problem.ts'
import { isSmall, proveSmall, type SmallProof } from './prove-small.ts'
import type { SearchOptions } from './search-options.ts'
import { workloadBound } from './workload-bound.ts'

/** States looked at to prove a small problem where nobody says. */
const usualNodes = 2_000

const noProof: SmallProof = { plan: null, complete: false, nodes: 0 }

/**
 * The best schedule that rules, alternating passes and breeding find within the effort, and its bound.
 * Gives: the same for the same problem and options; more effort never gives a later finish, since the tries of less
 * effort come first.
 */
export function generalGeneration(network: Network, options: SearchOptions): ScheduleOutcome {
  const blocks = linkedBlocks(network)
  const relaxed = capacityFreeBound(network)
  if ('lost' in relaxed) {
    const block = blocks.blockOf[relaxed.lost]!
    return {
      kind: 'none found',
      stuck: blocks.members[block]!,
      why: whyStuck(network, blocks, block, 'beyond horizon'),
    }
  }
  const effort = Math.max(1, options.effort)
  const lower = relaxed.bound - network.problem.start
  const { plan, tried, stuck } = generalSearch(network, blocks, { ...options, effort, lower })
  if (plan === null) return { kind: 'none found', stuck: stuck!.stuck, why: stuck!.why }
  const small = isSmall(network)
  const asked = small || options.bounded !== false
  const bound = asked ? workloadBound(network, blocks, relaxed.bound, plan.end) : relaxed.bound
  const proof =
    bound < plan.end && small ? proveSmall(network, plan.end, options.nodes ?? usualNodes) : noProof
  const best = proof.plan ?? plan
  const least = proof.complete ? best.end : bound
  return {
    kind: 'found',
    schedule: scheduleOf(network, best),
    bound: least,
    proved: best.end === least,
    stats: { schedulesTried: tried, nodes: proof.nodes },
  }
}
