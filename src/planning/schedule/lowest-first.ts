/** A heap of numbered things, least key first, the lowest number among equals. */
export class LowestFirst {
  readonly #heap: number[] = []
  readonly #key: ArrayLike<number>

  /** Empty; `key` gives the key of each number. */
  constructor(key: ArrayLike<number>) {
    this.#key = key
  }

  /** How many there are. */
  get size(): number {
    return this.#heap.length
  }

  #before(a: number, b: number): boolean {
    const gap = this.#key[a]! - this.#key[b]!
    return gap === 0 ? a < b : gap < 0
  }

  /** Takes one in. */
  push(one: number): void {
    const heap = this.#heap
    let k = heap.length
    heap.push(one)
    while (k > 0) {
      const up = (k - 1) >> 1
      if (!this.#before(one, heap[up]!)) break
      heap[k] = heap[up]!
      k = up
    }
    heap[k] = one
  }

  /** Takes the first out. Needs: there is one. */
  pop(): number {
    const heap = this.#heap
    const top = heap[0]!
    const last = heap.pop()!
    if (heap.length === 0) return top
    let k = 0
    for (;;) {
      let down = 2 * k + 1
      if (down >= heap.length) break
      if (down + 1 < heap.length && this.#before(heap[down + 1]!, heap[down]!)) down++
      if (!this.#before(heap[down]!, last)) break
      heap[k] = heap[down]!
      k = down
    }
    heap[k] = last
    return top
  }
}
