import { exactSum } from '../exact-sum.ts'

/** A mesh where it stands in the device: corners in single precision, nine numbers a triangle, in millimetres. */
export interface Solid {
  readonly corners: Float32Array
  readonly low: readonly [number, number, number]
  readonly high: readonly [number, number, number]
  /** Never below zero. */
  readonly volumeMm3: number
  /** The faces look inward: what reads it turns every crossing over. */
  readonly insideOut: boolean
}

/** A mesh made ready for relations. Needs: at least one triangle, finite corners. Cost: O(triangles). */
export function solidOf(corners: Float32Array): Solid {
  const low: [number, number, number] = [Infinity, Infinity, Infinity]
  const high: [number, number, number] = [-Infinity, -Infinity, -Infinity]
  for (let i = 0; i < corners.length; i++) {
    const [axis, at] = [i % 3, corners[i]!]
    if (at < low[axis]!) low[axis] = at
    if (at > high[axis]!) high[axis] = at
  }
  const volume = signedVolume(corners, low)
  return { corners, low, high, volumeMm3: Math.abs(volume), insideOut: volume < 0 }
}

function signedVolume(corners: Float32Array, [x, y, z]: Solid['low']): number {
  const sum = exactSum()
  for (let o = 0; o < corners.length; o += 9) {
    const [ax, ay, az] = [corners[o]! - x, corners[o + 1]! - y, corners[o + 2]! - z]
    const [bx, by, bz] = [corners[o + 3]! - x, corners[o + 4]! - y, corners[o + 5]! - z]
    const [cx, cy, cz] = [corners[o + 6]! - x, corners[o + 7]! - y, corners[o + 8]! - z]
    sum.add((ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx)) / 6)
  }
  return sum.total()
}
