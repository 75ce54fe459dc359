import { bends, type EdgeTable } from './edges.ts'
import { hardenEdges } from './harden-edges.ts'
import type { WeldedMesh } from './weld-corners.ts'

/** Surfaces that turn by more are an edge: more than a step of a circle with ten sides, less than a chamfer of 45 degrees. */
const sharpDegrees = 37
const cosSharp = Math.cos((sharpDegrees * Math.PI) / 180)
/** And by this where they go on from such an edge. */
const weakDegrees = 24
const cosWeak = Math.cos((weakDegrees * Math.PI) / 180)

/**
 * The edges of a mesh with what lies on either side. The bend is measured between the two triangles themselves, so
 * that turned faces change nothing.
 * Method: half-edges gathered at their lower point, sorted there by the other end. Cost: O(triangles).
 */
export function edgeTable({ points, triangles }: WeldedMesh): EdgeTable {
  const starts = startsByPoint(points.length / 3, triangles)
  const halves = triangles.length
  const [high, third] = [new Uint32Array(halves), new Int32Array(halves)]
  const filled = starts.slice()
  eachHalf(triangles, (a, b, opposite) => {
    const slot = filled[Math.min(a, b)]!++
    high[slot] = Math.max(a, b)
    third[slot] = opposite
  })
  const table = emptyTable(halves)
  const weak = new Uint8Array(halves)
  let count = 0
  for (let low = 0; low + 1 < starts.length; low++) {
    const end = starts[low + 1]!
    sortSpan(high, third, starts[low]!, end)
    for (let first = starts[low]!; first < end; ) {
      let past = first + 1
      while (past < end && high[past] === high[first]) past++
      table.from[count] = low
      table.to[count] = high[first]!
      table.one[count] = third[first]!
      table.two[count] = past - first > 1 ? third[first + 1]! : -1
      const bend = bendOf(points, table, count, past - first)
      table.bend[count] = bend === maybeSharp ? bends.smooth : bend
      weak[count] = bend === maybeSharp ? 1 : 0
      count++
      first = past
    }
  }
  const edges = trimmed(table, count)
  hardenEdges(points, edges, weak)
  return edges
}

/** Blunter than a sharp edge, and not yet smooth. */
const maybeSharp = 3

function emptyTable(length: number): Omit<EdgeTable, 'count'> {
  return {
    from: new Uint32Array(length),
    to: new Uint32Array(length),
    one: new Int32Array(length),
    two: new Int32Array(length),
    bend: new Uint8Array(length),
  }
}

function trimmed({ from, to, one, two, bend }: Omit<EdgeTable, 'count'>, count: number): EdgeTable {
  return {
    count,
    from: from.slice(0, count),
    to: to.slice(0, count),
    one: one.slice(0, count),
    two: two.slice(0, count),
    bend: bend.slice(0, count),
  }
}

function startsByPoint(points: number, triangles: Uint32Array): Uint32Array {
  const starts = new Uint32Array(points + 1)
  eachHalf(triangles, (a, b) => {
    starts[Math.min(a, b) + 1]!++
  })
  for (let point = 0; point < points; point++) starts[point + 1]! += starts[point]!
  return starts
}

function eachHalf(triangles: Uint32Array, visit: (a: number, b: number, opposite: number) => void): void {
  for (let at = 0; at < triangles.length; at += 3) {
    const a = triangles[at]!
    const b = triangles[at + 1]!
    const c = triangles[at + 2]!
    visit(a, b, c)
    visit(b, c, a)
    visit(c, a, b)
  }
}

/** Few half-edges meet at a point: sorted by insertion, in place. */
function sortSpan(high: Uint32Array, third: Int32Array, start: number, end: number): void {
  for (let at = start + 1; at < end; at++) {
    const key = high[at]!
    const along = third[at]!
    let slot = at
    while (slot > start && high[slot - 1]! > key) {
      high[slot] = high[slot - 1]!
      third[slot] = third[slot - 1]!
      slot--
    }
    high[slot] = key
    third[slot] = along
  }
}

function bendOf(points: Float32Array, table: Omit<EdgeTable, 'count'>, edge: number, owners: number): number {
  if (owners === 1) return bends.open
  if (owners > 2) return bends.sharp
  const a = 3 * table.from[edge]!
  const b = 3 * table.to[edge]!
  const ex = points[b]! - points[a]!
  const ey = points[b + 1]! - points[a + 1]!
  const ez = points[b + 2]! - points[a + 2]!
  const long = ex * ex + ey * ey + ez * ez
  const away = (point: number): readonly [number, number, number] => {
    const x = points[3 * point]! - points[a]!
    const y = points[3 * point + 1]! - points[a + 1]!
    const z = points[3 * point + 2]! - points[a + 2]!
    const along = (x * ex + y * ey + z * ez) / long
    return [x - along * ex, y - along * ey, z - along * ez]
  }
  const [ux, uy, uz] = away(table.one[edge]!)
  const [vx, vy, vz] = away(table.two[edge]!)
  const [u, v] = [Math.hypot(ux, uy, uz), Math.hypot(vx, vy, vz)]
  // What a triangle thinner than the rounding of its points says of the surface means nothing.
  const least = 4e-7 * Math.max(Math.abs(points[a]!), Math.abs(points[a + 1]!), Math.abs(points[a + 2]!), 1)
  if (u < least || v < least) return bends.smooth
  const cos = (ux * vx + uy * vy + uz * vz) / (u * v)
  if (cos > -cosSharp) return bends.sharp
  return cos > -cosWeak ? maybeSharp : bends.smooth
}
