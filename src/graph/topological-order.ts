/** Where each node leads: `successors[a]` lists the nodes that wait for `a`. Nodes are 0, 1, 2 and so on. */
export type Successors = readonly (readonly number[])[]

/**
 * The nodes in an order in which each comes after all it waits for, the lowest free number first; `null` where a ring
 * leaves no such order. Repeated arcs do no harm.
 * Source: Kahn, "Topological sorting of large networks" (1962), with a heap for the free nodes. Cost: O((n + m) log n).
 */
export function topologicalOrder(successors: Successors): number[] | null {
  const waits = new Array<number>(successors.length).fill(0)
  for (const nexts of successors) for (const next of nexts) waits[next]! += 1
  const free = new LeastFirst()
  for (const [node, count] of waits.entries()) if (count === 0) free.add(node)
  const order: number[] = []
  for (let node = free.take(); node !== undefined; node = free.take()) {
    order.push(node)
    for (const next of successors[node]!) if (--waits[next]! === 0) free.add(next)
  }
  return order.length === successors.length ? order : null
}

/** A heap of numbers that hands out the least. */
class LeastFirst {
  private readonly heap: number[] = []

  add(value: number): void {
    const heap = this.heap
    let at = heap.push(value) - 1
    while (at > 0 && heap[(at - 1) >> 1]! > value) {
      heap[at] = heap[(at - 1) >> 1]!
      at = (at - 1) >> 1
    }
    heap[at] = value
  }

  take(): number | undefined {
    const heap = this.heap
    const least = heap[0]
    const last = heap.pop()
    if (heap.length > 0) this.sink(last!)
    return least
  }

  private sink(value: number): void {
    const heap = this.heap
    let at = 0
    for (;;) {
      let child = 2 * at + 1
      if (child + 1 < heap.length && heap[child + 1]! < heap[child]!) child++
      if (child >= heap.length || heap[child]! >= value) break
      heap[at] = heap[child]!
      at = child
    }
    heap[at] = value
  }
}
