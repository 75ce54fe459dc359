/** Which statement to decide next: those that took part in conflicts lately come first. */
import type { BoundTrail } from './bound-trail.ts'

/** Weights past this are scaled down together. */
const heaviest = 1e100

/**
 * A heap of atoms by how much they lately took part in conflicts; atoms that never did are not in it.
 * Source: the rule of Moskewicz, Madigan, Zhao, Zhang, Malik, "Chaff", 2001, with a decay as in later solvers, from memory.
 */
export class StatementQueue {
  readonly #trail: BoundTrail
  readonly #weight: Float64Array
  readonly #heap: Int32Array
  readonly #place: Int32Array
  #size = 0
  #step = 1

  constructor(trail: BoundTrail) {
    this.#trail = trail
    this.#weight = new Float64Array(trail.atoms)
    this.#heap = new Int32Array(trail.atoms)
    this.#place = new Int32Array(trail.atoms).fill(-1)
  }

  /** An atom took part in a conflict. */
  bump(atom: number): void {
    this.#weight[atom]! += this.#step
    if (this.#weight[atom]! > heaviest) {
      for (let k = 0; k < this.#weight.length; k++) this.#weight[k]! *= 1 / heaviest
      this.#step *= 1 / heaviest
    }
    if (this.#place[atom]! < 0) this.#insert(atom)
    else this.#up(this.#place[atom]!)
  }

  /** Older conflicts count less from now on. */
  decay(): void {
    this.#step /= 0.95
  }

  /** An atom is open again. */
  reopen(atom: number): void {
    if (this.#weight[atom]! > 0 && this.#place[atom]! < 0) this.#insert(atom)
  }

  /** The heaviest open atom, or -1. */
  next(): number {
    while (this.#size > 0) {
      const atom = this.#heap[0]!
      this.#removeTop()
      if (this.#trail.truth(2 * atom) === 0) return atom
    }
    return -1
  }

  #insert(atom: number): void {
    this.#heap[this.#size] = atom
    this.#place[atom] = this.#size
    this.#up(this.#size++)
  }

  #up(from: number): void {
    const atom = this.#heap[from]!
    let k = from
    while (k > 0) {
      const parent = (k - 1) >> 1
      const other = this.#heap[parent]!
      if (this.#weight[other]! >= this.#weight[atom]!) break
      this.#heap[k] = other
      this.#place[other] = k
      k = parent
    }
    this.#heap[k] = atom
    this.#place[atom] = k
  }

  #removeTop(): void {
    this.#place[this.#heap[0]!] = -1
    const atom = this.#heap[--this.#size]!
    if (this.#size === 0) return
    let k = 0
    for (;;) {
      let child = 2 * k + 1
      if (child >= this.#size) break
      const right = child + 1
      if (right < this.#size && this.#weight[this.#heap[right]!]! > this.#weight[this.#heap[child]!]!)
        child = right
      const other = this.#heap[child]!
      if (this.#weight[other]! <= this.#weight[atom]!) break
      this.#heap[k] = other
      this.#place[other] = k
      k = child
    }
    this.#heap[k] = atom
    this.#place[atom] = k
  }
}
