import type { Successors } from './topological-order.ts'

/**
 * The groups of nodes that can all reach one another, each in rising order, by their lowest node; a node on no ring
 * is a group by itself.
 * Source: Tarjan, "Depth-first search and linear graph algorithms" (1972), without recursion. Cost: O(n + m).
 */
export function strongComponents(successors: Successors): number[][] {
  const search = new Search(successors)
  for (let node = 0; node < successors.length; node++) if (search.number[node] === -1) search.from(node)
  return search.found.map((group) => group.sort((a, b) => a - b)).sort((a, b) => a[0]! - b[0]!)
}

class Search {
  readonly found: number[][] = []
  readonly number: Int32Array
  private readonly low: Int32Array
  private readonly held: Uint8Array
  private readonly stack: number[] = []
  private visited = 0

  constructor(private readonly successors: Successors) {
    this.number = new Int32Array(successors.length).fill(-1)
    this.low = new Int32Array(successors.length)
    this.held = new Uint8Array(successors.length)
  }

  from(root: number): void {
    const path = [{ node: root, done: 0 }]
    this.enter(root)
    for (let top = path.at(-1); top; top = path.at(-1)) {
      const next = this.successors[top.node]![top.done++]
      if (next === undefined) {
        path.pop()
        this.leave(top.node, path.at(-1)?.node)
      } else if (this.number[next] === -1) {
        this.enter(next)
        path.push({ node: next, done: 0 })
      } else if (this.held[next]) {
        this.low[top.node] = Math.min(this.low[top.node]!, this.number[next]!)
      }
    }
  }

  private enter(node: number): void {
    this.number[node] = this.visited
    this.low[node] = this.visited++
    this.held[node] = 1
    this.stack.push(node)
  }

  private leave(node: number, parent: number | undefined): void {
    if (parent !== undefined) this.low[parent] = Math.min(this.low[parent]!, this.low[node]!)
    if (this.low[node] !== this.number[node]) return
    const group = this.stack.splice(this.stack.lastIndexOf(node))
    for (const member of group) this.held[member] = 0
    this.found.push(group)
  }
}
