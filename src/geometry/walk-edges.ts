import type { SamePlaces } from './same-places.ts'

/**
 * Calls `visit` once for every edge with its owners: twice the number of the triangle, plus one where that triangle
 * passes the edge from the higher place to the lower. Flat triangles have no edges.
 * Method: edges are gathered at their lower place and sorted there by the other end. Cost: O(n log n) in triangles.
 */
export function walkEdges(joined: SamePlaces, visit: (owners: Float64Array) => void): void {
  const starts = startsByPlace(joined)
  const spread = 2 * (joined.places.length / 3)
  const packed = new Float64Array(starts[joined.count]!)
  const filled = starts.slice()
  eachEdge(joined, (low, high, owner) => {
    // Fewer than 2^24 places and 2^25 owners: both fit one double exactly.
    packed[filled[low]!++] = high * spread + owner
  })
  for (let place = 0; place < joined.count; place++) {
    const here = packed.subarray(starts[place], starts[place + 1]).sort()
    for (let first = 0; first < here.length; ) {
      const end = Math.floor(here[first]! / spread)
      let past = first + 1
      while (past < here.length && Math.floor(here[past]! / spread) === end) past++
      visit(here.slice(first, past).map((edge) => edge % spread))
      first = past
    }
  }
}

/** Whether two corners of a triangle lie at one place. */
export function isFlat({ places }: SamePlaces, triangle: number): boolean {
  const [a, b, c] = [places[3 * triangle]!, places[3 * triangle + 1]!, places[3 * triangle + 2]!]
  return a === b || b === c || c === a
}

function startsByPlace(joined: SamePlaces): Int32Array {
  const starts = new Int32Array(joined.count + 1)
  eachEdge(joined, (low) => {
    starts[low + 1]!++
  })
  for (let place = 0; place < joined.count; place++) starts[place + 1]! += starts[place]!
  return starts
}

function eachEdge(joined: SamePlaces, visit: (low: number, high: number, owner: number) => void): void {
  const { places } = joined
  for (let triangle = 0; 3 * triangle < places.length; triangle++) {
    if (isFlat(joined, triangle)) continue
    for (let i = 0; i < 3; i++) {
      const [from, to] = [places[3 * triangle + i]!, places[3 * triangle + ((i + 1) % 3)]!]
      visit(Math.min(from, to), Math.max(from, to), 2 * triangle + (from > to ? 1 : 0))
    }
  }
}
