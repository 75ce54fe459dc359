import type { StepSet } from './step-set.ts'

/** Numbers remembered by the steps done and how the bench stands. */
export class StateTable {
  private readonly words: number
  private keys: Uint32Array
  private values: Float64Array
  private room = 1024
  private used = 0

  /** For sets of so many words. */
  constructor(words: number) {
    this.words = words
    this.keys = new Uint32Array(this.room * (words + 1))
    this.values = new Float64Array(this.room).fill(Number.NaN)
  }

  /** How many are remembered. */
  get size(): number {
    return this.used
  }

  /** The number remembered; not a number where there is none. */
  get(set: StepSet, standing: number): number {
    return this.values[this.slot(set, standing)]!
  }

  put(set: StepSet, standing: number, value: number): void {
    const slot = this.slot(set, standing)
    if (Number.isNaN(this.values[slot])) {
      this.keys.set(set, slot * (this.words + 1))
      this.keys[slot * (this.words + 1) + this.words] = standing
      this.used++
    }
    this.values[slot] = value
    if (this.used * 2 > this.room) this.grow()
  }

  /** Where a state stands, or the free place where it may stand. */
  private slot(set: StepSet, standing: number): number {
    let slot = this.hash(set, standing) & (this.room - 1)
    while (!Number.isNaN(this.values[slot]) && !this.stands(slot, set, standing))
      slot = (slot + 1) & (this.room - 1)
    return slot
  }

  private stands(slot: number, set: StepSet, standing: number): boolean {
    const at = slot * (this.words + 1)
    if (this.keys[at + this.words] !== standing) return false
    for (let w = 0; w < this.words; w++) if (this.keys[at + w] !== set[w]) return false
    return true
  }

  private hash(set: StepSet, standing: number): number {
    let hash = Math.imul(standing + 1, 0x9e3779b1)
    for (let w = 0; w < this.words; w++) {
      hash = Math.imul(hash ^ set[w]!, 0x85ebca6b)
      hash ^= hash >>> 15
    }
    hash = Math.imul(hash, 0xc2b2ae35)
    return hash ^ (hash >>> 16)
  }

  private grow(): void {
    const [keys, values, width] = [this.keys, this.values, this.words + 1]
    this.room *= 2
    this.keys = new Uint32Array(this.room * width)
    this.values = new Float64Array(this.room).fill(Number.NaN)
    for (const [old, value] of values.entries()) {
      if (Number.isNaN(value)) continue
      const key = keys.subarray(old * width, old * width + this.words)
      const slot = this.slot(key, keys[old * width + this.words]!)
      this.keys.set(keys.subarray(old * width, (old + 1) * width), slot * width)
      this.values[slot] = value
    }
  }
}
