import type { Mesh } from './mesh.ts'
import { type SamePlaces, samePlaces } from './same-places.ts'
import { walkEdges } from './walk-edges.ts'

/** Corners nearer to each other than this are one, in mm: less than anyone makes, more than files round. */
const nearMm = 2e-4
/** Steps of single precision that corners may lie apart. Source: IEEE 754, 24 bits of fraction. */
const nearSteps = 4
const step = 2 ** -23

/**
 * A mesh with its near corners joined, where an export rounded those of neighbouring triangles apart; triangles that
 * shrink to a line are left out. A mesh without an open edge, or with no fewer after it, comes back as it is.
 * Method: a table of cubes as wide as what is near, each corner compared with those in the 27 cubes around it.
 * Cost: O(n log n) in triangles.
 */
export function weldNear(mesh: Mesh): Mesh {
  const joined = samePlaces(mesh.corners)
  const open = openEdges(joined)
  if (open === 0) return mesh
  const welded = weld(mesh, joined)
  return welded && openEdges(samePlaces(welded.corners)) < open ? welded : mesh
}

function openEdges(joined: SamePlaces): number {
  let open = 0
  walkEdges(joined, (owners) => {
    if (owners.length === 1) open++
  })
  return open
}

function weld({ corners }: Mesh, { places, count }: SamePlaces): Mesh | null {
  const points = pointsOf(corners, places, count)
  const twins = twinsOf(points, count)
  if (twins.every((twin, place) => twin === place)) return null
  const kept: number[] = []
  for (let corner = 0; corner < places.length; corner += 3) {
    const [a, b, c] = [0, 1, 2].map((k) => twins[places[corner + k]!]!) as [number, number, number]
    if (a === b || b === c || c === a) continue
    for (const twin of [a, b, c]) for (let k = 0; k < 3; k++) kept.push(points[3 * twin + k]!)
  }
  return kept.length > 0 ? { corners: Float64Array.from(kept) } : null
}

function pointsOf(corners: Float64Array, places: Int32Array, count: number): Float64Array {
  const points = new Float64Array(3 * count)
  for (let corner = 0; corner < places.length; corner++)
    for (let k = 0; k < 3; k++) points[3 * places[corner]! + k] = corners[3 * corner + k]!
  return points
}

/** By place: the first place near to it that stands for itself. */
function twinsOf(points: Float64Array, count: number): Int32Array {
  const near = Math.max(nearMm, nearSteps * step * points.reduce((most, x) => Math.max(most, Math.abs(x)), 0))
  const size = 2 ** Math.ceil(Math.log2(2 * count + 2))
  const [heads, next] = [new Int32Array(size).fill(-1), new Int32Array(count)]
  const twins = Int32Array.from({ length: count }, (_, place) => place)
  const cubeOf = (place: number, k: number): number => Math.floor(points[3 * place + k]! / near)
  for (let place = 0; place < count; place++) {
    const cube = [cubeOf(place, 0), cubeOf(place, 1), cubeOf(place, 2)] as const
    const twin = nearTwin(points, place, { heads, next, cube, near })
    if (twin >= 0) {
      twins[place] = twin
      continue
    }
    const slot = slotOf(cube[0], cube[1], cube[2], size)
    next[place] = heads[slot]!
    heads[slot] = place
  }
  return twins
}

interface Cubes {
  readonly heads: Int32Array
  readonly next: Int32Array
  readonly cube: readonly [number, number, number]
  readonly near: number
}

function nearTwin(points: Float64Array, place: number, { heads, next, cube, near }: Cubes): number {
  for (let around = 0; around < 27; around++) {
    const [x, y, z] = [around % 3, Math.floor(around / 3) % 3, Math.floor(around / 9)]
    const slot = slotOf(cube[0] + x - 1, cube[1] + y - 1, cube[2] + z - 1, heads.length)
    for (let other = heads[slot]!; other >= 0; other = next[other]!)
      if (isNear(points, place, other, near)) return other
  }
  return -1
}

function isNear(points: Float64Array, a: number, b: number, near: number): boolean {
  for (let k = 0; k < 3; k++) if (Math.abs(points[3 * a + k]! - points[3 * b + k]!) > near) return false
  return true
}

/** Mixes three whole numbers into a slot of a table. Source: constants of the 32-bit MurmurHash3 (Appleby), from memory. */
function slotOf(x: number, y: number, z: number, size: number): number {
  let hash = Math.imul(x | 0, 0xcc9e2d51)
  hash = Math.imul((hash << 13) | (hash >>> 19), 5) ^ Math.imul(y | 0, 0x1b873593)
  hash = Math.imul((hash << 13) | (hash >>> 19), 5) ^ Math.imul(z | 0, 0x85ebca6b)
  hash = Math.imul(hash ^ (hash >>> 16), 0xc2b2ae35)
  return ((hash ^ (hash >>> 15)) >>> 0) & (size - 1)
}
