/** What a proof search works on: bounds, time table, lessons, and the best schedule so far. */
import { BoundTrail, type Statement } from './bound-trail.ts'
import { headsOf, tailsOf } from './critical-bounds.ts'
import { LearnedClauses } from './learned-clauses.ts'
import type { PlainProblem } from './plain-problem.ts'
import { type SerialPass, serialPassOf } from './serial-pass.ts'
import { StatementQueue } from './statement-queue.ts'
import { TimeTable } from './time-table.ts'

/** That a task (or, past the last, the whole plan's finish) starts at or after a unit of time, or before it. */
export interface Lesson {
  readonly task: number
  readonly at: number
  readonly before: boolean
}

/** A search for a proof: what is known, how long it may last, who wants to hear what it learns. */
export interface ProofOptions {
  /** Starts of a schedule, in units. */
  readonly starts: Int32Array
  /** No schedule is shorter, in units. */
  readonly lower: number
  /** Most dead ends met. */
  readonly nodes: number
  /** Asked now and then; true ends the search. */
  readonly stop?: () => boolean
  /** Told every lesson: at least one of its statements holds in every schedule no longer than the one given. */
  readonly learned?: (lesson: readonly Lesson[]) => void
}

/** Units from the start to the last finish. */
export function lengthOf(plain: PlainProblem, starts: Int32Array): number {
  return starts.reduce((end, at, task) => Math.max(end, at + plain.duration[task]!), 0)
}

/** The search as it stands. */
export class ProofState {
  readonly plain: PlainProblem
  readonly options: ProofOptions
  readonly trail: BoundTrail
  readonly table: TimeTable
  readonly clauses: LearnedClauses
  readonly queue: StatementQueue
  readonly phase: Int32Array
  readonly pass: SerialPass
  readonly ways: Int32Array
  /** Waits as from, to, least from start to start; those out of and into each task. */
  readonly from: number[] = []
  readonly to: number[] = []
  readonly gap: number[] = []
  readonly out: number[][]
  readonly into: number[][]
  readonly end: number
  readonly conflict: Statement[] = []
  seen: Int32Array
  nodes = 0
  looked = 0
  starts: Int32Array
  lower: number
  upper: number
  most = 2000

  constructor(plain: PlainProblem, options: ProofOptions) {
    const { size, duration } = plain
    this.plain = plain
    this.options = options
    this.starts = options.starts
    this.end = size
    this.upper = lengthOf(plain, options.starts)
    const [heads, tails] = [headsOf(plain), tailsOf(plain)]
    const least = Int32Array.from({ length: size + 1 }, (_, x) => (x < size ? heads[x]! : options.lower))
    const most = Int32Array.from({ length: size + 1 }, (_, x) =>
      x < size ? this.upper - tails[x]! - duration[x]! : this.upper,
    )
    this.lower = options.lower
    this.trail = new BoundTrail(least, most)
    this.table = new TimeTable(plain, this.trail, this.upper)
    this.clauses = new LearnedClauses(this.trail)
    this.queue = new StatementQueue(this.trail)
    this.pass = serialPassOf(plain)
    this.ways = plain.firstWay.slice(0, size)
    this.phase = new Int32Array(size + 1)
    this.phase.set(options.starts)
    this.out = Array.from({ length: size + 1 }, () => [])
    this.into = Array.from({ length: size + 1 }, () => [])
    const { first, task, lag } = plain.after
    for (let x = 0; x < size; x++) {
      for (let k = first[x]!; k < first[x + 1]!; k++) this.#wait(x, task[k]!, duration[x]! + lag[k]!)
      this.#wait(x, size, duration[x]!)
    }
    this.seen = new Int32Array(1024)
    for (let x = 0; x < size; x++) this.table.grow(x, this.conflict)
  }

  #wait(from: number, to: number, gap: number): void {
    this.out[from]!.push(this.from.length)
    this.into[to]!.push(this.from.length)
    this.from.push(from)
    this.to.push(to)
    this.gap.push(gap)
  }
}
