/** An exact search: choices, what follows from them, and a lesson from every dead end. */
import { analyseConflict } from './analyse-conflict.ts'
import type { Statement } from './bound-trail.ts'
import { backTo, decide, propagate } from './follow-bounds.ts'
import type { PlainProblem } from './plain-problem.ts'
import { lengthOf, type ProofOptions, ProofState } from './proof-state.ts'

/** What a proof search leaves: the best starts, the bound proved, and the dead ends met. */
export interface Proof {
  readonly starts: Int32Array
  readonly lower: number
  readonly upper: number
  readonly nodes: number
}

/** Dead ends spent on bounds from below: on one more unit, and in all. */
const nodesPerUnit = 1000
const nodesBelow = 5000

/** Dead ends between restarts, times the Luby sequence. */
const restartAfter = 100

function luby(index: number): number {
  let [size, power] = [1, 0]
  while (size < index + 1) [size, power] = [2 * size + 1, power + 1]
  let at = index
  while (size - 1 !== at) {
    size = (size - 1) >> 1
    power--
    at %= size
  }
  return 2 ** power
}

function tell(search: ProofState, statements: readonly Statement[]): void {
  const { trail, options } = search
  options.learned?.(
    statements.map((each) => ({
      task: trail.numberOf[each >> 1]!,
      at: trail.valueOf[each >> 1]!,
      before: (each & 1) === 0,
    })),
  )
}

/** Learns from the contradiction in hand and goes back to where the lesson says something new. Gives: false at the root. */
function learn(search: ProofState): boolean {
  const { statements, level, joined } = analyseConflict(search)
  search.nodes++
  if (level < 0) return false
  tell(search, statements)
  search.queue.decay()
  backTo(search, level)
  const clause = statements.map((each) => each ^ 1)
  if (clause.length === 1) search.trail.make(clause[0]!, -1)
  else search.trail.make(clause[0]!, 4 * search.clauses.add(clause, joined))
  return true
}

/** The next choice: the weightiest open statement as in the best schedule, else the earliest start of a first task. */
function choose(search: ProofState): Statement {
  const { trail, queue, phase, end } = search
  const atom = queue.next()
  if (atom >= 0) {
    const x = trail.numberOf[atom]!
    if (x < end) return 2 * atom + (phase[x]! >= trail.valueOf[atom]! ? 0 : 1)
  }
  let best = -1
  for (let x = 0; x < end; x++) {
    if (trail.least[x] === trail.most[x]) continue
    if (best < 0 || trail.least[x]! < trail.least[best]!) best = x
    else if (trail.least[x] === trail.least[best] && trail.most[x]! < trail.most[best]!) best = x
  }
  return best < 0 ? -1 : trail.atMost(best, trail.least[best]!)
}

/**
 * Keeps the schedule in hand, every task moved to its earliest fit in the order of starts; as it is where that is
 * longer, as it may be where a task starts before one it waits for.
 */
function keepSchedule(search: ProofState): void {
  const { plain, pass, ways } = search
  const starts = search.trail.least.slice(0, search.end)
  const key = starts.map((at) => -at)
  const finish = new Int32Array(plain.size)
  const longer = pass('forward', key, ways, finish) > lengthOf(plain, starts)
  search.starts = longer ? starts : finish.map((at, task) => at - plain.duration[task]!)
  search.upper = lengthOf(plain, search.starts)
  search.phase.set(search.starts)
}

/**
 * Whether a schedule of at most `target` units exists: it is kept; or proved that none does: `lower` rises; or left open.
 * Needs: no level stands. Gives: false where the dead ends allowed, `until` in all, are used up.
 */
function settleTarget(search: ProofState, target: number, until: number): boolean {
  const { trail, clauses, options, end } = search
  for (let round = 0; ; round++) {
    backTo(search, 0)
    if (clauses.count > search.most) {
      clauses.forget()
      search.most += 200
    }
    let left = restartAfter * luby(round)
    while (left > 0) {
      if (!propagate(search)) {
        if (!learn(search)) throw new Error('a schedule was at hand, yet none was left')
        left--
        if (search.nodes >= until || ((search.nodes & 15) === 0 && options.stop?.())) return false
        continue
      }
      if (trail.level === 0) {
        search.lower = Math.max(search.lower, trail.least[end]!)
        if (search.lower > target) return true
        decide(search, trail.atMost(end, target))
        continue
      }
      const statement = choose(search)
      if (statement < 0) {
        keepSchedule(search)
        return true
      }
      decide(search, statement)
    }
  }
}

/**
 * Proves the shortest length of a plain problem, or as much as the dead ends allowed give: first bounds from below,
 * one unit after the other, then shorter schedules from above. Method: lazy clause generation with a time table
 * (Schutt, Feydy, Stuckey, Wallace 2011, from memory). Needs: one way per task.
 */
export function proveFinish(plain: PlainProblem, options: ProofOptions): Proof {
  const search = new ProofState(plain, options)
  const more = () => search.lower < search.upper && search.nodes < options.nodes && !options.stop?.()
  const within = (dead: number) => Math.min(options.nodes, search.nodes + dead)
  while (more() && search.nodes < nodesBelow)
    if (!settleTarget(search, search.lower, within(nodesPerUnit))) break
  while (more()) if (!settleTarget(search, search.upper - 1, options.nodes)) break
  const { starts, lower, upper, nodes } = search
  return { starts, lower, upper, nodes }
}
