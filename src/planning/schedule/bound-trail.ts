/** Bounds of whole numbers that are only narrowed, with the reason of every step and the way back. */

/**
 * A statement about one number, numbered: `2 * atom` says that it is at least the atom's value, `2 * atom + 1` that it
 * is less. So `statement ^ 1` denies a statement.
 */
export type Statement = number

/** Why a bound moved: -1 a choice, else a number that the propagator who moved it can explain. */
export type Cause = number

function grown(list: Int32Array): Int32Array {
  const more = new Int32Array(2 * list.length)
  more.set(list)
  return more
}

/**
 * Bounds of numbers and every change of them in order. Statements that always hold, or never can, have no number: `trivial`.
 * Cost: a change or its undoing takes O(1).
 */
export class BoundTrail {
  readonly least: Int32Array
  readonly most: Int32Array
  readonly firstLeast: Int32Array
  readonly firstMost: Int32Array
  /** Number and value of each atom; atoms of number `x` begin at `base[x] + 1`, for its first least value plus 1. */
  readonly numberOf: Int32Array
  readonly valueOf: Int32Array
  readonly base: Int32Array
  readonly atoms: number
  /** Of each entry: side (twice its number, and 1 more for its most), bound before, cause, the side's entry before it, and level. */
  side: Int32Array = new Int32Array(1024)
  before: Int32Array = new Int32Array(1024)
  cause: Int32Array = new Int32Array(1024)
  previous: Int32Array = new Int32Array(1024)
  levelOf: Int32Array = new Int32Array(1024)
  size = 0
  /** Last entry of each side; -1 where none. */
  readonly last: Int32Array
  /** Where each level begins. */
  readonly levels: number[] = []

  constructor(least: Int32Array, most: Int32Array) {
    this.least = least.slice()
    this.most = most.slice()
    this.firstLeast = least.slice()
    this.firstMost = most.slice()
    this.last = new Int32Array(2 * least.length).fill(-1)
    this.base = new Int32Array(least.length)
    let atoms = 0
    for (let x = 0; x < least.length; x++) {
      this.base[x] = atoms - 1
      atoms += most[x]! - least[x]!
    }
    this.atoms = atoms
    this.numberOf = new Int32Array(atoms)
    this.valueOf = new Int32Array(atoms)
    for (let x = 0; x < least.length; x++) {
      for (let value = least[x]! + 1; value <= most[x]!; value++) {
        const atom = this.base[x]! + value - least[x]!
        this.numberOf[atom] = x
        this.valueOf[atom] = value
      }
    }
  }

  get level(): number {
    return this.levels.length
  }

  /** That number `x` is at least `value`; -1 where that holds from the first. Needs: not beyond its first most. */
  atLeast(x: number, value: number): Statement {
    return value <= this.firstLeast[x]! ? -1 : 2 * (this.base[x]! + value - this.firstLeast[x]!)
  }

  /** That number `x` is at most `value`; -1 where that holds from the first. Needs: not below its first least. */
  atMost(x: number, value: number): Statement {
    return value >= this.firstMost[x]! ? -1 : 2 * (this.base[x]! + value + 1 - this.firstLeast[x]!) + 1
  }

  /** 1 where the bounds make a statement true, -1 where false, 0 where open. */
  truth(statement: Statement): number {
    const atom = statement >> 1
    const [x, value] = [this.numberOf[atom]!, this.valueOf[atom]!]
    const holds = this.least[x]! >= value ? 1 : this.most[x]! < value ? -1 : 0
    return (statement & 1) === 0 ? holds : -holds
  }

  /** Moves a bound so that an open statement becomes true. */
  make(statement: Statement, cause: Cause): void {
    const atom = statement >> 1
    const x = this.numberOf[atom]!
    const side = 2 * x + (statement & 1)
    if (this.size === this.side.length) this.#grow()
    const entry = this.size++
    const bounds = (statement & 1) === 0 ? this.least : this.most
    this.side[entry] = side
    this.before[entry] = bounds[x]!
    this.cause[entry] = cause
    this.previous[entry] = this.last[side]!
    this.levelOf[entry] = this.levels.length
    this.last[side] = entry
    bounds[x] = this.valueOf[atom]! - (statement & 1)
  }

  #grow(): void {
    this.side = grown(this.side)
    this.before = grown(this.before)
    this.cause = grown(this.cause)
    this.previous = grown(this.previous)
    this.levelOf = grown(this.levelOf)
  }

  /** Takes back the last entry. Gives: its number. */
  undo(): number {
    const entry = --this.size
    const side = this.side[entry]!
    const x = side >> 1
    this.last[side] = this.previous[entry]!
    if ((side & 1) === 0) this.least[x] = this.before[entry]!
    else this.most[x] = this.before[entry]!
    return x
  }

  /** The entry that made a true statement true. */
  entryOf(statement: Statement): number {
    const atom = statement >> 1
    const value = this.valueOf[atom]!
    let entry = this.last[2 * this.numberOf[atom]! + (statement & 1)]!
    if ((statement & 1) === 0) while (this.before[entry]! >= value) entry = this.previous[entry]!
    else while (this.before[entry]! < value) entry = this.previous[entry]!
    return entry
  }
}
