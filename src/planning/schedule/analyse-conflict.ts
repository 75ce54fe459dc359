/** Lessons from contradictions. */
import type { BoundTrail, Statement } from './bound-trail.ts'
import type { ProofState } from './proof-state.ts'

/** The statements from which an entry followed, as far as they make `statement`. */
function explain(search: ProofState, entry: number, statement: Statement, into: Statement[]): void {
  const { trail, from, to, gap } = search
  const cause = trail.cause[entry]!
  into.length = 0
  if ((cause & 3) === 0) search.clauses.explain(cause >> 2, true, into)
  else if ((cause & 3) === 2) search.table.explain(cause >> 2, into)
  else {
    const arc = cause >> 2
    const value = trail.valueOf[statement >> 1]!
    const said =
      (statement & 1) === 0
        ? trail.atLeast(from[arc]!, value - gap[arc]!)
        : trail.atMost(to[arc]!, value - 1 + gap[arc]!)
    if (said >= 0) into.push(said)
  }
}

interface Lessons {
  /** True statements that cannot all hold; the one of the last level first. */
  readonly statements: Statement[]
  readonly level: number
  readonly joined: number
}

/** Whether statement `a` says at least as much as `b`; both are of one side of one number. */
function covers(trail: BoundTrail, a: Statement, b: Statement): boolean {
  const gap = trail.valueOf[a >> 1]! - trail.valueOf[b >> 1]!
  return (a & 1) === 0 ? gap >= 0 : gap <= 0
}

/** From a contradiction back to the one statement of the last level that makes it inevitable. */
export function analyseConflict(search: ProofState): Lessons {
  const { trail, queue, conflict } = search
  if (search.seen.length < trail.size) search.seen = new Int32Array(2 * trail.size)
  const { seen } = search
  const lower: number[] = []
  const told: Statement[] = []
  const last = conflict.reduce((most, each) => Math.max(most, trail.levelOf[trail.entryOf(each)]!), 0)
  if (last === 0) return { statements: [], level: -1, joined: 0 }
  let open = 0
  const note = (statement: Statement): void => {
    const entry = trail.entryOf(statement)
    const level = trail.levelOf[entry]!
    if (level === 0) return
    const known = seen[entry]! - 1
    if (known < 0) {
      seen[entry] = statement + 1
      queue.bump(statement >> 1)
      if (level === last) open++
      else lower.push(entry)
    } else if (!covers(trail, known, statement)) seen[entry] = statement + 1
  }
  for (const statement of conflict) note(statement)
  let entry = last < trail.level ? trail.levels[last]! - 1 : trail.size - 1
  for (;;) {
    while (seen[entry] === 0) entry--
    if (open === 1) break
    const statement = seen[entry]! - 1
    seen[entry] = 0
    open--
    explain(search, entry, statement, told)
    for (const each of told) note(each)
    entry--
  }
  const statements = [seen[entry]! - 1, ...shortened(search, lower)]
  seen[entry] = 0
  for (const each of lower) seen[each] = 0
  const levels = statements.map((each) => trail.levelOf[trail.entryOf(each)]!)
  const level = levels.slice(1).reduce((most, each) => Math.max(most, each), 0)
  const second = levels.indexOf(level, 1)
  if (second > 1) [statements[1], statements[second]] = [statements[second]!, statements[1]!]
  return { statements, level, joined: new Set(levels).size }
}

/** Leaves out statements that follow from others of the lesson. */
function shortened(search: ProofState, entries: readonly number[]): Statement[] {
  const { trail, seen } = search
  const told: Statement[] = []
  const follows = (entry: number): boolean => {
    if (trail.cause[entry]! < 0) return false
    explain(search, entry, seen[entry]! - 1, told)
    return told.every((each) => {
      const before = trail.entryOf(each)
      if (trail.levelOf[before] === 0) return true
      return seen[before]! > 0 && covers(trail, seen[before]! - 1, each)
    })
  }
  return entries.filter((entry) => !follows(entry)).map((entry) => seen[entry]! - 1)
}
