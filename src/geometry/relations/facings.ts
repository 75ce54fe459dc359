import { unit, type Vector } from './vector.ts'

/** How much of a surface looks along a line, to either side. */
export interface Facing {
  readonly areaMm2: number
  /** The mean, of length 1. */
  readonly normal: Vector
}

/** Steps from the middle of a face of the cube to its edge; so that what looks along an axis is in the middle of one. */
const half = 32
const across = 2 * half + 1
const size = across * across
/** Most facings that are told, the largest. */
const mostFacings = 2048

/** Room for sums over the faces of a cube; used again from part to part. */
export interface FacingRoom {
  readonly sums: readonly [Float64Array, Float64Array, Float64Array]
}

/** Empty room for facings. */
export function roomForFacings(): FacingRoom {
  const empty = () => new Float64Array(3 * size)
  return { sums: [empty(), empty(), empty()] }
}

/**
 * Where the surface of a mesh looks, the largest areas first: triangles gathered by where their normal meets a cube, in steps
 * of one to two degrees, each with its own mean. A face and the one opposite count as one.
 * Cost: O(triangles).
 */
export function facingsOf(
  corners: Float32Array,
  { sums: [sumX, sumY, sumZ] }: FacingRoom,
): readonly Facing[] {
  const met: number[] = []
  for (let o = 0; o < corners.length; o += 9) {
    // Plain statements: this runs once for every triangle, and mostly cold.
    const ax = corners[o]!
    const ay = corners[o + 1]!
    const az = corners[o + 2]!
    const bx = corners[o + 3]! - ax
    const by = corners[o + 4]! - ay
    const bz = corners[o + 5]! - az
    const cx = corners[o + 6]! - ax
    const cy = corners[o + 7]! - ay
    const cz = corners[o + 8]! - az
    const x = by * cz - bz * cy
    const y = bz * cx - bx * cz
    const z = bx * cy - by * cx
    const place = placeOf(x, y, z)
    if (place < 0) continue
    if (sumX[place] === 0 && sumY[place] === 0 && sumZ[place] === 0) met.push(place)
    const most = place < size ? x : place < 2 * size ? y : z
    const sign = most > 0 ? 0.5 : -0.5
    sumX[place]! += sign * x
    sumY[place]! += sign * y
    sumZ[place]! += sign * z
  }
  const found = met.map((place): Facing => {
    const sum: Vector = [sumX[place]!, sumY[place]!, sumZ[place]!]
    sumX[place] = 0
    sumY[place] = 0
    sumZ[place] = 0
    return { areaMm2: Math.hypot(...sum), normal: unit(sum) }
  })
  return found.sort((one, other) => other.areaMm2 - one.areaMm2).slice(0, mostFacings)
}

/** The step on the cube in which a direction meets it, whichever way it points; -1 for none. */
function placeOf(x: number, y: number, z: number): number {
  const wide = Math.abs(x)
  const deep = Math.abs(y)
  const tall = Math.abs(z)
  if (wide >= deep && wide >= tall) return wide === 0 ? -1 : stepOf(0, y, z, half / x)
  return deep >= tall ? stepOf(size, z, x, half / y) : stepOf(2 * size, x, y, half / z)
}

function stepOf(first: number, u: number, v: number, scale: number): number {
  // Both are above zero, so that cutting off rounds down.
  return first + ((u * scale + half + 0.5) | 0) * across + ((v * scale + half + 0.5) | 0)
}
