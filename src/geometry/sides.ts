/** Which triangles look the same way, learned edge by edge. */
export interface Sides {
  /** Notes that two triangles look the same way, or opposite ways; false where that contradicts what is known. */
  join(a: number, b: number, alike: boolean): boolean
  /** Over the pieces that hang together: how many, and how many triangles look the other way than most of theirs. */
  minority(counts: (triangle: number) => boolean): { readonly shells: number; readonly turnedFaces: number }
}

/**
 * Triangles joined into pieces with a side each.
 * Method: disjoint sets with the parity of each member against its root, paths halved by full compression (textbook).
 */
export function sidesOf(triangles: number): Sides {
  const parent = Int32Array.from({ length: triangles }, (_, i) => i)
  const turned = new Uint8Array(triangles)
  const size = new Int32Array(triangles).fill(1)
  const rootOf = (triangle: number): { root: number; side: number } => {
    let [root, side] = [triangle, 0]
    while (parent[root] !== root) {
      side ^= turned[root]!
      root = parent[root]!
    }
    // Second walk: hang everything passed directly on the root.
    for (let at = triangle, left = side; parent[at] !== root && at !== root; ) {
      const [up, step] = [parent[at]!, turned[at]!]
      parent[at] = root
      turned[at] = left
      left ^= step
      at = up
    }
    return { root, side }
  }
  return {
    join(a, b, alike) {
      const [one, two] = [rootOf(a), rootOf(b)]
      const between = one.side ^ two.side ^ (alike ? 0 : 1)
      if (one.root === two.root) return between === 0
      const [low, high] = size[one.root]! < size[two.root]! ? [one.root, two.root] : [two.root, one.root]
      parent[low] = high
      turned[low] = between
      size[high] = size[high]! + size[low]!
      return true
    },
    minority(counts) {
      const tally = new Map<number, [number, number]>()
      for (let triangle = 0; triangle < triangles; triangle++) {
        if (!counts(triangle)) continue
        const { root, side } = rootOf(triangle)
        const both = tally.get(root) ?? [0, 0]
        both[side === 0 ? 0 : 1]++
        tally.set(root, both)
      }
      let turnedFaces = 0
      for (const [there, here] of tally.values()) turnedFaces += Math.min(there, here)
      return { shells: tally.size, turnedFaces }
    },
  }
}
