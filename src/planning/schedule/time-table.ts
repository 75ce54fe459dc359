/** What tasks surely take, whenever they start within their bounds; what follows for others, and why. */
import type { BoundTrail, Statement } from './bound-trail.ts'
import { packedNeeds } from './packed-needs.ts'
import type { PlainProblem } from './plain-problem.ts'

/**
 * The time table of the sure parts of all tasks: from the latest start to the earliest finish. Reasons are single
 * units of time at which too much would be taken (Schutt, Feydy, Stuckey, Wallace, "Explaining the cumulative
 * propagator", Constraints 16, 2011, from memory). Needs: one way per task.
 */
export class TimeTable {
  readonly #plain: PlainProblem
  readonly #trail: BoundTrail
  readonly #free: Int32Array
  readonly #guard: Int32Array
  readonly #need: Int32Array
  readonly #words: number
  readonly #span: number
  /** Sure part of each task as it stands in the table. */
  readonly #from: Int32Array
  readonly #to: Int32Array
  /** Tasks that take of each resource, most first. */
  readonly #users: readonly Int32Array[]
  /** Reasons one after the other: how many statements, then they. */
  #reasons: Int32Array = new Int32Array(1 << 14)
  #reasonsEnd = 0
  /** Where the reasons of each level begin. */
  readonly #marks: number[] = []
  readonly #working: Int32Array
  /** Times at which the table changed since all tasks were last looked at. */
  #changedFrom = 0
  #changedTo = 0
  readonly #moved: Uint8Array

