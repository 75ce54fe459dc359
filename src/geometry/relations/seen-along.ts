import { type Axis, axes } from './directions.ts'
import type { Solid } from './solid.ts'
import { cross, unit, type Vector } from './vector.ts'

/** A part turned so that an axis of the device is an axis of a lattice. */
export interface Seen {
  readonly solid: Solid
  readonly axis: Axis
}

/** A part as it is seen along an axis of the device; as it is along x, y and z. Cost: O(triangles) along a tilted one. */
export function seenAlong(solid: Solid, axis: number, tilted: readonly Vector[]): Seen {
  if (axis < axes.length) return { solid, axis: axis as Axis }
  return { solid: turnedTo(solid, tilted[axis - axes.length]!), axis: 2 }
}

/** A point of a part as it is seen along an axis, back where it is in the device. */
export function seenBack([x, y, z]: Vector, axis: number, tilted: readonly Vector[]): Vector {
  if (axis < axes.length) return [x, y, z]
  const w = tilted[axis - axes.length]!
  const [u, v] = across(w)
  return [x * u[0] + y * v[0] + z * w[0], x * u[1] + y * v[1] + z * w[1], x * u[2] + y * v[2] + z * w[2]]
}

/** The parts of a device by number, each turned at most once for each axis. */
export function turnedOnce(
  solids: readonly Solid[],
  tilted: readonly Vector[],
): (part: number, axis: number) => Seen {
  const known = new Map<number, Seen>()
  return (part, axis) => {
    const key = axis * solids.length + part
    const seen = known.get(key) ?? seenAlong(solids[part]!, axis, tilted)
    known.set(key, seen)
    return seen
  }
}

function turnedTo({ corners, volumeMm3, insideOut }: Solid, w: Vector): Solid {
  const [u, v] = across(w)
  const turned = new Float32Array(corners.length)
  for (let o = 0; o < corners.length; o += 3) {
    const [x, y, z] = [corners[o]!, corners[o + 1]!, corners[o + 2]!]
    turned[o] = x * u[0] + y * u[1] + z * u[2]
    turned[o + 1] = x * v[0] + y * v[1] + z * v[2]
    turned[o + 2] = x * w[0] + y * w[1] + z * w[2]
  }
  return { corners: turned, ...boxOf(turned), volumeMm3, insideOut }
}

function boxOf(corners: Float32Array): Pick<Solid, 'low' | 'high'> {
  const low: [number, number, number] = [Infinity, Infinity, Infinity]
  const high: [number, number, number] = [-Infinity, -Infinity, -Infinity]
  for (let o = 0; o < corners.length; o += 3) {
    for (const k of axes) {
      const at = corners[o + k]!
      if (at < low[k]) low[k] = at
      if (at > high[k]) high[k] = at
    }
  }
  return { low, high }
}

/** Two directions across a third, so that all three are right-handed. */
function across(w: Vector): readonly [Vector, Vector] {
  const size = w.map(Math.abs)
  const least = size.indexOf(Math.min(...size))
  const aside: Vector = [least === 0 ? 1 : 0, least === 1 ? 1 : 0, least === 2 ? 1 : 0]
  const u = unit(cross(aside, w))
  return [u, cross(w, u)]
}
