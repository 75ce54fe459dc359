/** From one bound to the next: waits, time table and lessons, followed to their end; and the way back. */
import type { Statement } from './bound-trail.ts'
import type { ProofState } from './proof-state.ts'

/** Writes the two sides of a contradiction. */
function clash(search: ProofState, a: Statement, b: Statement): false {
  search.conflict.length = 0
  if (a >= 0) search.conflict.push(a)
  if (b >= 0) search.conflict.push(b)
  return false
}

function pushLater(search: ProofState, x: number): boolean {
  const { trail, to, gap } = search
  for (const arc of search.out[x]!) {
    const other = to[arc]!
    const bound = trail.least[x]! + gap[arc]!
    if (bound <= trail.least[other]!) continue
    const most = trail.most[other]!
    if (bound > most) return clash(search, trail.atLeast(x, most + 1 - gap[arc]!), trail.atMost(other, most))
    trail.make(trail.atLeast(other, bound), 4 * arc + 1)
  }
  return true
}

function pullEarlier(search: ProofState, x: number): boolean {
  const { trail, from, gap } = search
  for (const arc of search.into[x]!) {
    const other = from[arc]!
    const bound = trail.most[x]! - gap[arc]!
    if (bound >= trail.most[other]!) continue
    const least = trail.least[other]!
    if (bound < least)
      return clash(search, trail.atMost(x, least - 1 + gap[arc]!), trail.atLeast(other, least))
    trail.make(trail.atMost(other, bound), 4 * arc + 1)
  }
  return true
}

/** What the clauses say to a bound that moved. */
function hearClauses(search: ProofState, entry: number): boolean {
  const { trail, clauses, conflict } = search
  const side = trail.side[entry]!
  const x = side >> 1
  const base = trail.base[x]! - trail.firstLeast[x]!
  const lower = (side & 1) === 0
  const now = lower ? trail.least[x]! : trail.most[x]!
  const before = trail.before[entry]!
  const [low, high] = lower ? [before + 1, now] : [now + 1, before]
  for (let value = low; value <= high; value++) {
    const broken = clauses.denied(2 * (base + value) + (lower ? 1 : 0))
    if (broken < 0) continue
    conflict.length = 0
    clauses.explain(broken, false, conflict)
    return false
  }
  return true
}

/** Follows every change to its end. Gives: false at a contradiction, whose statements are in `conflict`. */
export function propagate(search: ProofState): boolean {
  const { trail, table, conflict } = search
  for (;;) {
    while (search.looked < trail.size) {
      const entry = search.looked++
      const x = trail.side[entry]! >> 1
      const fine =
        ((trail.side[entry]! & 1) === 0 ? pushLater(search, x) : pullEarlier(search, x)) &&
        table.grow(x, conflict) &&
        hearClauses(search, entry)
      if (!fine) return false
    }
    table.propagate()
    if (search.looked === trail.size) return true
  }
}

/** Takes back every level above one. */
export function backTo(search: ProofState, level: number): void {
  const { trail, table, queue } = search
  if (trail.level === level) return
  while (trail.level > level) {
    const floor = trail.levels.pop()!
    while (trail.size > floor) {
      const entry = trail.size - 1
      const side = trail.side[entry]!
      const x = side >> 1
      const now = (side & 1) === 0 ? trail.least[x]! : trail.most[x]!
      trail.undo()
      table.shrink(x)
      const before = trail.before[entry]!
      const base = trail.base[x]! - trail.firstLeast[x]!
      for (let value = Math.min(now, before) + 1; value <= Math.max(now, before); value++)
        queue.reopen(base + value)
    }
    table.release()
  }
  table.settle()
  search.looked = Math.min(search.looked, trail.size)
}

/** Opens a level with a choice. */
export function decide(search: ProofState, statement: Statement): void {
  search.trail.levels.push(search.trail.size)
  search.table.mark()
  search.trail.make(statement, -1)
}