  constructor(plain: PlainProblem, trail: BoundTrail, horizon: number) {
    const { size, duration, capacity, need } = plain
    const packed = packedNeeds(plain)
    this.#plain = plain
    this.#trail = trail
    this.#words = packed.words
    this.#guard = packed.guard
    this.#need = packed.need
    this.#span = horizon + 1
    this.#free = new Int32Array(packed.words * this.#span)
    for (let word = 0; word < packed.words; word++)
      this.#free.fill(packed.full[word]!, word * this.#span, (word + 1) * this.#span)
    this.#from = new Int32Array(size)
    this.#to = new Int32Array(size)
    this.#moved = new Uint8Array(size + 1)
    const resources = capacity.length
    const numbers = Array.from({ length: size }, (_, task) => task)
    this.#users = Array.from(capacity, (_, resource) => {
      const amount = (task: number) => need[task * resources + resource]!
      const users = numbers.filter((task) => amount(task) > 0 && duration[task]! > 0)
      return Int32Array.from(users.sort((a, b) => amount(b) - amount(a) || a - b))
    })
    this.#working = Int32Array.from(
      numbers.filter((task) => duration[task]! > 0 && this.#users.some((users) => users.includes(task))),
    )
  }

  /** A new level begins. */
  mark(): void {
    this.#marks.push(this.#reasonsEnd)
  }

  /** The last level is given up: its reasons go. */
  release(): void {
    this.#reasonsEnd = this.#marks.pop()!
  }

  /** The statements of a reason. */
  explain(reason: number, into: Statement[]): void {
    const end = reason + 1 + this.#reasons[reason]!
    for (let k = reason + 1; k < end; k++) into.push(this.#reasons[k]!)
  }

  #keep(statements: readonly Statement[]): number {
    while (this.#reasonsEnd + statements.length + 1 > this.#reasons.length) {
      const more = new Int32Array(2 * this.#reasons.length)
      more.set(this.#reasons)
      this.#reasons = more
    }
    const reason = this.#reasonsEnd
    this.#reasons[reason] = statements.length
    this.#reasons.set(statements, reason + 1)
    this.#reasonsEnd += statements.length + 1
    return reason
  }

  #fits(task: number, at: number): boolean {
    for (let word = 0; word < this.#words; word++) {
      const guard = this.#guard[word]!
      const left = this.#free[word * this.#span + at]! - this.#need[task * this.#words + word]!
      if ((left & guard) !== guard) return false
    }
    return true
  }

  #take(task: number, from: number, to: number, sign: number): void {
    for (let word = 0; word < this.#words; word++) {
      const amount = sign * this.#need[task * this.#words + word]!
      const base = word * this.#span
      for (let at = from; at < to; at++) this.#free[base + at]! -= amount
    }
    if (from < to && sign > 0) {
      if (from < this.#changedFrom) this.#changedFrom = from
      if (to > this.#changedTo) this.#changedTo = to
    }
  }

  /** The sure part after a bound was taken back. */
  shrink(task: number): void {
    if (task >= this.#from.length || this.#from[task] === this.#to[task]) return
    const lasts = this.#plain.duration[task]!
    const from = this.#trail.most[task]!
    const to = this.#trail.least[task]! + lasts
    const [oldFrom, oldTo] = [this.#from[task]!, this.#to[task]!]
    if (from >= to) {
      this.#take(task, oldFrom, oldTo, -1)
      this.#to[task] = oldFrom
      return
    }
    if (from > oldFrom) {
      this.#take(task, oldFrom, from, -1)
      this.#from[task] = from
    }
    if (to < oldTo) {
      this.#take(task, to, oldTo, -1)
      this.#to[task] = to
    }
  }

  /** The sure part after a bound moved. Gives: false where too much is taken; why is written to `conflict`. */
  grow(task: number, conflict: Statement[]): boolean {
    this.#moved[task] = 1
    if (task >= this.#from.length) return true
    const from = this.#trail.most[task]!
    const to = this.#trail.least[task]! + this.#plain.duration[task]!
    if (from >= to) return true
    const empty = this.#from[task]! >= this.#to[task]!
    const oldFrom = empty ? from : this.#from[task]!
    const oldTo = empty ? from : this.#to[task]!
    for (let at = from; at < to; at++) {
      if (at === oldFrom) at = oldTo
      if (at < to && !this.#fits(task, at)) return this.#overfull(task, at, conflict)
    }
    this.#take(task, from, oldFrom, 1)
    this.#take(task, oldTo, to, 1)
    this.#from[task] = from
    this.#to[task] = to
    return true
  }

  #covers(task: number, at: number): boolean {
    return this.#from[task]! <= at && at < this.#to[task]!
  }

  /** That a task is at work at `at`. */
  #atWork(task: number, at: number, into: Statement[]): void {
    const after = this.#trail.atLeast(task, at - this.#plain.duration[task]! + 1)
    const before = this.#trail.atMost(task, at)
    if (after >= 0) into.push(after)
    if (before >= 0) into.push(before)
  }

  /** Tasks at work at `at` that leave too little for another: those that take most, until it is enough. */
  #blame(task: number, at: number, into: Statement[]): void {
    const { capacity, need } = this.#plain
    const resources = capacity.length
    let [best, fewest] = [-1, Number.POSITIVE_INFINITY]
    for (let resource = 0; resource < resources; resource++) {
      const own = need[task * resources + resource]!
      if (own === 0) continue
      const count = this.#needed(resource, task, at, capacity[resource]! - own)
      if (count < fewest) [best, fewest] = [resource, count]
    }
    let left = capacity[best]! - need[task * resources + best]!
    for (const other of this.#users[best]!) {
      if (left < 0) break
      if (other === task || !this.#covers(other, at)) continue
      left -= need[other * resources + best]!
      this.#atWork(other, at, into)
    }
  }

  /** How many tasks at work it takes to leave less than nothing of `left`. */
  #needed(resource: number, task: number, at: number, left: number): number {
    const { capacity, need } = this.#plain
    let count = 0
    let rest = left
    for (const other of this.#users[resource]!) {
      if (other === task || !this.#covers(other, at)) continue
      rest -= need[other * capacity.length + resource]!
      count++
      if (rest < 0) return count
    }
    return Number.POSITIVE_INFINITY
  }

  #overfull(task: number, at: number, conflict: Statement[]): false {
    conflict.length = 0
    this.#blame(task, at, conflict)
    this.#atWork(task, at, conflict)
    return false
  }

  /** Narrows every task that a change may touch. A start is always left: where none should be, `grow` finds out. */
  propagate(): void {
    const { least, most } = this.#trail
    const { duration } = this.#plain
    const [from, to] = [this.#changedFrom, this.#changedTo]
    this.#changedFrom = this.#span
    this.#changedTo = 0
    for (const task of this.#working) {
      const [low, high, lasts] = [least[task]!, most[task]!, duration[task]!]
      if (low === high) continue
      const moved = this.#moved[task] !== 0
      this.#moved[task] = 0
      if (moved || (low < to && low + lasts > from)) this.#later(task)
      if (moved || (high < to && high + lasts > from)) this.#earlier(task)
    }
  }

  /** Forgets which times and tasks changed, after a conflict: what stands was looked at. */
  settle(): void {
    this.#changedFrom = this.#span
    this.#changedTo = 0
    this.#moved.fill(0)
  }

  #later(task: number): void {
    const trail = this.#trail
    const lasts = this.#plain.duration[task]!
    const most = trail.most[task]!
    for (;;) {
      const low = trail.least[task]!
      let at = Math.min(low + lasts, most) - 1
      while (at >= low && this.#fits(task, at)) at--
      if (at < low) return
      const why: Statement[] = []
      this.#blame(task, at, why)
      const after = trail.atLeast(task, at - lasts + 1)
      if (after >= 0) why.push(after)
      trail.make(trail.atLeast(task, at + 1), 4 * this.#keep(why) + 2)
    }
  }

  #earlier(task: number): void {
    const trail = this.#trail
    const lasts = this.#plain.duration[task]!
    for (;;) {
      const high = trail.most[task]!
      let at = Math.max(high, trail.least[task]! + lasts)
      while (at < high + lasts && this.#fits(task, at)) at++
      if (at >= high + lasts) return
      const why: Statement[] = []
      this.#blame(task, at, why)
      const before = trail.atMost(task, at)
      if (before >= 0) why.push(before)
      trail.make(trail.atMost(task, at - lasts), 4 * this.#keep(why) + 2)
    }
  }
}
